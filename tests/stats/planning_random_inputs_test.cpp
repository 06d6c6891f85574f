// SPDX-License-Identifier: MIT
// Plans, spread, tails and charts over whatever is allowed in: never "not a number", infinite nowhere.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <optional>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "stats/overdispersion/tray_bootstrap.h"
#include "stats/planning/exact_power.h"
#include "stats/planning/normal_power.h"
#include "stats/planning/predictive_count.h"
#include "stats/planning/sample_size.h"
#include "stats/surveillance/control_limits.h"
#include "stats/surveillance/predictive_tail.h"

namespace {

using stats::SeededRandom;

bool isProbability(std::optional<double> value) {
    return !value || (*value >= 0 && *value <= 1);
}

// Often at an end or next to it.
double someShare(SeededRandom& random) {
    switch (random.below(8)) {
        case 0:
            return 0;
        case 1:
            return 1;
        case 2:
            return 1e-300;
        case 3:
            return 1 - 1e-16;
        default:
            return random.uniform();
    }
}

// Strictly inside, now and then next to an end.
double someLevel(SeededRandom& random) {
    switch (random.below(10)) {
        case 0:
            return 1e-12;
        case 1:
            return 1 - 1e-12;
        default:
            return 0.001 + 0.998 * random.uniform();
    }
}

stats::Tray someTray(int most, SeededRandom& random) {
    const int trials = static_cast<int>(random.below(static_cast<std::uint64_t>(most) + 1));
    const auto kind = random.below(4);
    return {kind == 0   ? 0
            : kind == 1 ? trials
                        : static_cast<int>(random.below(static_cast<std::uint64_t>(trials) + 1)),
            trials};
}

std::vector<stats::Tray> someTraysUpTo(std::uint64_t count, int most, SeededRandom& random) {
    std::vector<stats::Tray> trays(random.below(count + 1));
    for (auto& tray : trays) tray = someTray(most, random);
    return trays;
}

stats::PastBatches somePast(SeededRandom& random) {
    stats::PastBatches past{.batches = someTraysUpTo(3, 12, random), .spread = {}, .prior = {}};
    for (std::uint64_t i = 0; i <= random.below(3); ++i)
        past.spread.push_back(
            {.correlation = std::min(1 - 1e-16, someShare(random)), .weight = 1e-3 + random.uniform()});
    if (random.below(4) == 0) {
        const double low = someShare(random);
        past.prior = stats::ratePriorOfBand(low, low + (1 - low) * random.uniform());
    }
    return past;
}

TEST(PlanningRandomInputs, OfRatesAndRecordsGiveCountsThatCanBeShown) {
    SeededRandom random(101);
    std::cout << "[ seed 101 ]\n";
    for (int run = 0; run < 40'000; ++run) {
        const int wanted = static_cast<int>(random.below(random.below(50) == 0 ? 2'000'000'000 : 40));
        const double assurance = someLevel(random);
        const double livesOn = std::max(1e-300, someShare(random));
        const auto known = stats::countForKnownRate(wanted, someShare(random), assurance, livesOn);
        ASSERT_TRUE(isProbability(known.achieved) && (!known.count || *known.achieved >= assurance)) << run;
        ASSERT_EQ(known.count.has_value(), known.achieved.has_value()) << run;
        if (run % 100 != 0) continue;  // may go through a million
        const auto tray = someTray(60, random);
        const auto past =
            stats::countForPastRecords(std::min(wanted, 20), tray.successes, tray.trials, std::min(0.9, assurance));
        ASSERT_TRUE(isProbability(past.achieved) && (!past.count || *past.count >= std::min(wanted, 20))) << run;
    }
}

TEST(PlanningRandomInputs, OfLawsSumToOne) {
    SeededRandom random(102);
    std::cout << "[ seed 102 ]\n";
    for (int run = 0; run < 30'000; ++run) {
        const auto law =
            stats::betaBinomialProbabilities(static_cast<int>(random.below(60)), someShare(random), someShare(random));
        double sum = 0;
        for (const double each : law) {
            ASSERT_TRUE(isProbability(each)) << run;
            sum += each;
        }
        ASSERT_NEAR(sum, 1, 1e-12) << run;
    }
}

TEST(PlanningRandomInputs, OfPastBatchesGiveTailsAndCountsThatCanBeShown) {
    SeededRandom random(103);
    std::cout << "[ seed 103 ]\n";
    for (int run = 0; run < 1'500; ++run) {
        const auto past = somePast(random);
        const auto batch = someTray(12, random);
        const auto tail = stats::predictiveTail(batch.successes, batch.trials, past);
        ASSERT_TRUE(isProbability(tail.fewer) && isProbability(tail.asFewOrFewer) && tail.fewer <= tail.asFewOrFewer)
            << run;
        ASSERT_TRUE(tail.expected >= 0 && tail.expected <= batch.trials + 1e-9) << run;
        ASSERT_TRUE(0 <= tail.usualFewest && tail.usualFewest <= tail.usualMost && tail.usualMost <= batch.trials)
            << run;
        const int traySize = 1 + static_cast<int>(random.below(9)), wanted = static_cast<int>(random.below(6));
        const double livesOn = std::max(1e-300, someShare(random));
        const int count = static_cast<int>(random.below(20));
        const auto chances =
            stats::assuranceOfCounts(wanted, std::vector<int>{count, count + 7}, past, traySize, livesOn);
        ASSERT_TRUE(isProbability(chances[0]) && isProbability(chances[1])) << run;
        ASSERT_GE(chances[1], chances[0] - 1e-7) << run;
    }
}

TEST(PlanningRandomInputs, OfGroupsGiveASpreadThatCanBeShown) {
    SeededRandom random(104);
    std::cout << "[ seed 104 ]\n";
    for (int run = 0; run < 1'500; ++run) {
        std::vector<std::vector<stats::Tray>> groups(random.below(3));
        for (auto& group : groups) group = someTraysUpTo(3, 14, random);
        const auto spread = stats::pooledSpread(groups, someLevel(random));
        ASSERT_TRUE(isProbability(spread.correlation) && isProbability(spread.ownEstimate)) << run;
        ASSERT_TRUE(isProbability(spread.weightOfRecords)) << run;
        ASSERT_TRUE(0 <= spread.limits.low && spread.limits.low <= spread.limits.high && spread.limits.high <= 1)
            << run;
        for (const auto& each : spread.law) ASSERT_TRUE(each.correlation >= 0 && each.correlation < 1) << run;
    }
}

TEST(PlanningRandomInputs, OfTraysGiveABootstrapAndAChartThatCanBeShown) {
    SeededRandom random(105);
    std::cout << "[ seed 105 ]\n";
    for (int run = 0; run < 10'000; ++run) {
        const auto trays = someTraysUpTo(5, random.below(100) == 0 ? 3000 : 25, random);
        const std::vector<double> probabilities{someShare(random), someShare(random)};
        const auto bootstrap = stats::trayBootstrap(trays, probabilities);
        ASSERT_TRUE(isProbability(bootstrap.mean) && std::isfinite(bootstrap.resamples)) << run;
        for (const double each : bootstrap.quantiles) ASSERT_TRUE(isProbability(each)) << run;
        stats::ChartQuestion question{
            .correlation = std::min(1 - 1e-16, someShare(random)), .falseAlarmRate = someLevel(random), .centre = {}};
        if (random.below(2) == 0) question.centre = someShare(random);
        const auto chart = stats::controlChart(trays, question);
        ASSERT_TRUE(isProbability(chart.centre)) << run;
        for (std::size_t i = 0; i < trays.size(); ++i) {
            const auto& point = chart.points[i];
            ASSERT_TRUE(0 <= point.fewest && point.fewest <= trays[i].trials && point.most <= trays[i].trials) << run;
            ASSERT_TRUE(isProbability(point.limits.low) && isProbability(point.limits.high)) << run;
        }
    }
}

TEST(PlanningRandomInputs, OfPlannedArmsGivePowersThatCanBeShown) {
    SeededRandom random(106);
    std::cout << "[ seed 106 ]\n";
    for (int run = 0; run < 20'000; ++run) {
        const double rate1 = someShare(random), rate2 = someShare(random), alpha = someLevel(random);
        ASSERT_TRUE(isProbability(stats::normalPower(1e-3 + 1e6 * someShare(random), rate1, rate2, alpha))) << run;
        const auto trials = stats::trialsForNormalPower(someLevel(random), rate1, rate2, alpha);
        ASSERT_TRUE(!trials || (*trials > 0 && std::isfinite(*trials))) << run;
        const stats::PlannedArms arms{static_cast<int>(random.below(8)), static_cast<int>(random.below(8)), rate1,
                                      rate2};
        const auto fisher = stats::fisherPower(arms, alpha, static_cast<stats::FisherSide>(random.below(3)));
        ASSERT_TRUE(isProbability(fisher.power) && fisher.size >= 0 && fisher.size <= alpha + 1e-9) << run;
        if (run % 5 != 0) continue;
        const auto boschloo = stats::boschlooPower(arms, alpha, static_cast<stats::BoschlooKind>(random.below(4)));
        ASSERT_TRUE(isProbability(boschloo.power) && boschloo.size >= 0 && boschloo.size <= alpha + 1e-9) << run;
        if (run % 100 != 0) continue;
        const auto size = stats::sampleSize({.rate1 = rate1,
                                             .rate2 = rate2,
                                             .alpha = alpha,
                                             .power = someLevel(random),
                                             .test = stats::PlannedTest::Boschloo,
                                             .designEffect = 1 + 9 * random.uniform(),
                                             .mostPerArm = 15});
        ASSERT_TRUE(isProbability(size.achieved) &&
                    (!size.independentPerArm || *size.perArm >= *size.independentPerArm))
            << run;
    }
}

}  // namespace
