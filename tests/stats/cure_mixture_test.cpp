// SPDX-License-Identifier: MIT
#include "stats/time_to_event/cure_mixture.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "tests/stats/speed_cases.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::CureMixtureEstimate;
using stats::NoSpeedFit;
using stats::Observation;
using stats::SpeedShape;
using Rows = std::vector<Observation>;

stats::CureMixtureFit fitRows(const Rows& rows, SpeedShape shape) {
    return stats::fitCureMixture(std::span<const Observation>(rows), shape);
}

class CureMixtureReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(CureMixtureReference, GivesTheReferenceValue) {
    const auto& inputs = GetParam().inputs;
    Rows rows;
    for (std::size_t i = 0; i < inputs.at("L").size(); ++i) {
        const double by = *support::numberIn(inputs.at("R")[i]);
        rows.push_back({inputs.at("L")[i], by, std::isinf(by) ? 0 : 1, inputs.at("w")[i]});
    }
    const std::string dist = inputs.at("dist");
    const auto fit = fitRows(rows, dist == "weibull"     ? SpeedShape::Weibull
                                   : dist == "lognormal" ? SpeedShape::LogNormal
                                                         : SpeedShape::LogLogistic);
    const auto& want = GetParam().expected;
    ASSERT_EQ(want.at("degenerate"), !fit.estimate);
    const auto get = [&fit](auto member) {
        return fit.estimate ? std::optional<double>(member(*fit.estimate)) : std::nullopt;
    };
    if (fit.estimate) {
        EXPECT_EQ(want.at("boundary"), fit.estimate->isOnBoundary);
    } else {
        EXPECT_TRUE(want.at("boundary").is_null());
        EXPECT_EQ(fit.whyNot, NoSpeedFit::TooFewIntervals);
    }
    const stats::RootingShareUncertainty share = fit.estimate ? fit.estimate->share : stats::RootingShareUncertainty{};
    GetParam().expect({{"pi", get([](const auto& e) { return e.rootingShare; })},
                       {"mu", get([](const auto& e) { return e.parameters.mu; })},
                       {"log_sigma", get([](const auto& e) { return e.parameters.logSigma; })},
                       {"se_logit_pi", share.standardErrorOfLogit},
                       {"se_pi", share.standardError},
                       {"se_mu", get([](const auto& e) { return e.speed.standardErrorOfMu; })},
                       {"se_log_sigma", get([](const auto& e) { return e.speed.standardErrorOfLogSigma; })},
                       {"loglik", get([](const auto& e) { return e.logLikelihood; })}},
                      {"boundary", "degenerate"});  // compared above: they are no numbers
}

INSTANTIATE_TEST_SUITE_P(Reference, CureMixtureReference, testing::ValuesIn(support::referenceCases({"cure_fit"})),
                         support::nameOfCase);

TEST(CureMixture, AgreesWithSciPyAlsoOnWholeBatches) {
    // SciPy 1.10.1: the likelihood written out with scipy.stats, derivatives by differences improved twice; the last
    // three are (sum H)^-1 (sum over batches s s') (sum H)^-1.
    struct Want {
        SpeedShape shape;
        double logit, mu, logSigma, logLikelihood, errors[3], batchErrors[3];
    };
    const Want table[] = {{SpeedShape::Weibull,
                           1.7358548264,
                           2.5218694910,
                           -1.0607851811,
                           -172.4678868568,
                           {0.280358186, 0.041247110, 0.090104899},
                           {0.334309907, 0.055069825, 0.024904920}},
                          {SpeedShape::LogNormal,
                           1.7546927508,
                           2.3554647806,
                           -1.0541350817,
                           -167.0877082043,
                           {0.285317097, 0.040194675, 0.092701554},
                           {0.348965534, 0.052277507, 0.053942851}},
                          {SpeedShape::LogLogistic,
                           1.7945605608,
                           2.3496713115,
                           -1.5809990032,
                           -167.6427603063,
                           {0.296640651, 0.041185226, 0.109253565},
                           {0.372215177, 0.056860331, 0.073300166}}};
    for (const Want& want : table) {
        const auto fit = stats::fitCureMixture(quickBatches(), want.shape);
        ASSERT_TRUE(fit.estimate && fit.estimate->speedByBatch);
        const CureMixtureEstimate& got = *fit.estimate;
        const std::pair<double, double> pairs[] = {{std::log(got.rootingShare / (1 - got.rootingShare)), want.logit},
                                                   {got.parameters.mu, want.mu},
                                                   {got.parameters.logSigma, want.logSigma},
                                                   {got.logLikelihood, want.logLikelihood},
                                                   {*got.share.standardErrorOfLogit, want.errors[0]},
                                                   {got.speed.standardErrorOfMu, want.errors[1]},
                                                   {got.speed.standardErrorOfLogSigma, want.errors[2]},
                                                   {*got.shareByBatch->standardErrorOfLogit, want.batchErrors[0]},
                                                   {got.speedByBatch->standardErrorOfMu, want.batchErrors[1]},
                                                   {got.speedByBatch->standardErrorOfLogSigma, want.batchErrors[2]}};
        for (const auto& [value, wanted] : pairs) {
            EXPECT_NEAR(value, wanted, 3e-8 * (1 + std::abs(wanted)));
            support::prove({"fitCureMixture", "five invented batches, with whole-batch covariance",
                            "SciPy 1.10.1, likelihood written out"},
                           value, wanted);
        }
        EXPECT_NEAR(got.akaike, 6 - 2 * got.logLikelihood, 1e-12);
        const double half = stats::fittedShare(got, got.medianDay);
        EXPECT_NEAR(half, got.rootingShare / 2, 1e-14);
        EXPECT_EQ(stats::fittedShare(got, INFINITY), got.rootingShare);
        support::prove({"fittedShare", "on the median day", "half of the share that roots"}, half,
                       got.rootingShare / 2);
    }
}

