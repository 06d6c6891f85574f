// SPDX-License-Identifier: MIT
#include "stats/numeric/log_factorial.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

namespace {

TEST(LogFactorial, GivesWholeFactorials) {
    EXPECT_EQ(stats::logFactorial(0), 0);
    EXPECT_EQ(stats::logFactorial(1), 0);
    EXPECT_NEAR(std::exp(stats::logFactorial(10)), 3628800, 1e-8);
    EXPECT_NEAR(stats::logFactorial(20), std::log(2432902008176640000.0), 1e-14);
}

TEST(LogFactorial, GrowsByTheLogarithmOfEachNumberAlsoWhereTheTableEnds) {
    for (const int n : {2, 100, 1022, 1023, 1024, 1025, 5000, 1000000}) {
        const double step = stats::logFactorial(n) - stats::logFactorial(n - 1);
        EXPECT_NEAR(step, std::log(n), 4e-16 * stats::logFactorial(n) + 1e-15) << n;
    }
}

TEST(LogFactorial, AgreesWithTheGammaFunction) {
    for (const int n : {3, 50, 1023, 1024, 123456}) {
        EXPECT_NEAR(stats::logFactorial(n) / std::lgamma(n + 1.0), 1, 1e-15) << n;
    }
}

TEST(LogChoose, CountsSubsets) {
    EXPECT_NEAR(std::exp(stats::logChoose(5, 2)), 10, 1e-13);
    EXPECT_EQ(stats::logChoose(7, 0), 0);
    EXPECT_NEAR(stats::logChoose(60, 30), std::log(118264581564861424.0), 1e-13);
}

TEST(LogFactorial, RefusesNegativeNumbers) {
    EXPECT_THROW(static_cast<void>(stats::logFactorial(-1)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::logChoose(3, 4)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::logChoose(3, -1)), std::domain_error);
}

}  // namespace
