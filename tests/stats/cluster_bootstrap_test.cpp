// SPDX-License-Identifier: MIT
#include "stats/time_to_event/cluster_bootstrap.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/time_to_event/repeated_npmle.h"
#include "tests/stats/simulated_batches.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::BootstrapQuestion;
using stats::Observation;
using stats::SeededRandom;
using stats::ShareOf;
using Batches = std::vector<std::vector<Observation>>;

BootstrapQuestion aQuestion() {
    return {.quantiles = {{0.5, ShareOf::Everyone}, {0.5, ShareOf::ThoseWithTheEvent}}, .days = {7, 14, 21, 28}};
}

TEST(ExpandedPercentileLevel, IsThatOfStudentsQuantileWithTheMissingVariance) {
    struct Computed {
        int batches;
        double level, expanded;
    };
    const support::Proof proof{"expandedPercentileLevel", "3, 5 and 20 batches", "SciPy 1.10 stats.t.ppf and math.erf"};
    for (const auto& [batches, level, expanded] :
         {Computed{5, 0.95, 0.998091798896235}, Computed{3, 0.9, 0.9996514248257898},
          Computed{20, 0.95, 0.9682383401593003}}) {
        EXPECT_NEAR(stats::expandedPercentileLevel(level, batches), expanded, 1e-14);
        support::prove(proof, stats::expandedPercentileLevel(level, batches), expanded);
    }
}

TEST(ExpandedPercentileLevel, FallsToTheLevelWithMoreBatchesAndRefusesOne) {
    double before = 1.1;
    for (const int batches : {2, 3, 6, 30, 1000}) {
        const double expanded = stats::expandedPercentileLevel(0.95, batches);
        EXPECT_LT(expanded, before);
        EXPECT_GT(expanded, 0.95);
        before = expanded;
    }
    EXPECT_NEAR(before, 0.95, 5e-4);
    EXPECT_THROW((void)stats::expandedPercentileLevel(0.95, 1), std::domain_error);
    EXPECT_THROW((void)stats::expandedPercentileLevel(1, 5), std::domain_error);
}

TEST(ClusterBootstrap, OfTwoBatchesHasTheThreeOutcomesThatItMust) {
    // All of one batch rooted by day 7, none of the other: a replicate's share is 0, 1/2 or 1 with probability 1/4,
    // 1/2, 1/4.
    const Batches batches{{{0, 7, 1, 10}}, {{14, INFINITY, 0, 10}}};
    SeededRandom random(1);
    BootstrapQuestion question{.quantiles = {{0.5, ShareOf::Everyone}}, .days = {7}, .level = 0.2, .replicates = 4000};
    const auto answer = stats::clusterBootstrap(batches, question, random);
    ASSERT_TRUE(answer);
    EXPECT_NEAR(answer->bands1[0].low, 0.5, 1e-9) << "the 32 % point, see expandedPercentileLevel()";
    EXPECT_NEAR(answer->bands1[0].high, 0.5, 1e-9);
    const support::Proof proof{"clusterBootstrap", "two batches, one all rooted and one not at all",
                               "the three outcomes there are"};
    support::prove(proof, answer->bands1[0].low, 0.5);
    support::prove(proof, answer->bands1[0].high, 0.5);
    EXPECT_NEAR(answer->quantiles[0].shareReached, 0.75, 5 * std::sqrt(0.75 * 0.25 / 4000));
    question.level = 0.9;
    SeededRandom again(1);
    const auto wide = stats::clusterBootstrap(batches, question, again);
    EXPECT_NEAR(wide->bands1[0].low, 0, 1e-9);
    EXPECT_NEAR(wide->bands1[0].high, 1, 1e-9);
    support::prove(proof, wide->bands1[0].low, 0);
    support::prove(proof, wide->bands1[0].high, 1);
    EXPECT_EQ(wide->quantiles[0].limits.low, 0);
    EXPECT_TRUE(std::isinf(wide->quantiles[0].limits.high)) << "a quarter of the replicates never get there";
}

