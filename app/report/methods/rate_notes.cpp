// SPDX-License-Identifier: MIT
#include <algorithm>

#include "app/plot/number_text.h"
#include "app/report/methods/interval_note.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"

namespace report {
namespace {

MethodNote strikeRateNote(const core::Comparison& comparison, const core::Arm& arm) {
    MethodNote note{QStringLiteral("strike_rate"), {}};
    Numbers& numbers = note.numbers;
    const int unknown = arm.stuck - arm.assessed;
    numbers[QStringLiteral("arm")] = named(arm.name);
    numbers[QStringLiteral("day_reason")] = named(comparison.horizonReason);
    putCount(numbers, QStringLiteral("day"), comparison.horizonDay);
    putCount(numbers, QStringLiteral("stuck"), arm.stuck);
    putCount(numbers, QStringLiteral("rooted"), arm.rooted);
    putCount(numbers, QStringLiteral("lost"), arm.lost);
    putCount(numbers, QStringLiteral("withdrawn"), arm.withdrawn);
    putCount(numbers, QStringLiteral("undecided"), arm.undecided);
    putCount(numbers, QStringLiteral("assessed"), arm.assessed);
    putCount(numbers, QStringLiteral("unknown"), unknown);
    put(numbers, QStringLiteral("rate"), *arm.rate);
    put(numbers, QStringLiteral("if_none"), static_cast<double>(arm.rooted) / arm.stuck);
    numbers[QStringLiteral("curve")] =
        arm.curveShare ? plot::decimalText(*arm.curveShare, 4) : QStringLiteral("nobody looked on that day or later");
    put(numbers, QStringLiteral("if_all"), static_cast<double>(arm.rooted + unknown) / arm.stuck);
    return note;
}

// The mean batch of all arms, weighted by its size.
double meanBatch(const core::Comparison& comparison) {
    double cuttings = 0, squares = 0;
    for (const core::Arm& arm : comparison.arms) {
        for (const core::BatchCount& batch : arm.counted) {
            cuttings += batch.assessed;
            squares += static_cast<double>(batch.assessed) * batch.assessed;
        }
    }
    return cuttings > 0 ? squares / cuttings : 1;
}

// All or none rooted, or no two cuttings together: such a group can't show how alike fates are.
bool canShowSpread(std::span<const core::BatchCount> group) {
    int rooted = 0, assessed = 0, largest = 0;
    for (const core::BatchCount& batch : group) {
        rooted += batch.rooted;
        assessed += batch.assessed;
        largest = std::max(largest, batch.assessed);
    }
    return rooted > 0 && rooted < assessed && largest > 1;
}

QString groupsForR(const std::vector<std::vector<core::BatchCount>>& groups) {
    constexpr int mostGroups = 60;
    QStringList lists;
    for (const auto& group : groups)
        if (canShowSpread(group))
            lists << QStringLiteral("list(y = %1, n = %2)").arg(listForR(rootedOf(group)), listForR(assessedOf(group)));
    if (lists.size() > mostGroups)
        return QStringLiteral("dget(\"the_%1_groups_of_the_records.txt\")").arg(lists.size());
    return QStringLiteral("list(") + lists.join(QStringLiteral(",\n    ")) + u')';
}

MethodNote spreadNote(const core::Comparison& comparison) {
    MethodNote note{QStringLiteral("spread"), {}};
    Numbers& numbers = note.numbers;
    const core::Spread& spread = comparison.spread;
    putCount(numbers, QStringLiteral("groups"), spread.groups);
    putCount(numbers, QStringLiteral("group_batches"), spread.batches);
    put(numbers, QStringLiteral("correlation"), spread.intraclassCorrelation, 3);
    putLimits(numbers, spread.limits, 3);
    putLevel(numbers, comparison.level);
    numbers[QStringLiteral("weight")] = plot::shareText(spread.weightOfRecords);
    put(numbers, QStringLiteral("mean_batch"), meanBatch(comparison), 1);
    put(numbers, QStringLiteral("design_effect"), spread.designEffect, 2);
    numbers[QStringLiteral("groups_r")] = groupsForR(spread.likeBatches);
    return note;
}

}  // namespace

MethodNote noteOnInterval(core::RateInterval interval, int rooted, int of, double level) {
    return intervalNote(
        interval, {.rooted = rooted, .of = of, .limits = core::rateLimits(interval, rooted, of, level), .level = level},
        QStringLiteral("of an invented batch had rooted"));
}

std::vector<MethodNote> notesOnRates(const core::Comparison& comparison, int arm) {
    if (arm < 0 || arm >= std::ssize(comparison.arms)) return {};
    const core::Arm& shown = comparison.arms[static_cast<std::size_t>(arm)];
    std::vector<MethodNote> notes;
    if (shown.rate && shown.asCounted) {
        notes.push_back(strikeRateNote(comparison, shown));
        const QString counted = QStringLiteral("assessed had rooted by day %1").arg(comparison.horizonDay);
        notes.push_back(intervalNote(
            comparison.interval,
            {.rooted = shown.rooted, .of = shown.assessed, .limits = *shown.asCounted, .level = comparison.level},
            counted));
        if (shown.withSpread)
            notes.push_back(withSpreadNote({.name = named(shown.name),
                                            .rooted = rootedOf(shown.counted),
                                            .assessed = assessedOf(shown.counted),
                                            .limits = *shown.withSpread,
                                            .level = comparison.level}));
        notes.push_back(spreadNote(comparison));
    }
    for (MethodNote& note : notesOnSeveralArms(comparison)) notes.push_back(std::move(note));
    return notes;
}

}  // namespace report
