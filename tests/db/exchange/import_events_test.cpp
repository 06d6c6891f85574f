// SPDX-License-Identifier: MIT
// What happened beside checks, as a folder brings it: each fault is named with its file, its row and its column; older folders come in.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "db/exchange/import_folder.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;

constexpr const char* readingHeading = "station,quantity,read_at,value,note";
constexpr const char* careHeading = "station,done_at,kind,note";
constexpr const char* expenseHeading = "batch,spent_on,what,amount";
constexpr const char* photoHeading = "batch,taken_on,caption,file";
constexpr const char* findingHeading = "batch,checked_on,position,outcome,cause";

/// Two batches in one tub of two rows of six, and a check of one.
class ImportEvents : public testing::Test {
  protected:
    ImportEvents() {
        folder.write("stations.csv", support::rows({"station,method,rows,columns,blocked", "Tub,water,2,6,B6"}));
        batches({"P1,2026-03-02,Hebe albicans,water,Tub,6,A1-A6", "P2,2026-03-02,Hebe albicans,water,Tub,2,b1 b2"});
        folder.write("checks.csv", support::rows({"batch,checked_on,rooted,lost,withdrawn,cause",
                                                  "P1,2026-03-09,2,1,0,rot", "P1,2026-03-16,1,0,1,"}));
    }

    void batches(std::vector<std::string> lines) const {
        lines.insert(lines.begin(), "batch,stuck_on,species,method,station,stuck,positions");
        folder.write("batches.csv", support::rows(lines));
    }

    std::vector<std::string> faults() const {
        std::vector<std::string> found;
        for (const db::ImportFault& fault : db::readFolder(folder.path(), support::lateDay).faults)
            found.push_back(fault.file + ' ' + std::to_string(fault.row) + ' ' + fault.column + ": " + fault.reason);
        return found;
    }

    void expectFault(const std::string& table, const std::string& heading, const std::string& row,
                     const std::string& start) const {
        folder.write(table, support::rows({heading, row}));
        EXPECT_THAT(faults(), ElementsAre(StartsWith(table + " 2 " + start))) << row;
        std::filesystem::remove(folder / table);
    }

    support::TemporaryFolder folder;
};

TEST_F(ImportEvents, AFolderOfTheFirstVersionHasNoneAndComesIn) {
    EXPECT_THAT(faults(), IsEmpty());
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    EXPECT_THAT(contents.records.readings, IsEmpty());
    EXPECT_EQ(contents.records.shelves.stations.front().blocked, "B6");
    EXPECT_EQ(contents.records.batches.back().batch.positions, "B1-B2");
}

TEST_F(ImportEvents, FindingsJoinTheCountsOfTheirCheck) {
    folder.write("findings.csv", support::rows({findingHeading, "P1,2026-03-09,a2,rooted,", "P1,2026-03-09,A1,rooted,",
                                                "P1,2026-03-09,A3,lost,rot", "P1,2026-03-16,A6,withdrawn,"}));
    EXPECT_THAT(faults(), IsEmpty());
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    const core::Check& check = contents.records.batches.front().checks.front();
    ASSERT_EQ(check.findings.size(), 3U);
    EXPECT_EQ(core::nameOf(check.findings.front().position), "A1");
    EXPECT_EQ(check.findings.back().cause, check.losses.front().cause);
}

TEST_F(ImportEvents, NamesWhatIsWrongWithFindings) {
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {"P9,2026-03-09,A1,rooted,", "batch: No batch \"P9\""},
             {"P1,2026-03-10,A1,rooted,", "checked_on: No check of \"P1\" on 2026-03-10"},
             {"P1,the 9th,A1,rooted,", "checked_on: \"the 9th\""},
             {"P1,2026-03-09,1A,rooted,", "position: \"1A\" is no position"},
             {"P1,2026-03-09,B1,rooted,", "position: Position B1 rooted is not one of P1"},
             {"P1,2026-03-09,A1,callused,", "outcome: \"callused\" is no outcome"},
             {"P1,2026-03-09,A1,withdrawn,", "outcome: Positions marked withdrawn are 1"},
             {"P1,2026-03-09,A1,lost,frost", "cause: \"frost\" is no cause"},
             {"P1,2026-03-09,A1,rooted,rot", "cause: A cause is named, but the cutting was not lost"}})
        expectFault("findings.csv", findingHeading, row, start);
    folder.write("findings.csv", support::rows({findingHeading, "P1,2026-03-09,A1,rooted,", "P1,2026-03-09,A1,rooted,",
                                                "P1,2026-03-16,A1,rooted,"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("findings.csv 2 position: Position A1 rooted is decided already"),
                                      StartsWith("findings.csv 3 position: A1 is in row 2 already"),
                                      StartsWith("findings.csv 4 position: Position A1 rooted is decided already")));
}

TEST_F(ImportEvents, NamesWhereABatchCannotStand) {
    const std::string p1 = "P1,2026-03-02,Hebe albicans,water,Tub,6,A1-A6";
    for (const auto& [row, reason] : std::vector<std::pair<std::string, std::string>>{
             {"P2,2026-03-02,Hebe albicans,water,Tub,2,A6-B6", "Positions are A6, where cuttings of P1 stand"},
             {"P2,2026-03-02,Hebe albicans,water,Tub,1,B6", "Positions are B6, where Tub holds no cutting"},
             {"P2,2026-03-02,Hebe albicans,water,Tub,3,B1-B2", "Positions are B1-B2, which are 2"},
             {"P2,2026-03-02,Hebe albicans,water,,1,B1", "Positions are B1, but the batch has no station"},
             {"P2,2026-03-02,Hebe albicans,water,Tub,1,middle", "Positions are \"middle\", which can't be read"}}) {
        batches({p1, row});
        const auto found = faults();
        ASSERT_FALSE(found.empty()) << row;
        EXPECT_THAT(found, testing::Contains(StartsWith("batches.csv 3 positions: " + reason)));
    }
}