TEST(ClusterBootstrap, EqualsEstimatingEachReplicateAnew) {
    SeededRandom random(2);
    const Batches batches = simulatedBatches(9, {}, random);
    std::vector<std::span<const Observation>> spans(batches.begin(), batches.end());
    stats::RepeatedNpmle npmle(spans);
    npmle.startFrom(npmle.estimate(std::vector<double>(9, 1), {}));
    for (int run = 0; run < 50; ++run) {
        std::vector<double> times(9, 0);
        std::vector<Observation> drawn;
        for (int i = 0; i < 9; ++i) {
            const std::size_t batch = random.below(9);
            ++times[batch];
            drawn.insert(drawn.end(), batches[batch].begin(), batches[batch].end());
        }
        const auto quick = npmle.estimate(times, {}), plain = stats::competingRisksNpmle(drawn);
        ASSERT_NEAR(quick.logLikelihood, plain.logLikelihood, 1e-7);
        for (double day = 0; day < 50; ++day) {
            ASSERT_NEAR(stats::cumulativeShare(quick.cause1, day).atLeast,
                        stats::cumulativeShare(plain.cause1, day).atLeast, 1e-6);
            ASSERT_NEAR(stats::cumulativeShare(quick.cause2, day).atMost,
                        stats::cumulativeShare(plain.cause2, day).atMost, 1e-6);
        }
    }
}

TEST(ClusterBootstrap, GivesTheSameAnswerForTheSameSeed) {
    SeededRandom random(3);
    const Batches batches = simulatedBatches(8, {}, random);
    SeededRandom one(9), other(9);
    const auto first = stats::clusterBootstrap(batches, aQuestion(), one);
    const auto second = stats::clusterBootstrap(batches, aQuestion(), other);
    for (std::size_t day = 0; day < 4; ++day) {
        EXPECT_EQ(first->bands1[day].low, second->bands1[day].low);
        EXPECT_EQ(first->bands2[day].high, second->bands2[day].high);
    }
    EXPECT_EQ(one.state(), other.state());
}

TEST(ClusterBootstrap, BandsHoldTheEstimateAndNarrowWithMoreBatches) {
    SeededRandom random(4);
    const Batches few = simulatedBatches(6, {}, random), many = simulatedBatches(54, {}, random);
    const auto estimate = stats::competingRisksNpmle(joined(many));
    const auto wide = stats::clusterBootstrap(few, aQuestion(), random),
               narrow = stats::clusterBootstrap(many, aQuestion(), random);
    for (std::size_t day = 1; day < 4; ++day) {
        const double share = stats::cumulativeShare(estimate.cause1, 7.0 * static_cast<double>(day + 1)).atLeast;
        EXPECT_LE(narrow->bands1[day].low, share);
        EXPECT_GE(narrow->bands1[day].high, share);
    }
    const auto width = [](const stats::Interval& band) { return band.high - band.low; };
    EXPECT_LT(width(narrow->bands1[2]), width(wide->bands1[2]));
    const auto median = stats::quantileDay(estimate.cause1, 0.5, ShareOf::ThoseWithTheEvent);
    EXPECT_LE(narrow->quantiles[1].limits.low, median->after);
    EXPECT_GE(narrow->quantiles[1].limits.high, median->by);
    EXPECT_EQ(narrow->quantiles[1].shareReached, 1);
}

TEST(ClusterBootstrap, HasNothingToSayOfOneBatch) {
    SeededRandom random(5);
    EXPECT_FALSE(stats::clusterBootstrap(simulatedBatches(1, {}, random), aQuestion(), random));
    EXPECT_FALSE(stats::clusterBootstrap(Batches{{{0, 7, 1, 3}}, {}, {{0, 7, 1, 0}}}, aQuestion(), random));
    EXPECT_FALSE(stats::clusterBootstrap(Batches{}, aQuestion(), random));
}

TEST(ClusterBootstrap, StopsWhenAsked) {
    SeededRandom random(6);
    std::stop_source source;
    source.request_stop();
    const auto answer =
        stats::clusterBootstrap(simulatedBatches(5, {}, random), aQuestion(), random, source.get_token());
    EXPECT_TRUE(answer->wasStopped);
    EXPECT_EQ(answer->replicates, 0);
}

TEST(ClusterBootstrap, RefusesQuestionsThatHaveNoAnswer) {
    SeededRandom random(7);
    const Batches batches = simulatedBatches(3, {}, random);
    const auto refuses = [&](auto change) {
        BootstrapQuestion question = aQuestion();
        change(question);
        EXPECT_THROW((void)stats::clusterBootstrap(batches, question, random), std::domain_error);
    };
    refuses([](auto& question) { question.level = 1; });
    refuses([](auto& question) { question.replicates = 0; });
    refuses([](auto& question) { question.days = {-1}; });
    refuses([](auto& question) { question.quantiles[0].target = 0; });
    EXPECT_THROW((void)stats::clusterBootstrap(Batches{{{5, 3, 1, 1}}}, aQuestion(), random), std::domain_error);
}

}  // namespace
