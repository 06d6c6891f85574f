// SPDX-License-Identifier: MIT
#include "stats/time_to_event/interval_censored_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/stats/speed_cases.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::NoSpeedFit;
using stats::Observation;
using stats::SpeedShape;
using Rows = std::vector<Observation>;

SpeedShape shapeNamed(const std::string& name) {
    return name == "weibull"     ? SpeedShape::Weibull
           : name == "lognormal" ? SpeedShape::LogNormal
                                 : SpeedShape::LogLogistic;
}

class IntervalCensoredReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(IntervalCensoredReference, GivesTheReferenceValue) {
    const auto& inputs = GetParam().inputs;
    Rows rows;
    for (std::size_t i = 0; i < inputs.at("L").size(); ++i) {
        const double by = *support::numberIn(inputs.at("R")[i]);
        rows.push_back({inputs.at("L")[i], by, std::isinf(by) ? 0 : 1, inputs.at("w")[i]});
    }
    const auto fit = stats::fitIntervalCensored(std::span<const Observation>(rows), shapeNamed(inputs.at("dist")));
    ASSERT_EQ(GetParam().expected.at("degenerate"), !fit.estimate);
    ASSERT_TRUE(fit.estimate);
    const auto& estimate = *fit.estimate;
    GetParam().expect({{"mu", estimate.parameters.mu},
                       {"log_sigma", estimate.parameters.logSigma},
                       {"se_mu", estimate.asCounted.standardErrorOfMu},
                       {"se_log_sigma", estimate.asCounted.standardErrorOfLogSigma},
                       {"loglik", estimate.logLikelihood}},
                      {"degenerate"});  // compared above: it is no number
}

INSTANTIATE_TEST_SUITE_P(Reference, IntervalCensoredReference,
                         testing::ValuesIn(support::referenceCases({"param_ic_fit"})), support::nameOfCase);

struct SoftwareFit {
    SpeedShape shape;
    double mu, logSigma, logLikelihood, errorOfMu, errorOfLogSigma, batchErrorOfMu, batchErrorOfLogSigma;
};

TEST(IntervalCensoredFit, AgreesWithSurvregAlsoOnWholeBatches) {
    // R 4.2.2 survival 3.5.3: survreg(Surv(L, R, type = "interval2") ~ 1). The last two are the whole-batch standard
    // errors from its naive covariance and each batch's slope of log(P(R) - P(L)) by differences in R; its own robust
    // ones are not taken, since for rows between checks its slopes in log sigma do not sum to 0 at the maximum.
    const SoftwareFit table[] = {{SpeedShape::Weibull, 2.7983271559, -0.5187351741, -193.9604335613, 0.0657410883,
                                  0.0890971660, 0.0890183651, 0.0805006045},
                                 {SpeedShape::LogNormal, 2.5300203731, -0.5541378492, -181.2656969213, 0.0593938151,
                                  0.0870307537, 0.0709602048, 0.1000574090},
                                 {SpeedShape::LogLogistic, 2.4806008433, -1.1057633460, -180.0250022292, 0.0580426202,
                                  0.0973050244, 0.0678787866, 0.1134300250}};
    for (const SoftwareFit& want : table) {
        const auto fit = stats::fitIntervalCensored(quickBatches(), want.shape);
        ASSERT_TRUE(fit.estimate);
        ASSERT_TRUE(fit.estimate->byBatch);
        const auto& estimate = *fit.estimate;
        const std::pair<double, double> pairs[] = {
            {estimate.parameters.mu, want.mu},
            {estimate.parameters.logSigma, want.logSigma},
            {estimate.logLikelihood, want.logLikelihood},
            {estimate.asCounted.standardErrorOfMu, want.errorOfMu},
            {estimate.asCounted.standardErrorOfLogSigma, want.errorOfLogSigma},
            {estimate.byBatch->standardErrorOfMu, want.batchErrorOfMu},
            {estimate.byBatch->standardErrorOfLogSigma, want.batchErrorOfLogSigma}};
        for (const auto& [got, wanted] : pairs) {
            EXPECT_NEAR(got, wanted, 1e-8 * (1 + std::abs(wanted)));
            support::prove({"fitIntervalCensored", "five invented batches, with whole-batch covariance",
                            "R 4.2.2 survival 3.5.3 survreg"},
                           got, wanted);
        }
        EXPECT_NEAR(estimate.akaike, 4 - 2 * want.logLikelihood, 1e-7);
    }
}

