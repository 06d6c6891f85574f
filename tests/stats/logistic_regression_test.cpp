// SPDX-License-Identifier: MIT
#include "stats/regression/logistic_regression.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "tests/stats/regression_cases.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Rows = std::vector<stats::BinomialRow>;

TEST(LogisticRegression, GivesWhatRsGlmDoes) {
    for (const RegressionCase& each : regressionCases()) {
        const auto fit = stats::logisticRegression(each.rows);
        ASSERT_EQ(fit.exists, !each.maximumLikelihood.is_null()) << each.id;
        if (!fit.exists) {
            EXPECT_EQ(fit.problem, stats::FitProblem::Separated) << each.id;
            EXPECT_TRUE(fit.coefficients.empty()) << each.id;
            continue;
        }
        const std::string by = "R 4.2 glm";
        const auto wald = stats::waldCoefficients(fit, 0.95);
        for (std::size_t j = 0; j < wald.size(); ++j) {
            expectFigure("logisticRegression", each.source, by, fit.coefficients[j],
                         each.maximumLikelihood.at("coefficients").at(j), 1e-9);
            const double error = each.maximumLikelihood.at("standard_errors").at(j);
            expectFigure("waldCoefficients", each.source, by, wald[j].standardError, error, 1e-8);
            EXPECT_NEAR(wald[j].limits->high - wald[j].estimate, 1.959963984540054 * error, 1e-7);
            EXPECT_NEAR(wald[j].estimate - wald[j].limits->low, 1.959963984540054 * error, 1e-7);
            EXPECT_NEAR(*wald[j].p, std::erfc(std::abs(wald[j].estimate / error) / std::sqrt(2)), 1e-9);
        }
        EXPECT_NEAR(fit.logLikelihood, each.maximumLikelihood.at("log_likelihood").get<double>(), 1e-9) << each.id;
        EXPECT_NEAR(*fit.pearsonChiSquare, each.maximumLikelihood.at("pearson").get<double>(), 1e-6) << each.id;
    }
}

TEST(LogisticRegression, GivesTheBeetlesOfDobson) {
    // Dobson (2002), An Introduction to Generalized Linear Models, 2nd ed., section 7.3.1: -60.717 (5.181) and 34.270
    // (2.912), from memory; printed to three decimals.
    const auto wald = stats::waldCoefficients(stats::logisticRegression(regressionCase("beetles").rows), 0.95);
    const double printed[][2] = {{-60.717, 5.181}, {34.270, 2.912}};
    for (std::size_t j = 0; j < 2; ++j) {
        EXPECT_NEAR(wald[j].estimate, printed[j][0], 0.0005);
        EXPECT_NEAR(wald[j].standardError, printed[j][1], 0.0005);
        const support::Proof proof{.function = "waldCoefficients",
                                   .source = "Dobson (2002), section 7.3.1, from memory",
                                   .independent = "printed to three decimals"};
        support::prove(proof, wald[j].estimate, printed[j][0]);
        support::prove(proof, wald[j].standardError, printed[j][1]);
    }
}

TEST(LogisticRegression, OnOneIndicatorIsTheOddsRatioOfTheTable) {
    const Rows rows{{7, 20, {0}}, {13, 24, {1}}};
    const auto fit = stats::logisticRegression(rows);
    EXPECT_NEAR(fit.coefficients[0], std::log(7.0 / 13), 1e-12);
    EXPECT_NEAR(fit.coefficients[1], std::log(13.0 / 11 / (7.0 / 13)), 1e-12);
    EXPECT_NEAR(fit.covariance.at(1, 1), 1.0 / 7 + 1.0 / 13 + 1.0 / 13 + 1.0 / 11, 1e-12);
    EXPECT_NEAR(*fit.pearsonChiSquare, 0, 1e-20);
    EXPECT_EQ(fit.degreesOfFreedom, 0);
}

