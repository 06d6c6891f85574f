// SPDX-License-Identifier: MIT
#include "stats/numeric/bracketed_root.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

namespace {

TEST(BracketedRoot, FindsRootsToTheLastDigits) {
    EXPECT_NEAR(stats::bracketedRoot([](double x) { return x * x - 2; }, 0, 2), std::sqrt(2.0), 5e-16);
    EXPECT_NEAR(stats::bracketedRoot([](double x) { return std::cos(x) - x; }, 0, 1), 0.7390851332151607, 5e-16);
    EXPECT_NEAR(stats::bracketedRoot([](double x) { return std::exp(x) - 1e-8; }, -700, 700), std::log(1e-8), 1e-14);
}

TEST(BracketedRoot, CopesWithAFlatAndWithAStepFunction) {
    EXPECT_NEAR(stats::bracketedRoot([](double x) { return std::pow(x - 1, 9); }, -3, 4.5), 1, 0.02);
    EXPECT_NEAR(stats::bracketedRoot([](double x) { return x < 0.3 ? -1.0 : 1.0; }, 0, 1), 0.3, 1e-15);
}

TEST(BracketedRoot, TakesAnEndThatIsARoot) {
    EXPECT_EQ(stats::bracketedRoot([](double x) { return x; }, 0, 1), 0);
    EXPECT_EQ(stats::bracketedRoot([](double x) { return x; }, -1, 0), 0);
}

TEST(BracketedRoot, CallsItsFunctionFewerTimesThanHalvingWould) {
    int calls = 0;
    static_cast<void>(stats::bracketedRoot(
        [&calls](double x) {
            ++calls;
            return std::expm1(x) - 0.5;
        },
        -10, 10));
    EXPECT_LT(calls, 25);
}

TEST(BracketedRoot, RefusesABracketWithoutAChangeOfSign) {
    EXPECT_THROW(static_cast<void>(stats::bracketedRoot([](double) { return 1.0; }, 0, 1)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::bracketedRoot([](double) { return std::nan(""); }, 0, 1)), std::domain_error);
}

TEST(LastPointWhere, StopsBesideTheFirstPointWhereTheClaimFails) {
    const auto holds = [](double x) { return x * x <= 2; };
    const double last = stats::lastPointWhere(holds, 0, 5);
    EXPECT_TRUE(holds(last));
    EXPECT_FALSE(holds(std::nextafter(last, 5)));
    EXPECT_NEAR(stats::lastPointWhere(holds, 0, -5), -std::sqrt(2.0), 5e-16);
}

}  // namespace
