// SPDX-License-Identifier: MIT
#include "stats/regression/firth_logistic.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "stats/regression/logistic_design.h"
#include "stats/regression/logistic_regression.h"
#include "tests/stats/regression_cases.h"

namespace {

using Rows = std::vector<stats::BinomialRow>;

TEST(FirthLogistic, GivesWhatAnotherAlgorithmDoesInR) {
    for (const RegressionCase& each : regressionCases()) {
        const auto answer = stats::firthLogistic(each.rows, 0.95);
        ASSERT_TRUE(answer.fit.exists) << each.id;
        const std::string by = "regression.R: modified score with QR leverages, uniroot on the profile, R 4.2";
        for (std::size_t j = 0; j < answer.coefficients.size(); ++j) {
            const auto& one = answer.coefficients[j];
            const auto want = [&](const char* field) { return each.firth.at(field).at(j).get<double>(); };
            expectFigure("firthLogistic", each.source, by, one.estimate, want("coefficients"), 1e-8);
            expectFigure("firthLogistic", each.source, by, one.standardError, want("standard_errors"), 1e-8);
            ASSERT_TRUE(one.limits && one.chiSquare && one.p) << each.id;
            expectFigure("firthLogistic", each.source, by, one.limits->low, want("lower"), 1e-7);
            expectFigure("firthLogistic", each.source, by, one.limits->high, want("upper"), 1e-7);
            expectFigure("firthLogistic", each.source, by, *one.chiSquare, want("chi2"), 1e-8);
            expectFigure("firthLogistic", each.source, by, *one.p, want("p"), 1e-8);
            expectFigure("firthFit", each.source, by, stats::firthFit(each.rows).coefficients[j], want("coefficients"),
                         1e-8);
        }
        EXPECT_NEAR(answer.penalisedLogLikelihood, each.firth.at("penalised_log_likelihood").get<double>(), 1e-8)
            << each.id;
    }
}

TEST(FirthLogistic, IsFiniteWherePublishedRecordsAreCompletelySeparated) {
    const RegressionCase irises = regressionCase("iris_sepals");
    // A line that has every versicolor on one side and every setosa on the other, so that odds run off without a penalty.
    double nearest = INFINITY;
    for (const stats::BinomialRow& row : irises.rows) {
        const double side = 132 * row.covariates[0] - 110 * row.covariates[1] - 361;
        nearest = std::min(nearest, row.successes == 1 ? side : -side);
    }
    EXPECT_GT(nearest, 0);
    EXPECT_EQ(stats::logisticRegression(irises.rows).problem, stats::FitProblem::Separated);
    const auto answer = stats::firthLogistic(irises.rows, 0.95);
    ASSERT_TRUE(answer.fit.exists);
    // regression.R's, to six digits; the rest of them are in the test of all cases.
    EXPECT_NEAR(answer.coefficients[1].estimate, 9.73178, 1e-5);
    EXPECT_NEAR(answer.coefficients[2].estimate, -8.89705, 1e-5);
    EXPECT_NEAR(answer.coefficients[2].limits->low, -22.33976, 1e-5);
}

TEST(FirthLogistic, GivesTheFiguresInPrintForEndometrialCancer) {
    // The bias-reduced fit to Heinze and Schemper's data as Kosmidis and others print it, with standard errors, to three
    // decimals; from memory.
    const auto fit = stats::firthLogistic(regressionCase("endometrial").rows, 0.95);
    const double printed[][2] = {{3.775, 1.489}, {2.929, 1.551}, {-0.035, 0.040}, {-2.604, 0.776}};
    for (std::size_t j = 0; j < 4; ++j) {
        EXPECT_NEAR(fit.coefficients[j].estimate, printed[j][0], 0.0005);
        EXPECT_NEAR(fit.coefficients[j].standardError, printed[j][1], 0.0005);
    }
}

TEST(FirthLogistic, GivesWhatLogistfPrints) {
    // R package logistf, as quoted in the public test suite of the Python package firthlogist: to seven or eight
    // decimals.
    struct Printed {
        double estimate, low, high;
    };
    const Printed endometrial[] = {{3.77455951, 1.0825371, 7.20928050},
                                   {2.92927330, 0.6097244, 7.85463171},
                                   {-0.03475175, -0.1244587, 0.04045547},
                                   {-2.60416387, -4.3651832, -1.23272106}};
    const Printed urinary[] = {{0.12025405, -0.8185591, 1.07315122},   {-1.10598131, -1.9737884, -0.30742514},
                               {-0.06881673, -0.9414363, 0.78920202},  {2.26887464, 1.2730216, 3.43543273},
                               {-2.11140817, -3.2608611, -1.11773495}, {-0.78831694, -1.6080879, 0.01518468},
                               {3.09601166, 0.7745682, 8.03029352}};
    const auto expect = [](const std::string& id, std::span<const Printed> printed) {
        const RegressionCase each = regressionCase(id);
        const auto answer = stats::firthLogistic(each.rows, 0.95);
        for (std::size_t j = 0; j < printed.size(); ++j) {
            const std::string by = "R package logistf, as quoted in the tests of the Python package firthlogist";
            expectFigure("firthLogistic", each.source, by, answer.coefficients[j].estimate, printed[j].estimate, 2e-7);
            expectFigure("firthLogistic", each.source, by, answer.coefficients[j].limits->low, printed[j].low, 2e-7);
            expectFigure("firthLogistic", each.source, by, answer.coefficients[j].limits->high, printed[j].high, 2e-7);
        }
    };
    expect("endometrial", endometrial);
    expect("urinary_infection", urinary);
}

TEST(FirthLogistic, AddsAHalfToEachCellOfATwoByTwoTable) {
    // With as many coefficients as rows the penalty is half a success and half a failure more in each (Firth 1993): so
    // too where all of one row and none of the other succeeded.
    for (const auto& [x0, n0, x1, n1] : {std::array{7, 20, 13, 24}, {0, 5, 5, 5}, {0, 9, 0, 8}, {1, 1, 0, 1}}) {
        const auto fit = stats::firthFit(Rows{{x0, n0, {0}}, {x1, n1, {1}}});
        const double odds0 = (x0 + 0.5) / (n0 - x0 + 0.5), odds1 = (x1 + 0.5) / (n1 - x1 + 0.5);
        expectFigure("firthFit", "tables of two by two", "closed form: half a cutting more in each cell",
                     fit.coefficients[0], std::log(odds0), 1e-10);
        expectFigure("firthFit", "tables of two by two", "closed form: half a cutting more in each cell",
                     fit.coefficients[1], std::log(odds1 / odds0), 1e-10);
    }
}

TEST(FirthLogistic, NearsMaximumLikelihoodAsCountsGrow) {
    double before = 1;
    for (const int factor : {1, 10, 100, 1000, 10000}) {
        const Rows rows{
            {7 * factor, 20 * factor, {1}}, {9 * factor, 20 * factor, {2}}, {16 * factor, 20 * factor, {4}}};
        const double away =
            std::abs(stats::firthFit(rows).coefficients[1] - stats::logisticRegression(rows).coefficients[1]);
        EXPECT_LT(away, before / 5) << factor;
        before = away;
    }
}

TEST(FirthLogistic, HasLimitsAroundZeroExactlyWherePIsAboveOneLessLevel) {
    for (const RegressionCase& each : regressionCases()) {
        for (const auto& one : stats::firthLogistic(each.rows, 0.9).coefficients) {
            EXPECT_EQ(one.limits->low <= 0 && 0 <= one.limits->high, *one.p >= 0.1) << each.id;
        }
    }
}

TEST(FirthLogistic, TurnsOverWhenSuccessAndFailureSwap) {
    Rows rows = regressionCase("urinary_infection").rows;
    const auto there = stats::firthLogistic(rows, 0.95);
    for (auto& row : rows) row.successes = row.trials - row.successes;
    const auto back = stats::firthLogistic(rows, 0.95);
    for (std::size_t j = 0; j < there.coefficients.size(); ++j) {
        EXPECT_NEAR(there.coefficients[j].estimate, -back.coefficients[j].estimate, 1e-9);
        EXPECT_NEAR(there.coefficients[j].limits->low, -back.coefficients[j].limits->high, 1e-7);
        EXPECT_NEAR(*there.coefficients[j].p, *back.coefficients[j].p, 1e-10);
    }
}

TEST(LogisticDesign, HasTheGradientAndHessianOfItsValues) {
    const Rows rows = regressionCase("infert").rows;
    const stats::LogisticDesign design(rows);
    const std::vector<double> at{-0.7, 0.2, -0.5, 0.9, 1.1};
    using Function = stats::LocalQuadratic (stats::LogisticDesign::*)(const std::vector<double>&) const;
    for (const Function function : {&stats::LogisticDesign::logLikelihood, &stats::LogisticDesign::penalised}) {
        const auto here = (design.*function)(at);
        for (std::size_t j = 0; j < at.size(); ++j) {
            constexpr double step = 1e-5;
            std::vector<double> above = at, below = at;
            above[j] += step;
            below[j] -= step;
            const auto high = (design.*function)(above), low = (design.*function)(below);
            EXPECT_NEAR((high.value - low.value) / (2 * step), here.gradient[j], 1e-7);
            for (std::size_t k = 0; k < at.size(); ++k) {
                EXPECT_NEAR(-(high.gradient[k] - low.gradient[k]) / (2 * step), here.curvature.at(j, k), 1e-7);
            }
        }
    }
}

TEST(FirthLogistic, TakesStandardErrorsForWhatIsOnlyAllowedFor) {
    const Rows rows{{3, 10, {0, 0}}, {5, 12, {1, 0}}, {6, 9, {0, 1}}, {8, 9, {1, 1}}, {2, 11, {0, 2}}};
    const auto all = stats::firthLogistic(rows, 0.9), some = stats::firthLogistic(rows, 0.9, 1);
    ASSERT_EQ(some.coefficients.size(), 3u);
    for (std::size_t j = 0; j < 2; ++j) {
        const auto& one = some.coefficients[j];
        EXPECT_EQ(one.estimate, all.coefficients[j].estimate);
        EXPECT_NEAR(one.limits->high - one.limits->low, 2 * 1.6448536269514722 * one.standardError, 1e-12);
        EXPECT_NEAR(*one.chiSquare, std::pow(one.estimate / one.standardError, 2), 1e-12);
    }
    EXPECT_EQ(some.coefficients[2].limits->low, all.coefficients[2].limits->low);
    EXPECT_EQ(*some.coefficients[2].p, *all.coefficients[2].p);
    EXPECT_THROW((void)stats::firthLogistic(rows, 0.9, 3), std::domain_error);
}

TEST(FirthLogistic, AnswersForOneRowAndForTheInterceptAlone) {
    const auto alone = stats::firthLogistic(Rows{{3, 9, {}}}, 0.95);
    EXPECT_NEAR(alone.coefficients[0].estimate, std::log(3.5 / 6.5), 1e-10);
    EXPECT_TRUE(alone.coefficients[0].limits);
    const auto nothing = stats::firthLogistic(Rows{{0, 4, {}}}, 0.95);
    EXPECT_NEAR(nothing.coefficients[0].estimate, std::log(0.5 / 4.5), 1e-10);
}

TEST(FirthLogistic, SaysWhyThereIsNoFit) {
    EXPECT_EQ(stats::firthLogistic(Rows{}, 0.95).fit.problem, stats::FitProblem::NoTrials);
    const auto constant = stats::firthLogistic(Rows{{3, 9, {1}}, {4, 9, {1}}}, 0.95);
    EXPECT_EQ(constant.fit.problem, stats::FitProblem::Collinear);
    EXPECT_EQ(constant.fit.collinearCovariate, 0U);
    EXPECT_TRUE(constant.coefficients.empty());
}

TEST(FirthLogistic, RefusesRowsThatCannotBe) {
    EXPECT_THROW((void)stats::firthLogistic(Rows{{5, 4, {}}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::firthLogistic(Rows{{1, 4, {}}}, 0), std::domain_error);
    EXPECT_THROW((void)stats::firthFit(Rows{{1, 4, {INFINITY}}}), std::domain_error);
}

}  // namespace
