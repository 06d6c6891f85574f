// SPDX-License-Identifier: MIT
#include "stats/time_to_event/curve_permutation_test.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/time_to_event/curve_quantiles.h"
#include "tests/stats/simulated_batches.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::LabelledBatch;
using stats::Observation;
using stats::SeededRandom;
using LabelledBatches = std::vector<LabelledBatch>;

LabelledBatches twoArms(int each, double daysFirst, double daysSecond, SeededRandom& random, int strata = 1) {
    LabelledBatches batches;
    for (int i = 0; i < 2 * each; ++i) {
        const bool isFirst = i < each;
        batches.push_back(
            {simulatedBatch({.daysToRoot = isFirst ? daysFirst : daysSecond}, random), isFirst, i % strata});
    }
    return batches;
}

// The statistic by plain quadrature of separately estimated curves; curves here have no exact days, so none jumps.
double areaByQuadrature(const LabelledBatches& batches, const std::vector<char>& isFirst, double until) {
    std::vector<Observation> first, second;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        auto& arm = isFirst[i] != 0 ? first : second;
        arm.insert(arm.end(), batches[i].observations.begin(), batches[i].observations.end());
    }
    const auto one = stats::competingRisksNpmle(first), other = stats::competingRisksNpmle(second);
    constexpr int kSteps = 4000;
    double area = 0;
    for (int i = 0; i < kSteps; ++i) {
        const double day = until * (i + 0.5) / kSteps;
        area += std::abs(stats::interpolatedShare(one.cause1, day) - stats::interpolatedShare(other.cause1, day));
    }
    return area * until / kSteps;
}

TEST(CurvePermutationTest, AgreesWithPlainEnumerationAndQuadrature) {
    SeededRandom random(61);
    for (int run = 0; run < 4; ++run) {
        const LabelledBatches batches = twoArms(3, 12, 15, random);
        const auto test = stats::curvePermutationTest(batches, 100, random, 30.0);
        ASSERT_TRUE(test);
        EXPECT_TRUE(test->isExact);
        EXPECT_EQ(test->permutations, 20);
        const double observed = areaByQuadrature(batches, {1, 1, 1, 0, 0, 0}, 30);
        EXPECT_NEAR(test->statistic, observed, 1e-3);
        int asLarge = 0;
        for (unsigned pattern = 0; pattern < 64; ++pattern) {
            if (std::popcount(pattern) != 3) continue;
            std::vector<char> isFirst;
            for (unsigned i = 0; i < 6; ++i) isFirst.push_back(static_cast<char>(pattern >> i & 1U));
            asLarge += areaByQuadrature(batches, isFirst, 30) >= observed - 1e-9 ? 1 : 0;
        }
        EXPECT_NEAR(test->p, asLarge / 20.0, 1e-12);
        support::prove({"curvePermutationTest", "six simulated batches", "full enumeration and quadrature"}, test->p,
                       asLarge / 20.0);
    }
}

TEST(CurvePermutationTest, SeesAClearDifferenceAndNoneWhereThereIsNone) {
    SeededRandom random(62);
    const auto clear = stats::curvePermutationTest(twoArms(8, 9, 20, random), 500, random);
    EXPECT_FALSE(clear->isExact);
    EXPECT_EQ(clear->permutations, 500);
    EXPECT_LT(clear->p, 0.01);
    int rejected = 0;
    constexpr int kRuns = 100;
    for (int run = 0; run < kRuns; ++run) {
        rejected += stats::curvePermutationTest(twoArms(4, 14, 14, random), 70, random)->p <= 0.1 ? 1 : 0;
    }
    EXPECT_LE(rejected, 20) << "of 100 at 10 %, three standard errors and a little";
}

