// SPDX-License-Identifier: MIT
#include "app/report/methods/interval_note.h"

#include <QStringList>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "stats/overdispersion/rao_scott.h"
#include "stats/overdispersion/tray_interval.h"

namespace report {
namespace {

struct PairTest {
    double before{};
    double adjusted{};
};

struct PairTests {
    bool areOfBatches{};
    std::vector<PairTest> tests;
};

// Those on batch rates where there are several, else those as counted.
PairTests adjustedTests(const core::Comparison& comparison) {
    std::vector<PairTest> batchwise, counted;
    for (const core::Pair& pair : comparison.pairs) {
        if (pair.batchRatesP && pair.batchRatesHolm) batchwise.push_back({*pair.batchRatesP, *pair.batchRatesHolm});
        if (pair.boschlooHolm) counted.push_back({pair.boschloo, *pair.boschlooHolm});
    }
    const bool areOfBatches = batchwise.size() > 1;
    return {.areOfBatches = areOfBatches, .tests = std::move(areOfBatches ? batchwise : counted)};
}

MethodNote holmNote(const PairTests& adjusted) {
    MethodNote note{QStringLiteral("holm"), {}};
    QStringList before, after, adjustedForR;
    std::vector<double> p;
    for (const PairTest& test : adjusted.tests) {
        before << plot::pText(test.before);
        after << plot::pText(test.adjusted);
        adjustedForR << fixedForR(test.adjusted, 4);
        p.push_back(test.before);
    }
    note.numbers[QStringLiteral("tests")] =
        adjusted.areOfBatches ? QStringLiteral("Tests on batch rates") : QStringLiteral("Boschloo's tests");
    putCount(note.numbers, QStringLiteral("pairs"), static_cast<int>(adjusted.tests.size()));
    note.numbers[QStringLiteral("before")] = before.join(QStringLiteral(", "));
    note.numbers[QStringLiteral("after")] = after.join(QStringLiteral(", "));
    note.numbers[QStringLiteral("p_r")] = listForR(p);
    note.numbers[QStringLiteral("adjusted_r")] = adjustedForR.join(u' ');
    return note;
}

struct CountedArms {
    QStringList names, counts;
    std::vector<int> rooted, assessed, sizes, batchRooted, batchAssessed;
    int rootedInAll{}, assessedInAll{};
};

CountedArms countedArms(const core::Comparison& comparison) {
    CountedArms arms;
    for (const core::Arm& arm : comparison.arms) {
        if (arm.assessed == 0) continue;
        arms.names << named(arm.name);
        arms.counts << QStringLiteral("%1 of %2").arg(arm.rooted).arg(arm.assessed);
        arms.rooted.push_back(arm.rooted);
        arms.assessed.push_back(arm.assessed);
        arms.sizes.push_back(static_cast<int>(arm.counted.size()));
        arms.rootedInAll += arm.rooted;
        arms.assessedInAll += arm.assessed;
        for (const core::BatchCount& batch : arm.counted) {
            arms.batchRooted.push_back(batch.rooted);
            arms.batchAssessed.push_back(batch.assessed);
        }
    }
    return arms;
}

MethodNote chiSquareNote(const core::SeveralArms& several, const CountedArms& arms) {
    MethodNote note{QStringLiteral("several_arms"), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("arms"), several.arms);
    put(numbers, QStringLiteral("expected"), several.smallestExpected, 1);
    numbers[QStringLiteral("names")] = arms.names.join(QStringLiteral(", "));
    numbers[QStringLiteral("counts")] = arms.counts.join(QStringLiteral(", "));
    putCount(numbers, QStringLiteral("rooted"), arms.rootedInAll);
    putCount(numbers, QStringLiteral("assessed"), arms.assessedInAll);
    put(numbers, QStringLiteral("chi_square"), several.chiSquare, 3);
    putCount(numbers, QStringLiteral("degrees"), several.degreesOfFreedom);
    putP(numbers, QStringLiteral("p"), several.chiSquareP);
    numbers[QStringLiteral("y_r")] = listForR(arms.rooted);
    numbers[QStringLiteral("n_r")] = listForR(arms.assessed);
    return note;
}

MethodNote batchesOfArmsNote(const core::SeveralArms& several, const CountedArms& arms) {
    MethodNote note{QStringLiteral("several_arms_by_batch"), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("arms"), several.arms);
    numbers[QStringLiteral("names")] = arms.names.join(QStringLiteral(", "));
    put(numbers, QStringLiteral("f"), *several.f, 3);
    putP(numbers, QStringLiteral("p"), *several.batchRatesP);
    putCount(numbers, QStringLiteral("between"), several.arms - 1);
    putCount(numbers, QStringLiteral("within"), static_cast<int>(arms.batchRooted.size()) - several.arms);
    numbers[QStringLiteral("y_r")] = listForR(arms.batchRooted);
    numbers[QStringLiteral("n_r")] = listForR(arms.batchAssessed);
    numbers[QStringLiteral("sizes_r")] = listForR(arms.sizes);
    return note;
}

QString pageOf(core::RateInterval interval) {
    const std::string_view word = core::wordFor(interval);
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())) + QStringLiteral("_interval");
}

}  // namespace

