// SPDX-License-Identifier: MIT
#include "core/due/due_today.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::someShelves;
using support::stickingDay;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<core::BatchLine> linesOf(const std::vector<core::BatchRecord>& records) {
    std::vector<core::BatchLine> lines;
    for (const core::BatchRecord& record : records)
        lines.push_back({record.batch, core::tallyOf(record.batch, record.checks)});
    return lines;
}

/// The codes due so many days after the sticking day.
std::vector<std::string> dueAfter(int days, const std::vector<core::BatchRecord>& records) {
    std::vector<std::string> codes;
    for (const core::DueBatch& due : core::dueOn(core::addDays(stickingDay(), days), linesOf(records), someShelves()))
        codes.push_back(due.line.batch.code);
    return codes;
}

TEST(DueToday, ComesAWeekAfterSticking) {
    EXPECT_THAT(dueAfter(6, {aBatch().code("a")}), IsEmpty());
    EXPECT_THAT(dueAfter(7, {aBatch().code("a")}), ElementsAre("a"));
}

TEST(DueToday, ComesAWeekAfterTheLastLook) {
    EXPECT_THAT(dueAfter(16, {aBatch().code("a").looked(5).looked(10)}), IsEmpty());
    EXPECT_THAT(dueAfter(17, {aBatch().code("a").looked(5).looked(10)}), ElementsAre("a"));
}

TEST(DueToday, FollowsTheLogbooksIntervals) {
    core::Shelves shelves = someShelves();
    shelves.facts.firstCheckAfterDays = 3;
    shelves.facts.checkEveryDays = 2;
    const std::vector<core::BatchLine> lines = linesOf({aBatch(), aBatch().looked(4)});
    EXPECT_EQ(core::nextCheckOn(lines[0], shelves), core::addDays(stickingDay(), 3));
    EXPECT_EQ(core::nextCheckOn(lines[1], shelves), core::addDays(stickingDay(), 6));
}

TEST(DueToday, CountsTheDaysOverdue) {
    const auto due = core::dueOn(core::addDays(stickingDay(), 10), linesOf({aBatch()}), someShelves());
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due.front().dueOn, core::addDays(stickingDay(), 7));
    EXPECT_EQ(due.front().daysOverdue, 3);
}

TEST(DueToday, LeavesOutWhatIsClosed) {
    EXPECT_THAT(dueAfter(60, {aBatch().stuck(5).looked(7, {.rooted = 5}), aBatch().looked(7).closed(8)}), IsEmpty());
}

TEST(DueToday, GoesInWalkingOrderThenByCode) {
    core::BatchRecord nowhere = aBatch().code("a");
    nowhere.batch.station = {};
    const std::vector<core::BatchRecord> records{
        nowhere, aBatch().code("e").at(support::benchWest), aBatch().code("d").at(support::tubSouth),
        aBatch().code("c").at(support::benchWest), aBatch().code("f").at(support::tubNorth)};
    EXPECT_THAT(dueAfter(7, records), ElementsAre("f", "d", "c", "e", "a"));
}

TEST(DueToday, KeepsAStationTogetherWhenPlacesInTheWalkAreShared) {
    core::Shelves shelves = someShelves();
    for (core::Station& station : shelves.stations) station.walkingOrder = 0;
    const auto due =
        core::dueOn(core::addDays(stickingDay(), 7),
                    linesOf({aBatch().code("a").at(support::tubNorth), aBatch().code("b").at(support::benchEast),
                             aBatch().code("c").at(support::tubNorth)}),
                    shelves);
    ASSERT_EQ(due.size(), 3U);
    EXPECT_EQ(due.front().line.batch.code, "b");
}

TEST(DueToday, AsksThePlantsScheduleBeforeTheMethodsBeforeTheLogbooks) {
    core::Shelves shelves = someShelves();
    const core::BatchLine line = linesOf({aBatch()}).front();
    const auto dueAfterDays = [&] { return core::daysBetween(stickingDay(), core::nextCheckOn(line, shelves)); };
    EXPECT_EQ(dueAfterDays(), 7);
    EXPECT_FALSE(core::scheduleFor(line.batch.plant, line.batch.method, shelves).id.isSet());
    shelves.checkSchedules = {{.id = {1}, .name = "water", .firstAfterDays = 4, .everyDays = 3},
                              {.id = {2}, .name = "slow", .firstAfterDays = 21, .everyDays = 14}};
    shelves.methods.front().checkSchedule = {1};
    EXPECT_EQ(dueAfterDays(), 4);
    shelves.plants.front().checkSchedule = {2};
    EXPECT_EQ(dueAfterDays(), 21);
    const core::BatchLine checked = linesOf({aBatch().looked(5)}).front();
    EXPECT_EQ(core::nextCheckOn(checked, shelves), core::addDays(stickingDay(), 19));
}

}  // namespace
