// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/curve_notes.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "app/report/methods/pair_numbers.h"

namespace report {
namespace {

// The last day up to the horizon that has a band, else the first that has one.
const core::DayShare* bandedDay(const core::Arm& arm, int horizonDay) {
    const core::DayShare* shown = nullptr;
    for (const core::DayShare& share : arm.rootedByDay)
        if (share.band && (shown == nullptr || share.day <= horizonDay)) shown = &share;
    return shown;
}

MethodNote bandsNote(const core::Comparison& comparison, const core::Arm& arm, const core::DayShare& share) {
    MethodNote note{QStringLiteral("bands"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("arm")] = named(arm.name);
    putCount(numbers, QStringLiteral("batches"), arm.batches);
    numbers[QStringLiteral("replicates")] = plot::countText(core::ComparisonQuestion{}.bootstrapReplicates);
    putCount(numbers, QStringLiteral("day"), static_cast<int>(std::lround(share.day)));
    put(numbers, QStringLiteral("share"), share.share);
    putLimits(numbers, *share.band);
    putLevel(numbers, comparison.level);
    numbers[QStringLiteral("y_r")] = listForR(rootedOf(arm.counted));
    numbers[QStringLiteral("n_r")] = listForR(assessedOf(arm.counted));
    return note;
}

MethodNote curvesNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("curves_differ"), compared);
    Numbers& numbers = note.numbers;
    const core::CurvesApart& apart = *compared.pair.curvesApart;
    putCount(numbers, QStringLiteral("until"), apart.until);
    put(numbers, QStringLiteral("area"), apart.area, 2);
    numbers[QStringLiteral("dealings")] = plot::decimalText(apart.dealings, 0);
    numbers[QStringLiteral("drawn")] = apart.isExact
                                           ? QStringLiteral(" (all there are)")
                                           : QStringLiteral(" (drawn by chance; the dealing seen counts as one more)");
    putP(numbers, QStringLiteral("p"), *compared.pair.curvesP);
    putSteps(numbers, compared.first.makeup.rooted, QStringLiteral("1"));
    putSteps(numbers, compared.second.makeup.rooted, QStringLiteral("2"));
    return note;
}

QString curveOfShape(const std::string& shape) {
    if (shape == "log-normal") return QStringLiteral("pnorm((log(t) - m) / s)");
    if (shape == "log-logistic") return QStringLiteral("plogis((log(t) - m) / s)");
    return QStringLiteral("1 - exp(-exp((log(t) - m) / s))");
}

QString medianOfShape(const std::string& shape) {
    if (shape == "Weibull") return QStringLiteral("exp(b[2] + exp(b[3]) * log(log(2)))");
    return QStringLiteral("exp(b[2])");
}

MethodNote speedNote(const core::Arm& arm, double level) {
    const core::FittedSpeed& fit = arm.speed.fits.front();
    MethodNote note{QStringLiteral("who_roots_and_how_fast"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("arm")] = named(arm.name);
    numbers[QStringLiteral("shape")] = QString::fromStdString(fit.shape);
    numbers[QStringLiteral("limits_by")] =
        fit.isByBatch
            ? QStringLiteral("by batch: they allow for the spread between batches")
            : QStringLiteral("as counted, each cutting with its own luck: there are too few batches for more");
    put(numbers, QStringLiteral("akaike"), fit.akaike, 1);
    put(numbers, QStringLiteral("share"), fit.rootingShare, 3);
    numbers[QStringLiteral("share_limits")] = fit.rootingShareLimits
                                                  ? QStringLiteral(", limits %1 to %2")
                                                        .arg(plot::decimalText(fit.rootingShareLimits->low, 3),
                                                             plot::decimalText(fit.rootingShareLimits->high, 3))
                                                  : QStringLiteral(": the records set no bound to it");
    put(numbers, QStringLiteral("median"), fit.medianDay, 1);
    numbers[QStringLiteral("median_r")] =
        medianOfShape(fit.shape) + QStringLiteral("    # ") + fixedForR(fit.medianDay, 1);
    putLimits(numbers, fit.medianDayLimits, 1);
    putLevel(numbers, level);
    numbers[QStringLiteral("curve_r")] = curveOfShape(fit.shape);
    const SpeedRowsForR rows = speedRowsForR(arm.makeup, arm.looks.empty() ? 0 : arm.looks.back().day);
    numbers[QStringLiteral("after_r")] = listForR(rows.after);
    numbers[QStringLiteral("by_r")] = listForR(rows.by);
    numbers[QStringLiteral("n_r")] = listForR(rows.cuttings);
    return note;
}

void putRowsOfBoth(Numbers& numbers, const ComparedPair& compared) {
    SpeedRowsForR rows;
    std::vector<int> sizes;
    for (const core::Arm* arm : {&compared.first, &compared.second}) {
        const SpeedRowsForR own = speedRowsForR(arm->makeup, arm->looks.empty() ? 0 : arm->looks.back().day);
        rows.after.insert(rows.after.end(), own.after.begin(), own.after.end());
        rows.by.insert(rows.by.end(), own.by.begin(), own.by.end());
        rows.cuttings.insert(rows.cuttings.end(), own.cuttings.begin(), own.cuttings.end());
        sizes.push_back(static_cast<int>(own.cuttings.size()));
    }
    numbers[QStringLiteral("after_r")] = listForR(rows.after);
    numbers[QStringLiteral("by_r")] = listForR(rows.by);
    numbers[QStringLiteral("n_r")] = listForR(rows.cuttings);
    numbers[QStringLiteral("sizes_r")] = listForR(sizes);
}

MethodNote ratioOfSpeedsNote(const ComparedPair& compared) {
    const core::SpeedDifference& speed = compared.pair.speed;
    MethodNote note = pairNote(QStringLiteral("ratio_of_speeds"), compared);
    Numbers& numbers = note.numbers;
    const bool isByBatch = speed.byBatch && speed.byBatchP;
    numbers[QStringLiteral("limits_by")] =
        isByBatch ? QStringLiteral("Batches are independent of each other; cuttings of one need not be.")
                  : QStringLiteral("Every cutting has its own luck: there are too few batches for more.");
    numbers[QStringLiteral("shape")] = QString::fromStdString(speed.shape);
    put(numbers, QStringLiteral("ratio"), *speed.ratio, 2);
    putLimits(numbers, isByBatch ? *speed.byBatch : speed.asCounted, 2);
    putP(numbers, QStringLiteral("p"), isByBatch ? *speed.byBatchP : speed.asCountedP);
    numbers[QStringLiteral("curve_r")] = curveOfShape(speed.shape);
    putRowsOfBoth(numbers, compared);
    return note;
}

void addArm(const core::Comparison& comparison, const core::Arm& arm, std::vector<MethodNote>& notes) {
    for (MethodNote& note : notesOnCurve({.name = named(arm.name),
                            .makeup = arm.makeup,
                            .rootedByDay = arm.rootedByDay,
                            .ofStuck = arm.ofStuck,
                            .ofRooted = arm.ofRooted}))
        notes.push_back(std::move(note));
    if (const core::DayShare* share = bandedDay(arm, comparison.horizonDay))
        notes.push_back(bandsNote(comparison, arm, *share));
    if (!arm.speed.fits.empty()) notes.push_back(speedNote(arm, comparison.level));
}

}  // namespace

std::vector<MethodNote> notesOnDays(const core::Comparison& comparison, int pair) {
    std::vector<MethodNote> notes;
    if (comparison.arms.empty()) return notes;
    const bool hasPair = pair >= 0 && pair < std::ssize(comparison.pairs);
    addArm(comparison, hasPair ? comparedPair(comparison, pair).first : comparison.arms.front(), notes);
    if (!hasPair) return notes;
    const ComparedPair compared = comparedPair(comparison, pair);
    if (compared.pair.curvesP && compared.pair.curvesApart) notes.push_back(curvesNote(compared));
    if (compared.pair.speed.ratio) notes.push_back(ratioOfSpeedsNote(compared));
    return notes;
}

}  // namespace report
