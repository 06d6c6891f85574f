// SPDX-License-Identifier: MIT
// Conditions and mixes, as a folder brings them: each fault is named with its file, its row and its column; older folders come in.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "db/exchange/import_folder.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;

constexpr const char* mixHeading = "session,care,made_at,kind,title,amounts,cautions";
constexpr const char* bandHeading = "stage,quantity,species,cultivar,low,high";
constexpr const char* loggerHeading = "station,quantity,at,value";
constexpr const char* formatHeading = "name,header,mapping";

class ImportConditions : public testing::Test {
  protected:
    ImportConditions() {
        folder.write("sessions.csv", support::rows({"session,held_on", "S1,2026-03-02"}));
        folder.write("batches.csv", support::rows({"batch,stuck_on,species,method,station,stuck,session",
                                                   "P1,2026-03-02,Hebe albicans,water,Tub,6,S1"}));
        folder.write("checks.csv", support::rows({"batch,checked_on,rooted"}));
        folder.write("care.csv", support::rows({"station,done_at,kind,note,litres,care",
                                                "Tub,2026-03-09T08:00:00Z,topped up,,\"1,5\",C1"}));
    }

    std::vector<std::string> faults() const {
        std::vector<std::string> found;
        for (const db::ImportFault& fault : db::readFolder(folder.path(), support::lateDay).faults)
            found.push_back(fault.file + ' ' + std::to_string(fault.row) + ' ' + fault.column + ": " + fault.reason);
        return found;
    }
    core::Records records() const {
        EXPECT_THAT(faults(), IsEmpty());
        return db::readFolder(folder.path(), support::lateDay).records;
    }

    void expectFaults(const std::string& table, const std::string& heading,
                      const std::vector<std::pair<std::string, std::string>>& rows) const {
        for (const auto& [row, start] : rows) {
            folder.write(table, support::rows({heading, row}));
            EXPECT_THAT(faults(), ElementsAre(StartsWith(table + " 2 " + start))) << row;
        }
        std::filesystem::remove(folder / table);
    }

    support::TemporaryFolder folder;
};

TEST_F(ImportConditions, AnOlderFolderHasNoneAndComesIn) {
    folder.write("care.csv", support::rows({"station,done_at,kind,note", "Tub,2026-03-09T08:00:00Z,topped up,"}));
    folder.write("datapackage.json", R"({"strikebook": {"exchange_version": 3}})");
    folder.write("logbook.csv", support::rows({"name", "Bench"}));
    folder.write("plants.csv", support::rows({"species", "Hebe albicans"}));
    const core::Records read = records();
    EXPECT_FALSE(read.care.front().litres);
    EXPECT_EQ(read.shelves.facts.falseAlarmRate, core::LogbookFacts{}.falseAlarmRate);
    EXPECT_EQ(read.shelves.facts.degreeDayBase, 10);
    EXPECT_FALSE(read.shelves.plants.front().isEdible);
    EXPECT_EQ(read.batches.front().batch.licence, "");
    EXPECT_THAT(read.mixes, IsEmpty());
    EXPECT_THAT(read.loggerDays, IsEmpty());
    EXPECT_THAT(read.loggerFormats, IsEmpty());
    EXPECT_THAT(read.shelves.ownBands, IsEmpty());
}

TEST_F(ImportConditions, MixesFindTheirSessionAndTheirCare) {
    folder.write("mixes.csv", support::rows({mixHeading, "S1,,2026-03-02T08:00:00Z,auxin,dip,\"1 g\n2 mL\",acids",
                                             ",C1,2026-03-09T08:00:00Z,tub,top up,1 L,"}));
    const core::Records read = records();
    ASSERT_EQ(read.mixes.size(), 2U);
    EXPECT_EQ(read.mixes.front().session, read.sessions.front().id);
    EXPECT_EQ(read.mixes.front().amounts, "1 g\n2 mL");
    EXPECT_EQ(read.mixes.back().care, read.care.front().id);
    EXPECT_EQ(read.care.front().litres, 1.5);
}

