// SPDX-License-Identifier: MIT
// Both changes of the clocks in two zones. The moments in UTC are worked out by hand from the rules of the IANA time zone database (files
// "europe" and "northamerica"): rule EU, last Sunday of March and of October at 01:00 UTC, here 29 March and 25 October 2026; rule US, second
// Sunday of March and first of November at 02:00 on the wall, here 8 March and 1 November 2026. Berlin is UTC+1, in summer +2; New York is
// UTC-5, in summer -4.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/logger/logger_zone.h"
#include "tests/logger/logger_files.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr const char* berlin = "Europe/Berlin";
constexpr const char* newYork = "America/New_York";

logger::LogContents readIn(const std::string& zone, const std::vector<std::string>& times,
                           core::TwiceHour twice = core::TwiceHour::NotSettled) {
    std::string text = "Time,Air °C\n";
    for (std::size_t i = 0; i < times.size(); ++i) text += times[i] + "," + std::to_string(20 + i) + "\n";
    core::LoggerMapping mapping = support::timeAndAir();
    mapping.zone = zone;
    mapping.twiceHour = twice;
    return support::readText(text, mapping);
}

TEST(SummerTime, BeginsInBerlin) {
    EXPECT_THAT(support::momentsIn(readIn(berlin, {"2026-03-29 01:59", "2026-03-29 03:00", "2026-03-29 03:01"})),
                ElementsAre("2026-03-29T00:59:00Z", "2026-03-29T01:00:00Z", "2026-03-29T01:01:00Z"));
}

TEST(SummerTime, BeginsInNewYork) {
    EXPECT_THAT(support::momentsIn(readIn(newYork, {"2026-03-08 01:59", "2026-03-08 03:00"})),
                ElementsAre("2026-03-08T06:59:00Z", "2026-03-08T07:00:00Z"));
}

TEST(SummerTime, EndsInBerlin) {
    EXPECT_THAT(support::momentsIn(readIn(berlin, {"2026-10-25 01:30", "2026-10-25 02:00", "2026-10-25 02:30",
                                                   "2026-10-25 02:00", "2026-10-25 02:30", "2026-10-25 03:00"})),
                ElementsAre("2026-10-24T23:30:00Z", "2026-10-25T00:00:00Z", "2026-10-25T00:30:00Z",
                            "2026-10-25T01:00:00Z", "2026-10-25T01:30:00Z", "2026-10-25T02:00:00Z"));
}

TEST(SummerTime, EndsInNewYork) {
    EXPECT_THAT(support::momentsIn(readIn(newYork, {"2026-11-01 00:30", "2026-11-01 01:00", "2026-11-01 01:30",
                                                    "2026-11-01 01:00", "2026-11-01 01:30", "2026-11-01 02:00"})),
                ElementsAre("2026-11-01T04:30:00Z", "2026-11-01T05:00:00Z", "2026-11-01T05:30:00Z",
                            "2026-11-01T06:00:00Z", "2026-11-01T06:30:00Z", "2026-11-01T07:00:00Z"));
}

TEST(SummerTime, EndsWithOneRowAnHour) {
    EXPECT_THAT(
        support::momentsIn(
            readIn(berlin, {"2026-10-25 01:00", "2026-10-25 02:00", "2026-10-25 02:00", "2026-10-25 03:00"})),
        ElementsAre("2026-10-24T23:00:00Z", "2026-10-25T00:00:00Z", "2026-10-25T01:00:00Z", "2026-10-25T02:00:00Z"));
}

TEST(SummerTime, EndsInAFileWithTheNewestRowsFirst) {
    const logger::LogContents contents = readIn(berlin, {"2026-10-25 03:00", "2026-10-25 02:30", "2026-10-25 02:00",
                                                         "2026-10-25 02:30", "2026-10-25 02:00", "2026-10-25 01:30"});
    EXPECT_THAT(support::momentsIn(contents),
                ElementsAre("2026-10-24T23:30:00Z", "2026-10-25T00:00:00Z", "2026-10-25T00:30:00Z",
                            "2026-10-25T01:00:00Z", "2026-10-25T01:30:00Z", "2026-10-25T02:00:00Z"));
    EXPECT_EQ(support::loggedIn(contents).front().value, 25);  // the last row of the file
}

