// SPDX-License-Identifier: MIT
#include "stats/overdispersion/intraclass_correlation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Groups = std::vector<std::vector<stats::Tray>>;

// Trays of 20 whose groups have means from 0.2 to 0.95.
Groups simulatedGroups(int groups, int trays, double correlation, stats::SeededRandom& random) {
    Groups result(static_cast<std::size_t>(groups));
    for (auto& group : result) {
        const double mean = 0.2 + 0.75 * random.uniform(), sum = (1 - correlation) / std::max(correlation, 1e-9);
        for (int i = 0; i < trays; ++i) {
            const double rate = correlation == 0 ? mean : random.beta(mean * sum, (1 - mean) * sum);
            group.push_back({random.binomial(20, rate), 20});
        }
    }
    return result;
}

TEST(PooledSpread, IsWhatASlowProgramGives) {
    // The same adjusted likelihood from scipy.stats.betabinom (SciPy 1.10.1), its information by second differences, its
    // maximum by bounded search, its posterior by summing 600 points of the root of the correlation.
    const Groups groups{{{9, 20}, {14, 20}, {18, 20}}, {{3, 10}, {8, 10}}, {{10, 12}, {11, 15}, {4, 15}, {13, 15}}};
    const auto spread = stats::pooledSpread(groups);
    const support::Proof proof{"pooledSpread", "three invented groups", "SciPy 1.10.1 betabinom, 600 points"};
    EXPECT_NEAR(*spread.ownEstimate, 0.181618, 2e-5);
    EXPECT_NEAR(spread.correlation, 0.190882, 2e-4);
    EXPECT_NEAR(spread.limits.low, 0.059482, 0.003);
    EXPECT_NEAR(spread.limits.high, 0.383934, 0.003);
    EXPECT_NEAR(spread.weightOfRecords, 0.735312, 1e-3);
    support::prove(proof, *spread.ownEstimate, 0.181618);
    support::prove(proof, spread.correlation, 0.190882);
    EXPECT_EQ(spread.groups, 3);
    EXPECT_EQ(spread.batches, 9);
    EXPECT_EQ(spread.basis, stats::SpreadBasis::RecordsAndPrior);
}

TEST(PooledSpread, IsLessBiasedThanMaximumLikelihood) {
    stats::SeededRandom random(20260301);
    std::cout << "[ seed 20260301 ]\n";
    const Groups groups = simulatedGroups(150, 3, 0.1, random);
    // Simulated many times (see the header): 0.089 on average with an error of 0.017, maximum likelihood 0.050.
    const double own = *stats::pooledSpread(groups).ownEstimate;
    EXPECT_NEAR(own, 0.089, 3 * 0.015);
    const double likeliest = *stats::fitCommonCorrelation(groups).correlation;
    EXPECT_GT(own, likeliest + 0.02);
    support::proveWithin({"pooledSpread", "150 simulated groups of three trays", "the truth, 0.1"},
                         std::abs(own - 0.1));
}

TEST(PooledSpread, GoesFromThePriorToTheRecordsAsTheyGrow) {
    stats::SeededRandom random(5);
    const Groups many = simulatedGroups(60, 4, 0, random);
    double before = 0.2, weight = 0;
    for (const std::size_t groups : {1U, 5U, 20U, 60U}) {
        const auto spread =
            stats::pooledSpread(Groups(many.begin(), many.begin() + static_cast<std::ptrdiff_t>(groups)));
        EXPECT_LT(spread.correlation, before);
        EXPECT_GT(spread.weightOfRecords, weight);
        before = spread.correlation;
        weight = spread.weightOfRecords;
    }
    EXPECT_LT(before, 0.015);
    EXPECT_GT(weight, 0.99);
}