TEST_F(ImportConditions, NamesWhatIsWrongWithMixes) {
    expectFaults("mixes.csv", mixHeading,
                 {{"S2,,2026-03-02T08:00:00Z,auxin,dip,1 g,", "session: \"S2\" is not in sessions.csv"},
                  {",C2,2026-03-02T08:00:00Z,auxin,dip,1 g,", "care: \"C2\" is not in care.csv"},
                  {",,2026-03-02T08:00:00Z,auxin,dip,1 g,", "session: Kept with is nothing"},
                  {"S1,C1,2026-03-02T08:00:00Z,auxin,dip,1 g,", "session: Kept with is a session and care"},
                  {"S1,,2026-03-02,auxin,dip,1 g,", "made_at: \"2026-03-02\" is no moment"},
                  {"S1,,2026-03-02T08:00:00Z,potion,dip,1 g,", "kind: \"potion\" is no kind of mix"},
                  {"S1,,2026-03-02T08:00:00Z,auxin,,1 g,", "title: Title is blank"},
                  {"S1,,2026-03-02T08:00:00Z,auxin,dip,,", "amounts: Amounts is blank"},
                  {"S1,,2026-03-02T08:00:00Z,auxin,dip,1 g,moonlight", "cautions: Cautions has \"moonlight\""}});
    folder.write("care.csv",
                 support::rows({"station,done_at,kind,note,litres,care", "Tub,2026-03-09T08:00:00Z,vented,,0,C1",
                                "Tub,2026-03-09T08:00:00Z,vented,,,C1"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("care.csv 2 litres: Litres is 0"),
                                      StartsWith("care.csv 3 care: The care \"C1\" is there already")));
}

TEST_F(ImportConditions, NamesWhatIsWrongWithBands) {
    expectFaults("own_bands.csv", bandHeading,
                 {{"in flower,light,,,1,2", "stage: \"in flower\" is no stage"},
                  {"hardening,moonlight,,,1,2", "quantity: \"moonlight\" is no quantity"},
                  {"hardening,light,Buxus,,1,2", "species: No plant of this species"},
                  {"hardening,light,,,3,2", "low: Low is 3, which is above the high of 2"},
                  {"hardening,light,,,,", "low: Band has neither"},
                  {"hardening,light,,,,9000", "high: High is 9000"}});
    folder.write("own_bands.csv", support::rows({bandHeading, "hardening,vapour_deficit,Hebe albicans,,\"0,4\",0.8",
                                                 "hardening,vapour_deficit,,,,1", "hardening,vapour_deficit,,,,2"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("own_bands.csv 4 low: Band of vapour pressure deficit, hardening, is "
                                                 "there already")));
}

TEST_F(ImportConditions, RowsOfLoggersBecomeDaysInWhateverOrderTheyStand) {
    folder.write("logger.csv",
                 support::rows({loggerHeading, "Tub,air_temperature,2026-03-09T08:00:00Z,18.5",
                                "Tub,air_temperature,2026-03-10T00:00:00Z,\"-2,25\"",
                                "Tub,air_temperature,2026-03-09T07:59:59Z,18", "Tub,light,2026-03-09T08:00:00Z,0"}));
    const core::Records read = records();
    ASSERT_EQ(read.loggerDays.size(), 3U);
    EXPECT_THAT(read.loggerDays.front().samples, ElementsAre(core::Sample{28'799, 18}, core::Sample{28'800, 18.5}));
    EXPECT_THAT(read.loggerDays[1].samples, ElementsAre(core::Sample{0, -2.25}));
}

TEST_F(ImportConditions, NamesWhatIsWrongWithLoggers) {
    expectFaults("logger.csv", loggerHeading,
                 {{"Pond,light,2026-03-09T08:00:00Z,1", "station: No station \"Pond\""},
                  {"Tub,moonlight,2026-03-09T08:00:00Z,1", "quantity: \"moonlight\" is no quantity"},
                  {"Tub,light,2026-03-09 08:00,1", "at: \"2026-03-09 08:00\" is no moment"},
                  {"Tub,light,2027-03-09T08:00:00Z,1", "at: Read at is 2027-03-09T08:00:00Z"},
                  {"Tub,light,2026-03-09T08:00:00Z,3001", "value: Light is 3001"},
                  {"Tub,light,2026-03-09T08:00:00Z,", "value: The number is missing"}});
    folder.write("logger.csv", support::rows({loggerHeading, "Tub,light,2026-03-09T08:00:00Z,1",
                                              "Tub,light,2026-03-09T08:00:01Z,1", "Tub,light,2026-03-09T08:00:00Z,1"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("logger.csv 4 at: There is a value of this station, quantity and")));
    std::filesystem::remove(folder / "logger.csv");
    expectFaults(
        "logger_formats.csv", formatHeading,
        {{",time;t,{}", "name: Name is blank"}, {"greenhouse,time;t,", "mapping: Columns of the file is blank"}});
    folder.write("logger_formats.csv", support::rows({formatHeading, "a,,{}", "a,,{}"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("logger_formats.csv 3 name: Name is \"a\", which is taken")));
}

TEST_F(ImportConditions, NamesWhatIsWrongWithTheBenchsOwnFigures) {
    expectFaults("logbook.csv", "name,altitude_m,degree_day_base,false_alarm_rate",
                 {{"Bench,9000,10,0.01", "altitude_m: Altitude in m is 9000"},
                  {"Bench,-28,99,0.01", "degree_day_base: Base of degree-days in C is 99"},
                  {"Bench,-28,-5,0.9", "false_alarm_rate: Rate of false alarms is 0.9"}});
}

}  // namespace
