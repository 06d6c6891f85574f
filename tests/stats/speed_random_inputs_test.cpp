// SPDX-License-Identifier: MIT
// Whatever is allowed in gives figures that can be shown: never "not a number", never infinite where a header does not
// say so.
#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <vector>

#include "stats/numeric/jet.h"
#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/cure_mixture.h"
#include "stats/time_to_event/gray_test.h"
#include "stats/time_to_event/kaplan_meier.h"
#include "stats/time_to_event/log_rank_test.h"
#include "stats/time_to_event/speed_comparison.h"
#include "tests/stats/speed_cases.h"

namespace {

using stats::ExactDay;
using stats::Interval;
using stats::Observation;
using stats::SeededRandom;

bool isFigure(std::optional<double> value) {
    return !value || std::isfinite(*value);
}
bool isProbability(std::optional<double> value) {
    return !value || (*value >= 0 && *value <= 1);
}
bool isShown(const Interval& limits) {
    return std::isfinite(limits.low) && std::isfinite(limits.high) && limits.low >= 0 && limits.low <= limits.high;
}
bool isShown(const stats::SpeedUncertainty& speed) {
    return std::isfinite(speed.standardErrorOfMu) && std::isfinite(speed.standardErrorOfLogSigma) &&
           std::isfinite(speed.standardErrorOfLogMedian) && isShown(speed.medianLimits);
}

// Few checks or many, few rows or many, counts of one or a million, days from minutes to centuries, some exact.
Observation someRow(SeededRandom& random) {
    const double unit = random.below(10) == 0 ? std::pow(10, 8 * random.uniform() - 4) : 1;
    const double after = unit * 3 * static_cast<double>(random.below(12));
    const double weight =
        random.below(20) == 0 ? std::floor(1e6 * random.uniform()) : static_cast<double>(random.below(5));
    if (random.below(3) == 0) return {after, INFINITY, 0, weight};
    if (random.below(12) == 0) return {after, after, 1, weight};
    return {after, after + unit * (1 + static_cast<double>(random.below(6))), 1, weight};
}
SpeedBatches someBatches(SeededRandom& random) {
    SpeedBatches batches(random.below(7));
    for (auto& batch : batches) {
        batch.resize(random.below(6));
        for (Observation& row : batch) row = someRow(random);
    }
    return batches;
}
std::vector<std::vector<ExactDay>> someArms(SeededRandom& random, std::uint64_t causes) {
    std::vector<std::vector<ExactDay>> arms(random.below(4));
    for (auto& arm : arms) {
        arm.resize(random.below(8));
        for (ExactDay& row : arm) {
            row.day = static_cast<double>(random.below(6));
            row.cause = static_cast<int>(random.below(causes));
            row.weight = random.below(10) == 0 ? static_cast<double>(random.below(1'000'000))
                                               : static_cast<double>(random.below(3));
        }
    }
    return arms;
}

TEST(SpeedRandomInputs, OfCureMixturesGiveFiguresThatCanBeShown) {
    constexpr std::uint64_t kSeed = 111;
    SeededRandom random(kSeed);
    int fitted = 0;
    constexpr int kRuns = 1000;
    for (int run = 0; run < kRuns; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << kSeed << ", run " << run);
        const auto fit = stats::fitCureMixture(someBatches(random), everySpeedShape[random.below(3)]);
        ASSERT_NE(fit.estimate.has_value(), fit.whyNot.has_value());
        if (!fit.estimate) continue;
        ++fitted;
        const auto& got = *fit.estimate;
        ASSERT_TRUE(got.rootingShare > 0 && got.rootingShare <= 1);
        ASSERT_TRUE(std::isfinite(got.parameters.mu) && std::isfinite(got.parameters.logSigma));
        ASSERT_TRUE(std::isfinite(got.medianDay) && got.medianDay > 0);
        ASSERT_TRUE(std::isfinite(got.logLikelihood));
        ASSERT_TRUE(isShown(got.speed) && (!got.speedByBatch || isShown(*got.speedByBatch)));
        ASSERT_TRUE(isFigure(got.share.standardError) && isFigure(got.share.standardErrorOfLogit));
        ASSERT_TRUE(!got.share.limits || isShown(*got.share.limits));
        ASSERT_EQ(got.share.limits.has_value(), !got.isOnBoundary);
        for (const double day : {0.0, 0.5, 30.0, 1e9}) ASSERT_TRUE(isProbability(stats::fittedShare(got, day)));
    }
    EXPECT_GT(fitted, kRuns / 4) << "enough of the inputs had a fit";
}

