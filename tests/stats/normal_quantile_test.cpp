// SPDX-License-Identifier: MIT
#include "stats/numeric/normal_quantile.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace {

TEST(NormalQuantile, GivesTheTabulatedValues) {
    EXPECT_NEAR(stats::normalQuantile(0.975), 1.9599639845400542355, 1e-15);
    EXPECT_NEAR(stats::normalQuantile(0.95), 1.6448536269514722, 1e-15);
    EXPECT_NEAR(stats::normalQuantile(0.995), 2.5758293035489004, 1e-15);
    EXPECT_NEAR(stats::normalQuantileOfLevel(0.95), 1.9599639845400542355, 1e-15);
    EXPECT_NEAR(stats::normalQuantileOfLevel(0.9), 1.6448536269514722, 1e-15);
}

TEST(NormalQuantile, UndoesTheDistributionFunction) {
    for (const double p : {1e-300, 1e-20, 1e-5, 0.1, 0.5, 0.9, 0.99999})
        EXPECT_NEAR(0.5 * std::erfc(-stats::normalQuantile(p) / std::numbers::sqrt2) / p, 1, 2e-12) << p;
}

TEST(NormalQuantile, IsOddAroundAHalf) {
    EXPECT_EQ(stats::normalQuantile(0.5), 0);
    for (const double p : {0.001, 0.2, 0.4375})
        EXPECT_NEAR(stats::normalQuantile(p), -stats::normalQuantile(1 - p), 1e-14);
}

TEST(NormalQuantile, RefusesWhatIsNoProbability) {
    for (const double p : {0.0, 1.0, -0.1, 1.1, std::nan("")}) {
        EXPECT_THROW(static_cast<void>(stats::normalQuantile(p)), std::domain_error);
        EXPECT_THROW(static_cast<void>(stats::normalQuantileOfLevel(p)), std::domain_error);
    }
}

}  // namespace
