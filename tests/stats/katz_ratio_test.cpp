// SPDX-License-Identifier: MIT
#include "stats/two_proportions/katz_ratio.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/support/reference_cases.h"

namespace {

class KatzRatioReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(KatzRatioReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const auto ratio =
        stats::katzRatio({each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")}, each.number("conf"));
    each.expect({{"estimate", ratio.estimate},
                 {"lower", ratio.limits.low},
                 {"upper", ratio.limits.high},
                 {"se_log", ratio.standardErrorOfLog}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, KatzRatioReference, testing::ValuesIn(support::referenceCases({"rr_katz"})),
                         support::nameOfCase);

TEST(KatzRatio, TurnsOverWhenTheArmsSwap) {
    const auto there = stats::katzRatio({7, 34, 3, 29}, 0.95), back = stats::katzRatio({3, 29, 7, 34}, 0.95);
    EXPECT_NEAR(*there.estimate * *back.estimate, 1, 1e-15);
    EXPECT_NEAR(there.limits.low * back.limits.high, 1, 1e-14);
    EXPECT_NEAR(there.limits.high * back.limits.low, 1, 1e-14);
    EXPECT_EQ(*there.standardErrorOfLog, *back.standardErrorOfLog);
}

TEST(KatzRatio, IsSymmetricAroundItsEstimateOnTheLogScale) {
    const auto ratio = stats::katzRatio({12, 40, 20, 50}, 0.9);
    EXPECT_NEAR(ratio.limits.low * ratio.limits.high, *ratio.estimate * *ratio.estimate, 1e-15);
}

TEST(KatzRatio, RefusesImpossibleCountsAndLevels) {
    EXPECT_THROW((void)stats::katzRatio({5, 4, 1, 4}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::katzRatio({1, 4, -1, 4}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::katzRatio({1, 4, 1, 4}, 0), std::domain_error);
}

}  // namespace
