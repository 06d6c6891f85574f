// SPDX-License-Identifier: MIT
#include "stats/time_to_event/curve_quantiles.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <vector>

#include "tests/stats/simulated_batches.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::ShareOf;
using Curve = std::vector<stats::SupportInterval>;

class QuantileReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(QuantileReference, GivesTheReferenceValue) {
    Curve curve;
    for (std::size_t i = 0; i < GetParam().inputs.at("mass").size(); ++i) {
        curve.push_back({.left = GetParam().inputs.at("left")[i],
                         .right = GetParam().inputs.at("right")[i],
                         .mass = GetParam().inputs.at("mass")[i]});
    }
    const ShareOf of = GetParam().inputs.at("of") == "stuck" ? ShareOf::Everyone : ShareOf::ThoseWithTheEvent;
    const auto day = stats::quantileDay(curve, GetParam().number("target"), of);
    ASSERT_EQ(day.has_value(), GetParam().expected.at("reached").get<bool>());
    using Number = std::optional<double>;
    GetParam().expect({{"t_left", day ? Number(day->after) : std::nullopt},
                       {"t_right", day ? Number(day->by) : std::nullopt},
                       {"interpolated", day ? Number(day->interpolated) : std::nullopt}},
                      {"reached"});  // a bool, compared above
}

INSTANTIATE_TEST_SUITE_P(Reference, QuantileReference, testing::ValuesIn(support::referenceCases({"quantile_support"})),
                         support::nameOfCase);

TEST(CumulativeShare, KnowsWhatMayAndWhatMustHaveHappened) {
    const Curve curve{{0, 7, 0.2}, {7, 14, 0.3}, {20, 20, 0.1}};
    const auto expectShare = [&curve](double day, double atLeast, double atMost) {
        EXPECT_NEAR(stats::cumulativeShare(curve, day).atLeast, atLeast, 1e-15) << day;
        EXPECT_NEAR(stats::cumulativeShare(curve, day).atMost, atMost, 1e-15) << day;
        const support::Proof proof{"cumulativeShare", "a curve of three intervals", "by hand"};
        support::prove(proof, stats::cumulativeShare(curve, day).atLeast, atLeast);
        support::prove(proof, stats::cumulativeShare(curve, day).atMost, atMost);
    };
    expectShare(0, 0, 0);
    expectShare(3, 0, 0.2);
    expectShare(7, 0.2, 0.2);
    expectShare(8, 0.2, 0.5);
    expectShare(14, 0.5, 0.5);
    expectShare(19.9, 0.5, 0.5);
    expectShare(20, 0.6, 0.6);
    EXPECT_NEAR(stats::interpolatedShare(curve, 10.5), 0.35, 1e-15);
    EXPECT_NEAR(stats::interpolatedShare(curve, 20), 0.6, 1e-15);
    support::prove({"interpolatedShare", "a curve of three intervals", "by hand"},
                   stats::interpolatedShare(curve, 10.5), 0.35);
    EXPECT_EQ(stats::cumulativeShare({}, 5).atMost, 0);
}

TEST(QuantileDay, InvertsTheCurve) {
    stats::SeededRandom random(51);
    for (int run = 0; run < 30; ++run) {
        const auto estimate = stats::competingRisksNpmle(joined(simulatedBatches(4, {}, random)));
        for (double target = 0.05; target < 1; target += 0.05) {
            const auto day = stats::quantileDay(estimate.cause1, target, ShareOf::Everyone);
            if (!day) {
                EXPECT_LT(stats::cumulativeShare(estimate.cause1, 1e6).atMost, target);
                continue;
            }
            EXPECT_GE(stats::cumulativeShare(estimate.cause1, day->by).atLeast, target - 1e-8);
            EXPECT_LT(stats::cumulativeShare(estimate.cause1, day->after).atLeast, target);
            EXPECT_NEAR(stats::interpolatedShare(estimate.cause1, day->interpolated), target, 1e-8);
        }
    }
}

TEST(QuantileDay, OfThoseWithTheEventIsAlwaysReached) {
    const Curve curve{{0, 7, 0.1}, {7, 14, 0.1}};
    EXPECT_FALSE(stats::quantileDay(curve, 0.5, ShareOf::Everyone));
    EXPECT_EQ(stats::quantileDay(curve, 0.5, ShareOf::ThoseWithTheEvent)->by, 7);
    EXPECT_EQ(stats::quantileDay(curve, 1.0, ShareOf::ThoseWithTheEvent)->by, 14);
    EXPECT_FALSE(stats::quantileDay({}, 0.5, ShareOf::ThoseWithTheEvent));
}

TEST(QuantileDay, RefusesTargetsThatAreNoShare) {
    EXPECT_THROW((void)stats::quantileDay({}, 0, ShareOf::Everyone), std::domain_error);
    EXPECT_THROW((void)stats::quantileDay({}, 1.01, ShareOf::Everyone), std::domain_error);
}

}  // namespace
