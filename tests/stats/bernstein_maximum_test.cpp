// SPDX-License-Identifier: MIT
#include "stats/numeric/bernstein_maximum.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <stdexcept>
#include <vector>

#include "tests/stats/two_rates_enumeration.h"

namespace {

TEST(BernsteinMaximum, IsTheHeightOfOneBinomialTerm) {
    // C(N, k) p^k (1 - p)^(N - k) is highest at p = k / N.
    for (const int k : {1, 5, 23}) {
        std::vector<double> coefficients(25);
        coefficients[static_cast<std::size_t>(k)] = 1;
        EXPECT_NEAR(stats::bernsteinMaximum(coefficients), static_cast<double>(enumeration::binomial(24, k, k / 24.0L)),
                    1e-13);
    }
}

TEST(BernsteinMaximum, TakesTheEndsWhereTheyAreHighest) {
    EXPECT_EQ(stats::bernsteinMaximum(std::vector<double>{0.4, 0.1, 0.2}), 0.4);
    EXPECT_EQ(stats::bernsteinMaximum(std::vector<double>{0.1, 0.1, 0.3}), 0.3);
    EXPECT_EQ(stats::bernsteinMaximum(std::vector<double>{0.7}), 0.7);
}

TEST(BernsteinMaximum, IsFoundAlsoOnAHillInTheMiddleOfTheGrid) {
    std::vector<double> coefficients(7);
    coefficients[3] = 1;
    EXPECT_NEAR(stats::bernsteinMaximum(coefficients), 20.0 / 64, 1e-13);
}

TEST(BernsteinMaximum, IsNeverBelowAFineGridOverRandomCoefficients) {
    constexpr unsigned seed = 20260312;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 30; ++round) {
        std::vector<double> coefficients(3 + random() % 60);
        for (double& each : coefficients) each = static_cast<double>(random() % 1000) / 1000;
        double highest = 0;
        for (int i = 0; i <= 5000; ++i) highest = std::max(highest, stats::bernsteinSum(coefficients, i / 5000.0));
        const double maximum = stats::bernsteinMaximum(coefficients);
        EXPECT_GE(maximum, highest - 1e-12);
        EXPECT_LE(maximum, highest + 1e-4);
    }
}

TEST(BernsteinSum, AddsBinomialTerms) {
    const std::vector<double> coefficients{0.3, 0.9, 0, 0.25, 1, 0.5};
    for (const double p : {0.0, 1e-9, 0.2, 0.5, 0.999, 1.0}) {
        long double sum = 0;
        for (int k = 0; k <= 5; ++k) sum += coefficients[static_cast<std::size_t>(k)] * enumeration::binomial(5, k, p);
        EXPECT_NEAR(stats::bernsteinSum(coefficients, p), static_cast<double>(sum), 1e-15);
    }
}

TEST(BernsteinMaximum, RefusesNoCoefficientsAndNoProbability) {
    EXPECT_THROW(static_cast<void>(stats::bernsteinMaximum({})), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::bernsteinSum({}, 0.5)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::bernsteinSum(std::vector<double>{1.0}, 1.5)), std::domain_error);
}

}  // namespace