TEST(CurvePermutationTest, IsNotFooledByAStratumThatIsMostlyInOneArm) {
    // Slow plants mostly in arm 2, quick ones mostly in arm 1, and the arms alike within each.
    SeededRandom random(63);
    LabelledBatches batches;
    for (int i = 0; i < 16; ++i) {
        const bool isQuick = i < 8, isFirst = isQuick ? i < 6 : i < 10;
        batches.push_back({simulatedBatch({.daysToRoot = isQuick ? 8.0 : 22.0}, random), isFirst, isQuick ? 1 : 2});
    }
    const double stratified = stats::curvePermutationTest(batches, 1000, random)->p;
    for (LabelledBatch& batch : batches) batch.stratum = 0;
    const double unstratified = stats::curvePermutationTest(batches, 1000, random)->p;
    EXPECT_GT(stratified, 0.1);
    EXPECT_LT(unstratified, stratified);
}

TEST(CurvePermutationTest, CannotTellMethodFromBatchWithOneEach) {
    SeededRandom random(64);
    const auto test = stats::curvePermutationTest(twoArms(1, 8, 25, random), 100, random);
    EXPECT_EQ(test->p, 1);
    EXPECT_EQ(test->permutations, 2);
    // Each stratum in one arm only: nothing can be dealt otherwise.
    LabelledBatches apart = twoArms(3, 8, 25, random);
    for (LabelledBatch& batch : apart) batch.stratum = batch.isInFirstArm ? 1 : 2;
    EXPECT_EQ(stats::curvePermutationTest(apart, 100, random)->p, 1);
}

TEST(CurvePermutationTest, IsTheSameForTheSameSeedAndForSwappedArms) {
    SeededRandom random(65);
    LabelledBatches batches = twoArms(7, 12, 15, random, 2);
    SeededRandom one(5), other(5);
    const auto first = stats::curvePermutationTest(batches, 200, one);
    EXPECT_EQ(first->p, stats::curvePermutationTest(batches, 200, other)->p);
    for (LabelledBatch& batch : batches) batch.isInFirstArm = !batch.isInFirstArm;
    EXPECT_NEAR(stats::curvePermutationTest(batches, 200, one)->statistic, first->statistic, 1e-9);
}

TEST(CurvePermutationTest, CountsJumpsOnExactDays) {
    // All of one arm on day 10, all of the other on day 14: the curves are 1 apart for four days.
    const LabelledBatches batches{{{{10, 10, 1, 5}}, true, 0}, {{{14, 14, 1, 5}}, false, 0}};
    SeededRandom random(66);
    EXPECT_NEAR(stats::curvePermutationTest(batches, 10, random)->statistic, 4, 1e-12);
    EXPECT_NEAR(stats::curvePermutationTest(batches, 10, random, 12.0)->statistic, 2, 1e-12);
    EXPECT_NEAR(stats::curvePermutationTest(batches, 10, random, 100.0)->statistic, 4, 1e-12);
}

TEST(CurvePermutationTest, AnswersWhereAnArmIsEmptyAndStopsWhenAsked) {
    SeededRandom random(67);
    EXPECT_FALSE(stats::curvePermutationTest(LabelledBatches{}, 10, random));
    EXPECT_FALSE(stats::curvePermutationTest(LabelledBatches{{{{0, 7, 1, 3}}, true, 0}, {{}, false, 0}}, 10, random));
    std::stop_source source;
    source.request_stop();
    const LabelledBatches batches = twoArms(6, 12, 12, random);
    EXPECT_TRUE(stats::curvePermutationTest(batches, 10, random, {}, source.get_token())->wasStopped);
    EXPECT_TRUE(stats::curvePermutationTest(batches, 5000, random, {}, source.get_token())->wasStopped);
}

TEST(CurvePermutationTest, RefusesQuestionsThatHaveNoAnswer) {
    SeededRandom random(68);
    const LabelledBatches batches = twoArms(2, 12, 12, random);
    EXPECT_THROW((void)stats::curvePermutationTest(batches, 0, random), std::domain_error);
    EXPECT_THROW((void)stats::curvePermutationTest(batches, 10, random, 0.0), std::domain_error);
    EXPECT_THROW((void)stats::curvePermutationTest(LabelledBatches{{{{5, 3, 1, 1}}, true, 0}}, 10, random),
                 std::domain_error);
}

}  // namespace
