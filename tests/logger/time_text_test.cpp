// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "app/logger/time_order.h"
#include "app/logger/time_text.h"
#include "core/units/moment.h"

namespace {

using core::TimeForm;

std::string read(const std::string& text, TimeForm form) {
    const auto time = logger::writtenTime(text, form);
    if (!time) return "none";
    std::string iso = core::isoText(core::Moment{std::chrono::seconds{time->second}});
    iso.pop_back();
    if (time->secondsAhead) iso += " ahead " + std::to_string(*time->secondsAhead);
    return iso;
}

TEST(TimeText, ReadsTheUsualOrders) {
    EXPECT_EQ(read("01.06.2026 13:05:09", TimeForm::DayMonthYear), "2026-06-01T13:05:09");
    EXPECT_EQ(read("1.6.26 9:05", TimeForm::DayMonthYear), "2026-06-01T09:05:00");
    EXPECT_EQ(read(" 6/1/2026 13:05 ", TimeForm::MonthDayYear), "2026-06-01T13:05:00");
    EXPECT_EQ(read("2026-06-01 13:05:09", TimeForm::YearMonthDay), "2026-06-01T13:05:09");
    EXPECT_EQ(read("2026/06/01", TimeForm::YearMonthDay), "2026-06-01T00:00:00");
    EXPECT_EQ(read("26-06-01 00:00", TimeForm::YearMonthDay), "2026-06-01T00:00:00");
}

TEST(TimeText, ReadsTwelveHoursWithAmAndPm) {
    EXPECT_EQ(read("06/01/26 12:00:00 AM", TimeForm::MonthDayYear), "2026-06-01T00:00:00");
    EXPECT_EQ(read("06/01/26 12:30 PM", TimeForm::MonthDayYear), "2026-06-01T12:30:00");
    EXPECT_EQ(read("06/01/26 1:05pm", TimeForm::MonthDayYear), "2026-06-01T13:05:00");
    EXPECT_EQ(read("06/01/26 11:59 a.m.", TimeForm::MonthDayYear), "2026-06-01T11:59:00");
    EXPECT_EQ(read("06/01/26 13:05 PM", TimeForm::MonthDayYear), "none");
    EXPECT_EQ(read("06/01/26 0:05 AM", TimeForm::MonthDayYear), "none");
}

TEST(TimeText, ReadsIso8601WithItsOffset) {
    EXPECT_EQ(read("2026-06-01T13:05:00Z", TimeForm::YearMonthDay), "2026-06-01T13:05:00 ahead 0");
    EXPECT_EQ(read("2026-06-01T13:05:00.250+02:00", TimeForm::YearMonthDay), "2026-06-01T13:05:00 ahead 7200");
    EXPECT_EQ(read("2026-06-01T13:05-0430", TimeForm::YearMonthDay), "2026-06-01T13:05:00 ahead -16200");
    EXPECT_EQ(read("2026-06-01 13:05:00 +02", TimeForm::YearMonthDay), "2026-06-01T13:05:00 ahead 7200");
}

TEST(TimeText, ReadsSecondsSince1970) {
    EXPECT_EQ(read("1780318800", TimeForm::UnixSeconds), "2026-06-01T13:00:00 ahead 0");
    EXPECT_EQ(read("1780318800.5", TimeForm::UnixSeconds), "2026-06-01T13:00:00 ahead 0");
    EXPECT_EQ(read("1780318800000000", TimeForm::UnixSeconds), "none");
    EXPECT_EQ(read("-5", TimeForm::UnixSeconds), "none");
}

TEST(TimeText, ReadsTheEndOfTheDayAsTheNext) {
    EXPECT_EQ(read("2026-06-01 24:00", TimeForm::YearMonthDay), "2026-06-02T00:00:00");
    EXPECT_EQ(read("2026-06-01 24:01", TimeForm::YearMonthDay), "none");
}

TEST(TimeText, ReadsDayAndTimeOfTwoCells) {
    const auto time = logger::writtenTime(" 01.06.2026", "1:05:09 PM ", TimeForm::DayMonthYear);
    ASSERT_TRUE(time);
    EXPECT_EQ(time->second, logger::writtenTime("2026-06-01 13:05:09", TimeForm::YearMonthDay)->second);
    EXPECT_FALSE(logger::writtenTime("01.06.2026", "", TimeForm::DayMonthYear));
    EXPECT_FALSE(logger::writtenTime("01.06.2026 10:00", "10:00", TimeForm::DayMonthYear));
}

TEST(TimeText, RefusesWhatNoCalendarOrClockHas) {
    for (const char* text : {"2026-02-29 10:00", "2026-13-01 10:00", "2026-00-10 10:00", "2026-06-01 10:60",
                             "2026-06-01 25:00", "2026-06-01 10:00:60", "2026-06-01 10", "2026-06 10:00",
                             "2026-06-01 10:00 and more", "2026.06-01 10:00", "20260601", "", "10:00", "OFL",
                             "2026-06-01T10:00+99:00", "226-06-01 10:00", "2026-06-2026", "2026-06-01 1:5"})
        EXPECT_EQ(read(text, TimeForm::YearMonthDay), "none") << text;
    EXPECT_EQ(read("2028-02-29 10:00", TimeForm::YearMonthDay), "2028-02-29T10:00:00");
}

TimeForm settledBy(std::initializer_list<const char*> cells) {
    logger::TimeOrder order;
    for (const char* cell : cells) order.see(cell);
    return order.settled();
}

TEST(TimeOrder, IsSettledByADayAfterTheTwelfth) {
    EXPECT_EQ(settledBy({"06/01/2026 10:00", "06/13/2026 10:00"}), TimeForm::MonthDayYear);
    EXPECT_EQ(settledBy({"06/01/2026 10:00", "13/06/2026 10:00"}), TimeForm::DayMonthYear);
    EXPECT_EQ(settledBy({"2026-06-01"}), TimeForm::YearMonthDay);
    EXPECT_EQ(settledBy({"26-06-13", "26-06-32"}), TimeForm::DayMonthYear);
}

TEST(TimeOrder, IsSettledByDaysThatFollowOneAnother) {
    EXPECT_EQ(settledBy({"01.06.2026 00:00", "01.06.2026 12:00", "02.06.2026 00:00", "02.06.2026 12:00"}),
              TimeForm::DayMonthYear);
    EXPECT_EQ(settledBy({"06/02/2026 12:00", "06/02/2026 00:00", "06/01/2026 12:00", "06/01/2026 00:00"}),
              TimeForm::MonthDayYear);
}

TEST(TimeOrder, StaysOpenWhereBothReadingsHold) {
    EXPECT_EQ(settledBy({"01.06.2026 00:00", "01.06.2026 12:00"}), TimeForm::NotSettled);
    EXPECT_EQ(settledBy({}), TimeForm::NotSettled);
    EXPECT_EQ(settledBy({"13.06.26 10:00"}), TimeForm::NotSettled);  // or 26 June 2013
    // One row on the first of each month: read the other way, one row a day in January.
    EXPECT_EQ(settledBy({"01.01.2026", "01.02.2026", "01.03.2026"}), TimeForm::NotSettled);
    EXPECT_EQ(settledBy({"06.06.2026 10:00", "06.06.2026 11:00"}), TimeForm::NotSettled);
}

}  // namespace
