// SPDX-License-Identifier: MIT
// What a file is written in, what stands between its cells, and where its names are: made up in every combination.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/logger/file_look.h"
#include "db/logbook_error.h"
#include "tests/logger/logger_files.h"
#include "tests/support/builders.h"

namespace {

using testing::ElementsAre;

struct Written {
    logger::Encoding encoding;
    bool hasMark;
    char separator;
    char decimalSign;
    const char* lineEnd;
};

std::vector<Written> everyWay() {
    std::vector<Written> ways;
    using logger::Encoding;
    for (const auto& [encoding, hasMark] : std::initializer_list<std::pair<Encoding, bool>>{{Encoding::Utf8, false},
                                                                                            {Encoding::Utf8, true},
                                                                                            {Encoding::Utf16Le, true},
                                                                                            {Encoding::Utf16Le, false},
                                                                                            {Encoding::Utf16Be, true},
                                                                                            {Encoding::Utf16Be, false},
                                                                                            {Encoding::Latin1, false}})
        for (const char separator : {',', ';', '\t'})
            for (const char decimalSign : {'.', ','})
                for (const char* lineEnd : {"\n", "\r\n"})
                    ways.push_back({encoding, hasMark, separator, decimalSign, lineEnd});
    return ways;
}

/// Two lines of the logger's own, names, three rows; a quoted name with the separator and a line break in it.
std::string fileWritten(const Written& way) {
    const auto number = [&](std::string text) {
        text[text.find('.')] = way.decimalSign;
        return way.separator == ',' && way.decimalSign == ',' ? '"' + text + '"' : text;
    };
    const std::string next(1, way.separator), end = way.lineEnd;
    std::string text = "Gewächshaus" + end + "Serial" + next + "1 234" + end + end;
    text += "Time" + next + "\"Air\n(°C" + next + " \"\"dry\"\")\"" + next + "RH (%)" + end;
    text += "2026-06-01 10:00" + next + number("21.5") + next + number("60.0") + end;
    text += "2026-06-01 10:10" + next + number("-0.25") + next + number("61.5") + end;
    text += "2026-06-01 10:20" + next + number("22.0") + next + number("62.0") + end;
    return support::encoded(text, way.encoding, way.hasMark);
}

TEST(FileForm, IsFoundInEveryEncodingSeparatorDecimalSignAndLineEnd) {
    core::Shelves shelves = support::someShelves();
    int number = 0;
    for (const Written& way : everyWay()) {
        SCOPED_TRACE(testing::Message() << "way " << ++number << ": " << logger::nameOf(way.encoding) << ", "
                                        << way.separator << ", " << way.decimalSign);
        const support::LoggerFile file(fileWritten(way));
        const logger::FileLook look = logger::lookAt(file.path(), shelves);
        ASSERT_TRUE(look.isTable()) << look.fault;
        EXPECT_EQ(look.top.form.encoding, way.encoding);
        EXPECT_EQ(look.top.form.separator, way.separator);
        const std::string air = "Air (°C" + std::string(1, way.separator) + " \"dry\")";
        EXPECT_EQ(look.top.form.names[1], QString::fromStdString(air).simplified().toStdString());
        core::LoggerMapping mapping = look.guess;
        for (core::LoggerColumn& column : mapping.columns) column.station = support::tubNorth;
        mapping.zone = "UTC";
        EXPECT_EQ(mapping.timeForm, core::TimeForm::YearMonthDay);
        const logger::LogContents contents =
            logger::readLog(file.path(), look.top.form, mapping, support::loggersNow());
        ASSERT_TRUE(contents.faults.empty()) << contents.faults.front().reason;
        const core::Moment ten = support::moment("2026-06-01T10:00:00Z");
        const std::chrono::minutes step{10};
        using core::Quantity;
        EXPECT_THAT(support::loggedIn(contents),
                    ElementsAre(support::Logged{Quantity::AirTemperature, ten, 21.5},
                                support::Logged{Quantity::AirTemperature, ten + step, -0.25},
                                support::Logged{Quantity::AirTemperature, ten + 2 * step, 22},
                                support::Logged{Quantity::RelativeHumidity, ten, 60},
                                support::Logged{Quantity::RelativeHumidity, ten + step, 61.5},
                                support::Logged{Quantity::RelativeHumidity, ten + 2 * step, 62}));
    }
    EXPECT_EQ(number, 84);
}

TEST(FileForm, KnowsLettersThatLieAcrossItsPieces) {
    // Pieces are 65,536 bytes: a letter of two bytes begins at each place around the border.
    for (int shift = 0; shift < 4; ++shift) {
        std::string text = "Time,Note,°C\n" + std::string(static_cast<std::size_t>(shift), ' ');
        while (text.size() < 70'000) text += "2026-06-01 10:00,ööööö,21\n";
        const support::LoggerFile file(text);
        EXPECT_EQ(logger::encodingOf(file.path()), logger::Encoding::Utf8);
        const support::LoggerFile broken(text + "\xF6\n");
        EXPECT_EQ(logger::encodingOf(broken.path()), logger::Encoding::Latin1);
    }
}

TEST(FileForm, TakesUnitsBelowTheNamesAsPartOfThem) {
    const support::LoggerFile file(
        "\"Station\",\"North\"\nTIMESTAMP,RECORD,AirTC,RH\nTS,RN,C,%\n,,Smp,Smp\n"
        "2026-06-01 10:00:00,1,21.5,60\n");
    EXPECT_THAT(logger::topOf(file.path()).form.names,
                ElementsAre("TIMESTAMP, TS", "RECORD, RN", "AirTC, C, Smp", "RH, %, Smp"));
}

TEST(FileForm, NamesColumnsThatTheFileDoesNot) {
    const support::LoggerFile file("2026-06-01 10:00;21,5;60\n2026-06-01 10:10;21,6;60\n");
    const logger::FileForm form = logger::topOf(file.path()).form;
    EXPECT_EQ(form.firstRow, 1);
    EXPECT_EQ(form.heading, "");
    EXPECT_THAT(form.names, ElementsAre("Column 1", "Column 2", "Column 3"));
}

TEST(FileForm, KeepsControlCharactersOutOfNames) {
    // A dash of Windows' own letters, which Latin-1 has no letter for.
    const support::LoggerFile file("Time;Air \x96 \xB0\x43\n2026-06-01 10:00;21.5\n");
    EXPECT_THAT(logger::topOf(file.path()).form.names, ElementsAre("Time", "Air  °C"));
}

TEST(FileForm, TellsColumnsOfOneNameApart) {
    const support::LoggerFile file("Time,Temp,Temp\n2026-06-01 10:00,21.5,20\n");
    EXPECT_THAT(logger::topOf(file.path()).form.names, ElementsAre("Time", "Temp", "Temp (2)"));
}

TEST(FileForm, SaysOfAFileThatIsNoTableWhatIsAllowed) {
    for (const char* text : {"", "\n\n", "just words\n", "a,b\n1,2\n", "\xFF\xFE", "\"never closed"}) {
        const support::LoggerFile file(text);
        const logger::FileLook look = logger::lookAt(file.path(), support::someShelves());
        EXPECT_FALSE(look.isTable());
        EXPECT_THAT(look.fault, testing::HasSubstr("logger.csv"));
        EXPECT_THAT(look.fault, testing::HasSubstr("commas, semicolons or tabs"));
    }
}

TEST(FileForm, SaysWhenAFileIsNotThere) {
    const support::ScratchFolder folder;
    EXPECT_THROW((void)logger::topOf(folder / "none.csv"), db::LogbookError);
    EXPECT_THROW((void)logger::topOf(folder.path()), db::LogbookError);
}

}  // namespace