TEST(CureMixture, IntervalsAreThoseOfTheirScales) {
    const auto fit = stats::fitCureMixture(quickBatches(), SpeedShape::LogNormal, 0.9);
    const CureMixtureEstimate& got = *fit.estimate;
    const double z = 1.6448536269514722, t4 = 2.131846786326649;  // R 4.2.2: qnorm(0.95), qt(0.95, 4)
    const double logit = std::log(got.rootingShare / (1 - got.rootingShare));
    const auto share = [logit](double reach) { return 1 / (1 + std::exp(-logit - reach)); };
    EXPECT_NEAR(got.share.limits->low, share(-z * *got.share.standardErrorOfLogit), 1e-12);
    EXPECT_NEAR(got.share.limits->high, share(z * *got.share.standardErrorOfLogit), 1e-12);
    EXPECT_NEAR(got.shareByBatch->limits->high, share(t4 * *got.shareByBatch->standardErrorOfLogit), 1e-12);
    EXPECT_NEAR(got.speed.medianLimits.low, got.medianDay * std::exp(-z * got.speed.standardErrorOfMu), 1e-10);
    EXPECT_NEAR(got.speedByBatch->medianLimits.high, got.medianDay * std::exp(t4 * got.speedByBatch->standardErrorOfMu),
                1e-10);
    EXPECT_NEAR(*got.share.standardError, *got.share.standardErrorOfLogit * got.rootingShare * (1 - got.rootingShare),
                1e-14);
}

TEST(CureMixture, OnTheBoundaryIsTheFitWhereEveryoneRoots) {
    const Rows rows{{0, 7, 1, 1}, {7, 10, 1, 6}, {10, 14, 1, 12}, {14, 17, 1, 7}, {17, 21, 1, 2}, {9, INFINITY, 0, 2}};
    for (const SpeedShape shape : everySpeedShape) {
        const auto cure = fitRows(rows, shape);
        const auto plain = stats::fitIntervalCensored(std::span<const Observation>(rows), shape);
        ASSERT_TRUE(cure.estimate && plain.estimate);
        EXPECT_TRUE(cure.estimate->isOnBoundary) << "two were withdrawn early; all others rooted";
        EXPECT_EQ(cure.estimate->rootingShare, 1);
        EXPECT_FALSE(cure.estimate->share.standardError || cure.estimate->share.limits);
        EXPECT_NEAR(cure.estimate->parameters.mu, plain.estimate->parameters.mu, 1e-10);
        EXPECT_NEAR(cure.estimate->speed.standardErrorOfLogSigma, plain.estimate->asCounted.standardErrorOfLogSigma,
                    1e-10);
        EXPECT_NEAR(cure.estimate->akaike, plain.estimate->akaike, 1e-10);
    }
}

TEST(CureMixture, WatchedLongAfterTheLastRootGivesThePlainShare) {
    // By day 1000 whoever is going to root has done so.
    Rows rows{{0, 7, 1, 2}, {7, 10, 1, 6}, {10, 14, 1, 12}, {14, 17, 1, 7}, {17, 21, 1, 3}, {1000, INFINITY, 0, 10}};
    for (const SpeedShape shape : everySpeedShape) {
        EXPECT_NEAR(fitRows(rows, shape).estimate->rootingShare, 30.0 / 40, 1e-4);
        EXPECT_NEAR(*fitRows(rows, shape).estimate->share.standardError, std::sqrt(0.75 * 0.25 / 40), 2e-4);
    }
}

