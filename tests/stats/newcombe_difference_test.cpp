// SPDX-License-Identifier: MIT
#include "stats/two_proportions/newcombe_difference.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class NewcombeDifferenceReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(NewcombeDifferenceReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const stats::TwoCounts counts{each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")};
    const stats::Interval limits = each.flag("cc") ? stats::newcombeContinuityDifference(counts, each.number("conf"))
                                                   : stats::newcombeDifference(counts, each.number("conf"));
    each.expect({{"lower", limits.low}, {"upper", limits.high}}, {"estimate"});  // p1 - p2 needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, NewcombeDifferenceReference,
                         testing::ValuesIn(support::referenceCases({"diff_newcombe"})), support::nameOfCase);

TEST(NewcombeDifference, GivesTheValuesPrintedInNewcombe1998) {
    // Newcombe (1998), Stat. Med. 17, 873-890, table II, method 10: contrasts (a) 56/70 - 48/80 and (b) 9/10 - 3/10.
    const auto a = stats::newcombeDifference({56, 70, 48, 80}, 0.95);
    EXPECT_NEAR(a.low, 0.0524, 0.00005);
    EXPECT_NEAR(a.high, 0.3339, 0.00005);
    const auto b = stats::newcombeDifference({9, 10, 3, 10}, 0.95);
    EXPECT_NEAR(b.low, 0.1705, 0.00005);
    EXPECT_NEAR(b.high, 0.8090, 0.00005);
}

TEST(NewcombeDifference, ChangesSignWhenTheArmsSwap) {
    for (const auto& table : enumeration::tablesOf(9, 14)) {
        const auto one = stats::newcombeDifference(table, 0.9);
        const auto other =
            stats::newcombeDifference({table.successes2, table.trials2, table.successes1, table.trials1}, 0.9);
        EXPECT_NEAR(one.low, -other.high, 1e-15);
        EXPECT_NEAR(one.high, -other.low, 1e-15);
    }
}

TEST(NewcombeDifference, StaysWithinItsRangeAroundTheObservedDifference) {
    for (const auto& table : enumeration::tablesOf(3, 8)) {
        const double observed = table.successes1 / 3.0 - table.successes2 / 8.0;
        for (const auto& limits :
             {stats::newcombeDifference(table, 0.99), stats::newcombeContinuityDifference(table, 0.99)}) {
            EXPECT_LE(-1, limits.low);
            EXPECT_LE(limits.low, observed);
            EXPECT_LE(observed, limits.high);
            EXPECT_LE(limits.high, 1);
        }
    }
}

TEST(NewcombeDifference, CoversOnAverageAsItsCommentSays) {
    double worst = 1, sum = 0;
    int points = 0;
    for (int i = 1; i < 20; ++i) {
        for (int j = 1; j < 20; ++j) {
            long double covered = 0;
            for (const auto& table : enumeration::tablesOf(20, 20)) {
                const auto limits = stats::newcombeDifference(table, 0.95);
                if (limits.low <= (i - j) / 20.0 && (i - j) / 20.0 <= limits.high)
                    covered += enumeration::binomial(20, table.successes1, i / 20.0L) *
                               enumeration::binomial(20, table.successes2, j / 20.0L);
            }
            worst = std::min(worst, static_cast<double>(covered));
            sum += static_cast<double>(covered);
            ++points;
        }
    }
    EXPECT_NEAR(sum / points, 0.952, 0.006);
    EXPECT_GT(worst, 0.89);
}

TEST(NewcombeDifference, KnowsNothingOfAnEmptyArm) {
    EXPECT_EQ(stats::newcombeDifference({0, 0, 4, 9}, 0.95).low, -1);
    EXPECT_EQ(stats::newcombeDifference({4, 9, 0, 0}, 0.95).high, 1);
}

TEST(NewcombeDifference, RefusesImpossibleCountsAndLevels) {
    EXPECT_THROW(static_cast<void>(stats::newcombeDifference({5, 4, 1, 2}, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::newcombeDifference({1, 4, -1, 2}, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::newcombeContinuityDifference({1, 4, 1, 2}, 1)), std::domain_error);
}

}  // namespace
