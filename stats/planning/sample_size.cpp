// SPDX-License-Identifier: MIT
#include "stats/planning/sample_size.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/numeric/require.h"
#include "stats/planning/exact_power.h"
#include "stats/planning/non_inferiority_power.h"
#include "stats/planning/normal_power.h"
#include "stats/two_proportions/non_inferiority.h"

namespace stats {
namespace {

constexpr int alsoEnough = 5;  // numbers above that must have the power too

void requireQuestion(const SampleSizeQuestion& question) {
    constexpr int mostAllowed = 900;
    if (!(question.designEffect >= 1 && std::isfinite(question.designEffect)))
        throwDomainError("sampleSize", "designEffect", question.designEffect, "1 or more");
    if (question.mostPerArm < 1 || question.mostPerArm > mostAllowed)
        throwDomainError("sampleSize", "mostPerArm", question.mostPerArm, "from 1 to 900");
    if (question.test == PlannedTest::NonInferiority) requireMargin("sampleSize", question.margin);
}

double plannedPower(const SampleSizeQuestion& question, int perArm) {
    const PlannedArms arms{.trials1 = perArm, .trials2 = perArm, .rate1 = question.rate1, .rate2 = question.rate2};
    if (question.test == PlannedTest::NonInferiority)
        return nonInferiorityPower(arms, question.margin, 1 - question.alpha);
    return question.test == PlannedTest::Fisher ? fisherPowerAlone(arms, question.alpha, FisherSide::TwoSided)
                                                : boschlooPowerAlone(arms, question.alpha, BoschlooKind::Central);
}

/// As if the worst rate that is still as good were to be told from the other.
std::optional<double> normalGuess(const SampleSizeQuestion& question) {
    double rate1 = question.rate1, rate2 = question.rate2;
    if (question.test == PlannedTest::NonInferiority && rate2 >= question.margin)
        rate2 -= question.margin;
    else if (question.test == PlannedTest::NonInferiority)
        rate1 = std::min(1.0, rate1 + question.margin);
    return trialsForNormalPower(question.power, rate1, rate2, question.alpha);
}

bool hasNothingToFind(const SampleSizeQuestion& question) {
    return question.test == PlannedTest::NonInferiority ? question.rate1 + question.margin <= question.rate2
                                                        : question.rate1 == question.rate2;
}

std::optional<int> smallestPerArm(const SampleSizeQuestion& question, double guess, const std::stop_token& stop) {
    // The saw's teeth are small where numbers are large: there a stride of a fortieth adds a hundredth or so.
    constexpr int large = 100, strides = 40;
    // Near rates of 0 and 1 the guess for a margin is far too high.
    const double start = question.test == PlannedTest::NonInferiority ? guess / 4 : std::min(guess / 2, guess - 10);
    if (start > question.mostPerArm) return std::nullopt;
    int perArm = std::max(1, static_cast<int>(start));
    int candidate = perArm, enoughSoFar = 0;  // candidate .. perArm - 1 have the power
    while (candidate <= question.mostPerArm && !stop.stop_requested()) {
        const double power = plannedPower(question, perArm);
        if (power >= question.power) {
            if (++enoughSoFar > alsoEnough) return candidate;
            ++perArm;
            continue;
        }
        enoughSoFar = 0;
        const double farTooLow = perArm < large ? 0.1 : 0.04;
        perArm += power < question.power - farTooLow ? std::max(1, perArm / strides) : 1;
        candidate = perArm;
    }
    return std::nullopt;
}

}  // namespace

SampleSize sampleSize(const SampleSizeQuestion& question, const std::stop_token& stop) {
    requireQuestion(question);
    SampleSize size;
    size.normalPerArm = normalGuess(question);
    if (hasNothingToFind(question)) return size;
    size.independentPerArm = smallestPerArm(question, size.normalPerArm.value_or(1), stop);
    if (!size.independentPerArm) return size;
    size.achieved = plannedPower(question, *size.independentPerArm);
    const double inflated = std::ceil(*size.independentPerArm * question.designEffect * (1 - 1e-12));
    if (inflated <= std::numeric_limits<int>::max()) size.perArm = static_cast<int>(inflated);
    return size;
}

double designEffectOfTrays(double traySize, double correlation) {
    if (!(traySize >= 1 && std::isfinite(traySize)))
        throwDomainError("designEffectOfTrays", "traySize", traySize, "1 or more");
    if (!(correlation >= 0 && correlation <= 1))
        throwDomainError("designEffectOfTrays", "correlation", correlation, "from 0 to 1");
    return 1 + (traySize - 1) * correlation;
}

}  // namespace stats
