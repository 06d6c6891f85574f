// SPDX-License-Identifier: MIT
#include "stats/two_proportions/fisher_ordering.h"

#include <gtest/gtest.h>

#include "stats/two_proportions/fisher_test.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::FisherSide;

TEST(FisherPs, AreThoseOfFishersTestTableByTable) {
    for (int total = 0; total <= 22; ++total) {
        const auto law = stats::hypergeometricProbabilities(9, 13, total);
        const auto less = stats::fisherPs(law, FisherSide::Less), greater = stats::fisherPs(law, FisherSide::Greater);
        const auto both = stats::fisherPs(law, FisherSide::TwoSided);
        std::size_t i = 0;
        for (const auto& table : enumeration::tablesOf(9, 13, total)) {
            const auto fisher = stats::fisherTest(table);
            EXPECT_NEAR(less[i], fisher.less, 1e-14);
            EXPECT_NEAR(greater[i], fisher.greater, 1e-14);
            EXPECT_NEAR(both[i], fisher.twoSided, 1e-14);
            support::prove({"fisherPs", "all tables of 9 and 13", "Fisher's test of each"}, both[i], fisher.twoSided);
            ++i;
        }
        ASSERT_EQ(i, less.size());
    }
}

TEST(LargestFisherP, IsTheProbabilityOfTheTablesUpToIt) {
    const auto law = stats::hypergeometricProbabilities(8, 11, 7);
    const auto ps = stats::fisherPs(law, FisherSide::TwoSided);
    for (const double threshold : {0.0, 0.01, 0.05, 0.3, 1.0}) {
        double sum = 0;
        for (std::size_t i = 0; i < ps.size(); ++i)
            if (ps[i] <= threshold) sum += law.probabilities[i];
        EXPECT_NEAR(stats::largestFisherPUpTo(ps, threshold), sum, 1e-14);
        support::prove({"largestFisherPUpTo", "8 and 11 with 7 in all", "sum of the law"},
                       stats::largestFisherPUpTo(ps, threshold), sum);
    }
}

TEST(LargestFisherP, CountsATieAsReached) {
    EXPECT_TRUE(stats::isFisherPUpTo(0.05 * (1 + 1e-12), 0.05));
    EXPECT_FALSE(stats::isFisherPUpTo(0.05 * (1 + 1e-9), 0.05));
    support::prove({"isFisherPUpTo", "a tie within 1e-12", "reached"}, stats::isFisherPUpTo(0.05 * (1 + 1e-12), 0.05),
                   1);
}

}  // namespace
