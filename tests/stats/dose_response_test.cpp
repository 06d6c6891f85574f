// SPDX-License-Identifier: MIT
#include "stats/regression/dose_response.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "tests/stats/regression_cases.h"

namespace {

using DoseTrays = std::vector<stats::DoseTray>;
using stats::DoseEstimator;
using stats::FitProblem;
using stats::Peak;
using stats::PeakLimits;

const char* const byR = "R 4.2 glm, Fieller's limits by uniroot";

void expectLimits(const DoseResponseCase& each, const stats::PeakAnswer& answer, const char* field) {
    const nlohmann::json& want = each.expected.at(field);
    if (want.is_null()) {
        EXPECT_EQ(answer.kind, PeakLimits::Unbounded) << each.id;
        EXPECT_FALSE(answer.limits) << each.id;
        return;
    }
    ASSERT_EQ(answer.kind, PeakLimits::Bounded) << each.id;
    expectFigure("doseResponse", each.source, byR, answer.limits->low, want.at(0), 1e-7);
    expectFigure("doseResponse", each.source, byR, answer.limits->high, want.at(1), 1e-7);
}

TEST(DoseResponse, GivesWhatRsGlmAndUnirootDo) {
    for (const DoseResponseCase& each : doseResponseCases()) {
        const double level = each.expected.at("level");
        const auto curve = stats::doseResponse(each.trays, level);
        ASSERT_EQ(curve.problem, FitProblem::None) << each.id;
        ASSERT_EQ(curve.peak, Peak::Inside) << each.id;
        const auto expect = [&each](const char* field, double got) {
            expectFigure("doseResponse", each.source, byR, got, each.expected.at(field), 1e-7);
        };
        expect("best_dose", *curve.bestDose);
        expect("best_rate", *curve.bestRate);
        expect("dispersion", curve.dispersion);
        expect("curvature_p", *curve.asCounted.curvatureP);
        expect("curvature_p_with_spread", *curve.withSpread.curvatureP);
        EXPECT_EQ(curve.degreesOfFreedom, each.expected.at("df").get<int>()) << each.id;
        expectLimits(each, curve.asCounted, "limits");
        expectLimits(each, curve.withSpread, "limits_with_spread");
        const auto point = stats::rateAtDose(curve, 1500, level);
        const auto expectPoint = [&each](const char* field, std::size_t place, double got) {
            expectFigure("rateAtDose", each.source, byR, got, each.expected.at(field).at(place), 1e-7);
        };
        expectPoint("at_1500", 0, point->asCounted.low);
        expectPoint("at_1500", 1, point->rate);
        expectPoint("at_1500", 2, point->asCounted.high);
        expectPoint("at_1500_with_spread", 0, point->withSpread->low);
        expectPoint("at_1500_with_spread", 2, point->withSpread->high);
    }
}

DoseTrays exampleTrays() {
    return doseResponseCases().at(1).trays;
}

TEST(DoseResponse, DoesNotCareForTheUnitOfTheDose) {
    DoseTrays scaled = exampleTrays();
    for (auto& tray : scaled) tray.dose /= 1000;
    const auto curve = stats::doseResponse(exampleTrays(), 0.9), other = stats::doseResponse(scaled, 0.9);
    EXPECT_NEAR(*curve.bestDose / *other.bestDose, 1000, 1e-7);
    EXPECT_NEAR(curve.withSpread.limits->high / other.withSpread.limits->high, 1000, 1e-7);
    EXPECT_NEAR(*curve.bestRate, *other.bestRate, 1e-12);
    const auto turned = [](const stats::DoseResponse& one) { return -one.coefficients[1] / (2 * one.coefficients[2]); };
    EXPECT_NEAR(std::exp(turned(curve)), *curve.bestDose, 1e-6);
}

TEST(DoseResponse, IsNotBentByUntreatedTrays) {
    DoseTrays trays = exampleTrays();
    const auto without = stats::doseResponse(trays, 0.9);
    trays.push_back({0, 2, 20});
    trays.push_back({0, 9, 20});
    trays.push_back({0, 0, 0});
    const auto with = stats::doseResponse(trays, 0.9);
    EXPECT_EQ(*without.bestDose, *with.bestDose);
    EXPECT_EQ(without.asCounted.limits->low, with.asCounted.limits->low);
    EXPECT_NEAR(*with.untreatedRate, 11.0 / 40, 1e-15);
    EXPECT_FALSE(without.untreatedRate);
    EXPECT_EQ(with.degreesOfFreedom, without.degreesOfFreedom + 1);
    EXPECT_NE(with.dispersion, without.dispersion);
    // Untreated trays of which none rooted say nothing about spread.
    trays = exampleTrays();
    trays.push_back({0, 0, 20});
    trays.push_back({0, 0, 20});
    EXPECT_EQ(stats::doseResponse(trays, 0.9).degreesOfFreedom, without.degreesOfFreedom);
    EXPECT_EQ(stats::doseResponse(trays, 0.9).untreatedRate, 0);
}

TEST(DoseResponse, SaysWhenNoDoseTriedIsTheBest) {
    const DoseTrays rising{{500, 3, 20}, {1000, 8, 20}, {2000, 12, 20}, {4000, 15, 20}};
    EXPECT_EQ(stats::doseResponse(rising, 0.95).peak, Peak::AboveDoses);
    DoseTrays falling = rising;
    for (auto& tray : falling) tray.dose = 2e6 / tray.dose;
    const auto below = stats::doseResponse(falling, 0.95);
    EXPECT_EQ(below.peak, Peak::BelowDoses);
    EXPECT_FALSE(below.bestDose);
    EXPECT_EQ(below.asCounted.kind, PeakLimits::Unknown);
    EXPECT_TRUE(below.asCounted.curvatureP);
    const DoseTrays valley{{500, 15, 20}, {1000, 6, 20}, {2000, 14, 20}};
    const auto none = stats::doseResponse(valley, 0.95);
    EXPECT_EQ(none.peak, Peak::None);
    EXPECT_FALSE(none.bestRate);
    EXPECT_EQ(none.degreesOfFreedom, 0);
    EXPECT_EQ(none.withSpread.kind, PeakLimits::Unknown);
    EXPECT_FALSE(none.withSpread.curvatureP);
    EXPECT_FALSE(stats::rateAtDose(none, 1000, 0.95)->withSpread);
}

TEST(DoseResponse, RunsThroughThreeDosesExactly) {
    const DoseTrays trays{{500, 7, 20}, {1500, 15, 20}, {6000, 9, 20}};
    const auto curve = stats::doseResponse(trays, 0.95);
    for (const auto& tray : trays) {
        EXPECT_NEAR(stats::rateAtDose(curve, tray.dose, 0.95)->rate, tray.successes / 20.0, 1e-12);
    }
}

TEST(DoseResponse, DoesNotExistWhereADosePullsItToInfinity) {
    const DoseTrays allAtOne{{500, 7, 20}, {1500, 20, 20}, {6000, 9, 20}};
    const auto curve = stats::doseResponse(allAtOne, 0.95);
    EXPECT_EQ(curve.problem, FitProblem::Separated);
    EXPECT_EQ(curve.peak, Peak::NoFit);
    EXPECT_FALSE(curve.bestDose);
    EXPECT_TRUE(curve.coefficients.empty());
    EXPECT_FALSE(stats::rateAtDose(curve, 1500, 0.95));
    const auto penalised = stats::doseResponse(allAtOne, 0.95, DoseEstimator::Firth);
    ASSERT_EQ(penalised.problem, FitProblem::None);
    EXPECT_EQ(penalised.peak, Peak::Inside);
    EXPECT_NEAR(stats::rateAtDose(penalised, 1500, 0.95)->rate, 20.5 / 21, 1e-9);  // half a cutting more in each cell
    EXPECT_EQ(stats::doseResponse(DoseTrays{{1, 4, 4}, {2, 5, 5}, {3, 6, 6}}, 0.95).problem, FitProblem::AllOrNone);
    EXPECT_EQ(stats::doseResponse(DoseTrays{{1, 2, 4}, {2, 3, 5}, {2, 4, 6}}, 0.95).problem, FitProblem::Collinear);
    EXPECT_EQ(stats::doseResponse(DoseTrays{{0, 2, 4}}, 0.95).problem, FitProblem::NoTrials);
    EXPECT_EQ(stats::doseResponse(DoseTrays{}, 0.95).problem, FitProblem::NoTrials);
}

TEST(DoseResponse, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::doseResponse(DoseTrays{{-1, 2, 4}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::doseResponse(DoseTrays{{NAN, 2, 4}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::doseResponse(DoseTrays{{1, 5, 4}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::doseResponse(DoseTrays{{1, 3, 4}}, 0), std::domain_error);
    EXPECT_THROW((void)stats::rateAtDose({}, 0, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::rateAtDose({}, 1, 1), std::domain_error);
}

}  // namespace