TEST(PooledSpread, IsThePriorWhereNoGroupSaysAnything) {
    const Groups silent{{{3, 10}}, {{0, 10}, {0, 12}}, {{5, 5}, {7, 7}}, {{1, 1}, {0, 1}}, {{0, 0}, {3, 8}}, {}};
    for (const Groups& groups : {Groups{}, silent}) {
        const auto spread = stats::pooledSpread(groups);
        EXPECT_EQ(spread.basis, stats::SpreadBasis::PriorAlone);
        EXPECT_FALSE(spread.ownEstimate);
        EXPECT_EQ(spread.weightOfRecords, 0);
        EXPECT_EQ(spread.groups, 0);
        // Beta(1, 4): mean 1/5, densest at 0, 95 % below 1 - 0.05^(1/4).
        EXPECT_NEAR(spread.correlation, 0.2, 2e-4);
        EXPECT_EQ(spread.limits.low, 0);
        EXPECT_NEAR(spread.limits.high, 1 - std::pow(0.05, 0.25), 0.003);
        support::prove({"pooledSpread", "no groups", "mean of the beta prior"}, spread.correlation, 0.2);
    }
}

TEST(PooledSpread, DoesNotHeedTheOrderOrWhatSaysNothing) {
    const Groups groups{{{9, 20}, {14, 20}, {18, 20}}, {{3, 10}, {8, 10}}};
    const Groups turned{{{8, 10}, {3, 10}}, {{12, 12}, {4, 4}}, {{18, 20}, {0, 0}, {9, 20}, {14, 20}}};
    const Groups swapped{{{11, 20}, {6, 20}, {2, 20}}, {{7, 10}, {2, 10}}};
    const auto spread = stats::pooledSpread(groups);
    EXPECT_NEAR(spread.correlation, stats::pooledSpread(turned).correlation, 1e-9);
    EXPECT_NEAR(spread.correlation, stats::pooledSpread(swapped).correlation, 1e-9);
}

TEST(PooledSpread, HasALawWithItsMean) {
    stats::SeededRandom random(6);
    for (const int groups : {0, 1, 300}) {
        const auto spread = stats::pooledSpread(simulatedGroups(groups, 3, 0.15, random));
        ASSERT_EQ(spread.law.size(), 12U);
        double mean = 0, weight = 0;
        for (const auto& each : spread.law) {
            mean += each.correlation * each.weight;
            weight += each.weight;
        }
        EXPECT_NEAR(mean, spread.correlation, 1e-9);
        EXPECT_NEAR(weight, 1, 1e-12);
    }
}

TEST(PooledSpread, FindsTraysThatAreAllOrNothing) {
    const Groups groups(20, {{20, 20}, {0, 20}, {20, 20}, {0, 20}});
    const auto spread = stats::pooledSpread(groups);
    EXPECT_GT(*spread.ownEstimate, 0.99);
    EXPECT_GT(spread.correlation, 0.9);
    EXPECT_LE(spread.limits.high, 1);
}

TEST(PooledSpread, HasLimitsThatHoldTheTruthAboutAsOftenAsTheySay) {
    stats::SeededRandom random(20260302);
    std::cout << "[ seed 20260302 ]\n";
    for (const double correlation : {0.0, 0.1}) {
        int held = 0;
        constexpr int runs = 60;
        for (int run = 0; run < runs; ++run) {
            const auto spread = stats::pooledSpread(simulatedGroups(10, 3, correlation, random));
            held += spread.limits.low <= correlation && correlation <= spread.limits.high ? 1 : 0;
        }
        // The header's table: 0.99 and 0.96; a share of 60 has a standard error of 0.03.
        EXPECT_GE(held, 0.87 * runs) << correlation;
    }
}

TEST(KnownCorrelation, IsOneValue) {
    const auto law = stats::knownCorrelation(0.07);
    ASSERT_EQ(law.size(), 1U);
    EXPECT_EQ(law[0].correlation, 0.07);
    EXPECT_EQ(law[0].weight, 1);
    support::prove({"knownCorrelation", "one value", "itself"}, law[0].correlation, 0.07);
}

TEST(PooledSpread, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::pooledSpread(Groups{{{3, 2}}}), std::domain_error);
    EXPECT_THROW((void)stats::pooledSpread(Groups{}, 1), std::domain_error);
    EXPECT_THROW((void)stats::pooledSpread(Groups{}, 0.95, {0.5, 9}), std::domain_error);
    EXPECT_THROW((void)stats::pooledSpread(Groups{}, 0.95, {1, INFINITY}), std::domain_error);
    EXPECT_THROW((void)stats::knownCorrelation(1), std::domain_error);
    EXPECT_THROW((void)stats::knownCorrelation(-0.1), std::domain_error);
}

}  // namespace