TEST(IntervalCensoredFit, TakesExactDays) {
    // R 4.2.2 survival 3.5.3: survreg(Surv(c(5,8,13,21,9,16,30), c(1,1,1,1,1,0,0)) ~ 1).
    const Rows rows{{5, 5, 1}, {8, 8, 1}, {13, 13, 1}, {21, 21, 1}, {9, 9, 1}, {16, INFINITY, 0}, {30, INFINITY, 0}};
    const SoftwareFit table[] = {
        {SpeedShape::Weibull, 2.9725971102, -0.4240823640, -19.5211973076, 0.2927257180, 0.3637538874, 0, 0},
        {SpeedShape::LogNormal, 2.6577255760, -0.3044728249, -18.9044969412, 0.2957419534, 0.3372805381, 0, 0},
        {SpeedShape::LogLogistic, 2.6254514589, -0.8017224455, -19.0425947193, 0.3057120050, 0.3681598573, 0, 0}};
    for (const SoftwareFit& want : table) {
        const auto fit = stats::fitIntervalCensored(std::span<const Observation>(rows), want.shape);
        ASSERT_TRUE(fit.estimate);
        EXPECT_NEAR(fit.estimate->parameters.mu, want.mu, 1e-8);
        EXPECT_NEAR(fit.estimate->parameters.logSigma, want.logSigma, 1e-8);
        EXPECT_NEAR(fit.estimate->logLikelihood, want.logLikelihood, 1e-8);
        EXPECT_NEAR(fit.estimate->asCounted.standardErrorOfMu, want.errorOfMu, 1e-8);
        EXPECT_NEAR(fit.estimate->asCounted.standardErrorOfLogSigma, want.errorOfLogSigma, 1e-8);
        EXPECT_FALSE(fit.estimate->byBatch) << "one batch";
        support::prove({"fitIntervalCensored", "seven exact days", "R 4.2.2 survival 3.5.3 survreg"},
                       fit.estimate->parameters.mu, want.mu);
    }
}

TEST(IntervalCensoredFit, GivesTheRobustErrorsOfSurvregOnExactDays) {
    // R 4.2.2 survival 3.5.3: survreg(Surv(t, s) ~ 1, cluster = batch), its robust standard errors.
    const SpeedBatches batches{
        {{5, 5, 1}, {8, 8, 1}, {13, 13, 1}, {21, 21, 1}, {9, 9, 1}, {16, INFINITY, 0}, {30, INFINITY, 0}},
        {{4, 4, 1}, {7, 7, 1, 2}, {12, 12, 1}, {25, INFINITY, 0}},
        {{6, 6, 1}, {11, 11, 1}, {18, 18, 1}, {19, INFINITY, 0}},
        {{10, 10, 1}, {14, 14, 1}, {22, INFINITY, 0}}};
    const double table[3][4] = {{2.8722559242, -0.4554556645, 0.0699059638, 0.1021892775},
                                {2.5693640440, -0.3377723335, 0.0907086493, 0.0676947015},
                                {2.5381016253, -0.8430140288, 0.1021430128, 0.0700633693}};
    for (std::size_t shape = 0; shape < 3; ++shape) {
        const auto fit = stats::fitIntervalCensored(batches, everySpeedShape[shape]);
        ASSERT_TRUE(fit.estimate && fit.estimate->byBatch);
        const double got[] = {fit.estimate->parameters.mu, fit.estimate->parameters.logSigma,
                              fit.estimate->byBatch->standardErrorOfMu, fit.estimate->byBatch->standardErrorOfLogSigma};
        for (std::size_t i = 0; i < 4; ++i) {
            EXPECT_NEAR(got[i], table[shape][i], 1e-8);
            support::prove({"fitIntervalCensored", "four batches of exact days, whole-batch covariance",
                            "R 4.2.2 survival 3.5.3 survreg, robust"},
                           got[i], table[shape][i]);
        }
    }
}

