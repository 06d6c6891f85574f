// SPDX-License-Identifier: MIT
#include "stats/planning/random_allocation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <stdexcept>
#include <vector>

#include "stats/numeric/distribution_tails.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::SeededRandom;

int imbalance(const std::vector<int>& allocation, std::size_t first, std::size_t count, int arms) {
    std::vector<int> counts(static_cast<std::size_t>(arms), 0);
    for (std::size_t i = first; i < first + count; ++i) ++counts.at(static_cast<std::size_t>(allocation[i]));
    const auto [least, most] = std::minmax_element(counts.begin(), counts.end());
    return *most - *least;
}

TEST(RandomAllocation, IsEvenWithinEachBlockAndOverAll) {
    SeededRandom random(71);
    for (int run = 0; run < 300; ++run) {
        const int arms = 1 + static_cast<int>(random.below(6));
        std::vector<int> sizes;
        for (int block = 0; block < 5; ++block) sizes.push_back(static_cast<int>(random.below(15)));
        const std::vector<int> allocation = stats::allocateWithinBlocks(sizes, arms, random);
        std::size_t first = 0;
        for (const int size : sizes) {
            ASSERT_LE(imbalance(allocation, first, static_cast<std::size_t>(size), arms), 1);
            first += static_cast<std::size_t>(size);
        }
        ASSERT_EQ(allocation.size(), first);
        ASSERT_LE(imbalance(allocation, 0, first, arms), 1);
        support::proveWithin(
            {"allocateWithinBlocks", "300 random deals", "arms counted: by how much more than one apart"},
            std::max(0, imbalance(allocation, 0, first, arms) - 1));
    }
}

TEST(RandomAllocation, CutsUnitsIntoBlocksWithTheRestLast) {
    SeededRandom random(72);
    const std::vector<int> allocation = stats::allocateInBlocks(23, 2, 6, random);
    ASSERT_EQ(allocation.size(), 23U);
    for (std::size_t first = 0; first < 18; first += 6) EXPECT_EQ(imbalance(allocation, first, 6, 2), 0);
    EXPECT_EQ(imbalance(allocation, 18, 5, 2), 1);
}

TEST(RandomAllocation, GivesEachOrderAndEachLeftOverEquallyOften) {
    SeededRandom random(73);
    std::map<std::vector<int>, double> seen;
    for (int run = 0; run < 30'000; ++run) ++seen[stats::allocateInBlocks(5, 2, 5, random)];
    ASSERT_EQ(seen.size(), 20U) << "10 orders for either arm's having three";
    double chiSquare = 0;
    for (const auto& [order, count] : seen) chiSquare += (count - 1500) * (count - 1500) / 1500;
    EXPECT_GT(stats::chiSquareTail(chiSquare, 19), 1e-4);
    for (const auto& [order, count] : seen)
        support::prove({"allocateInBlocks", "30 000 deals of five to two arms", "each of 20 orders one time in 20"},
                       count / 30'000, 0.05);
}

TEST(RandomAllocation, IsTheSameForTheSameSeed) {
    SeededRandom one(5), other(5), third(6);
    const auto first = stats::allocateInBlocks(60, 3, 12, one);
    EXPECT_EQ(first, stats::allocateInBlocks(60, 3, 12, other));
    EXPECT_NE(first, stats::allocateInBlocks(60, 3, 12, third));
}

TEST(RandomAllocation, OfNothingIsNothing) {
    SeededRandom random(74);
    EXPECT_TRUE(stats::allocateInBlocks(0, 2, 4, random).empty());
    EXPECT_TRUE(stats::allocateWithinBlocks(std::vector<int>{}, 3, random).empty());
    EXPECT_EQ(stats::allocateInBlocks(3, 1, 2, random), (std::vector<int>{0, 0, 0}));
    EXPECT_EQ(stats::allocateInBlocks(1, 5, 10, random).size(), 1U);
}

TEST(RandomAllocation, RefusesCountsThatCannotBe) {
    SeededRandom random(75);
    EXPECT_THROW((void)stats::allocateInBlocks(-1, 2, 4, random), std::domain_error);
    EXPECT_THROW((void)stats::allocateInBlocks(4, 0, 4, random), std::domain_error);
    EXPECT_THROW((void)stats::allocateInBlocks(4, 2, 0, random), std::domain_error);
    EXPECT_THROW((void)stats::allocateWithinBlocks(std::vector<int>{3, -1}, 2, random), std::domain_error);
}

}  // namespace
