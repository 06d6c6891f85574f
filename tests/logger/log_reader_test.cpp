// SPDX-License-Identifier: MIT
// What is read from a file, and each thing that can be wrong with it, by its row and column.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "app/logger/file_look.h"
#include "app/logger/logger_text.h"
#include "tests/logger/logger_files.h"
#include "tests/support/builders.h"

namespace {

using support::readText;
using support::timeAndAir;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const std::string heading = "Time,Air °C\n";

/// The only fault of a file whose second row is this.
db::ImportFault faultOf(const std::string& row, const core::LoggerMapping& mapping = timeAndAir()) {
    const logger::LogContents contents = readText(heading + "2026-06-01 10:00,21.5\n" + row + "\n", mapping);
    EXPECT_THAT(contents.days, IsEmpty());
    EXPECT_EQ(contents.faults.size(), 1U) << row;
    return contents.faults.empty() ? db::ImportFault() : contents.faults.front();
}

void expectFault(const std::string& row, const std::string& column, const std::vector<std::string>& words,
                 const core::LoggerMapping& mapping = timeAndAir()) {
    const db::ImportFault fault = faultOf(row, mapping);
    EXPECT_EQ(fault.file, "logger.csv");
    EXPECT_EQ(fault.row, 3) << row;
    EXPECT_EQ(fault.column, column) << row;
    for (const std::string& word : words) EXPECT_THAT(fault.reason, HasSubstr(word)) << row;
}

TEST(LogReader, NamesRowColumnAndWhatIsAllowed) {
    expectFault("2026-06-31 10:10,21.5", "Time", {"\"2026-06-31 10:10\"", "year, month, day", "2026-12-31 23:59"});
    expectFault(",21.5", "Time", {"time is missing", "2026-12-31 23:59"});
    expectFault("2026-06-01 10:10,OFL", "Air °C", {"\"OFL\" is no number", "21.5", "mean no reading"});
    expectFault("2026-06-01 10:10,", "Air °C", {"blank", "21.5"});
    expectFault("2026-06-01 10:10", "Air °C", {"blank"});
    expectFault("2026-06-01 10:10,\"21,5\"", "Air °C", {"\"21,5\" is no number", "21.5"});
    expectFault("2026-06-01 10:10,2l.5", "Air °C", {"\"2l.5\""});
    expectFault("2026-06-01 10:10,85", "Air °C", {"85 °C", "−30 to 60 °C"});
    expectFault("2026-06-01 10:10,inf", "Air °C", {"\"inf\""});
    expectFault("2027-06-01 10:10,21.5", "", {"1 June 2027", "still to come"});
    expectFault("2026-06-01 10:00,22", "Air °C", {"22 °C", "row 2", "21.5 °C"});
    expectFault("2026-06-01 10:10,21.5,surplus", "", {"more cells", "2 are allowed"});
    expectFault("2026-06-01 10:10,2\"1.5", "Air °C", {"quote"});
}

TEST(LogReader, NamesTheUnitOfTheFileNotOfTheLogbook) {
    core::LoggerMapping mapping = timeAndAir();
    mapping.columns[1].unit = core::LoggerUnit::Fahrenheit;
    expectFault("2026-06-01 10:10,215", "Air °C", {"215 °F", "−22 to 140 °F"}, mapping);
    mapping.columns[1].quantity = core::Quantity::Light;
    mapping.columns[1].unit = core::LoggerUnit::Lux;
    mapping.columns[1].luxPerMicromole = 54;
    expectFault("2026-06-01 10:10,-1", "Air °C", {"−1 lux", "0 to 162000 lux"}, mapping);
}

TEST(LogReader, SaysWhichOfTwoColumnsOfTimeIsWrong) {
    core::LoggerMapping mapping = timeAndAir();
    mapping.columns = {{.role = core::ColumnRole::Day},
                       {.role = core::ColumnRole::TimeOfDay},
                       {.role = core::ColumnRole::Values, .station = support::tubNorth}};
    mapping.timeForm = core::TimeForm::DayMonthYear;
    const logger::LogContents contents = readText(
        "Date,Hour,Air\n01.06.2026,10:00,21.5\n01.13.2026,10:10,21\n01.06.2026,10:99,21\n02.06.2026,1:10 PM,21\n",
        mapping);
    ASSERT_EQ(contents.faults.size(), 2U);
    EXPECT_EQ(contents.faults[0].column, "Date");
    EXPECT_EQ(contents.faults[1].column, "Hour");
    EXPECT_THAT(contents.faults[1].reason, HasSubstr("23:59"));
}

TEST(LogReader, ListsAHundredFaultsAndCountsTheOthers) {
    std::string text = heading + "2026-06-01 10:00,21.5\n";
    for (int i = 0; i < 250; ++i) text += "never,21.5\n";
    const logger::LogContents contents = readText(text, timeAndAir());
    EXPECT_EQ(contents.faults.size(), 100U);
    EXPECT_EQ(contents.moreFaults, 150);
    EXPECT_EQ(contents.faults.back().row, 102);
}

TEST(LogReader, TakesWordsAsNoReadingOnlyWhenToldSo) {
    core::LoggerMapping mapping = timeAndAir();
    mapping.wordsMeanNoReading = true;
    const logger::LogContents contents =
        readText(heading +
                     "2026-06-01 10:00,21.5\n2026-06-01 10:10,OFL\n2026-06-01 10:20,---\n2026-06-01 10:30,\n"
                     "2026-06-01 10:40,22\n,\n",
                 mapping);
    EXPECT_THAT(contents.faults, IsEmpty());
    EXPECT_EQ(contents.summary.blanks, 3);
    EXPECT_EQ(contents.summary.rows, 2);
    expectFault("2026-06-01 10:10,2l.5", "Air °C", {"\"2l.5\""}, mapping);
}

TEST(LogReader, PutsRowsInOrderAndCountsWhatStandsThereTwice) {
    const logger::LogContents contents = readText(heading +
                                                      "2026-06-02 10:00,22\n2026-06-01 10:00,21.5\n"
                                                      "2026-06-01 09:00,20\n2026-06-01 10:00,21.5\n",
                                                  timeAndAir());
    EXPECT_THAT(contents.faults, IsEmpty());
    EXPECT_EQ(contents.summary.repeated, 1);
    EXPECT_THAT(support::momentsIn(contents),
                ElementsAre("2026-06-01T09:00:00Z", "2026-06-01T10:00:00Z", "2026-06-02T10:00:00Z"));
}

TEST(LogReader, LetsALoggersClockRunFiveMinutesFast) {
    EXPECT_THAT(readText(heading + "2026-11-26 12:05,21.5\n", timeAndAir()).faults, IsEmpty());
    EXPECT_EQ(readText(heading + "2026-11-26 12:06,21.5\n", timeAndAir()).faults.size(), 1U);
}

TEST(LogReader, KeepsEachQuantityInItsOwnUnit) {
    core::LoggerMapping mapping{.timeForm = core::TimeForm::UnixSeconds};
    const auto column = [](core::Quantity quantity, core::LoggerUnit unit) {
        return core::LoggerColumn{.role = core::ColumnRole::Values,
                                  .station = support::tubNorth,
                                  .quantity = quantity,
                                  .unit = unit,
                                  .luxPerMicromole = 54};
    };
    mapping.columns = {{.role = core::ColumnRole::DayAndTime},
                       column(core::Quantity::AirTemperature, core::LoggerUnit::Fahrenheit),
                       column(core::Quantity::SolutionEc, core::LoggerUnit::MicroSiemens),
                       column(core::Quantity::Light, core::LoggerUnit::Lux),
                       {}};
    const logger::LogContents contents = readText("t,a,b,c,d\n1780318800,68,1200,5400,left out\n", mapping);
    ASSERT_THAT(contents.faults, IsEmpty());
    const auto logged = support::loggedIn(contents);
    ASSERT_EQ(logged.size(), 3U);
    EXPECT_NEAR(logged[0].value, 20, 1e-12);
    EXPECT_NEAR(logged[1].value, 1.2, 1e-12);
    EXPECT_NEAR(logged[2].value, 100, 1e-12);
    EXPECT_EQ(core::isoText(logged[0].at), "2026-06-01T13:00:00Z");
}

TEST(LogReader, ShowsGapsLongerThanThreeSteps) {
    const logger::LogContents contents =
        readText(heading +
                     "2026-06-01 10:00,21\n2026-06-01 10:10,21\n2026-06-01 10:20,21\n2026-06-01 10:50,21\n"
                     "2026-06-01 11:00,21\n2026-06-02 12:10,21\n2026-06-02 12:20,21\n",
                 timeAndAir());
    EXPECT_EQ(contents.summary.step, std::chrono::minutes(10));
    ASSERT_EQ(contents.summary.gaps.size(), 1U);  // half an hour is three steps, not more
    const std::string gap = logger::gapText(contents.summary.gaps[0]).toStdString();
    EXPECT_THAT(gap,
                AllOf(HasSubstr("1 June 2026, 11:00"), HasSubstr("2 June 2026, 12:10"), HasSubstr("1 day 1 hour")));
    EXPECT_THAT(logger::summaryText(contents.summary).toStdString(),
                AllOf(HasSubstr("7 rows"), HasSubstr("10 minutes"), HasSubstr("1 gap")));
}

TEST(LogReader, GivesFaultsOrValuesThatCanBeStoredWhateverIsInTheFile) {
    constexpr unsigned seed = 20261126;
    constexpr std::string_view bytes = "0123456789.,;\t\n\r\"- :/TZ+\xFF\xC3\xB0";
    std::mt19937 chance(seed);
    const auto below = [&](std::size_t count) { return static_cast<std::size_t>(chance() % count); };
    std::string good = heading;
    for (int i = 0; i < 40; ++i)
        good += "2026-06-0" + std::to_string(1 + i % 9) + " 1" + std::to_string(i % 10) + ":00,21.5\n";
    int readWhole = 0;
    for (int trial = 0; trial < 2000; ++trial) {
        std::string text = good;
        for (std::size_t change = below(4); change > 0; --change) {
            const std::size_t at = below(text.size());
            switch (below(3)) {
                case 0:
                    text[at] = bytes[below(bytes.size())];
                    break;
                case 1:
                    text.erase(at, 1 + below(20));
                    break;
                default:
                    text.insert(at, 1 + below(3), bytes[below(bytes.size())]);
            }
        }
        const support::LoggerFile file(text);
        const logger::FileLook look = logger::lookAt(file.path(), support::someShelves());
        core::LoggerMapping mapping = look.guess;
        for (core::LoggerColumn& column : mapping.columns) column.station = support::tubNorth;
        mapping.zone = "Europe/Berlin";
        if (!look.isTable() || !core::faultsIn(mapping, look.top.form.names, support::someShelves()).empty()) continue;
        const auto contents = logger::readLog(file.path(), look.top.form, mapping, support::loggersNow());
        for (const core::LoggerDay& day : contents.days) EXPECT_EQ(core::faultInSamples(day), "") << "trial " << trial;
        if (contents.faults.empty()) ++readWhole;
        EXPECT_EQ(contents.days.empty(), !contents.faults.empty());
    }
    EXPECT_GT(readWhole, 300);
}

TEST(LogReader, StopsWhenItIsCalledOff) {
    std::string text = heading;
    for (int i = 0; i < 20'000; ++i)
        text += core::isoText(support::moment("2026-06-01T10:00:00Z") + std::chrono::minutes(i)) + ",21\n";
    const support::LoggerFile file(text);
    std::stop_source stop;
    double share = 0;
    const db::Waiting waiting{.stop = stop.get_token(), .tell = [&](double told) {
                                  share = told;
                                  stop.request_stop();
                              }};
    const auto contents =
        logger::readLog(file.path(), logger::topOf(file.path()).form, timeAndAir(), support::loggersNow(), waiting);
    EXPECT_TRUE(contents.isCalledOff);
    EXPECT_THAT(contents.days, IsEmpty());
    EXPECT_GT(share, 0);
    EXPECT_LT(share, 0.9);
}

}  // namespace