TEST(SummerTime, AsksWhichHourIsMeantWhereTheRowsGoThroughItOnce) {
    const std::vector<std::string> once{"2026-10-25 01:30", "2026-10-25 02:00", "2026-10-25 02:30", "2026-10-25 03:00"};
    const logger::LogContents asked = readIn(berlin, once);
    ASSERT_EQ(asked.faults.size(), 1U);
    EXPECT_EQ(asked.faults[0].row, 3);
    EXPECT_TRUE(asked.goesOnceThroughTwiceHour);
    EXPECT_THAT(asked.faults[0].reason, HasSubstr("Europe/Berlin"));
    EXPECT_THAT(asked.faults[0].reason, HasSubstr("UTC+01:00"));
    EXPECT_THAT(asked.days, IsEmpty());
    EXPECT_THAT(
        support::momentsIn(readIn(berlin, once, core::TwiceHour::Summer)),
        ElementsAre("2026-10-24T23:30:00Z", "2026-10-25T00:00:00Z", "2026-10-25T00:30:00Z", "2026-10-25T02:00:00Z"));
    EXPECT_THAT(
        support::momentsIn(readIn(berlin, once, core::TwiceHour::Winter)),
        ElementsAre("2026-10-24T23:30:00Z", "2026-10-25T01:00:00Z", "2026-10-25T01:30:00Z", "2026-10-25T02:00:00Z"));
}

TEST(SummerTime, RefusesRowsThatGoToAndFroInTheHourThatComesTwice) {
    const logger::LogContents contents = readIn(berlin, {"2026-10-25 02:00", "2026-10-25 02:30", "2026-10-25 02:10",
                                                         "2026-10-25 02:40", "2026-10-25 02:20", "2026-10-25 03:00"});
    ASSERT_EQ(contents.faults.size(), 1U);
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("in order of time"));
}

TEST(SummerTime, SaysOfTheHourThatIsLeftOutThatTheClockStayedOnWinterTime) {
    const std::vector<std::string> through{"2026-03-29 01:30", "2026-03-29 02:00", "2026-03-29 02:30",
                                           "2026-03-29 03:00"};
    const logger::LogContents contents = readIn(berlin, through);
    ASSERT_EQ(contents.faults.size(), 1U);
    EXPECT_EQ(contents.faults[0].row, 3);
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("29 March 2026, 02:00:00"));
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("its zone is UTC+01:00"));
    EXPECT_EQ(contents.winterTime, "UTC+01:00");
    EXPECT_THAT(
        support::momentsIn(readIn(contents.winterTime, through)),
        ElementsAre("2026-03-29T00:30:00Z", "2026-03-29T01:00:00Z", "2026-03-29T01:30:00Z", "2026-03-29T02:00:00Z"));
}

TEST(SummerTime, LeavesTimesWithTheirOwnOffsetAlone) {
    EXPECT_THAT(support::momentsIn(
                    readIn(berlin, {"2026-10-25T02:30:00+02:00", "2026-10-25T02:30:00+01:00", "2026-03-29T02:30:00Z"})),
                ElementsAre("2026-03-29T02:30:00Z", "2026-10-25T00:30:00Z", "2026-10-25T01:30:00Z"));
}

TEST(LoggerZone, KnowsNamesOffsetsAndThisPlace) {
    EXPECT_EQ(logger::LoggerZone::from("UTC")->at(1000).first, 1000);
    EXPECT_EQ(logger::LoggerZone::from("+05:30")->at(19'800).first, 0);
    EXPECT_EQ(logger::LoggerZone::from("UTC-03:00")->name(), "UTC-03:00");
    EXPECT_TRUE(logger::LoggerZone::from("here"));
    EXPECT_EQ(logger::LoggerZone::from("Etc/UTC")->at(1000).first, 1000);
    EXPECT_EQ(logger::LoggerZone::from("Etc/GMT+3")->at(0).first, 3 * 3600);  // by POSIX's sign: behind UTC
    for (const char* name : {"", "Mars/Olympus", "+25:00", "+2", "CEST?", "UTC+"})
        EXPECT_FALSE(logger::LoggerZone::from(name)) << name;
    for (const char* name : {"Nonsense", "Etc/Nonsense"}) EXPECT_FALSE(logger::LoggerZone::from(name)) << name;
}

TEST(LoggerZone, AgreesWithItsOwnSlowWayThroughAWholeYear) {
    // The stretches that it keeps, against a fresh zone that has kept none.
    for (const char* name : {berlin, newYork, "Australia/Lord_Howe", "Asia/Kolkata", "Africa/Casablanca"}) {
        auto kept = *logger::LoggerZone::from(name);
        const std::int64_t start = support::moment("2026-01-01T00:00:00Z").time_since_epoch().count();
        for (std::int64_t at = start; at < start + 366 * 86'400; at += 6 * 3600 + 900) {
            auto fresh = *logger::LoggerZone::from(name);
            const auto a = kept.at(at), b = fresh.at(at);
            ASSERT_TRUE(a.number == b.number && a.first == b.first && a.second == b.second) << name << ' ' << at;
        }
    }
}

}  // namespace
