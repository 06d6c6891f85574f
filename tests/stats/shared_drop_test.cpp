// SPDX-License-Identifier: MIT
#include "stats/surveillance/shared_drop.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/overdispersion/beta_binomial.h"

namespace {

using Batches = std::vector<stats::GroupedTray>;
using Members = std::vector<std::size_t>;

double rateAtLogOdds(double logOdds) {
    return 1 / (1 + std::exp(-logOdds));
}

/// The integrals themselves, on a finer and wider grid and at the middles of its steps, with the probabilities of beta_binomial.h.
double logRatioByIntegration(const Batches& batches, const Members& members, double correlation) {
    constexpr double half = 0.025;  // of a step
    constexpr int rates = 320, drops = 100, points = 2 * (rates + drops);
    const auto logOddsAt = [](int point) { return -8 + half * (point - 2 * drops); };
    std::vector<bool> isMember(batches.size());
    for (const std::size_t member : members) isMember[member] = true;
    std::vector<std::vector<double>> logs;
    for (const auto& batch : batches)
        for (int p = 0; p < points; ++p)
            (p == 0 ? logs.emplace_back() : logs.back())
                .push_back(stats::betaBinomialLogProbability(batch.tray.successes, batch.tray.trials,
                                                             rateAtLogOdds(logOddsAt(p)), correlation));
    int groups = 0;
    for (const auto& batch : batches) groups = std::max(groups, batch.group + 1);
    const auto logLikelihood = [&](int droppedPoints) {
        double product = 0;
        for (int group = 0; group < groups; ++group) {
            double sum = 0;
            for (int k = 2 * drops; k < points; k += 2) {
                const double rate = rateAtLogOdds(logOddsAt(k));
                double log = std::log(rate * (1 - rate)) / 2;
                for (std::size_t i = 0; i < batches.size(); ++i)
                    if (batches[i].group == group)
                        log += logs[i][static_cast<std::size_t>(k - (isMember[i] ? droppedPoints : 0))];
                sum += std::exp(log + 100);
            }
            product += std::log(sum);
        }
        return product;
    };
    const double without = logLikelihood(0);
    double with = 0, weights = 0;
    for (int j = 0; j < drops; ++j) {
        const int dropped = 2 * j + 1;
        const double weight = std::exp(-half * dropped * half * dropped / 2);
        with += weight * std::exp(logLikelihood(dropped) - without);
        weights += weight;
    }
    return std::log(with / weights);
}

Batches twoGroups() {
    return {{{16, 20}, 0}, {{14, 20}, 0}, {{8, 20}, 0},  {{15, 18}, 0}, {{6, 20}, 0},
            {{9, 20}, 1},  {{3, 15}, 1},  {{11, 22}, 1}, {{0, 0}, 1}};
}

TEST(SharedDrop, IsTheRatioOfTheIntegralsItStandsFor) {
    for (const double correlation : {0.05, 0.1, 0.2}) {
        for (const Members& members : {Members{2, 4}, Members{2, 4, 6}, Members{0}, Members{6}, Members{0, 1}}) {
            SCOPED_TRACE(testing::Message() << correlation << ", " << members.size() << " members");
            EXPECT_NEAR(stats::SharedDrop(twoGroups(), 2, correlation).logLikelihoodRatio(members),
                        logRatioByIntegration(twoGroups(), members, correlation), 0.05);
        }
    }
}

TEST(SharedDrop, IsRoughlyRightWhereAGroupHasAsManyBatchesAsAreLookedAt) {
    Batches batches;
    for (int i = 0; i < 60; ++i) batches.push_back({{i < 5 ? 7 + i % 2 : 13 + i % 4, 20}, 0});
    const Members five{0, 1, 2, 3, 4};
    EXPECT_NEAR(stats::SharedDrop(batches, 1, 0.05).logLikelihoodRatio(five),
                logRatioByIntegration(batches, five, 0.05), 0.1);
}

TEST(SharedDrop, SpeaksForTheSetThatDidWorseAndAgainstOneThatDidNot) {
    const stats::SharedDrop drop(twoGroups(), 2, 0.05);
    EXPECT_GT(drop.logLikelihoodRatio(Members{2, 4}), std::log(5));
    EXPECT_LT(drop.logLikelihoodRatio(Members{0, 1}), 0);
    EXPECT_GT(drop.logLikelihoodRatio(Members{2, 4}), drop.logLikelihoodRatio(Members{2}));
    EXPECT_GT(drop.logLikelihoodRatio(Members{2, 4}), drop.logLikelihoodRatio(Members{2, 4, 0, 3}));
}

TEST(SharedDrop, IsOneWhereNothingTellsASetFromTheRest) {
    const stats::SharedDrop drop(twoGroups(), 2, 0.1);
    EXPECT_EQ(drop.logLikelihoodRatio(Members{}), 0);
    EXPECT_NEAR(drop.logLikelihoodRatio(Members{8}), 0, 1e-12);  // an empty tray
}

TEST(SharedDrop, ForetellsFromTheBatchesOutsideTheSetAlone) {
    Batches batches = twoGroups();
    const auto foretold = stats::SharedDrop(batches, 2, 0.1).foretold(Members{2, 4});
    ASSERT_EQ(foretold.size(), 3u);
    EXPECT_NEAR(foretold[0].expected, 20 * 45.0 / 58, 1);  // a little towards the middle
    EXPECT_NEAR(foretold[2].expected, foretold[0].expected + foretold[1].expected, 1e-9);
    EXPECT_GT(foretold[2].variance, foretold[0].variance + foretold[1].variance);  // doubt about the rate is shared
    batches[2].tray.successes = 0;
    EXPECT_NEAR(stats::SharedDrop(batches, 2, 0.1).foretold(Members{2, 4})[0].expected, foretold[0].expected, 1e-9);
}

TEST(SharedDrop, RefusesWhatCantBe) {
    EXPECT_THROW(stats::SharedDrop(Batches{{{3, 2}, 0}}, 1, 0.1), std::domain_error);
    EXPECT_THROW(stats::SharedDrop(Batches{{{1, 2}, 1}}, 1, 0.1), std::domain_error);
    EXPECT_THROW(stats::SharedDrop(Batches{{{1, 2}, 0}}, 1, 1), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::SharedDrop(twoGroups(), 2, 0.1).logLikelihoodRatio(Members{9})),
                 std::domain_error);
}

}  // namespace
