// SPDX-License-Identifier: MIT
#include "core/causes/out_of_the_ordinary.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/comparison/behind.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;

core::Date later(int days) {
    return core::addDays(support::stickingDay(), days);
}

/// Eight earlier batches of 20 that rooted 14 to 16 by day 35, and one of `rooted` that was stuck two months later.
std::vector<core::BatchRecord> pastAnd(int rooted) {
    std::vector<core::BatchRecord> batches;
    for (const int earlier : {15, 16, 14, 15, 16, 15, 14, 15})
        batches.push_back(aBatch().stuck(20).looked(35, {.rooted = earlier, .lost = 20 - earlier}));
    batches.push_back(
        aBatch().code("LATER").stuck(20).stuckOn(later(60)).looked(35, {.rooted = rooted, .lost = 20 - rooted}));
    return batches;
}

std::vector<core::UnusualBatch> found(const std::vector<core::BatchRecord>& batches,
                                      const core::LossQuestion& question = {}) {
    return core::outOfTheOrdinary(batches, support::someShelves(), question);
}

TEST(OutOfTheOrdinary, FindsAClosedBatchThatDidMuchWorseThanItsForerunners) {
    const auto unusual = found(pastAnd(1));
    ASSERT_EQ(unusual.size(), 1U);
    EXPECT_EQ(unusual[0].code, "LATER");
    EXPECT_EQ(unusual[0].plant, support::hebe);
    EXPECT_EQ(unusual[0].method, support::aeratedWater);
    EXPECT_EQ(unusual[0].stuckOn, later(60));
    EXPECT_FALSE(unusual[0].isOpen);
    EXPECT_EQ(unusual[0].against.rooted, 1);
    EXPECT_EQ(unusual[0].against.pastBatches, 8);
    EXPECT_LT(unusual[0].against.chanceOfSoFew, core::LogbookFacts{}.falseAlarmRate);
}

TEST(OutOfTheOrdinary, IsSilentAboutOrdinaryBatchesAndAboutTheFirstOfAKind) {
    EXPECT_TRUE(found(pastAnd(14)).empty());
    EXPECT_TRUE(found({aBatch().looked(35, {.lost = 24})}).empty());
    EXPECT_TRUE(found({}).empty());
    EXPECT_TRUE(found({aBatch()}).empty()) << "never looked at";
}

TEST(OutOfTheOrdinary, SaysOfAnOpenBatchWhatTheBenchSaysOfIt) {
    std::vector<core::BatchRecord> batches = pastAnd(1);
    batches.back() = aBatch().code("OPEN").stuck(20).stuckOn(later(60)).looked(35, {.rooted = 1});
    const auto unusual = found(batches);
    const auto behind = core::batchesBehind(batches, support::someShelves(), later(95));
    ASSERT_EQ(unusual.size(), 1U);
    ASSERT_EQ(behind.size(), 1U);
    EXPECT_TRUE(unusual[0].isOpen);
    EXPECT_EQ(unusual[0].against.chanceOfSoFew, behind[0].against.chanceOfSoFew);
}

TEST(OutOfTheOrdinary, KeepsToSpanPlantAndMethod) {
    const std::vector<core::BatchRecord> batches = pastAnd(1);
    EXPECT_EQ(found(batches, {.from = later(95), .until = later(95)}).size(), 1U);
    EXPECT_TRUE(found(batches, {.from = later(96)}).empty());
    EXPECT_TRUE(found(batches, {.until = later(94)}).empty()) << "not looked at by then";
    EXPECT_EQ(found(batches, {.plant = support::hebe}).size(), 1U);
    EXPECT_TRUE(found(batches, {.plant = support::deutzia}).empty());
    EXPECT_EQ(found(batches, {.method = support::aeratedWater}).size(), 1U);
    EXPECT_TRUE(found(batches, {.method = support::mediaTray}).empty());
}

TEST(OutOfTheOrdinary, GoesByTheRateOfFalseAlarmsAndPutsTheRarestFirst) {
    std::vector<core::BatchRecord> batches = pastAnd(1);
    batches.push_back(aBatch().code("LESS ODD").stuck(20).stuckOn(later(61)).looked(35, {.rooted = 10, .lost = 10}));
    core::Shelves shelves = support::someShelves();
    shelves.facts.falseAlarmRate = 0.3;
    const auto unusual = core::outOfTheOrdinary(batches, shelves, {});
    ASSERT_GE(unusual.size(), 2U);
    EXPECT_EQ(unusual[0].code, "LATER");
    for (std::size_t i = 1; i < unusual.size(); ++i)
        EXPECT_LE(unusual[i - 1].against.chanceOfSoFew, unusual[i].against.chanceOfSoFew);
}

TEST(OutOfTheOrdinary, DoesNotDependOnTheOrderOfTheRecords) {
    std::vector<core::BatchRecord> batches = pastAnd(1);
    const auto inOrder = found(batches);
    std::ranges::reverse(batches);
    const auto reversed = found(batches);
    ASSERT_EQ(reversed.size(), inOrder.size());
    EXPECT_EQ(reversed[0].batch, inOrder[0].batch);
    EXPECT_NEAR(reversed[0].against.chanceOfSoFew, inOrder[0].against.chanceOfSoFew, 1e-12);
}

TEST(OutOfTheOrdinary, EndsEarlyWhenItIsStopped) {
    std::stop_source stop;
    stop.request_stop();
    EXPECT_TRUE(core::outOfTheOrdinary(pastAnd(1), support::someShelves(), {}, stop.get_token()).empty());
}

}  // namespace
