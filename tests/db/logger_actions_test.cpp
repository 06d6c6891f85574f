// SPDX-License-Identifier: MIT
#include "db/actions/logger_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/event_actions.h"
#include "db/actions/merge_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using namespace std::chrono_literals;
using core::Quantity;
using core::TimedValue;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const core::Date firstLogged = 2026y / 3 / 10;
const core::Moment loggedNow = std::chrono::sys_days(2026y / 3 / 14) + 10h;

core::Moment at(int day, std::chrono::seconds time) {
    return std::chrono::sys_days(core::addDays(firstLogged, day)) + time;
}

class LoggerActions : public testing::Test {
  protected:
    LoggerActions() {
        core::Records records = support::recordsOf({});
        logbook.emplace(db::Logbook::create(file, records.shelves.facts, support::testOptions()));
        EXPECT_TRUE(db::addRecords(*logbook, std::move(records), "records", true));
    }

    static core::LoggerDay air(int day, std::vector<core::Sample> samples) {
        return {.station = support::tubNorth,
                .quantity = Quantity::AirTemperature,
                .day = core::addDays(firstLogged, day),
                .samples = std::move(samples)};
    }

    db::LoggerAdded add(const std::vector<core::LoggerDay>& days) {
        auto done = db::addLoggerDays(*logbook, days, "values of a logger", loggedNow);
        if (!done) ADD_FAILURE() << done.error().front().sentence;
        return done ? std::move(*done) : db::LoggerAdded{};
    }

