// SPDX-License-Identifier: MIT
#include "core/batch/tally.h"

#include <gtest/gtest.h>

#include <limits>

#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::stickingDay;

TEST(Tally, AddsUpAllChecksInAnyOrder) {
    const core::BatchRecord batch =
        aBatch().stuck(24).looked(14, {.rooted = 9, .withdrawn = 2}).looked(7, {.rooted = 3, .lost = 1});
    const core::Tally tally = core::tallyOf(batch.batch, batch.checks);
    EXPECT_EQ(tally, (core::Tally{24, 12, 1, 2, core::addDays(stickingDay(), 14)}));
    EXPECT_EQ(tally.undecided(), 9);
}

TEST(Tally, CountsTheLastDayIn) {
    const core::BatchRecord batch = aBatch().stuck(24).looked(7, {.rooted = 3}).looked(14, {.rooted = 9});
    EXPECT_EQ(core::tallyOf(batch.batch, batch.checks, core::addDays(stickingDay(), 13)).rooted, 3);
    EXPECT_EQ(core::tallyOf(batch.batch, batch.checks, core::addDays(stickingDay(), 14)).rooted, 12);
}

TEST(Tally, SaysWhenNobodyHasLooked) {
    const core::BatchRecord batch = aBatch().stuck(24);
    const core::Tally tally = core::tallyOf(batch.batch, batch.checks);
    EXPECT_EQ(tally.undecided(), 24);
    EXPECT_FALSE(tally.lastCheckedOn);
}

TEST(Tally, ClosesABatchWithNothingUndecidedOrByHand) {
    const core::BatchRecord open = aBatch().stuck(24).looked(7, {.rooted = 23});
    const core::BatchRecord full = aBatch().stuck(24).looked(7, {.rooted = 20, .lost = 3, .withdrawn = 1});
    const core::BatchRecord byHand = aBatch().stuck(24).looked(7, {.rooted = 20}).closed(9);
    const auto closed = [](const core::BatchRecord& record) {
        return core::isClosed(record.batch, core::tallyOf(record.batch, record.checks));
    };
    EXPECT_FALSE(closed(open));
    EXPECT_TRUE(closed(full));
    EXPECT_TRUE(closed(byHand));
}

TEST(Tally, StaysWithinAnIntWhateverTheFileSays) {
    constexpr int most = std::numeric_limits<int>::max();
    const core::BatchRecord batch = aBatch()
                                        .looked(7, {.rooted = most, .lost = most, .withdrawn = most})
                                        .looked(8, {.rooted = most, .lost = most, .withdrawn = most});
    EXPECT_LT(core::tallyOf(batch.batch, batch.checks).undecided(), 0);
}

TEST(Check, AddsUpItsLosses) {
    core::Check check;
    EXPECT_EQ(check.lost(), 0);
    check.losses = {{support::rotted, 2}, {{}, 3}};
    EXPECT_EQ(check.lost(), 5);
    check.losses = {{support::rotted, std::numeric_limits<int>::max()}, {{}, std::numeric_limits<int>::max()}};
    EXPECT_GT(check.lost(), 100'000);
}

}  // namespace