TEST(CureMixture, FindsAgainWhatWasPutIn) {
    stats::SeededRandom random(20260301);
    std::map<std::pair<double, double>, double> counts;
    const double never = INFINITY;
    constexpr int kCuttings = 40'000;
    for (int i = 0; i < kCuttings; ++i) {
        const double day = random.uniform() < 0.7 ? std::exp(2.5 + 0.4 * random.normal()) : never;
        const double by = day > 40 ? never : 2 * std::ceil(day / 2);
        ++counts[{std::isinf(by) ? 40 : by - 2, by}];
    }
    Rows rows;
    for (const auto& [ends, count] : counts) {
        rows.push_back({ends.first, ends.second, std::isinf(ends.second) ? 0 : 1, count});
    }
    const auto fit = fitRows(rows, SpeedShape::LogNormal);
    const CureMixtureEstimate& got = *fit.estimate;
    EXPECT_NEAR(got.rootingShare, 0.7, 4 * *got.share.standardError);
    EXPECT_NEAR(got.parameters.mu, 2.5, 4 * got.speed.standardErrorOfMu);
    EXPECT_NEAR(got.parameters.logSigma, std::log(0.4), 4 * got.speed.standardErrorOfLogSigma);
    EXPECT_LT(got.akaike, fitRows(rows, SpeedShape::Weibull).estimate->akaike) << "the right shape fits best";
    EXPECT_LT(got.akaike, fitRows(rows, SpeedShape::LogLogistic).estimate->akaike);
}

TEST(CureMixture, ShowsWhatTheTwoWaysOfCountingLossesDo) {
    // Of forty, eight were lost between days 7 and 10.
    Rows rows{{0, 7, 1, 2}, {7, 10, 1, 6}, {10, 14, 1, 9}, {14, 17, 1, 5}, {17, 21, 1, 2}, {40, INFINITY, 0, 8}};
    Rows asTheRest = rows, asNeverRooting = rows;
    asTheRest.push_back({7, INFINITY, 0, 8});
    asNeverRooting.push_back({40, INFINITY, 0, 8});
    const auto high = fitRows(asTheRest, SpeedShape::LogNormal), low = fitRows(asNeverRooting, SpeedShape::LogNormal);
    EXPECT_NEAR(low.estimate->rootingShare, 24.0 / 40, 0.005);
    EXPECT_GT(high.estimate->rootingShare, 0.7);
    EXPECT_NEAR(high.estimate->medianDay, low.estimate->medianDay, 0.5);
}

TEST(CureMixture, SaysWhyThereIsNone) {
    const auto why = [](const Rows& rows) {
        const auto fit = fitRows(rows, SpeedShape::LogNormal);
        EXPECT_NE(fit.estimate.has_value(), fit.whyNot.has_value());
        return fit.whyNot;
    };
    EXPECT_EQ(why({}), NoSpeedFit::NobodyRooted);
    EXPECT_EQ(why({{0, 7, 1, 0}, {20, INFINITY, 0, 9}}), NoSpeedFit::NobodyRooted);
    EXPECT_EQ(why({{0, 14, 1, 5}, {14, INFINITY, 0, 3}}), NoSpeedFit::OneCheckOnly);
    EXPECT_EQ(why({{0, 7, 1, 9}, {28, INFINITY, 0, 4}}), NoSpeedFit::AllAtFirstCheck);
    EXPECT_EQ(why({{7, 10, 1, 5}, {10, 14, 1, 7}, {30, INFINITY, 0, 4}}), NoSpeedFit::TooFewIntervals);
    EXPECT_EQ(why({{5, 9, 1, 5}, {6, 10, 1, 7}, {7, 14, 1, 4}, {30, INFINITY, 0, 4}}), NoSpeedFit::TooFewIntervals);
    EXPECT_EQ(why({{0, 0, 1, 1}, {0, 5, 1, 5}, {5, 9, 1, 7}, {9, 14, 1, 4}}), NoSpeedFit::RootedOnDayZero);
    EXPECT_EQ(why({{6, 10, 1, 4}, {7, 10, 1, 4}, {10, 14, 1, 4}, {30, INFINITY, 0, 9}}), NoSpeedFit::LikelihoodIsFlat);
}

TEST(CureMixture, HasNoFiguresByBatchWhereBatchesCannotTell) {
    const auto batches = quickBatches();
    const SpeedBatches three(batches.begin(), batches.begin() + 3);
    EXPECT_FALSE(stats::fitCureMixture(three, SpeedShape::LogNormal).estimate->speedByBatch) << "three parameters";
    EXPECT_FALSE(stats::fitCureMixture(three, SpeedShape::LogNormal).estimate->shareByBatch);
    const SpeedBatches alike(6, batches.front());
    EXPECT_FALSE(stats::fitCureMixture(alike, SpeedShape::LogNormal).estimate->speedByBatch) << "no difference to see";
}

TEST(CureMixture, RefusesRowsThatCannotBe) {
    EXPECT_THROW((void)fitRows({{3, 7, 2}}, SpeedShape::Weibull), std::domain_error);
    EXPECT_THROW((void)fitRows({{3, INFINITY, 1}}, SpeedShape::Weibull), std::domain_error);
    EXPECT_THROW((void)fitRows({{-1, 7, 1}}, SpeedShape::Weibull), std::domain_error);
    EXPECT_THROW((void)stats::fitCureMixture(quickBatches(), SpeedShape::Weibull, 0), std::domain_error);
    EXPECT_THROW((void)stats::fittedShare(CureMixtureEstimate{}, NAN), std::domain_error);
}

}  // namespace