TEST(LogisticRegression, DoesNotCareHowRowsAreCutOrCovariatesScaled) {
    const Rows whole{{7, 20, {1.5, 20}}, {13, 24, {2.5, 18}}, {9, 12, {3, 25}}, {4, 22, {0.5, 24}}};
    Rows cut{{3, 9, {1.5, 20}}, {4, 11, {1.5, 20}}, {0, 0, {99, 99}}};
    cut.insert(cut.end(), whole.begin() + 1, whole.end());
    Rows scaled = whole;
    for (auto& row : scaled) row.covariates = {1e6 * row.covariates[0] + 3e6, row.covariates[1] / 1e5};
    const auto fit = stats::logisticRegression(whole);
    const auto fitOfCut = stats::logisticRegression(cut), fitOfScaled = stats::logisticRegression(scaled);
    for (std::size_t j = 0; j < 3; ++j) EXPECT_NEAR(fitOfCut.coefficients[j], fit.coefficients[j], 1e-10);
    EXPECT_NEAR(fitOfScaled.coefficients[1] * 1e6, fit.coefficients[1], 1e-9);
    EXPECT_NEAR(fitOfScaled.coefficients[2] / 1e5, fit.coefficients[2], 1e-9);
    EXPECT_EQ(fitOfCut.degreesOfFreedom, fit.degreesOfFreedom + 1);
}

TEST(LogisticRegression, DoesNotExistForTheEightRowsOfATextbookOnSeparation) {
    // Eight rows often used to show complete separation (UCLA statistical consulting pages), from memory.
    const Rows rows{{0, 1, {1, 3}}, {0, 1, {2, 2}}, {0, 1, {3, -1}}, {0, 1, {3, -1}},
                    {1, 1, {5, 2}}, {1, 1, {6, 4}}, {1, 1, {10, 1}}, {1, 1, {11, 0}}};
    EXPECT_EQ(stats::logisticRegression(rows).problem, stats::FitProblem::Separated);
    Rows mended = rows;
    mended.push_back({1, 1, {2, 2}});
    mended.push_back({0, 1, {7, 1}});
    EXPECT_TRUE(stats::logisticRegression(mended).exists);
}

// With one covariate the fit exists unless all successes lie on one side of all failures, a shared edge included.
bool isSeparatedByOne(const Rows& rows) {
    double lowestSuccess = 1e9, highestSuccess = -1e9, lowestFailure = 1e9, highestFailure = -1e9;
    for (const auto& row : rows) {
        const double x = row.covariates[0];
        if (row.successes > 0) {
            lowestSuccess = std::min(lowestSuccess, x);
            highestSuccess = std::max(highestSuccess, x);
        }
        if (row.successes < row.trials) {
            lowestFailure = std::min(lowestFailure, x);
            highestFailure = std::max(highestFailure, x);
        }
    }
    return highestFailure <= lowestSuccess || highestSuccess <= lowestFailure;
}

// With two: some line through two of the points has successes on one side and failures on the other, points on it
// allowed. On whole numbers, so exact.
bool isSeparatedByTwo(const Rows& rows) {
    for (const auto& one : rows) {
        for (const auto& other : rows) {
            const double normalX = one.covariates[1] - other.covariates[1];
            const double normalY = other.covariates[0] - one.covariates[0];
            if (normalX == 0 && normalY == 0) continue;
            const bool isApart = std::all_of(rows.begin(), rows.end(), [&](const stats::BinomialRow& row) {
                const double side = normalX * (row.covariates[0] - one.covariates[0]) +
                                    normalY * (row.covariates[1] - one.covariates[1]);
                return (row.successes == 0 || side >= 0) && (row.successes == row.trials || side <= 0);
            });
            if (isApart) return true;
        }
    }
    return false;
}

TEST(LogisticRegression, ExistsExactlyWhereNoLineSeparates) {
    stats::SeededRandom random(20260311);
    int separated = 0, existing = 0;
    for (int run = 0; run < 6000; ++run) {
        const std::size_t covariates = 1 + random.below(2);
        Rows rows(3 + random.below(9));
        for (auto& row : rows) {
            row.trials = 1 + static_cast<int>(random.below(3));
            row.successes = static_cast<int>(random.below(static_cast<std::uint64_t>(row.trials) + 1));
            for (std::size_t j = 0; j < covariates; ++j) row.covariates.push_back(static_cast<double>(random.below(7)));
        }
        const auto fit = stats::logisticRegression(rows);
        if (fit.problem == stats::FitProblem::Collinear || fit.problem == stats::FitProblem::AllOrNone) continue;
        const bool isSeparated = covariates == 1 ? isSeparatedByOne(rows) : isSeparatedByTwo(rows);
        ASSERT_EQ(fit.exists, !isSeparated) << "seed 20260311, run " << run;
        ++(isSeparated ? separated : existing);
    }
    EXPECT_GT(separated, 500);
    EXPECT_GT(existing, 500);
}