    std::vector<TimedValue> values() const {
        return logbook->loggerValues(support::tubNorth, Quantity::AirTemperature, at(-1000, 0s), at(1000, 0s));
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "logged.strikebook";
    std::optional<db::Logbook> logbook;
};

TEST_F(LoggerActions, KeepWhatALoggerRecordedAndGiveItBackInOrder) {
    const auto done = add({air(1, {{0, 18.5}, {3600, 18.25}}), air(0, {{86'399, 19.1}})});
    EXPECT_EQ(done.added, 3);
    EXPECT_THAT(done.changes.tables, ElementsAre("logger_days"));
    EXPECT_THAT(values(), ElementsAre(TimedValue{at(0, 86'399s), 19.1}, TimedValue{at(1, 0s), 18.5},
                                      TimedValue{at(1, 1h), 18.25}));
    EXPECT_THAT(logbook->loggerValues(support::tubNorth, Quantity::AirTemperature, at(1, 0s), at(1, 3599s)),
                ElementsAre(TimedValue{at(1, 0s), 18.5}))
        << "the ends included";
    EXPECT_THAT(logbook->loggerValues(support::tubNorth, Quantity::LeafTemperature, at(0, 0s), at(9, 0s)), IsEmpty());
    EXPECT_THAT(logbook->loggerSpans(), ElementsAre(core::LoggerSpan{.station = support::tubNorth,
                                                                     .quantity = Quantity::AirTemperature,
                                                                     .firstDay = firstLogged,
                                                                     .lastDay = core::addDays(firstLogged, 1),
                                                                     .samples = 3}));
    const auto newest = logbook->newestLoggerValues();
    ASSERT_EQ(newest.size(), 1U);
    EXPECT_EQ(newest.front().readAt, at(1, 1h));
    EXPECT_EQ(newest.front().value, 18.25);
    EXPECT_THAT(logbook->newestReadings(), IsEmpty()) << "those are by hand";
    EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
}

TEST_F(LoggerActions, TheSameOnceMoreAddsNothingAndLeavesNoStep) {
    const std::vector<core::LoggerDay> days{air(0, {{0, 18.5}, {60, 18.25}})};
    add(days);
    const auto steps = logbook->history().size();
    const std::string before = support::tableDump(file);
    const auto again = add(days);
    EXPECT_EQ(again.added, 0);
    EXPECT_EQ(again.known, 2);
    EXPECT_EQ(again.differing, 0);
    EXPECT_EQ(again.changes.historyNumber, 0);
    EXPECT_EQ(logbook->history().size(), steps);
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(LoggerActions, AnotherValueOfAMomentThatIsFilledStaysOut) {
    add({air(0, {{0, 18.5}, {60, 18.25}})});
    const auto more = add({air(0, {{0, 18.5}, {60, 30}, {120, 17}}), air(0, {{120, 18}, {180, 16}})});
    EXPECT_EQ(more.added, 2);
    EXPECT_EQ(more.known, 1);
    EXPECT_EQ(more.differing, 2) << "of which one came twice in one go";
    EXPECT_THAT(values(), ElementsAre(TimedValue{at(0, 0s), 18.5}, TimedValue{at(0, 60s), 18.25},
                                      TimedValue{at(0, 120s), 17}, TimedValue{at(0, 180s), 16}));
}

TEST_F(LoggerActions, OneStepIsUndoneAndRedone) {
    add({air(0, {{0, 18.5}})});
    const std::string before = support::tableDump(file);
    add({air(0, {{60, 18}}), air(1, {{0, 18}})});
    const std::string after = support::tableDump(file);
    EXPECT_EQ(logbook->wordsToUndo(), "values of a logger");
    ASSERT_TRUE(logbook->undo());
    EXPECT_EQ(support::tableDump(file), before);
    ASSERT_TRUE(logbook->redo());
    EXPECT_EQ(support::tableDump(file), after);
}

TEST_F(LoggerActions, OneBadDayKeepsAllOut) {
    const std::string before = support::tableDump(file);
    const auto done =
        db::addLoggerDays(*logbook, std::vector{air(0, {{0, 18}}), air(1, {{0, 99}})}, "values", loggedNow);
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error().front().sentence, HasSubstr("2026-03-11T00:00:00Z is 99 C; -30 to 60 C is allowed"));
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(LoggerActions, StoppedBeforeTheEndNothingIsKept) {
    std::stop_source source;
    std::vector<std::size_t> seen;
    const std::vector days{air(0, {{0, 18}}), air(1, {{0, 18}}), air(2, {{0, 18}})};
    const auto done = db::addLoggerDays(*logbook, days, "values", loggedNow, source.get_token(),
                                        [&](std::size_t number, std::size_t all) {
                                            EXPECT_EQ(all, 3U);
                                            seen.push_back(number);
                                            if (number == 2) source.request_stop();
                                        });
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error().front().sentence, HasSubstr("stopped before the end"));
    EXPECT_THAT(seen, ElementsAre(1U, 2U));
    EXPECT_THAT(values(), IsEmpty());
}

TEST_F(LoggerActions, DaysAreRemovedAndComeBack) {
    add({air(0, {{0, 18}}), air(1, {{0, 18}}), air(2, {{0, 18}})});
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::removeLoggerDays(*logbook, support::tubNorth, Quantity::AirTemperature, firstLogged,
                                     core::addDays(firstLogged, 1)));
    EXPECT_THAT(values(), ElementsAre(TimedValue{at(2, 0s), 18}));
    EXPECT_EQ(logbook->wordsToUndo(), "removal of logged air temperature at " +
                                          core::find(logbook->shelves().stations, support::tubNorth)->name);
    ASSERT_TRUE(logbook->undo());
    EXPECT_EQ(support::tableDump(file), before);
    const auto none = db::removeLoggerDays(*logbook, support::tubNorth, Quantity::Light, firstLogged, firstLogged);
    ASSERT_TRUE(none);
    EXPECT_EQ(none->historyNumber, 0);
}

TEST_F(LoggerActions, ReadingsByHandAndOfLoggersStandTogetherInOrderOfTime) {
    add({air(0, {{3600, 18}, {7200, 19}})});
    core::Reading byHand{
        .station = support::tubNorth, .quantity = Quantity::AirTemperature, .readAt = at(0, 90min), .value = 18.4};
    core::Reading other = byHand;
    other.quantity = Quantity::LeafTemperature;
    ASSERT_TRUE(db::recordReadings(*logbook, {byHand, other}, loggedNow));
    EXPECT_THAT(logbook->valuesOverTime(support::tubNorth, Quantity::AirTemperature, at(0, 0s), at(0, 90min)),
                ElementsAre(TimedValue{at(0, 1h), 18}, TimedValue{at(0, 90min), 18.4}));
    EXPECT_EQ(logbook->valuesOverTime(support::tubNorth, Quantity::AirTemperature, at(0, 0s), at(1, 0s)).size(), 3U);
}

TEST_F(LoggerActions, AStationWithALogIsRetiredRatherThanRemovedAndMovesWhenMerged) {
    add({air(0, {{0, 18}, {60, 19}}), air(1, {{0, 21}})});
    core::LoggerDay there = air(0, {{60, 25}, {120, 26}});
    core::Station twin = *core::find(logbook->shelves().stations, support::tubNorth);
    twin.id = {};
    twin.name = "twin";
    ASSERT_TRUE(db::keep(*logbook, twin));
    for (const core::Station& station : logbook->shelves().stations)
        if (station.name == "twin") there.station = station.id;
    add({there});
    const auto refused = db::remove(*logbook, there.station);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().sentence, HasSubstr("is used by records"));
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::mergeStations(*logbook, there.station, support::tubNorth));
    EXPECT_THAT(values(), ElementsAre(TimedValue{at(0, 0s), 18}, TimedValue{at(0, 60s), 19},
                                      TimedValue{at(0, 120s), 26}, TimedValue{at(1, 0s), 21}));
    EXPECT_EQ(logbook->loggerSpans().size(), 1U);
    ASSERT_TRUE(logbook->undo());
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(LoggerActions, FormatsAreKeptUnderTheirNames) {
    ASSERT_TRUE(db::keep(*logbook, core::LoggerFormat{.name = "greenhouse", .header = "time;t", .mapping = "{}"}));
    const auto taken = db::keep(*logbook, core::LoggerFormat{.name = "greenhouse", .header = "x", .mapping = "{}"});
    ASSERT_FALSE(taken);
    EXPECT_THAT(taken.error().front().sentence, HasSubstr("which is taken"));
    core::LoggerFormat format = logbook->loggerFormats().front();
    format.mapping = R"({"time":0})";
    ASSERT_TRUE(db::keep(*logbook, format));
    EXPECT_THAT(logbook->loggerFormats(), ElementsAre(format));
    ASSERT_TRUE(db::remove(*logbook, format.id));
    EXPECT_THAT(logbook->loggerFormats(), IsEmpty());
    EXPECT_FALSE(db::remove(*logbook, format.id));
    ASSERT_TRUE(logbook->undo());
    EXPECT_THAT(logbook->loggerFormats(), ElementsAre(format));
    format.id = {4711};
    format.name = "another";
    EXPECT_FALSE(db::keep(*logbook, format)) << "it is not there";
}

TEST_F(LoggerActions, AMillionValuesTakeLittleRoom) {
    std::vector<core::LoggerDay> days;
    for (int day = 0; day < 116; ++day) {  // every ten seconds
        days.push_back(air(-day, {}));
        for (int second = 0; second < core::secondsInADay; second += 10)
            days.back().samples.push_back({.second = second, .value = 20 + second / 86'400.0});
    }
    const auto done = add(days);
    EXPECT_EQ(done.added, 116 * 8640);
    EXPECT_LT(std::filesystem::file_size(file), 40'000'000U) << "with what undo needs";
    EXPECT_EQ(values().size(), 116U * 8640);
    ASSERT_TRUE(logbook->undo());
    EXPECT_THAT(values(), IsEmpty());
}

TEST_F(LoggerActions, VerifyTellsOfSamplesThatNoLoggerWrites) {
    add({air(0, {{0, 18}, {60, 19}})});
    logbook.reset();
    const std::string twoDescending = "X'3C0000000000000000003240000000000000000000003240'";
    const std::string hot = "X'000000000000000000888340'";         // 625 C
    const std::string late = "X'805101000000000000003240'";        // second 86400
    const std::string notANumber = "X'00000000000000000000F87F'";  // a NaN
    for (const std::string& blob : {twoDescending, hot, late, notANumber}) {
        support::runSql(file, "UPDATE logger_days SET samples = " + blob);
        const db::Logbook broken = db::Logbook::open(file, support::testOptions());
        EXPECT_THAT(db::verify(broken, support::today()).faults, testing::Contains(HasSubstr("The logger's air")))
            << blob;
        EXPECT_THROW(
            static_cast<void>(broken.loggerValues(support::tubNorth, Quantity::AirTemperature, at(0, 0s), at(1, 0s))),
            db::LogbookError);
    }
}

}  // namespace
