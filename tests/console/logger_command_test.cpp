// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

const std::string twoRows = "Time,Air (°C)\n2026-06-01 10:00,21.5\n2026-06-01 10:10,22\n";

/// A demonstration logbook, whose stations have names, and a logger's file beside it.
struct LoggerScene {
    support::TemporaryFolder folder;
    std::string log = folder / "season.strikebook";
    std::string file = folder / "logger.csv";
    std::string station;

    explicit LoggerScene(const std::string& content = twoRows) {
        EXPECT_EQ(run({"demo", log, "--batches", "4"}).status, 0);
        folder.write("logger.csv", content);
        EXPECT_EQ(run({"export", log, folder / "tables"}).status, 0);
        const std::string stations = folder.read("tables/stations.csv");
        const std::size_t row = stations.find('\n') + 1;
        station = stations.substr(row, stations.find(',', row) - row);
    }
    [[nodiscard]] std::string column(const std::string& meaning = ":air_temperature:C") const {
        return "Air (°C)=" + station + meaning;
    }
    [[nodiscard]] support::Ran bringIn(const std::vector<std::string>& more) const {
        std::vector<std::string> words{"logger", log, file};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    }
};

TEST(LoggerCommand, BringsInAFileOnceAndRemembersItsColumns) {
    const LoggerScene scene;
    const auto json =
        scene.bringIn({"--column", scene.column(), "--zone", "UTC", "--remember", "Tent", "--json"}).json();
    EXPECT_EQ(json["imported"], true);
    EXPECT_EQ(json["added"], 2);
    EXPECT_EQ(json["step_seconds"], 600);
    EXPECT_EQ(json["first"], "2026-06-01T10:00:00Z");
    const support::Ran again = scene.bringIn({});
    EXPECT_EQ(again.status, 0) << again.err;
    EXPECT_THAT(again.out, HasSubstr("Nothing new: all 2 values were there already."));
    EXPECT_EQ(scene.bringIn({"--format", "Tent"}).status, 0);
    EXPECT_EQ(run({"verify", scene.log}).status, 0);
    EXPECT_EQ(run({"history", scene.log, "--undo"}).status, 0);
    EXPECT_EQ(scene.bringIn({"--format", "Tent"}).status, 1);
}

TEST(LoggerCommand, OffersWhatTheColumnsMayBeWhereNoFormatIsKnown) {
    const LoggerScene scene;
    const support::Ran ran = scene.bringIn({});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("--time \"Time\""));
    EXPECT_THAT(ran.err, HasSubstr(":air_temperature:C\""));
    EXPECT_THAT(ran.err, HasSubstr("--order y-m-d"));
}

TEST(LoggerCommand, ListsFaultsAndLeavesTheLogbookAsItWas) {
    const LoggerScene scene(twoRows + "2026-06-01 10:20,OFL\n");
    const std::string before = scene.folder.read("season.strikebook");
    const support::Ran ran = scene.bringIn({"--column", scene.column(), "--zone", "UTC"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("logger.csv, row 4, column Air (°C): \"OFL\" is no number"));
    EXPECT_THAT(ran.err, HasSubstr("Nothing was imported."));
    EXPECT_EQ(scene.folder.read("season.strikebook"), before);
    EXPECT_EQ(scene.bringIn({"--column", scene.column(), "--zone", "UTC", "--blanks-are-no-reading"}).status, 0);
}

TEST(LoggerCommand, AsksForTheOrderOfDayAndMonth) {
    const LoggerScene scene("Time,Air (°C)\n06/01/2026 10:00,21.5\n06/01/2026 10:10,22\n");
    const support::Ran ran = scene.bringIn({"--column", scene.column(), "--zone", "UTC"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("more than one way"));
    const auto json = scene.bringIn({"--column", scene.column(), "--zone", "UTC", "--order", "d.m.y", "--json"}).json();
    EXPECT_EQ(json["first"], "2026-01-06T10:00:00Z");
}

TEST(LoggerCommand, SaysWhatIsWrongWithItsOptions) {
    const LoggerScene scene;
    const auto expectWrong = [&](const std::vector<std::string>& options, const std::string& words) {
        const support::Ran ran = scene.bringIn(options);
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_THAT(ran.err, HasSubstr(words));
    };
    expectWrong({"--column", "Depth=" + scene.station + ":light:lux:54"}, "the file does not have");
    expectWrong({"--column", "2=Nowhere:air_temperature:C"}, "the station \"Nowhere\"");
    expectWrong({"--column", "2=" + scene.station + ":warmth:C"}, "the quantity");
    expectWrong({"--column", "2=" + scene.station + ":air_temperature:K"}, "of units are allowed C, F");
    expectWrong({"--column", scene.column(), "--zone", "Mars"}, "--zone is");
    expectWrong({"--column", scene.column(), "--order", "y"}, "--order is");
    expectWrong({"--column", scene.column(), "--decimal", ";"}, "--decimal is");
    expectWrong({"--column", scene.column(), "--twice", "both"}, "--twice is");
    expectWrong({"--time", "1", "2", "3"}, "one or two");
    expectWrong({"--format", "Tent", "--time", "1"}, "the one or the other");
}

}  // namespace
