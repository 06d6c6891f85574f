// SPDX-License-Identifier: MIT
#include "core/trial/allocation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace {

TEST(Allocation, GivesArmsEqualNumbers) {
    const core::Allocation allocation = core::allocateByChance(24, 2, 1);
    EXPECT_EQ(allocation.armOfCutting.size(), 24U);
    EXPECT_THAT(allocation.perArm, testing::ElementsAre(12, 12));
    for (int arm = 0; arm < 2; ++arm) EXPECT_EQ(std::ranges::count(allocation.armOfCutting, arm), 12);
}

TEST(Allocation, LetsChancePickWhoGetsWhatIsLeftOver) {
    std::set<std::vector<int>> seen;
    for (std::uint32_t seed = 0; seed < 60; ++seed) {
        const core::Allocation allocation = core::allocateByChance(10, 3, seed);
        std::vector<int> sorted = allocation.perArm;
        std::ranges::sort(sorted);
        EXPECT_THAT(sorted, testing::ElementsAre(3, 3, 4));
        seen.insert(allocation.perArm);
    }
    EXPECT_EQ(seen.size(), 3U);
}

TEST(Allocation, IsTheSameForTheSameSeed) {
    EXPECT_EQ(core::allocateByChance(31, 2, 4711).armOfCutting, core::allocateByChance(31, 2, 4711).armOfCutting);
    EXPECT_NE(core::allocateByChance(31, 2, 4711).armOfCutting, core::allocateByChance(31, 2, 4712).armOfCutting);
}

TEST(Allocation, ManagesFewerCuttingsThanArms) {
    const core::Allocation allocation = core::allocateByChance(1, 4, 9);
    EXPECT_EQ(allocation.perArm.size(), 4U);
    EXPECT_EQ(std::ranges::count(allocation.perArm, 1), 1);
    EXPECT_EQ(std::ranges::count(allocation.perArm, 0), 3);
}

}  // namespace
