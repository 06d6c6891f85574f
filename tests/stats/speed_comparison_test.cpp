// SPDX-License-Identifier: MIT
#include "stats/time_to_event/speed_comparison.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/time_to_event/curve_permutation_test.h"
#include "stats/time_to_event/curve_quantiles.h"
#include "tests/stats/simulated_batches.h"
#include "tests/stats/speed_cases.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::LabelledBatch;
using stats::NoSpeedFit;
using stats::NoSpeedTest;
using stats::SpeedShape;

TEST(SpeedComparison, AgreesWithSciPy) {
    // SciPy 1.10.1: the joint likelihood written out with scipy.stats, derivatives by differences improved twice.
    struct Want {
        SpeedShape shape;
        double own, equal, ratio, error, batchError, p, batchP;
    };
    const Want table[] = {{SpeedShape::Weibull, -342.8798250931, -355.1609454652, 0.7322187860, 0.066602283,
                           0.096365415, 0.000000719, 0.011979283},
                          {SpeedShape::LogNormal, -335.9836877686, -348.5334906112, 0.7112866652, 0.067919680,
                           0.086488775, 0.000000544, 0.004301902},
                          {SpeedShape::LogLogistic, -336.8472789434, -349.8867897081, 0.7024268670, 0.068033336,
                           0.091728470, 0.000000328, 0.004873058}};
    for (const Want& want : table) {
        const auto comparison = stats::compareSpeed(quickBatches(), slowBatches(), want.shape);
        ASSERT_TRUE(comparison.estimate && comparison.estimate->byBatch);
        const auto& got = *comparison.estimate;
        const std::pair<double, double> pairs[] = {{got.logLikelihood, want.own},
                                                   {got.equalSpeedLogLikelihood, want.equal},
                                                   {got.ratio, want.ratio},
                                                   {got.standardErrorOfLogRatio, want.error},
                                                   {got.byBatch->standardErrorOfLog, want.batchError},
                                                   {got.p, want.p},
                                                   {got.byBatch->p, want.batchP}};
        for (const auto& [value, wanted] : pairs) {
            EXPECT_NEAR(value, wanted, 3e-8 * (1 + std::abs(wanted)));
            support::prove(
                {"compareSpeed", "two arms of five invented batches", "SciPy 1.10.1, likelihood written out"}, value,
                wanted);
        }
        EXPECT_NEAR(got.arms[0].medianDay / got.arms[1].medianDay, got.ratio, 1e-12) << "one sigma, so every quantile";
        EXPECT_NEAR(got.ratioLimits.low * got.ratioLimits.high, got.ratio * got.ratio, 1e-12);
        EXPECT_LT(got.ratioLimits.high, 1);
        EXPECT_NEAR(got.likelihoodRatio, 2 * (want.own - want.equal), 1e-7);
    }
}

TEST(SpeedComparison, SwapsWhenArmsSwapAndSeesNothingBetweenAnArmAndItself) {
    for (const SpeedShape shape : everySpeedShape) {
        const auto one = stats::compareSpeed(quickBatches(), slowBatches(), shape).estimate;
        const auto other = stats::compareSpeed(slowBatches(), quickBatches(), shape).estimate;
        EXPECT_NEAR(one->ratio * other->ratio, 1, 1e-8);
        EXPECT_NEAR(one->ratioLimits.low * other->ratioLimits.high, 1, 1e-8);
        EXPECT_NEAR(one->p, other->p, 1e-10);
        EXPECT_NEAR(one->byBatch->p, other->byBatch->p, 1e-8);
        EXPECT_NEAR(one->arms[0].rootingShare, other->arms[1].rootingShare, 1e-8);
        const auto self = stats::compareSpeed(quickBatches(), quickBatches(), shape).estimate;
        EXPECT_NEAR(self->ratio, 1, 1e-8);
        EXPECT_NEAR(self->p, 1, 1e-4);
        EXPECT_NEAR(self->arms[0].medianDay, stats::fitCureMixture(quickBatches(), shape).estimate->medianDay, 1e-7);
    }
}

