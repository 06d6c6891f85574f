// SPDX-License-Identifier: MIT
#include "stats/numeric/newton.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/numeric/compensated_sum.h"

namespace {

using stats::ValueAndSlope;

TEST(NewtonRoot, FindsTheRootOfAFallingFunction) {
    const auto root = stats::newtonRootOfFalling(
        [](double x) {
            return ValueAndSlope{std::cos(x), -std::sin(x)};
        },
        0, 3, 0.2);
    EXPECT_TRUE(root.converged);
    EXPECT_NEAR(root.x, std::acos(0.0), 1e-15);
    EXPECT_LT(root.iterations, 12);
}

TEST(NewtonRoot, KeepsInsideWhereThePlainMethodRunsAway) {
    // -atan(x - 1): from x = 8 the plain method leaves for infinity.
    const auto root = stats::newtonRootOfFalling(
        [](double x) {
            return ValueAndSlope{-std::atan(x - 1), -1 / (1 + (x - 1) * (x - 1))};
        },
        -40, 50, 8);
    EXPECT_TRUE(root.converged);
    EXPECT_NEAR(root.x, 1, 1e-14);
}

TEST(NewtonRoot, SurvivesPolesAtBothEnds) {
    const auto root = stats::newtonRootOfFalling(
        [](double x) {
            return ValueAndSlope{1e-9 / x - 5 / (1 - x), -1e-9 / (x * x) - 5 / ((1 - x) * (1 - x))};
        },
        0, 1, 0.5);
    EXPECT_TRUE(root.converged);
    EXPECT_NEAR(root.x / (1e-9 / (5 + 1e-9)), 1, 1e-12);
}

TEST(NewtonRoot, GoesToTheEndWhereThereIsNoRoot) {
    const auto root = stats::newtonRootOfFalling([](double x) { return ValueAndSlope{2 - x, -1}; }, 0, 1, 0.5);
    EXPECT_NEAR(root.x, 1, 1e-12);
}

TEST(NewtonRoot, RefusesAStartOutside) {
    const auto falling = [](double x) { return ValueAndSlope{-x, -1}; };
    EXPECT_THROW((void)stats::newtonRootOfFalling(falling, 0, 1, 1), std::domain_error);
    EXPECT_THROW((void)stats::newtonRootOfFalling(falling, 0, 1, NAN), std::domain_error);
}

TEST(CompensatedSum, KeepsWhatRoundingDrops) {
    stats::CompensatedSum sum;
    for (const double term : {1.0, 1e100, 1.0, -1e100}) sum.add(term);
    EXPECT_EQ(sum.value(), 2);
    stats::CompensatedSum tenths;
    for (int i = 0; i < 10'000'000; ++i) tenths.add(0.1);
    EXPECT_NEAR(tenths.value(), 1e6, 1e-9);
}

}  // namespace
