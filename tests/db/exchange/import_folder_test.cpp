// SPDX-License-Identifier: MIT
#include "db/exchange/import_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/db/exchange/exchange_folder.h"

namespace {

using namespace std::chrono_literals;
using support::rows;

/// Reads two tables; the headings are the full ones unless given.
db::FolderContents readTables(const std::vector<std::string>& batches, const std::vector<std::string>& checks,
                              std::string_view batchHeading = "batch,stuck_on,species,method,stuck",
                              std::string_view checkHeading = "batch,checked_on,rooted") {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", std::string(batchHeading) + "\r\n" + rows(batches));
    folder.write("checks.csv", std::string(checkHeading) + "\r\n" + rows(checks));
    db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    for (const db::ImportFault& fault : contents.faults)
        ADD_FAILURE() << fault.file << " " << fault.row << " " << fault.column << ": " << fault.reason;
    return contents;
}

TEST(ImportFolder, NeedsTwoTablesOnlyAndTheirNeededColumns) {
    const auto contents =
        readTables({"A1,2026-03-02,Hebe albicans,media tray,24", "A2,2026-03-03,Hebe albicans,aerated water,12"},
                   {"A1,2026-03-09,3", "A1,2026-03-16,5", "A2,2026-03-10,0"});
    EXPECT_FALSE(contents.hasFacts);
    const core::Records& records = contents.records;
    ASSERT_EQ(records.batches.size(), 2U);
    EXPECT_EQ(records.sessions.size(), 2U);
    EXPECT_EQ(records.shelves.plants.size(), 1U);
    EXPECT_EQ(records.shelves.methods.size(), 2U);
    const core::BatchRecord& first = records.batches[0];
    EXPECT_EQ(first.batch.code, "A1");
    EXPECT_EQ(first.batch.stuck, 24);
    EXPECT_EQ(first.batch.stuckOn, core::Date(2026y / 3 / 2));
    EXPECT_FALSE(first.batch.station.isSet());
    EXPECT_FALSE(first.batch.treatment.isSet());
    ASSERT_EQ(first.checks.size(), 2U);
    EXPECT_EQ(first.checks[1].rooted, 5);
    EXPECT_EQ(core::find(records.shelves.methods, first.batch.method)->name, "media tray");
}

TEST(ImportFolder, PutsBatchesOfOneDayIntoOneSession) {
    const auto contents =
        readTables({"A1,2026-03-02,Hebe albicans,media tray,24", "A2,2026-03-02,Hebe albicans,aerated water,12"}, {});
    EXPECT_EQ(contents.records.sessions.size(), 1U);
    EXPECT_EQ(contents.records.batches[0].batch.session, contents.records.batches[1].batch.session);
}

TEST(ImportFolder, TakesColumnsInAnyOrder) {
    const auto contents = readTables({"24,media tray,A1,Hebe albicans,2026-03-02"}, {"5,2026-03-16,A1"},
                                     "stuck,method,batch,species,stuck_on", "rooted,checked_on,batch");
    EXPECT_EQ(contents.records.batches.at(0).checks.at(0).rooted, 5);
}

TEST(ImportFolder, GathersTheRowsOfOneDayIntoOneCheck) {
    const auto contents =
        readTables({"A1,2026-03-02,Hebe albicans,media tray,24"},
                   {"A1,2026-03-09,3,1,2,rot,first look", "A1,2026-03-09,0,2,0,dried out,", "A1,2026-03-09,1,1,,,"},
                   "batch,stuck_on,species,method,stuck", support::checkHeading);
    const core::Records& records = contents.records;
    ASSERT_EQ(records.batches.at(0).checks.size(), 1U);
    const core::Check& check = records.batches[0].checks[0];
    EXPECT_EQ(check.rooted, 4);
    EXPECT_EQ(check.withdrawn, 2);
    EXPECT_EQ(check.lost(), 4);
    EXPECT_EQ(check.note, "first look");
    ASSERT_EQ(check.losses.size(), 3U);
    EXPECT_EQ(core::find(records.shelves.lossCauses, check.losses[0].cause)->name, "rot");
    EXPECT_FALSE(check.losses[2].cause.isSet());
}

TEST(ImportFolder, SortsChecksByDayWhateverTheirOrder) {
    const auto contents =
        readTables({"A1,2026-03-02,Hebe albicans,media tray,24"}, {"A1,2026-03-16,5", "A1,2026-03-09,3"});
    EXPECT_EQ(contents.records.batches.at(0).checks.at(0).rooted, 3);
}

constexpr std::string_view auxinHeading = "batch,stuck_on,species,method,stuck,treatment,auxin,auxin_mg_per_l";

TEST(ImportFolder, NamesATreatmentAfterItsAuxin) {
    const auto contents = readTables(
        {"A1,2026-03-02,Hebe albicans,media tray,24,,IBA,1000", "A2,2026-03-02,Hebe albicans,media tray,24,,IBA,1000.0",
         "A3,2026-03-02,Hebe albicans,media tray,24,,IBA + NAA,\"1000 + 2,5\"",
         "A4,2026-03-02,Hebe albicans,media tray,24,,,"},
        {}, auxinHeading);
    const core::Records& records = contents.records;
    ASSERT_EQ(records.shelves.treatments.size(), 2U);
    EXPECT_EQ(records.shelves.treatments[0].name, "IBA 1000 mg/L");
    EXPECT_EQ(records.shelves.treatments[1].auxins.at(1).milligramsPerLitre, 2.5);
    EXPECT_EQ(records.batches.at(0).batch.treatment, records.batches.at(1).batch.treatment);
    EXPECT_FALSE(records.batches.at(3).batch.treatment.isSet());
}

TEST(ImportFolder, LearnsATreatmentsAuxinFromAnyOfItsRows) {
    const auto contents = readTables({"A1,2026-03-02,Hebe albicans,media tray,24,weak gel,,",
                                      "A2,2026-03-02,Hebe albicans,media tray,24,weak gel,IBA,500"},
                                     {}, auxinHeading);
    ASSERT_EQ(contents.records.shelves.treatments.size(), 1U);
    EXPECT_EQ(contents.records.shelves.treatments[0].auxins.at(0).milligramsPerLitre, 500);
}

TEST(ImportFolder, GivesAStationTheMethodOfItsLatestBatch) {
    const auto contents = readTables(
        {"A1,2026-03-05,Hebe albicans,media tray,24,bench", "A2,2026-03-02,Hebe albicans,aerated water,24,bench"}, {},
        "batch,stuck_on,species,method,stuck,station");
    const core::Shelves& shelves = contents.records.shelves;
    ASSERT_EQ(shelves.stations.size(), 1U);
    EXPECT_EQ(core::find(shelves.methods, shelves.stations[0].method)->name, "media tray");
    EXPECT_EQ(core::find(shelves.methods, contents.records.batches.at(1).batch.method)->name, "aerated water");
}

TEST(ImportFolder, SeesNoDifferenceInBlanksAtTheEnds) {
    const auto contents = readTables(
        {"A1,2026-03-02, Hebe albicans,media tray,24,bench", "A2, 2026-03-02 ,Hebe albicans ,media tray , 24,bench "},
        {}, "batch,stuck_on,species,method,stuck,station");
    EXPECT_EQ(contents.records.shelves.plants.size(), 1U);
    EXPECT_EQ(contents.records.shelves.methods.size(), 1U);
    EXPECT_EQ(contents.records.shelves.stations.size(), 1U);
}

TEST(ImportFolder, KeepsCultivarsApart) {
    const auto contents =
        readTables({"A1,2026-03-02,Hebe albicans,media tray,24,", "A2,2026-03-02,Hebe albicans,media tray,24,Red Edge"},
                   {}, "batch,stuck_on,species,method,stuck,cultivar");
    EXPECT_EQ(contents.records.shelves.plants.size(), 2U);
}

TEST(ImportFolder, TakesTheGuardAgainstFormulasOff) {
    const auto contents =
        readTables({"A1,2026-03-02,Hebe albicans,media tray,24,'=1+1"}, {}, "batch,stuck_on,species,method,stuck,note");
    EXPECT_EQ(contents.records.batches.at(0).batch.note, "=1+1");
}

TEST(ImportFolder, TakesTheCitationFromTheDescription) {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", "batch,stuck_on,species,method,stuck\r\n");
    folder.write("checks.csv", "batch,checked_on,rooted\r\n");
    folder.write("datapackage.json",
                 "{\"title\": \"Old counts\", \"sources\": [{\"title\": \"A (1935)\"}, {\"title\": \"B (1994)\"}]}");
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    EXPECT_TRUE(contents.faults.empty());
    EXPECT_EQ(contents.records.shelves.facts.name, "Old counts");
    EXPECT_EQ(contents.records.shelves.facts.citation, "A (1935); B (1994)");
}

TEST(ImportFolder, StopsWhenItIsAskedTo) {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", "batch,stuck_on,species,method,stuck\r\nA1,2026-03-02,Hebe albicans,media tray,24\r\n");
    folder.write("checks.csv", "batch,checked_on,rooted\r\n");
    std::stop_source stop;
    stop.request_stop();
    EXPECT_TRUE(db::readFolder(folder.path(), support::lateDay, stop.get_token()).records.batches.empty());
}

TEST(ImportFolder, ReadsTheShippedExample) {
    const db::FolderContents contents =
        db::readFolder(std::string(STRIKEBOOK_SOURCE_DIR) + "/resources/examples/bartlett_1935_plum", support::lateDay);
    for (const db::ImportFault& fault : contents.faults)
        ADD_FAILURE() << fault.file << " " << fault.row << ": " << fault.reason;
    ASSERT_EQ(contents.records.batches.size(), 4U);
    int alive = 0;
    for (const core::BatchRecord& record : contents.records.batches) {
        const core::Tally tally = core::tallyOf(record.batch, record.checks);
        EXPECT_EQ(tally.stuck, 240);
        EXPECT_EQ(tally.undecided(), 0);
        alive += tally.rooted;
    }
    EXPECT_EQ(alive, 156 + 84 + 107 + 31);
    EXPECT_THAT(contents.records.shelves.facts.citation, testing::HasSubstr("Bartlett MS (1935)"));
}

}  // namespace