MethodNote intervalNote(core::RateInterval interval, const CountedRate& rate, const QString& counted) {
    MethodNote note{pageOf(interval), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("rooted"), rate.rooted);
    putCount(numbers, QStringLiteral("unrooted"), rate.of - rate.rooted);
    putCount(numbers, QStringLiteral("assessed"), rate.of);
    put(numbers, QStringLiteral("rate"), static_cast<double>(rate.rooted) / rate.of);
    putLimits(numbers, rate.limits);
    putLevel(numbers, rate.level);
    numbers[QStringLiteral("counted")] = counted;
    return note;
}

MethodNote withSpreadNote(const SpreadRate& rate) {
    MethodNote note{QStringLiteral("interval_with_spread"), {}};
    Numbers& numbers = note.numbers;
    std::vector<stats::Tray> trays;
    int rooted = 0, assessed = 0;
    for (std::size_t i = 0; i < rate.rooted.size(); ++i) {
        trays.push_back({.successes = rate.rooted[i], .trials = rate.assessed[i]});
        rooted += rate.rooted[i];
        assessed += rate.assessed[i];
    }
    numbers[QStringLiteral("arm")] = rate.name;
    putCount(numbers, QStringLiteral("batches"), static_cast<int>(trays.size()));
    putCount(numbers, QStringLiteral("rooted"), rooted);
    putCount(numbers, QStringLiteral("assessed"), assessed);
    put(numbers, QStringLiteral("rate"), static_cast<double>(rooted) / assessed);
    put(numbers, QStringLiteral("design_effect"), stats::raoScottDesignEffect(trays).designEffect.value_or(1), 2);
    put(numbers, QStringLiteral("effective"), stats::trayInterval(trays, rate.level).effectiveTrials, 1);
    putLimits(numbers, rate.limits);
    putLevel(numbers, rate.level);
    numbers[QStringLiteral("y_r")] = listForR(rate.rooted);
    numbers[QStringLiteral("n_r")] = listForR(rate.assessed);
    return note;
}

std::vector<MethodNote> notesOnSeveralArms(const core::Comparison& comparison) {
    std::vector<MethodNote> notes;
    if (comparison.severalArms) {
        const CountedArms arms = countedArms(comparison);
        notes.push_back(chiSquareNote(*comparison.severalArms, arms));
        if (comparison.severalArms->f && comparison.severalArms->batchRatesP)
            notes.push_back(batchesOfArmsNote(*comparison.severalArms, arms));
    }
    const PairTests adjusted = adjustedTests(comparison);
    if (adjusted.tests.size() > 1) notes.push_back(holmNote(adjusted));
    return notes;
}

}  // namespace report