TEST(SpeedComparison, DoesNotMistakeStrikeForSpeed) {
    // Half of what rooted is turned into what never does: the speed is as it was.
    SpeedBatches halved = quickBatches();
    for (auto& batch : halved) {
        double lost = 0;
        for (auto& row : batch) {
            if (row.cause != 1) continue;
            row.weight /= 2;
            lost += row.weight;
        }
        batch.push_back({1000, INFINITY, 0, lost});
    }
    const auto comparison = stats::compareSpeed(quickBatches(), halved, SpeedShape::LogNormal);
    EXPECT_NEAR(comparison.estimate->ratio, 1, 0.02);
    EXPECT_GT(comparison.estimate->p, 0.7);
    EXPECT_GT(comparison.estimate->arms[0].rootingShare, comparison.estimate->arms[1].rootingShare + 0.3);
}

TEST(SpeedComparison, LetsEachArmBeOnItsBoundary) {
    SpeedBatches allRooted = quickBatches();
    for (auto& batch : allRooted) std::erase_if(batch, [](const auto& row) { return row.cause == 0; });
    const auto comparison = stats::compareSpeed(allRooted, slowBatches(), SpeedShape::LogLogistic);
    ASSERT_TRUE(comparison.estimate);
    EXPECT_TRUE(comparison.estimate->arms[0].isOnBoundary);
    EXPECT_EQ(comparison.estimate->arms[0].rootingShare, 1);
    EXPECT_FALSE(comparison.estimate->arms[0].limits);
    EXPECT_FALSE(comparison.estimate->arms[1].isOnBoundary);
    EXPECT_TRUE(comparison.estimate->arms[1].limits);
}

TEST(SpeedComparison, SaysWhyAndForWhichArmThereIsNone) {
    const SpeedBatches none, few{{{7, 10, 1, 5}, {10, 14, 1, 7}, {30, INFINITY, 0, 4}}};
    const auto first = stats::compareSpeed(none, quickBatches(), SpeedShape::Weibull);
    EXPECT_FALSE(first.estimate);
    EXPECT_EQ(first.whyNot, NoSpeedFit::NobodyRooted);
    EXPECT_EQ(first.armWithout, 1);
    const auto second = stats::compareSpeed(quickBatches(), few, SpeedShape::Weibull);
    EXPECT_EQ(second.whyNot, NoSpeedFit::TooFewIntervals);
    EXPECT_EQ(second.armWithout, 2);
    EXPECT_THROW((void)stats::compareSpeed(none, none, SpeedShape::Weibull, 1), std::domain_error);
    EXPECT_THROW((void)stats::compareSpeed({}, SpeedBatches{{{3, 7, 2}}}, SpeedShape::Weibull), std::domain_error);
}

std::vector<LabelledBatch> labelled(const SpeedBatches& first, const SpeedBatches& second) {
    std::vector<LabelledBatch> all;
    for (const auto& batch : first) all.push_back({batch, true, 0});
    for (const auto& batch : second) all.push_back({batch, false, 0});
    return all;
}

// The area between the two curves of those that root, by plain quadrature of separately estimated curves.
double conditionalArea(const std::vector<LabelledBatch>& batches, const std::vector<char>& isFirst, double until) {
    std::vector<stats::Observation> arms[2];
    for (std::size_t i = 0; i < batches.size(); ++i) {
        auto& arm = arms[isFirst[i] != 0 ? 0 : 1];
        arm.insert(arm.end(), batches[i].observations.begin(), batches[i].observations.end());
    }
    const auto one = stats::competingRisksNpmle(arms[0]).cause1, other = stats::competingRisksNpmle(arms[1]).cause1;
    const double all1 = stats::interpolatedShare(one, until), all2 = stats::interpolatedShare(other, until);
    constexpr int kSteps = 4000;
    double area = 0;
    for (int i = 0; i < kSteps; ++i) {
        const double day = until * (i + 0.5) / kSteps;
        area += std::abs(stats::interpolatedShare(one, day) / all1 - stats::interpolatedShare(other, day) / all2);
    }
    return area * until / kSteps;
}

