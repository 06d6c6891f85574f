// SPDX-License-Identifier: MIT
// The calendar file is read back by two parsers that are not ours, one of them strict, and looked through line by line.
#include "app/report/calendar_file.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/support/builders.h"

namespace {

using report::CalendarDay;

core::Date onDay(const char* iso) {
    return *core::dateFromIso(iso);
}

core::Moment stamp() {
    return *core::momentFromIso("2026-03-14T10:42:05Z");
}

/// Texts that are apt to break a format: separators, line breaks, signs of several bytes at every place where a line is folded.
std::vector<CalendarDay> awkwardDays() {
    std::string longName;
    for (int i = 0; i < 60; ++i) longName += "é×" + std::to_string(i);
    return {
        {.uid = "plan-1-stick",
         .on = onDay("2026-03-06"),
         .summary = "Stick 34 cuttings: Mentha × piperita, 'Chocolate'; see C:\\temp",
         .description = "First line, with a comma;\nsecond line: END:VEVENT",
         .remindDaysBefore = 1},
        {.uid = "plan-1-ready", .on = onDay("2028-02-29"), .summary = longName, .remindDaysBefore = 0},
        {.uid = "look-B260047K", .on = onDay("2026-12-31"), .summary = "植物 🌱 \"quoted\"", .remindDaysBefore = 40}};
}

QJsonArray readBy(const char* parser, const std::string& text) {
    const QTemporaryDir folder;
    QFile file(folder.filePath("days.ics"));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text));
    file.close();
    QProcess reader;
    reader.start(STRIKEBOOK_DEBIAN_PYTHON,
                 {STRIKEBOOK_SOURCE_DIR "/tests/report/read_calendar.py", parser, file.fileName()});
    EXPECT_TRUE(reader.waitForFinished());
    EXPECT_EQ(reader.exitCode(), 0) << reader.readAllStandardError().toStdString();
    QJsonArray days;
    for (const QByteArray& line : reader.readAllStandardOutput().split('\n'))
        if (!line.isEmpty()) days.append(QJsonDocument::fromJson(line).object());
    return days;
}

class CalendarParsers : public testing::TestWithParam<const char*> {};

TEST_P(CalendarParsers, ReadEveryDayAsItWasMeant) {
    const std::vector<CalendarDay> days = awkwardDays();
    const QJsonArray read = readBy(GetParam(), report::calendarFile("Plan, of; spring", days, stamp()));
    ASSERT_EQ(read.size(), static_cast<int>(days.size()));
    for (int i = 0; i < read.size(); ++i) {
        const QJsonObject event = read[i].toObject();
        const CalendarDay& meant = days[static_cast<std::size_t>(i)];
        EXPECT_EQ(event["uid"].toString().toStdString(), meant.uid + "@strikebook");
        EXPECT_EQ(event["on"].toString().toStdString(), core::isoText(meant.on));
        EXPECT_EQ(event["summary"].toString().toStdString(), meant.summary);
        EXPECT_EQ(event["description"].toString().toStdString(), meant.description);
        EXPECT_EQ(event["stamp"].toString(), "2026-03-14T10:42:05Z");
        EXPECT_EQ(event["hours"].toDouble(), 8 - 24 * meant.remindDaysBefore);
    }
}

INSTANTIATE_TEST_SUITE_P(Independent, CalendarParsers, testing::Values("icalendar", "vobject"),
                         [](const auto& each) { return std::string(each.param); });

TEST(CalendarFile, HasLinesAsTheStandardWantsThem) {
    const std::string text = report::calendarFile("Plan", awkwardDays(), stamp());
    EXPECT_TRUE(text.starts_with("BEGIN:VCALENDAR\r\n"));
    EXPECT_TRUE(text.ends_with("END:VCALENDAR\r\n"));
    std::size_t start = 0;
    while (start < text.size()) {
        const std::size_t end = text.find("\r\n", start);
        ASSERT_NE(end, std::string::npos);
        const std::string line = text.substr(start, end - start);
        EXPECT_LE(line.size(), 75U) << line;
        EXPECT_EQ(line.find_first_of("\r\n"), std::string::npos) << line;
        EXPECT_TRUE(QString::fromUtf8(line.data(), static_cast<qsizetype>(line.size())).toStdString() == line)
            << "folded inside a sign: " << line;
        start = end + 2;
    }
    for (const char* part :
         {"VERSION:2.0", "CALSCALE:GREGORIAN", "DTSTART;VALUE=DATE:20280229", "DTEND;VALUE=DATE:20280301",
          "DTSTAMP:20260314T104205Z", "TRANSP:TRANSPARENT", "TRIGGER:PT8H", "TRIGGER:-PT16H"})
        EXPECT_NE(text.find(std::string(part) + "\r\n"), std::string::npos) << part;
}

TEST(CalendarFile, IsTheSameForTheSameDaysAndStamp) {
    EXPECT_EQ(report::calendarFile("Plan", awkwardDays(), stamp()),
              report::calendarFile("Plan", awkwardDays(), stamp()));
}

TEST(CalendarOfAPlan, NamesItsDaysForGood) {
    const std::vector<core::PlanDay> days{
        {.on = onDay("2026-03-06"), .kind = core::PlanDayKind::Stick, .what = "Stick 34 cuttings"},
        {.on = onDay("2026-04-10"), .kind = core::PlanDayKind::PotOn, .what = "Pot on"}};
    const auto calendar = report::calendarOf(days, "plan-77");
    ASSERT_EQ(calendar.size(), 2U);
    EXPECT_EQ(calendar[0].uid, "plan-77-stick");
    EXPECT_EQ(calendar[1].uid, "plan-77-pot");
    EXPECT_EQ(calendar[1].on, onDay("2026-04-10"));
    EXPECT_EQ(calendar[0].summary, "Stick 34 cuttings");
    EXPECT_EQ(calendar[0].remindDaysBefore, 1);
}

TEST(CalendarOfBatches, HasTheNextLookAtEachOpenOne) {
    const core::Shelves shelves = support::someShelves();
    const auto lineOf = [](const core::BatchRecord& record) {
        return core::BatchLine{.batch = record.batch, .tally = core::tallyOf(record.batch, record.checks)};
    };
    const core::Date stuck = support::stickingDay();  // 2026-03-02; looked at after 7 days, then every 7
    const std::vector<core::BatchLine> lines{
        lineOf(support::aBatch().code("B1").stuck(20).looked(14, {.rooted = 5}).build()),
        lineOf(support::aBatch().code("B2").stuck(20).build()),
        lineOf(support::aBatch().code("B3").stuck(20).looked(7, {.rooted = 20}).build())};
    const auto calendar = report::calendarOf(lines, shelves, core::addDays(stuck, 16));
    ASSERT_EQ(calendar.size(), 2U);
    EXPECT_EQ(calendar[0].uid, "look-B2");
    EXPECT_EQ(calendar[0].on, core::addDays(stuck, 16));  // overdue: today
    EXPECT_EQ(calendar[1].uid, "look-B1");
    EXPECT_EQ(calendar[1].on, core::addDays(stuck, 21));
    EXPECT_EQ(calendar[1].summary, "Look at B1, Tub north");
    EXPECT_EQ(calendar[1].description, "Hebe albicans: 15 of 20 not yet decided");
    EXPECT_EQ(calendar[1].remindDaysBefore, 0);
}

}  // namespace
