// SPDX-License-Identifier: MIT
#include "stats/two_proportions/probability_of_superiority.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class SuperiorityReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(SuperiorityReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    each.expect({{"prob", stats::probabilityOfSuperiority(
                              {each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")})}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, SuperiorityReference, testing::ValuesIn(support::referenceCases({"prob_greater"})),
                         support::nameOfCase);

TEST(ProbabilityOfSuperiority, HasItsClosedFormForOneCuttingEach) {
    constexpr double square = std::numbers::pi * std::numbers::pi;
    EXPECT_NEAR(stats::probabilityOfSuperiority({1, 1, 0, 1}), 0.5 + 4 / square, 1e-13);
}

TEST(ProbabilityOfSuperiority, IsTheComplementWhenTheArmsOrTheOutcomesSwap) {
    for (const auto& table : enumeration::tablesOf(5, 8)) {
        const double one = stats::probabilityOfSuperiority(table);
        EXPECT_NEAR(
            one + stats::probabilityOfSuperiority({table.successes2, table.trials2, table.successes1, table.trials1}),
            1, 1e-12);
        EXPECT_NEAR(one + stats::probabilityOfSuperiority(stats::failuresOf(table)), 1, 1e-12);
    }
}

TEST(ProbabilityOfSuperiority, RisesWithTheFirstArmsSuccesses) {
    double before = 0;
    for (int successes = 0; successes <= 24; ++successes) {
        const double here = stats::probabilityOfSuperiority({successes, 24, 9, 20});
        EXPECT_GT(here, before);
        before = here;
    }
}

TEST(ProbabilityOfSuperiority, NearsTheNormalDistributionInLargeArms) {
    const double z = 0.004 / std::sqrt(0.24 / 1e5 + 0.24 / 1e5);
    EXPECT_NEAR(stats::probabilityOfSuperiority({60400, 100000, 60000, 100000}),
                0.5 * std::erfc(-z / std::numbers::sqrt2), 3e-4);
}

TEST(ProbabilityOfSuperiority, AgreesWithAdaptiveQuadratureOverTheRate) {
    // R 4.2.2: integrate(dbeta * pbeta, rel.tol = 1e-13); scipy 1.10.1's quad agrees to all digits given.
    EXPECT_NEAR(stats::probabilityOfSuperiority({210, 300, 180, 280}), 0.928566686300526, 1e-11);
    EXPECT_NEAR(stats::probabilityOfSuperiority({3, 5, 700, 1000}), 0.297390954219898, 1e-11);
}

TEST(ProbabilityOfSuperiority, IsAHalfWithoutAnyCutting) {
    EXPECT_NEAR(stats::probabilityOfSuperiority({0, 0, 0, 0}), 0.5, 1e-13);
    EXPECT_NEAR(stats::probabilityOfSuperiority({30, 60, 30, 60}), 0.5, 1e-13);
}

TEST(ProbabilityOfSuperiority, RefusesImpossibleCounts) {
    EXPECT_THROW(static_cast<void>(stats::probabilityOfSuperiority({5, 4, 1, 2})), std::domain_error);
}

}  // namespace
