// SPDX-License-Identifier: MIT
#include "stats/two_proportions/fisher_test.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class FisherMidReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(FisherMidReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const auto fisher = stats::fisherTest({each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")});
    each.expect({{"midp_minlike", fisher.midTwoSided},
                 {"midp_central", fisher.midCentral},
                 {"midp_less", fisher.midLess},
                 {"midp_greater", fisher.midGreater}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, FisherMidReference, testing::ValuesIn(support::referenceCases({"fisher_midp"})),
                         support::nameOfCase);

TEST(FisherTest, GivesFishersOwnFigureForTheTasterOfTea) {
    // Fisher (1935), The Design of Experiments, section 5: 17 of 70 arrangements are as good as 3 right of 4 or better.
    EXPECT_NEAR(stats::fisherTest({3, 4, 1, 4}).greater, 17.0 / 70, 1e-15);
}

TEST(FisherTest, AgreesWithCountingArrangementsOnEveryTable) {
    for (const auto& observed : enumeration::tablesOf(8, 11)) {
        SCOPED_TRACE(testing::Message() << observed.successes1 << "/8 against " << observed.successes2 << "/11");
        // Numbers of arrangements are whole, so what is tied needs no tolerance here.
        const auto arrangements = [](const stats::TwoCounts& table) {
            return enumeration::ways(table.trials1, table.successes1) *
                   enumeration::ways(table.trials2, table.successes2);
        };
        long double all = 0, less = 0, greater = 0, rarer = 0, tied = 0;
        for (const auto& table : enumeration::tablesOf(8, 11, observed.successes1 + observed.successes2)) {
            const long double each = arrangements(table);
            all += each;
            if (table.successes1 <= observed.successes1) less += each;
            if (table.successes1 >= observed.successes1) greater += each;
            if (each < arrangements(observed)) rarer += each;
            if (each == arrangements(observed)) tied += each;
        }
        const auto fisher = stats::fisherTest(observed);
        EXPECT_NEAR(fisher.less, static_cast<double>(less / all), 1e-14);
        EXPECT_NEAR(fisher.greater, static_cast<double>(greater / all), 1e-14);
        EXPECT_NEAR(fisher.twoSided, static_cast<double>((rarer + tied) / all), 1e-14);
        if (all > tied) {
            EXPECT_NEAR(fisher.midTwoSided, static_cast<double>((rarer + tied / 2) / all), 1e-14);
        }
    }
}

TEST(FisherTest, HasMidTailsThatAddUpToOne) {
    for (const stats::TwoCounts& counts :
         {stats::TwoCounts{18, 24, 9, 24}, {200, 300, 190, 280}, {700, 1000, 650, 1000}}) {
        const auto fisher = stats::fisherTest(counts);
        EXPECT_NEAR(fisher.midLess + fisher.midGreater, 1, 1e-12);
        const auto swapped = stats::fisherTest({counts.successes2, counts.trials2, counts.successes1, counts.trials1});
        EXPECT_NEAR(fisher.less, swapped.greater, 1e-12);
        EXPECT_NEAR(fisher.twoSided, swapped.twoSided, 1e-12);
    }
}

TEST(FisherTest, KeepsItsDigitsFarOutInTheTail) {
    // All of 60 against none of 60: one arrangement of C(120, 60) = 96614908840363322603893139521372656 (whole-number arithmetic).
    EXPECT_NEAR(stats::fisherTest({60, 60, 0, 60}).greater * 9.6614908840363322603893e34, 1, 1e-12);
}

TEST(FisherTest, IsOneWhereOnlyOneTableIsPossible) {
    for (const stats::TwoCounts& counts :
         {stats::TwoCounts{0, 12, 0, 12}, {12, 12, 20, 20}, {0, 0, 4, 9}, {0, 0, 0, 0}}) {
        const auto fisher = stats::fisherTest(counts);
        for (const double p : {fisher.twoSided, fisher.less, fisher.greater, fisher.midTwoSided, fisher.midCentral})
            EXPECT_EQ(p, 1);
    }
}

TEST(FisherTest, RefusesImpossibleCounts) {
    EXPECT_THROW(static_cast<void>(stats::fisherTest({5, 4, 1, 2})), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::fisherTest({1, 4, -1, 2})), std::domain_error);
}

}  // namespace
