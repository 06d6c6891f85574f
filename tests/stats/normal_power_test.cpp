// SPDX-License-Identifier: MIT
#include "stats/planning/normal_power.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

class NormalPower : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(NormalPower, GivesTheReferenceValue) {
    const auto& each = GetParam();
    const double rate1 = each.number("p1"), rate2 = each.number("p2"), alpha = each.number("alpha");
    const bool asksForTrials = each.inputs.contains("power");
    const std::optional<double> trials =
        asksForTrials ? stats::trialsForNormalPower(each.number("power"), rate1, rate2, alpha) : each.number("n");
    ASSERT_TRUE(trials);
    each.expect({{"n", trials}, {"power", stats::normalPower(*trials, rate1, rate2, alpha)}});
}

INSTANTIATE_TEST_SUITE_P(Reference, NormalPower, testing::ValuesIn(support::referenceCases({"power_normal"})),
                         support::nameOfCase);

TEST(NormalPower, IsThatOfPowerPropTest) {
    // R 4.2.2, stats::power.prop.test; the number per arm is R's to its own tolerance, six digits.
    EXPECT_NEAR(stats::normalPower(30, 0.1, 0.4, 0.05), 0.7796640609, 1e-10);
    EXPECT_NEAR(stats::normalPower(15, 0.9, 0.6, 0.01), 0.2347650949, 2e-10);
    EXPECT_NEAR(*stats::trialsForNormalPower(0.8, 0.2, 0.4, 0.05), 81.2242411518, 1e-3);
    support::prove({"normalPower", "30 per arm, 0.1 and 0.4", "R 4.2.2 power.prop.test"},
                   stats::normalPower(30, 0.1, 0.4, 0.05), 0.7796640609);
    support::prove({"trialsForNormalPower", "0.2 and 0.4, power 0.8", "R 4.2.2 power.prop.test, six digits"},
                   *stats::trialsForNormalPower(0.8, 0.2, 0.4, 0.05), 81.2242411518);
}

TEST(NormalPower, IsReachedByTheNumberForIt) {
    for (const double power : {0.1, 0.5, 0.8, 0.99})
        for (const double rate : {0.0, 0.3, 0.6, 1.0}) {
            const auto trials = stats::trialsForNormalPower(power, 0.5, rate, 0.05);
            ASSERT_TRUE(trials);
            EXPECT_NEAR(stats::normalPower(*trials, 0.5, rate, 0.05), power, 1e-11);
        }
}

TEST(NormalPower, AnswersAtTheEdges) {
    EXPECT_EQ(stats::normalPower(10, 0.4, 0.4, 0.05), 0.025);
    EXPECT_EQ(stats::normalPower(10, 0, 0, 0.05), 0.025);
    EXPECT_EQ(stats::normalPower(10, 0, 1, 0.05), 1);
    EXPECT_EQ(stats::normalPower(1, 0, 1, 0.05), 0);
    EXPECT_FALSE(stats::trialsForNormalPower(0.8, 0.4, 0.4, 0.05));
    EXPECT_FALSE(stats::trialsForNormalPower(0.02, 0.4, 0.5, 0.05));
    EXPECT_NEAR(*stats::trialsForNormalPower(0.8, 0, 1, 0.05), 3.8414588 / 2, 1e-6);
}

TEST(NormalPower, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::normalPower(0, 0.4, 0.5, 0.05), std::domain_error);
    EXPECT_THROW((void)stats::normalPower(INFINITY, 0.4, 0.5, 0.05), std::domain_error);
    EXPECT_THROW((void)stats::normalPower(5, -0.4, 0.5, 0.05), std::domain_error);
    EXPECT_THROW((void)stats::normalPower(5, 0.4, 0.5, 1), std::domain_error);
    EXPECT_THROW((void)stats::trialsForNormalPower(1, 0.4, 0.5, 0.05), std::domain_error);
}

}  // namespace