TEST(SpeedRandomInputs, OfIntervalCensoredFitsGiveFiguresThatCanBeShown) {
    constexpr std::uint64_t kSeed = 112;
    SeededRandom random(kSeed);
    for (int run = 0; run < 2000; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << kSeed << ", run " << run);
        const auto fit = stats::fitIntervalCensored(someBatches(random), everySpeedShape[random.below(3)], 0.99);
        ASSERT_NE(fit.estimate.has_value(), fit.whyNot.has_value());
        if (!fit.estimate) continue;
        ASSERT_TRUE(std::isfinite(fit.estimate->logLikelihood) && fit.estimate->medianDay > 0);
        ASSERT_TRUE(isShown(fit.estimate->asCounted));
        ASSERT_TRUE(!fit.estimate->byBatch || isShown(*fit.estimate->byBatch));
    }
}

TEST(SpeedRandomInputs, OfSpeedComparisonsGiveFiguresThatCanBeShown) {
    constexpr std::uint64_t kSeed = 113;
    SeededRandom random(kSeed);
    for (int run = 0; run < 60; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << kSeed << ", run " << run);
        const auto comparison =
            stats::compareSpeed(someBatches(random), someBatches(random), everySpeedShape[random.below(3)]);
        ASSERT_NE(comparison.estimate.has_value(), comparison.whyNot.has_value());
        if (!comparison.estimate) continue;
        const auto& got = *comparison.estimate;
        ASSERT_TRUE(std::isfinite(got.ratio) && got.ratio > 0 && isShown(got.ratioLimits));
        ASSERT_TRUE(isProbability(got.p) && std::isfinite(got.likelihoodRatio));
        ASSERT_TRUE(!got.byBatch || (isShown(got.byBatch->limits) && isProbability(got.byBatch->p)));
        for (const auto& arm : got.arms) {
            ASSERT_TRUE(isProbability(arm.rootingShare) && isShown(arm.medianLimits));
        }
    }
}

TEST(SpeedRandomInputs, OfExactDaysGiveFiguresThatCanBeShown) {
    constexpr std::uint64_t kSeed = 114;
    SeededRandom random(kSeed);
    for (int run = 0; run < 10'000; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << kSeed << ", run " << run);
        const auto oneCause = someArms(random, 2), twoCauses = someArms(random, 3);
        const auto logRank = stats::logRankTest(oneCause);
        ASSERT_TRUE(isFigure(logRank.statistic) && isProbability(logRank.p));
        for (const int cause : {1, 2}) {
            const auto gray = stats::grayTest(twoCauses, cause);
            ASSERT_TRUE(isFigure(gray.statistic) && isProbability(gray.p));
        }
        for (const auto& arm : oneCause) {
            for (const auto& step : stats::kaplanMeier(arm)) {
                ASSERT_TRUE(isProbability(step.survival) && isFigure(step.standardError));
                ASSERT_TRUE(!step.limits || (isShown(*step.limits) && step.limits->high <= 1));
            }
        }
    }
}

TEST(SpeedRandomInputs, OfSmoothCurvesGiveFiguresThatCanBeShown) {
    constexpr std::uint64_t kSeed = 115;
    SeededRandom random(kSeed);
    for (int run = 0; run < 40'000; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << kSeed << ", run " << run);
        const stats::SpeedShape shape = everySpeedShape[random.below(3)];
        const stats::SpeedParameters parameters{.mu = 2000 * random.uniform() - 1000,
                                                .logSigma = 2000 * random.uniform() - 1000};
        const double day = std::pow(10, 600 * random.uniform() - 300);
        ASSERT_TRUE(isProbability(stats::speedShare(shape, parameters, day)));
        const double quantile = stats::speedQuantile(shape, parameters, 1e-15 + (1 - 2e-15) * random.uniform());
        ASSERT_TRUE(std::isfinite(quantile) && quantile > 0);
    }
}

TEST(SpeedRandomInputs, OfJetsAreFiniteWhereTheFunctionIs) {
    constexpr std::uint64_t kSeed = 116;
    SeededRandom random(kSeed);
    const auto isFinite = [](const stats::Jet<1>& jet) {
        return std::isfinite(jet.value()) && std::isfinite(jet.gradient(0)) && std::isfinite(jet.hessian(0, 0));
    };
    for (int run = 0; run < 40'000; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << kSeed << ", run " << run);
        const double size = std::pow(10, 12 * random.uniform() - 6);
        const auto x = stats::Jet<1>::variable(random.below(2) == 0 ? size : -size, 0);
        ASSERT_TRUE(isFinite(log1pExp(x)));
        ASSERT_TRUE(isFinite(logNormalCdf(x)));
        ASSERT_TRUE(isFinite(log1mExp(stats::Jet<1>::variable(size, 0))));
    }
}

}  // namespace