TEST(SpeedPermutationTest, AgreesWithPlainEnumerationAndQuadrature) {
    const auto quick = quickBatches(), slow = slowBatches();
    const auto batches = labelled({quick.begin(), quick.begin() + 3}, {slow.begin(), slow.begin() + 3});
    stats::SeededRandom random(71);
    const auto answer = stats::speedPermutationTest(batches, 100, random, 24.0);
    ASSERT_TRUE(answer.test);
    EXPECT_EQ(answer.test->permutations, 20);
    const double observed = conditionalArea(batches, {1, 1, 1, 0, 0, 0}, 24);
    EXPECT_NEAR(answer.test->statistic, observed, 1e-3);
    int asLarge = 0;
    for (unsigned pattern = 0; pattern < 64; ++pattern) {
        std::vector<char> isFirst;
        int count = 0;
        for (unsigned i = 0; i < 6; ++i) {
            isFirst.push_back(static_cast<char>(pattern >> i & 1U));
            count += isFirst.back();
        }
        if (count == 3) asLarge += conditionalArea(batches, isFirst, 24) >= observed - 1e-6 ? 1 : 0;
    }
    EXPECT_NEAR(answer.test->p, asLarge / 20.0, 1e-12);
    support::prove({"speedPermutationTest", "six invented batches", "full enumeration and quadrature"}, answer.test->p,
                   asLarge / 20.0);
}

TEST(SpeedPermutationTest, LooksAtSpeedAloneAndNotAtStrike) {
    // One arm strikes half as often and is as quick; the curves of all stuck are far apart, those of the
    // rooted are not.
    stats::SeededRandom random(72);
    std::vector<LabelledBatch> batches;
    for (int i = 0; i < 16; ++i) {
        const bool isFirst = i < 8;
        batches.push_back({simulatedBatch({.cuttings = 40, .rootingShare = isFirst ? 0.9 : 0.4}, random), isFirst, 0});
    }
    EXPECT_LT(stats::curvePermutationTest(batches, 400, random)->p, 0.02);
    for (int i = 0; i < 8; ++i) {
        batches[static_cast<std::size_t>(i)].observations =
            simulatedBatch({.cuttings = 40, .daysToRoot = 22, .rootingShare = 0.4}, random);
    }
    EXPECT_LT(stats::speedPermutationTest(batches, 400, random).test->p, 0.02);
    int rejected = 0;
    for (int run = 0; run < 40; ++run) {
        std::vector<LabelledBatch> few;
        for (int i = 0; i < 8; ++i) {
            few.push_back({simulatedBatch({.rootingShare = i < 4 ? 0.9 : 0.4}, random), i < 4, 0});
        }
        rejected += stats::speedPermutationTest(few, 70, random).test->p <= 0.1 ? 1 : 0;
    }
    EXPECT_LE(rejected, 10) << "of 40 at 10 %, three standard errors";
}

TEST(SpeedPermutationTest, SaysWhyThereIsNone) {
    stats::SeededRandom random(73);
    const SpeedBatches unrooted{{{30, INFINITY, 0, 10}}};
    const auto noBatches = stats::speedPermutationTest(labelled(quickBatches(), {}), 10, random);
    EXPECT_FALSE(noBatches.test);
    EXPECT_EQ(noBatches.whyNot, NoSpeedTest::NoBatches);
    EXPECT_EQ(noBatches.armWithout, 2);
    const auto nobody = stats::speedPermutationTest(labelled(unrooted, quickBatches()), 10, random);
    EXPECT_EQ(nobody.whyNot, NoSpeedTest::NobodyRooted);
    EXPECT_EQ(nobody.armWithout, 1);
    const auto early = stats::speedPermutationTest(labelled(quickBatches(), {{{20, 25, 1, 9}}}), 10, random, 15.0);
    EXPECT_EQ(early.whyNot, NoSpeedTest::NobodyRooted) << "none by day 15";
    // With the one rooted batch on either side, every other arrangement leaves an arm with nothing: p is 1 or near it.
    const auto poor = stats::speedPermutationTest(
        labelled({{{0, 7, 1, 5}}, unrooted[0]}, {{{7, 14, 1, 5}}, unrooted[0]}), 100, random);
    ASSERT_TRUE(poor.test);
    EXPECT_EQ(poor.test->p, 1);
    EXPECT_THROW((void)stats::speedPermutationTest({}, 0, random), std::domain_error);
    EXPECT_THROW((void)stats::speedPermutationTest({}, 10, random, -1.0), std::domain_error);
}

}  // namespace
