// SPDX-License-Identifier: MIT
// Whatever is allowed in gives figures that can be shown, for arms, doses and conditions: never "not a number", infinite
// only where a header says so.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <optional>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/rao_scott.h"
#include "stats/overdispersion/tray_analysis_of_variance.h"
#include "stats/overdispersion/tray_non_inferiority.h"
#include "stats/overdispersion/tray_trend.h"
#include "stats/proportion/mid_p_interval.h"
#include "stats/regression/dose_response.h"
#include "stats/regression/firth_logistic.h"
#include "stats/regression/logistic_regression.h"
#include "stats/several_proportions/chi_square_test.h"
#include "stats/several_proportions/cochran_armitage_trend.h"
#include "stats/several_proportions/holm_adjustment.h"
#include "stats/two_proportions/katz_ratio.h"
#include "stats/two_proportions/non_inferiority.h"

namespace {

using stats::SeededRandom;

bool isFiniteOrAbsent(std::optional<double> value) {
    return !value || std::isfinite(*value);
}
bool isShareOrAbsent(std::optional<double> value) {
    return !value || (*value >= 0 && *value <= 1);
}
bool isRising(const stats::Interval& interval) {
    return std::isfinite(interval.low) && std::isfinite(interval.high) && interval.low <= interval.high;
}

struct RandomCounts {
    int successes, trials;
};

// Mostly small, often none or all, now and then huge.
RandomCounts randomCounts(SeededRandom& random, std::uint64_t most = 1'000'000'000) {
    const auto kind = random.below(20);
    const int trials = kind == 0 ? 0 : static_cast<int>(random.below(kind == 1 ? most : 30));
    const auto share = random.below(5);
    if (share < 2) return {share == 0 ? 0 : trials, trials};
    return {static_cast<int>(random.below(static_cast<std::uint64_t>(trials) + 1)), trials};
}

double randomLevel(SeededRandom& random) {
    return random.below(4) == 0 ? 1e-6 + 0.999998 * random.uniform() : 0.95;
}

double randomScore(SeededRandom& random) {
    const auto kind = random.below(12);
    if (kind == 0) return 1e100;
    if (kind == 1) return -1e-100;
    if (kind == 2) return 1e6 * random.normal();
    return static_cast<double>(random.below(4));
}

TEST(RandomArms, OfOneAndTwoGiveFiguresThatCanBeShown) {
    SeededRandom random(310);
    for (int run = 0; run < 40'000; ++run) {
        const auto one = randomCounts(random), other = randomCounts(random);
        const double level = randomLevel(random);
        const auto interval = stats::midPInterval(one.successes, one.trials, level);
        ASSERT_TRUE(isRising(interval) && interval.low >= 0 && interval.high <= 1) << "seed 310, run " << run;
        const stats::TwoCounts counts{one.successes, one.trials, other.successes, other.trials};
        const auto ratio = stats::katzRatio(counts, level);
        ASSERT_TRUE(!ratio.estimate || *ratio.estimate >= 0) << run;
        ASSERT_TRUE(ratio.limits.low >= 0 && ratio.limits.low <= ratio.limits.high) << run;
        ASSERT_TRUE(!ratio.standardErrorOfLog || *ratio.standardErrorOfLog >= 0) << run;
        if (run % 4 != 0) continue;
        const auto answer = stats::nonInferiority(counts, 0.001 + 0.998 * random.uniform(), level);
        ASSERT_TRUE(isFiniteOrAbsent(answer.z) && isShareOrAbsent(answer.p) && isRising(answer.limits)) << run;
        ASSERT_TRUE(!answer.difference || std::abs(*answer.difference) <= 1) << run;
    }
}

TEST(RandomArms, OfSeveralGiveFiguresThatCanBeShown) {
    SeededRandom random(311);
    for (int run = 0; run < 40'000; ++run) {
        std::vector<stats::ArmCount> arms(random.below(6));
        std::vector<double> scores, p;
        for (auto& arm : arms) {
            const auto counts = randomCounts(random, 2'000'000'000);
            arm = {counts.successes, counts.trials};
            scores.push_back(randomScore(random));
            p.push_back(random.below(3) == 0 ? static_cast<double>(random.below(2)) : random.uniform());
        }
        const auto test = stats::chiSquareTest(arms);
        ASSERT_TRUE(isFiniteOrAbsent(test.chiSquare) && isFiniteOrAbsent(test.minExpected) && isShareOrAbsent(test.p))
            << "seed 311, run " << run;
        const auto trend = stats::cochranArmitageTrend(arms, scores);
        ASSERT_TRUE(isFiniteOrAbsent(trend.z) && isFiniteOrAbsent(trend.slope) && isShareOrAbsent(trend.p)) << run;
        ASSERT_TRUE(isFiniteOrAbsent(trend.chiSquareOfN1)) << run;
        const auto adjusted = stats::holmAdjustment(p);
        for (std::size_t i = 0; i < p.size(); ++i) ASSERT_TRUE(adjusted[i] >= p[i] && adjusted[i] <= 1) << run;
    }
}

std::vector<stats::Tray> randomTrays(SeededRandom& random) {
    std::vector<stats::Tray> trays(random.below(5));
    for (auto& tray : trays) {
        const auto counts = randomCounts(random, 2'000'000'000);
        tray = {counts.successes, counts.trials};
    }
    return trays;
}

TEST(RandomArms, InTraysGiveFiguresThatCanBeShown) {
    SeededRandom random(312);
    for (int run = 0; run < 20'000; ++run) {
        std::vector<std::vector<stats::Tray>> arms(random.below(5));
        std::vector<stats::ScoredTray> scored;
        for (auto& arm : arms) {
            arm = randomTrays(random);
            for (const auto& tray : arm) scored.push_back({randomScore(random), tray});
        }
        const auto rao = stats::raoScottTest(arms);
        ASSERT_TRUE(isFiniteOrAbsent(rao.chiSquare) && isShareOrAbsent(rao.p)) << "seed 312, run " << run;
        ASSERT_TRUE(isFiniteOrAbsent(rao.pooledDesignEffect) && isFiniteOrAbsent(rao.pooledChiSquare)) << run;
        ASSERT_TRUE(isShareOrAbsent(rao.pooledP)) << run;
        const auto variance = stats::trayAnalysisOfVariance(arms);
        ASSERT_TRUE(isFiniteOrAbsent(variance.f) && isShareOrAbsent(variance.p)) << run;
        ASSERT_TRUE(isFiniteOrAbsent(variance.withinVariance)) << run;
        const auto trend = stats::trayTrend(scored, randomLevel(random));
        ASSERT_TRUE(isFiniteOrAbsent(trend.slope) && isFiniteOrAbsent(trend.standardError)) << run;
        ASSERT_TRUE(isFiniteOrAbsent(trend.t) && isShareOrAbsent(trend.p)) << run;
        ASSERT_TRUE(!trend.limits || isRising(*trend.limits)) << run;
        if (arms.size() < 2) continue;
        const auto answer = stats::trayNonInferiority(arms[0], arms[1], 0.1, randomLevel(random));
        ASSERT_TRUE(!answer || (std::isfinite(answer->t) && isShareOrAbsent(answer->p) && isRising(answer->limits)))
            << run;
    }
}

std::vector<stats::BinomialRow> randomRows(SeededRandom& random) {
    std::vector<stats::BinomialRow> rows(random.below(10));
    const auto covariates = random.below(4);
    const bool isHuge = random.below(20) == 0;
    for (auto& row : rows) {
        const auto counts = randomCounts(random, 20'000);
        row = {counts.successes, counts.trials, {}};
        for (std::uint64_t j = 0; j < covariates; ++j) {
            row.covariates.push_back(isHuge ? randomScore(random) : static_cast<double>(random.below(2 + 3 * j)));
        }
    }
    return rows;
}

TEST(RandomRows, GiveALogisticRegressionThatCanBeShown) {
    SeededRandom random(313);
    for (int run = 0; run < 15'000; ++run) {
        const auto fit = stats::logisticRegression(randomRows(random));
        ASSERT_EQ(fit.exists, fit.problem == stats::FitProblem::None) << "seed 313, run " << run;
        ASSERT_NE(fit.problem, stats::FitProblem::NotConverged) << run;
        ASSERT_TRUE(std::isfinite(fit.logLikelihood) && isFiniteOrAbsent(fit.pearsonChiSquare)) << run;
        for (const auto& one : stats::waldCoefficients(fit, 0.95)) {
            ASSERT_TRUE(std::isfinite(one.estimate) && std::isfinite(one.standardError)) << run;
            ASSERT_TRUE(isRising(*one.limits) && isShareOrAbsent(one.p)) << run;
        }
    }
}

TEST(RandomRows, GiveAPenalisedFitThatCanBeShown) {
    SeededRandom random(314);
    int followed = 0, lost = 0;
    for (int run = 0; run < 1'000; ++run) {
        const auto answer = stats::firthLogistic(randomRows(random), 0.95);
        ASSERT_NE(answer.fit.problem, stats::FitProblem::Separated) << "seed 314, run " << run;
        for (const auto& one : answer.coefficients) {
            ASSERT_TRUE(std::isfinite(one.estimate) && std::isfinite(one.standardError)) << run;
            ++(one.limits && one.p ? followed : lost);
            ASSERT_TRUE(isShareOrAbsent(one.p) && isFiniteOrAbsent(one.chiSquare)) << run;
            if (!one.limits) continue;
            ASSERT_TRUE(isRising(*one.limits)) << run;
            ASSERT_TRUE(one.limits->low <= one.estimate && one.estimate <= one.limits->high) << run;
        }
    }
    // Profiles are lost only where rows of thousands stand beside rows of one.
    EXPECT_LT(lost * 200, followed);
}

TEST(RandomDoses, GiveACurveThatCanBeShown) {
    SeededRandom random(315);
    for (int run = 0; run < 10'000; ++run) {
        constexpr std::array doses{0.0, 500.0, 1000.0, 2000.0, 4000.0, 1e-100, 1e100};
        std::vector<stats::DoseTray> trays(random.below(10));
        for (auto& tray : trays) {
            const auto counts = randomCounts(random, 20'000);
            tray = {doses[random.below(random.below(20) == 0 ? 7 : 5)], counts.successes, counts.trials};
        }
        const auto estimator =
            random.below(2) == 0 ? stats::DoseEstimator::Firth : stats::DoseEstimator::MaximumLikelihood;
        const auto curve = stats::doseResponse(trays, randomLevel(random), estimator);
        ASSERT_EQ(curve.problem == stats::FitProblem::None, curve.peak != stats::Peak::NoFit)
            << "seed 315, run " << run;
        ASSERT_TRUE(isFiniteOrAbsent(curve.bestDose) && isShareOrAbsent(curve.bestRate)) << run;
        ASSERT_TRUE(isShareOrAbsent(curve.untreatedRate) && curve.dispersion >= 1 && std::isfinite(curve.dispersion))
            << run;
        for (const auto& answer : {curve.asCounted, curve.withSpread}) {
            ASSERT_TRUE(isShareOrAbsent(answer.curvatureP)) << run;
            ASSERT_EQ(answer.kind == stats::PeakLimits::Bounded, answer.limits.has_value()) << run;
            if (!answer.limits) continue;
            // Limits beyond what a double holds are 0 or infinite, as the header says.
            ASSERT_TRUE(answer.limits->low >= 0 && answer.limits->low <= *curve.bestDose * (1 + 1e-9)) << run;
            ASSERT_TRUE(answer.limits->high >= *curve.bestDose * (1 - 1e-9)) << run;
        }
        const auto point = stats::rateAtDose(curve, 700, 0.95);
        ASSERT_TRUE(!point || (isShareOrAbsent(point->rate) && isRising(point->asCounted))) << run;
        ASSERT_TRUE(!point || !point->withSpread || isRising(*point->withSpread)) << run;
    }
}

}  // namespace