TEST_F(ImportEvents, NamesWhatIsWrongWithReadingsAndCare) {
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {"Pond,solution_ec,2026-03-09T08:00:00Z,0.4,", "station: No station \"Pond\""},
             {"Tub,moonlight,2026-03-09T08:00:00Z,0.4,", "quantity: \"moonlight\" is no quantity"},
             {"Tub,solution_ec,2026-03-09,0.4,", "read_at: \"2026-03-09\" is no moment"},
             {"Tub,solution_ec,,0.4,", "read_at: The moment is missing"},
             {"Tub,solution_ec,2027-03-09T08:00:00Z,0.4,", "read_at: Read at is 2027-03-09T08:00:00Z"},
             {"Tub,solution_ec,2026-03-09T08:00:00Z,much,", "value: \"much\" is not a number"},
             {"Tub,solution_ec,2026-03-09T08:00:00Z,120,", "value: Solution EC is 120 mS/cm"}})
        expectFault("readings.csv", readingHeading, row, start);
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {"Pond,2026-03-09T08:00:00Z,vented,", "station: No station \"Pond\""},
             {"Tub,2026-03-09T08:00:00Z,sung to,", "kind: \"sung to\" is no care"},
             {"Tub,2026-03-09T08:00:00Z,other,", "note: Note is blank"}})
        expectFault("care.csv", careHeading, row, start);
}

TEST_F(ImportEvents, ReadsATemperatureBelowZero) {
    folder.write("readings.csv",
                 support::rows({readingHeading, "Tub,air_temperature,2026-03-09T08:00:00Z,\"-3,5\",frost"}));
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    ASSERT_EQ(contents.records.readings.size(), 1U);
    EXPECT_EQ(contents.records.readings.front().value, -3.5);
}

TEST_F(ImportEvents, NamesWhatIsWrongWithExpenses) {
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {"P9,2026-03-09,gel,1", "batch: No batch \"P9\""},
             {"P1,2026-03-09,,1", "what: What for is blank"},
             {"P1,2026-03-09,gel,free", "amount: \"free\" is not a number"},
             {"P1,2026-03-09,gel,1.005", "amount: \"1.005\" is finer than a hundredth"},
             {"P1,2027-03-09,gel,1", "spent_on: Spent on is 2027-03-09"}})
        expectFault("expenses.csv", expenseHeading, row, start);
    folder.write("expenses.csv", support::rows({expenseHeading, "P1,2026-03-09,gel,\"8,5\""}));
    EXPECT_EQ(db::readFolder(folder.path(), support::lateDay).records.expenses.front().hundredths, 850);
}

TEST_F(ImportEvents, TakesPicturesOnlyFromTheFolderOfPhotos) {
    std::filesystem::create_directory(folder / "photos");
    folder.write("photos/1.jpg", "\xFF\xD8\xFF\xE0picture");
    folder.write("photos/2.jpg", "not a picture");
    folder.write("outside.jpg", "\xFF\xD8\xFF\xE0picture");
    std::filesystem::create_symlink(folder / "outside.jpg", folder / "photos/link.jpg");
    for (const char* file : {"photos/none.jpg", "photos/link.jpg", "outside.jpg", "photos/../outside.jpg", "photos",
                             "photos/..", "/etc/passwd", ""})
        expectFault("photos.csv", photoHeading, "P1,2026-03-09,day 7," + std::string(file), "file: ");
    expectFault("photos.csv", photoHeading, "P1,2026-03-09,day 7,photos/2.jpg", "file: Photo is 13 bytes");
    expectFault("photos.csv", photoHeading, "P1,2026-03-01,day 7,photos/1.jpg", "taken_on: Taken on is 2026-03-01");
    folder.write("photos.csv", support::rows({photoHeading, "P1,2026-03-09,day 7,photos/1.jpg"}));
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    EXPECT_THAT(contents.faults, IsEmpty());
    ASSERT_EQ(contents.records.photos.size(), 1U);
    EXPECT_EQ(contents.records.photos.front().image.size(), 11U);
}

TEST_F(ImportEvents, SchedulesAndUnitsMustBeKnown) {
    folder.write("check_schedules.csv",
                 support::rows({"check_schedule,first_check_after_days,check_every_days", "weekly,7,0"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("check_schedules.csv 2 check_every_days: Days between checks is 0")));
    folder.write("check_schedules.csv",
                 support::rows({"check_schedule,first_check_after_days,check_every_days", "weekly,7,7"}));
    folder.write("methods.csv", support::rows({"method,check_schedule", "water,daily"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("methods.csv 2 check_schedule: \"daily\" is not in")));
    folder.write("methods.csv", support::rows({"method,check_schedule", "water,weekly"}));
    folder.write("logbook.csv", support::rows({"name,ec_unit,interval", "Bench,mho,wilson"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("logbook.csv 2 ec_unit: \"mho\" is no unit")));
}

}  // namespace
