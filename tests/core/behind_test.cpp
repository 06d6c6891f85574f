// SPDX-License-Identifier: MIT
#include "core/comparison/behind.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using support::aBatch;
using testing::HasSubstr;

/// Eight earlier batches of 20 that rooted 14 to 16, and one going on, all looked at on the plant's horizon day.
std::vector<core::BatchRecord> pastAndOneWith(int rooted) {
    std::vector<core::BatchRecord> batches;
    for (const int earlier : {15, 16, 14, 15, 16, 15, 14, 15})
        batches.push_back(aBatch().stuck(20).looked(14, {.rooted = 7}).looked(35, {.rooted = earlier - 7}));
    batches.push_back(aBatch()
                          .code("GOING-ON")
                          .stuck(20)
                          .stuckOn(core::addDays(support::stickingDay(), 60))
                          .looked(35, {.rooted = rooted}));
    return batches;
}

core::Date lookedOn() {
    return core::addDays(support::stickingDay(), 95);
}

std::vector<core::BehindThePast> behind(const std::vector<core::BatchRecord>& batches) {
    return core::batchesBehind(batches, support::someShelves(), lookedOn());
}

TEST(BatchesBehind, PointsOutTheBatchThatDoesWorseThanItsForerunners) {
    const auto found = behind(pastAndOneWith(1));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].code, "GOING-ON");
    EXPECT_EQ(found[0].against.rooted, 1);
    EXPECT_LT(found[0].against.chanceOfSoFew, core::LogbookFacts{}.falseAlarmRate);
    EXPECT_THAT(found[0].against.inWords, HasSubstr("So few or fewer would come"));
}

TEST(BatchesBehind, IsSilentAboutAnOrdinaryBatch) {
    EXPECT_TRUE(behind(pastAndOneWith(14)).empty());
}

TEST(BatchesBehind, SpeaksUpAsOftenAsTheGrowerAllowsFalseAlarms) {
    const std::vector<core::BatchRecord> batches = pastAndOneWith(11);
    core::Shelves shelves = support::someShelves();
    EXPECT_TRUE(core::batchesBehind(batches, shelves, lookedOn()).empty());
    shelves.facts.falseAlarmRate = 0.5;
    const auto found = core::batchesBehind(batches, shelves, lookedOn());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_GT(found[0].against.chanceOfSoFew, 0.01);
}

TEST(BatchesBehind, IsSilentAboutBatchesThatAreOver) {
    std::vector<core::BatchRecord> batches = pastAndOneWith(1);
    batches.back().batch.closedOn = lookedOn();
    batches.back().batch.closeReason = "given up";
    EXPECT_TRUE(behind(batches).empty());
}

TEST(BatchesBehind, IsSilentWithoutAPastOrALook) {
    std::vector<core::BatchRecord> batches = pastAndOneWith(1);
    EXPECT_TRUE(behind({batches.back()}).empty());
    batches.back().checks.clear();
    EXPECT_TRUE(behind(batches).empty());
    EXPECT_TRUE(behind({}).empty());
}

}  // namespace
