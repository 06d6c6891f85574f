// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "stats/planning/exact_power.h"
#include "stats/planning/normal_power.h"
#include "stats/planning/sample_size.h"

namespace report {

namespace {

/// As the page prints it, so that R gives what stands there.
double asPrinted(double rate) {
    return std::round(rate * 1e4) / 1e4;
}

int decimalsOfRate(double rate) {
    return std::abs(rate * 100 - std::round(rate * 100)) < 1e-9 ? 2 : 4;
}

}  // namespace

std::vector<MethodNote> notesOnPower(const core::TrialPower& power) {
    const core::TrialPowerQuestion& question = power.question;
    if (question.measure != core::TrialMeasure::MoreRooted || !power.independentFor80 || !power.perArmFor80) return {};
    constexpr double wanted = 0.8;
    const int perArm = *power.independentFor80, pairs = question.arms * (question.arms - 1) / 2;
    const double alpha = (1 - question.level) / pairs;
    const double tray = std::max(1.0, *power.perArmFor80 / question.batchesPerArm);
    const stats::PlannedArms arms{.trials1 = perArm,
                                  .trials2 = perArm,
                                  .rate1 = asPrinted(question.expected),
                                  .rate2 = asPrinted(power.expectedOther)};
    const auto normal = stats::trialsForNormalPower(wanted, arms.rate1, arms.rate2, alpha);
    MethodNote note{QStringLiteral("power_and_number"), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("per_arm"), perArm);
    put(numbers, QStringLiteral("rate1"), arms.rate1, decimalsOfRate(arms.rate1));
    put(numbers, QStringLiteral("rate2"), arms.rate2, decimalsOfRate(arms.rate2));
    put(numbers, QStringLiteral("alpha"), alpha, pairs == 1 ? 2 : 4);
    put(numbers, QStringLiteral("power"), wanted, 2);
    numbers[QStringLiteral("power_wanted")] = plot::shareText(wanted);
    put(numbers, QStringLiteral("fisher"), stats::fisherPowerAlone(arms, alpha, stats::FisherSide::TwoSided));
    put(numbers, QStringLiteral("boschloo"), stats::boschlooPowerAlone(arms, alpha, stats::BoschlooKind::Central));
    putCount(numbers, QStringLiteral("number"), perArm);
    put(numbers, QStringLiteral("normal"), normal.value_or(0), 1);
    put(numbers, QStringLiteral("tray"), tray, std::abs(tray - std::round(tray)) < 1e-9 ? 0 : 1);
    put(numbers, QStringLiteral("correlation"), question.correlation, 2);
    put(numbers, QStringLiteral("design_effect"), stats::designEffectOfTrays(tray, question.correlation), 2);
    putCount(numbers, QStringLiteral("with_trays"), *power.perArmFor80);
    return {std::move(note)};
}

}  // namespace report
