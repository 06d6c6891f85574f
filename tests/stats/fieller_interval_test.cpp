// SPDX-License-Identifier: MIT
#include "stats/regression/fieller_interval.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "tests/stats/regression_cases.h"

namespace {

TEST(FiellerInterval, IsWhereTheTestCrossesItsQuantile) {
    // scipy.optimize.brentq 1.10 on (2 - 1.5 r)^2 - 1.96^2 (0.09 - 0.02 r + 0.04 r^2)
    const auto interval = stats::fiellerInterval({2, 1.5, 0.09, 0.04, 0.01}, 1.96);
    ASSERT_TRUE(interval);
    const std::string source = "a ratio of 2 to 1.5", by = "scipy.optimize.brentq 1.10";
    expectFigure("fiellerInterval", source, by, interval->low, 0.91007067534537, 1e-13);
    expectFigure("fiellerInterval", source, by, interval->high, 1.9154153154499987, 1e-13);
}

TEST(FiellerInterval, HasBothEndsOnTheQuantileWhateverTheEstimates) {
    stats::SeededRandom random(12);
    int bounded = 0;
    for (int run = 0; run < 5000; ++run) {
        const double sd1 = 0.05 + random.uniform(), sd2 = 0.05 + random.uniform(), r = 1.8 * random.uniform() - 0.9;
        const stats::RatioOfEstimates e{3 * random.normal(), 3 * random.normal(), sd1 * sd1, sd2 * sd2, r * sd1 * sd2};
        const auto interval = stats::fiellerInterval(e, 2);
        ASSERT_EQ(interval.has_value(), std::abs(e.denominator) > 2 * sd2) << run;
        if (!interval) continue;
        ++bounded;
        ASSERT_LE(interval->low, e.numerator / e.denominator) << run;
        ASSERT_GE(interval->high, e.numerator / e.denominator) << run;
        for (const double end : {interval->low, interval->high}) {
            const double distance = e.numerator - end * e.denominator;
            const double error =
                std::sqrt(e.numeratorVariance - 2 * end * e.covariance + end * end * e.denominatorVariance);
            ASSERT_NEAR(std::abs(distance) / error, 2, 1e-6) << run;
        }
    }
    EXPECT_GT(bounded, 1000);
}

TEST(FiellerInterval, IsTheRatioItselfWithoutVariance) {
    const auto point = stats::fiellerInterval({3, -2, 0, 0, 0}, 2);
    EXPECT_EQ(point->low, -1.5);
    EXPECT_EQ(point->high, -1.5);
    EXPECT_EQ(stats::fiellerInterval({0, 2, 0, 0, 0}, 2)->low, 0);
}

TEST(FiellerInterval, IsUnboundedWhereTheDenominatorMayBeZero) {
    EXPECT_FALSE(stats::fiellerInterval({1, 1, 1, 0.25, 0}, 2));
    EXPECT_FALSE(stats::fiellerInterval({1, 0, 1, 0, 0}, 2));
}

TEST(FiellerInterval, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::fiellerInterval({1, 1, -1, 1, 0}, 2), std::domain_error);
    EXPECT_THROW((void)stats::fiellerInterval({NAN, 1, 1, 1, 0}, 2), std::domain_error);
    EXPECT_THROW((void)stats::fiellerInterval({1, 1, 1, 1, 0}, 0), std::domain_error);
}

}  // namespace