TEST(IntervalCensoredFit, OfUncensoredLogNormalDaysIsMeanAndDeviationOfTheirLogarithms) {
    const double days[] = {4, 7, 7.5, 11, 18, 23};
    Rows rows;
    double mean = 0, squares = 0;
    for (const double day : days) {
        rows.push_back({day, day, 1});
        mean += std::log(day) / 6;
    }
    for (const double day : days) squares += std::pow(std::log(day) - mean, 2) / 6;
    const auto fit = stats::fitIntervalCensored(std::span<const Observation>(rows), SpeedShape::LogNormal);
    EXPECT_NEAR(fit.estimate->parameters.mu, mean, 1e-11);
    EXPECT_NEAR(fit.estimate->parameters.logSigma, std::log(squares) / 2, 1e-11);
    EXPECT_NEAR(fit.estimate->asCounted.standardErrorOfMu, std::sqrt(squares / 6), 1e-11);
    EXPECT_NEAR(fit.estimate->asCounted.standardErrorOfLogSigma, std::sqrt(1 / 12.0), 1e-11);
    EXPECT_NEAR(fit.estimate->asCounted.medianLimits.high, std::exp(mean + 1.959963984540054 * std::sqrt(squares / 6)),
                1e-10);
    const double half = stats::fittedShare(*fit.estimate, fit.estimate->medianDay);
    EXPECT_NEAR(half, 0.5, 1e-14);
    support::prove({"fittedShare", "on the median day", "one half"}, half, 0.5);
}

TEST(IntervalCensoredFit, FollowsTheUnitOfTimeAndDoesNotCareForTheOrderOfRows) {
    for (const SpeedShape shape : everySpeedShape) {
        const auto days = stats::fitIntervalCensored(quickBatches(), shape);
        const auto hours = stats::fitIntervalCensored(withDaysTimes(quickBatches(), 24), shape);
        EXPECT_NEAR(hours.estimate->medianDay, 24 * days.estimate->medianDay, 1e-6);
        EXPECT_NEAR(hours.estimate->parameters.logSigma, days.estimate->parameters.logSigma, 1e-9);
        EXPECT_NEAR(hours.estimate->asCounted.medianLimits.low, 24 * days.estimate->asCounted.medianLimits.low, 1e-6);
        SpeedBatches turned = quickBatches();
        std::swap(turned.front(), turned.back());
        EXPECT_NEAR(stats::fitIntervalCensored(turned, shape).estimate->byBatch->standardErrorOfMu,
                    days.estimate->byBatch->standardErrorOfMu, 1e-12);
    }
}

TEST(IntervalCensoredFit, SaysWhyThereIsNone) {
    const auto why = [](const Rows& rows) {
        const auto fit = stats::fitIntervalCensored(std::span<const Observation>(rows), SpeedShape::Weibull);
        EXPECT_NE(fit.estimate.has_value(), fit.whyNot.has_value());
        return fit.whyNot;
    };
    EXPECT_EQ(why({}), NoSpeedFit::NobodyRooted);
    EXPECT_EQ(why({{20, INFINITY, 0, 9}}), NoSpeedFit::NobodyRooted);
    EXPECT_EQ(why({{0, 14, 1, 5}, {14, INFINITY, 0, 3}}), NoSpeedFit::OneCheckOnly);
    EXPECT_EQ(why({{0, 7, 1, 9}, {0, 9, 1, 4}, {0, 10, 1, 1}}), NoSpeedFit::AllAtFirstCheck);
    EXPECT_EQ(why({{7, 10, 1, 5}, {10, 14, 1, 7}, {30, INFINITY, 0, 4}}), NoSpeedFit::TooFewIntervals);
    EXPECT_EQ(why({{5, 9, 1, 5}, {6, 10, 1, 7}, {7, 14, 1, 4}}), NoSpeedFit::TooFewIntervals) << "day 8 suits all";
    EXPECT_EQ(why({{0, 0, 1, 1}, {0, 5, 1, 5}, {5, 9, 1, 7}, {9, 14, 1, 4}}), NoSpeedFit::RootedOnDayZero);
    // A jump on day 10 suits all three, however it is split.
    EXPECT_EQ(why({{6, 10, 1, 4}, {7, 10, 1, 4}, {10, 14, 1, 4}}), NoSpeedFit::LikelihoodIsFlat);
}

TEST(IntervalCensoredFit, RefusesRowsThatCannotBe) {
    const auto fit = [](Observation row, double level = 0.95) {
        const Rows rows{row};
        return stats::fitIntervalCensored(std::span<const Observation>(rows), SpeedShape::Weibull, level);
    };
    EXPECT_THROW((void)fit({3, 7, 2}), std::domain_error);
    EXPECT_THROW((void)fit({7, 3, 1}), std::domain_error);
    EXPECT_THROW((void)fit({3, 7, 1, NAN}), std::domain_error);
    EXPECT_THROW((void)fit({3, 7, 1}, 1), std::domain_error);
    EXPECT_THROW((void)stats::fittedShare(stats::IntervalCensoredEstimate{}, -1), std::domain_error);
}

}  // namespace
