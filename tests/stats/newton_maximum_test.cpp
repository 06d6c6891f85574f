// SPDX-License-Identifier: MIT
#include "stats/numeric/newton_maximum.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using stats::LocalQuadratic;

TEST(NewtonMaximum, TakesOneStepToTheTopOfAQuadratic) {
    // -(x - 3)^2 - (x - y)^2
    const auto hill = [](const std::vector<double>& at) {
        const double x = at[0], y = at[1];
        return LocalQuadratic{.value = -(x - 3) * (x - 3) - (x - y) * (x - y),
                              .gradient = {-2 * (x - 3) - 2 * (x - y), 2 * (x - y)},
                              .curvature = {.size = 2, .values = {4, -2, -2, 2}}};
    };
    const auto top = stats::newtonMaximum(hill, {-1, 2});
    EXPECT_TRUE(top.converged);
    EXPECT_EQ(top.iterations, 2);  // the second sees that nothing is left
    EXPECT_NEAR(top.x[0], 3, 1e-14);
    EXPECT_NEAR(top.x[1], 3, 1e-14);
}

TEST(NewtonMaximum, ClimbsFromWhereTheCurvatureIsTheWrongWay) {
    // exp(-x^2 / 2) curves upwards beyond 1.
    const auto bell = [](const std::vector<double>& at) {
        const double x = at[0], height = std::exp(-x * x / 2);
        return LocalQuadratic{
            .value = height, .gradient = {-x * height}, .curvature = {.size = 1, .values = {(1 - x * x) * height}}};
    };
    const auto top = stats::newtonMaximum(bell, {2.5});
    EXPECT_TRUE(top.converged);
    EXPECT_NEAR(top.x[0], 0, 1e-12);
}

TEST(NewtonMaximum, SaysThatARisingFunctionHasNone) {
    const auto rising = [](const std::vector<double>& at) {
        const double p = 1 / (1 + std::exp(at[0]));
        return LocalQuadratic{
            .value = std::log1p(-p), .gradient = {p}, .curvature = {.size = 1, .values = {p * (1 - p)}}};
    };
    const auto none = stats::newtonMaximum(rising, {0});
    EXPECT_FALSE(none.converged);
    EXPECT_GT(none.lastStep, 1e-3);
}

TEST(NewtonMaximum, StaysOutOfWhereThereIsNoValue) {
    // log x - x has its top at 1 and nothing at 0 or below; a full step from 8 would go to -48.
    const auto logarithm = [](const std::vector<double>& at) {
        const double x = at[0];
        if (x <= 0)
            return LocalQuadratic{.value = -std::numeric_limits<double>::infinity(), .gradient = {}, .curvature = {}};
        return LocalQuadratic{
            .value = std::log(x) - x, .gradient = {1 / x - 1}, .curvature = {.size = 1, .values = {1 / (x * x)}}};
    };
    EXPECT_NEAR(stats::newtonMaximum(logarithm, {8}).x[0], 1, 1e-14);
    const auto nowhere = stats::newtonMaximum(logarithm, {-1});
    EXPECT_FALSE(nowhere.converged);
    EXPECT_EQ(nowhere.iterations, 0);
}

}  // namespace
