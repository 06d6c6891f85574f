// SPDX-License-Identifier: MIT
#include "app/desktop/bench/bench_view.h"

#include <QAbstractItemModelTester>

#include "app/desktop/bench/due_model.h"
#include "app/desktop/bench/station_model.h"
#include "gtest/gtest.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;

core::BatchLine line(const core::BatchRecord& record) {
    return {.batch = record.batch, .tally = core::tallyOf(record.batch, record.checks)};
}

core::Date day(int afterSticking) {
    return core::addDays(support::stickingDay(), afterSticking);
}

TEST(BenchView, GroupsWhatIsDueByStationWithTheLongestOverdueFirst) {
    const std::vector lines{line(aBatch().code("FRESH")), line(aBatch().code("LATE").stuckOn(day(-3))),
                            line(aBatch().code("WEST").at(support::benchWest))};
    const desktop::BenchView view = desktop::benchView(lines, support::someShelves(), day(7));
    ASSERT_EQ(view.due.size(), 2U);
    EXPECT_EQ(view.dueCount, 3);
    EXPECT_EQ(view.overdueCount, 1);
    const auto north = std::ranges::find_if(view.due, [](const auto& group) { return group.rows.size() == 2; });
    ASSERT_NE(north, view.due.end());
    EXPECT_EQ(north->rows[0].code, "LATE");
    EXPECT_EQ(north->rows[0].due, "3 days overdue");
    EXPECT_EQ(north->rows[1].due, "today");
    EXPECT_EQ(north->summary, "2 batches due, 1 overdue");
}

TEST(BenchView, SaysWhatAStationHoldsAndSinceWhen) {
    const std::vector lines{line(aBatch().stuck(24).looked(7, {.rooted = 4})),
                            line(aBatch().stuck(10).stuckOn(day(3)).of(support::deutzia))};
    const desktop::BenchView view = desktop::benchView(lines, support::someShelves(), day(10));
    const auto north = std::ranges::find_if(view.stations, [](const auto& row) { return row.openBatches == 2; });
    ASSERT_NE(north, view.stations.end());
    EXPECT_EQ(north->undecided, 30);
    EXPECT_TRUE(north->plantsInFull.contains("Nikko"));
    EXPECT_FALSE(north->plants.contains("Nikko"));
    EXPECT_TRUE(north->since.contains("10 days")) << north->since.toStdString();
}

TEST(BenchView, CallsAStationFreeWhenNothingInItIsOpen) {
    const std::vector lines{line(aBatch().stuck(4).looked(7, {.rooted = 4}))};
    for (const desktop::StationRow& row : desktop::benchView(lines, support::someShelves(), day(10)).stations) {
        EXPECT_EQ(row.plants, "free");
        EXPECT_EQ(row.since, "");
    }
}

TEST(BenchView, NamesTheNextDayWhenNothingIsDue) {
    const std::vector lines{line(aBatch())};
    EXPECT_EQ(desktop::benchView(lines, support::someShelves(), day(1)).nextDue, "9 March 2026");
    EXPECT_EQ(desktop::benchView({}, support::someShelves(), day(1)).nextDue, "");
}

TEST(CountsText, LeavesOutWhatIsZeroButNotTheUndecided) {
    EXPECT_EQ(desktop::countsText({.stuck = 24, .rooted = 9, .lastCheckedOn = {}}), "9 of 24 rooted, 15 undecided");
    EXPECT_EQ(desktop::countsText({.stuck = 24, .rooted = 9, .lost = 2, .withdrawn = 1, .lastCheckedOn = {}}),
              "9 of 24 rooted, 2 lost, 1 withdrawn, 12 undecided");
}

TEST(DueModel, HoldsUpAsATree) {
    desktop::DueModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    const std::vector lines{line(aBatch().code("ONE")), line(aBatch().code("TWO").at(support::benchWest))};
    model.show(desktop::benchView(lines, support::someShelves(), day(7)).due);
    ASSERT_EQ(model.rowCount(), 2);
    const QModelIndex station = model.index(0, 0);
    EXPECT_FALSE(model.batchAt(station).isSet());
    EXPECT_TRUE(model.batchAt(model.index(0, 0, station)).isSet());
    model.show({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(StationModel, HoldsUpAsATable) {
    desktop::StationModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.show(desktop::benchView({}, support::someShelves(), day(7)).stations);
    EXPECT_GT(model.rowCount(), 0);
}

}  // namespace