TEST(LogisticRegression, HasNoSlopeLeftAtItsMaximum) {
    stats::SeededRandom random(5);
    for (int run = 0; run < 300; ++run) {
        Rows rows(12);
        for (auto& row : rows) {
            row.trials = 20;
            row.successes = random.binomial(20, 0.2 + 0.6 * random.uniform());
            row.covariates = {random.normal(7, 1), random.normal(1500, 300), random.normal()};
        }
        const auto fit = stats::logisticRegression(rows);
        ASSERT_TRUE(fit.exists);
        for (std::size_t j = 0; j < 4; ++j) {
            double slope = 0, size = 0;
            for (const auto& row : rows) {
                double logOdds = fit.coefficients[0];
                for (std::size_t k = 1; k < 4; ++k) logOdds += fit.coefficients[k] * row.covariates[k - 1];
                const double x = j == 0 ? 1 : row.covariates[j - 1];
                slope += x * (row.successes - row.trials / (1 + std::exp(-logOdds)));
                size += std::abs(x) * row.trials;
            }
            ASSERT_NEAR(slope / size, 0, 1e-11) << run;
        }
    }
}

TEST(LogisticRegression, NamesWhyThereIsNoFit) {
    using stats::FitProblem;
    EXPECT_EQ(stats::logisticRegression(Rows{}).problem, FitProblem::NoTrials);
    EXPECT_EQ(stats::logisticRegression(Rows{{0, 0, {1}}}).problem, FitProblem::NoTrials);
    EXPECT_EQ(stats::logisticRegression(Rows{{3, 9, {1}}, {9, 9, {1}}}).problem, FitProblem::Collinear);
    EXPECT_EQ(stats::logisticRegression(Rows{{9, 9, {1}}, {4, 4, {2}}}).problem, FitProblem::AllOrNone);
    EXPECT_EQ(stats::logisticRegression(Rows{{0, 9, {1}}, {0, 4, {2}}}).problem, FitProblem::AllOrNone);
    const auto repeated =
        stats::logisticRegression(Rows{{3, 9, {1, 4, 2}}, {4, 9, {2, 7, 4}}, {6, 9, {5, 6, 10}}, {5, 9, {6, 1, 12}}});
    EXPECT_EQ(repeated.problem, FitProblem::Collinear);
    EXPECT_EQ(repeated.collinearCovariate, 2U);
    EXPECT_TRUE(stats::waldCoefficients(repeated, 0.95).empty());
    const auto alone = stats::logisticRegression(Rows{{3, 9, {}}});
    ASSERT_TRUE(alone.exists);
    EXPECT_NEAR(alone.coefficients[0], std::log(0.5), 1e-12);
}

TEST(WaldCoefficients, WidenWithTheDispersion) {
    const auto fit = stats::logisticRegression(regressionCase("beetles").rows);
    const auto counted = stats::waldCoefficients(fit, 0.95), spread = stats::waldCoefficients(fit, 0.95, 4);
    EXPECT_NEAR(spread[1].standardError, 2 * counted[1].standardError, 1e-12);
    // t on 6 degrees at 0.975 is 2.446912 (printed in any table).
    EXPECT_NEAR(spread[1].limits->high - spread[1].estimate, 2.446912 * spread[1].standardError, 1e-5);
}

TEST(LogisticRegression, RefusesRowsThatCannotBe) {
    EXPECT_THROW((void)stats::logisticRegression(Rows{{5, 4, {}}}), std::domain_error);
    EXPECT_THROW((void)stats::logisticRegression(Rows{{1, 4, {1}}, {1, 4, {1, 2}}}), std::domain_error);
    EXPECT_THROW((void)stats::logisticRegression(Rows{{1, 4, {NAN}}}), std::domain_error);
    EXPECT_THROW((void)stats::logisticRegression(Rows{{1, 4, {1e300}}}), std::domain_error);
    const auto fit = stats::logisticRegression(Rows{{7, 20, {0}}, {13, 24, {1}}});
    EXPECT_THROW((void)stats::waldCoefficients(fit, 1), std::domain_error);
    EXPECT_THROW((void)stats::waldCoefficients(fit, 0.95, 0.5), std::domain_error);
    EXPECT_THROW((void)stats::waldCoefficients(fit, 0.95, 2), std::domain_error);  // no degree of freedom
}

}  // namespace
