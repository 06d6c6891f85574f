// SPDX-License-Identifier: MIT
// What is wrong with a folder is named with its file, its row and its column, whatever it is.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <set>

#include "db/exchange/import_folder.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using namespace std::chrono_literals;
using testing::HasSubstr;

constexpr int batchCount = 40;

/// Tables as lists of rows of cells, sound as they are made, for a fault to be put in.
struct Tables {
    std::vector<std::vector<std::string>> batchRows;
    std::vector<std::vector<std::string>> checkRows;
};

std::vector<std::string> cellsOfHeading(std::string_view heading) {
    std::vector<std::string> cells{""};
    for (const char c : heading)
        if (c == ',')
            cells.emplace_back();
        else
            cells.back() += c;
    return cells;
}

/// Forty batches of 20 cuttings with two checks each: 4 rooted, 2 lost to rot, 1 withdrawn, twice.
Tables soundTables() {
    Tables tables{{cellsOfHeading(support::batchHeading)}, {cellsOfHeading(support::checkHeading)}};
    for (int i = 1; i <= batchCount; ++i) {
        const std::string code = "P" + std::to_string(i);
        tables.batchRows.push_back({code, "2026-03-02", "Hebe albicans", "", "gate", "media tray",
                                    "bench " + std::to_string(i % 3), "coir", "weak gel", "IBA", "500", "nodal", "20",
                                    "spring", "north", "a note"});
        tables.checkRows.push_back({code, "2026-03-09", "4", "2", "1", "rot", ""});
        tables.checkRows.push_back({code, "2026-03-16", "4", "2", "1", "rot", ""});
    }
    return tables;
}

std::string textOf(const std::vector<std::vector<std::string>>& table) {
    std::string text;
    for (const auto& row : table) {
        for (std::size_t i = 0; i < row.size(); ++i) text += (i == 0 ? "" : ",") + row[i];
        text += "\r\n";
    }
    return text;
}

db::FolderContents read(const Tables& tables) {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", textOf(tables.batchRows));
    folder.write("checks.csv", textOf(tables.checkRows));
    return db::readFolder(folder.path(), support::lateDay);
}

enum class In { Batches, Checks };

/// What is done to one cell, and which column is to be named for it.
struct CellFault {
    const char* name;
    In table;
    std::size_t cell;
    std::string content;
    const char* column;
};

const std::vector<CellFault>& cellFaults() {
    static const std::vector<CellFault> faults = {
        {"code missing", In::Batches, 0, "", "batch"},
        {"code too long", In::Batches, 0, std::string(41, 'x'), "batch"},
        {"code with a blank", In::Batches, 0, "P 1 ", "batch"},
        {"day missing", In::Batches, 1, "", "stuck_on"},
        {"no such day", In::Batches, 1, "2026-02-30", "stuck_on"},
        {"day turned round", In::Batches, 1, "02/03/2026", "stuck_on"},
        {"day of next year", In::Batches, 1, "2027-03-02", "stuck_on"},
        {"day long ago", In::Batches, 1, "1066-10-14", "stuck_on"},
        {"species missing", In::Batches, 2, "", "species"},
        {"species of blanks", In::Batches, 2, "  ", "species"},
        {"species too long", In::Batches, 2, std::string(5000, 's'), "species"},
        {"species with a tab", In::Batches, 2, "Hebe\talbicans", "species"},
        {"species not UTF-8", In::Batches, 2, "Hebe\xFF", "species"},
        {"cultivar too long", In::Batches, 3, std::string(300, 'c'), "species"},
        {"stock plant too long", In::Batches, 4, std::string(300, 'c'), "stock_plant"},
        {"method missing", In::Batches, 5, "", "method"},
        {"method with a bell", In::Batches, 5, "tray\a", "method"},
        {"station too long", In::Batches, 6, std::string(300, 'c'), "station"},
        {"medium not UTF-8", In::Batches, 7, "co\xC3", "medium"},
        {"treatment of two doses", In::Batches, 10, "700", "auxin"},
        {"dose without auxin", In::Batches, 9, "", "auxin_mg_per_l"},
        {"auxin without dose", In::Batches, 10, "", "auxin_mg_per_l"},
        {"dose no number", In::Batches, 10, "strong", "auxin_mg_per_l"},
        {"dose negative", In::Batches, 10, "-500", "auxin_mg_per_l"},
        {"stuck missing", In::Batches, 12, "", "stuck"},
        {"stuck negative", In::Batches, 12, "-3", "stuck"},
        {"stuck nothing", In::Batches, 12, "0", "stuck"},
        {"stuck a fraction", In::Batches, 12, "20.5", "stuck"},
        {"stuck a word", In::Batches, 12, "twenty", "stuck"},
        {"stuck far too many", In::Batches, 12, "99999999999999999999", "stuck"},
        {"stuck more than is allowed", In::Batches, 12, "100001", "stuck"},
        {"block not UTF-8", In::Batches, 14, "\xED\xA0\x80", "block"},
        {"note with a NUL", In::Batches, 15, std::string("a\0b", 3), "note"},
        {"note too long", In::Batches, 15, std::string(5000, 'n'), "note"},
        {"quote in a plain cell", In::Batches, 15, "6\" pot", "note"},
        {"quote unclosed", In::Batches, 15, "\"open", "note"},
        {"text behind a quote", In::Batches, 15, "\"closed\" open", "note"},
        {"lone carriage return", In::Batches, 15, "one\rtwo", "note"},
        {"a comma too many", In::Batches, 15, "a,b", ""},
        {"a row of 2 MB", In::Batches, 15, std::string(2'000'000, 'x'), ""},
        {"check of no batch", In::Checks, 0, "Q1", "batch"},
        {"check without a batch", In::Checks, 0, "", "batch"},
        {"check day missing", In::Checks, 1, "", "checked_on"},
        {"check no such day", In::Checks, 1, "2026-13-01", "checked_on"},
        {"check of next year", In::Checks, 1, "2027-01-01", "checked_on"},
        {"check before its batch", In::Checks, 1, "2026-03-01", "checked_on"},
        {"rooted missing", In::Checks, 2, "", "rooted"},
        {"rooted negative", In::Checks, 2, "-1", "rooted"},
        {"more rooted than stuck", In::Checks, 2, "21", "rooted"},
        {"rooted a fraction", In::Checks, 2, "1/2", "rooted"},
        {"lost negative", In::Checks, 3, "-1", "lost"},
        {"more lost than stuck", In::Checks, 3, "30", "lost"},
        {"cause of no loss", In::Checks, 3, "", "cause"},
        {"withdrawn negative", In::Checks, 4, "-1", "withdrawn"},
        {"more withdrawn than stuck", In::Checks, 4, "30", "withdrawn"},
        {"cause too long", In::Checks, 5, std::string(300, 'c'), "cause"},
        {"cause not UTF-8", In::Checks, 5, "r\xF5t", "cause"},
        {"check note not UTF-8", In::Checks, 6, "\xC0\x80", "note"},
        {"check note unclosed", In::Checks, 6, "\"open", "note"},
        {"check note too long", In::Checks, 6, std::string(5000, 'n'), "note"},
        {"check with a comma too many", In::Checks, 6, "a,b", ""},
    };
    return faults;
}

/// Puts the fault into a row (the heading is row 1).
void spoil(Tables& tables, const CellFault& fault, int row) {
    auto& table = fault.table == In::Batches ? tables.batchRows : tables.checkRows;
    table.at(static_cast<std::size_t>(row - 1)).at(fault.cell) = fault.content;
}

std::string fileOf(In table) {
    return table == In::Batches ? "batches.csv" : "checks.csv";
}

std::string shown(const db::FolderContents& contents) {
    std::string text;
    for (const db::ImportFault& fault : contents.faults)
        text += fault.file + " " + std::to_string(fault.row) + " " + fault.column + ": " + fault.reason + "\n";
    return text;
}

/// A sentence: a capital (or a quote) first, a full stop last.
void expectSentence(const std::string& reason) {
    ASSERT_FALSE(reason.empty());
    EXPECT_TRUE(reason.back() == '.') << reason;
    EXPECT_LT(reason.size(), 700U) << reason;
}

TEST(ImportFaults, TheTablesAreSoundBeforeTheyAreSpoilt) {
    const db::FolderContents contents = read(soundTables());
    EXPECT_TRUE(contents.faults.empty()) << shown(contents);
    EXPECT_EQ(contents.records.batches.size(), static_cast<std::size_t>(batchCount));
}

TEST(ImportFaults, EachIsNamedWithItsPlaceWhereverItStands) {
    // Every kind at three places: 183 folders with one fault each.
    int folders = 0;
    for (const CellFault& fault : cellFaults())
        // Not row 2: a treatment of another dose is seen in the row behind the first.
        for (const int row : {3, 21, batchCount + 1}) {
            SCOPED_TRACE(testing::Message() << fault.name << " in row " << row);
            Tables tables = soundTables();
            spoil(tables, fault, row);
            const db::FolderContents contents = read(tables);
            ++folders;
            ASSERT_FALSE(contents.faults.empty());
            const db::ImportFault& found = contents.faults.front();
            EXPECT_EQ(found.file, fileOf(fault.table));
            EXPECT_EQ(found.row, row) << shown(contents);
            EXPECT_EQ(found.column, fault.column) << shown(contents);
            // Where no batch is left under its code, its two checks are of no batch.
            const bool isCode = fault.table == In::Batches && fault.cell == 0;
            EXPECT_EQ(contents.faults.size(), isCode ? 3U : 1U) << shown(contents);
            expectSentence(found.reason);
        }
    EXPECT_GE(folders, 100);
}

TEST(ImportFaults, AHundredInOneFolderAreAllNamed) {
    // Each kind in a row of its own, then more of them until there are a hundred. Faults of batches stand in the first 40 rows, faults
    // of checks in checks of batches that are sound: batches get 40 of them, the 80 rows of checks the other 60.
    Tables tables = soundTables();
    for (int i = 41; i <= 75; ++i) {
        const std::string code = "P" + std::to_string(i);
        std::vector<std::string> sound = tables.batchRows[1];
        sound[0] = code;
        tables.batchRows.push_back(sound);
        tables.checkRows.push_back({code, "2026-03-09", "4", "2", "1", "rot", ""});
        tables.checkRows.push_back({code, "2026-03-16", "4", "2", "1", "rot", ""});
    }
    std::set<std::pair<std::string, int>> wanted;
    int batchRow = 2, checkRow = 2 + 2 * batchCount;
    const auto put = [&](const CellFault& fault) {
        // "treatment of two doses" needs a sound row before it to differ from, so the first row stays sound.
        int& row = fault.table == In::Batches ? ++batchRow : checkRow;
        spoil(tables, fault, row);
        wanted.insert({fileOf(fault.table), row});
        if (fault.table == In::Checks) row += 1;
    };
    std::vector<CellFault> ofBatches, ofChecks;
    // Not the codes: without its code a batch is missed by its checks.
    for (const CellFault& fault : cellFaults())
        if (fault.table == In::Checks || fault.cell != 0)
            (fault.table == In::Batches ? ofBatches : ofChecks).push_back(fault);
    for (std::size_t i = 0; i < 38; ++i) put(ofBatches[i % ofBatches.size()]);
    for (std::size_t i = 0; i < 62; ++i) put(ofChecks[i % ofChecks.size()]);
    ASSERT_EQ(wanted.size(), 100U);
    const db::FolderContents contents = read(tables);
    std::set<std::pair<std::string, int>> found;
    for (const db::ImportFault& fault : contents.faults) found.insert({fault.file, fault.row});
    std::vector<std::pair<std::string, int>> missed, extra;
    std::ranges::set_difference(wanted, found, std::back_inserter(missed));
    std::ranges::set_difference(found, wanted, std::back_inserter(extra));
    EXPECT_THAT(missed, testing::IsEmpty()) << shown(contents);
    EXPECT_THAT(extra, testing::IsEmpty()) << shown(contents);
    EXPECT_FALSE(contents.moreFaults);
    EXPECT_EQ(contents.faults.size(), 100U);
}

TEST(ImportFaults, OnlyTheFirstHundredAreListed) {
    Tables tables = soundTables();
    for (std::size_t row = 1; row < tables.batchRows.size(); ++row)
        tables.batchRows[row][12] = tables.batchRows[row][1] = "x";
    for (std::size_t row = 1; row < tables.checkRows.size(); ++row) tables.checkRows[row][2] = "x";
    const db::FolderContents contents = read(tables);
    EXPECT_EQ(contents.faults.size(), 100U);
    EXPECT_TRUE(contents.moreFaults);
}

TEST(ImportFaults, ACodeMayBeThereOnce) {
    Tables tables = soundTables();
    tables.batchRows[20][0] = "P1";
    const db::FolderContents contents = read(tables);
    ASSERT_EQ(contents.faults.size(), 1U + 2U)
        << shown(contents);  // and the two checks of the code that is now nobody's
    EXPECT_EQ(contents.faults[0].row, 21);
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("row 2"));
}

TEST(ImportFaults, TwoRowsOfADayDifferInTheirCause) {
    Tables tables = soundTables();
    tables.checkRows.push_back({"P1", "2026-03-09", "1", "1", "0", "rot", ""});
    const db::FolderContents contents = read(tables);
    ASSERT_EQ(contents.faults.size(), 1U) << shown(contents);
    EXPECT_EQ(contents.faults[0].row, 2 + 2 * batchCount);
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("row 2"));
}

TEST(ImportFaults, OneCheckHasOneNote) {
    Tables tables = soundTables();
    tables.checkRows[1][6] = "this";
    tables.checkRows.push_back({"P1", "2026-03-09", "1", "1", "0", "dry", "that"});
    EXPECT_EQ(read(tables).faults.at(0).column, "note");
}

TEST(ImportFaults, MoreThanStuckIsFoundOverSeveralChecks) {
    Tables tables = soundTables();
    tables.checkRows[2][2] = "11";  // 4 + 2 + 1 before leave 13; 11 + 2 + 1 are one too many
    const db::FolderContents contents = read(tables);
    ASSERT_EQ(contents.faults.size(), 1U) << shown(contents);
    EXPECT_EQ(contents.faults[0].row, 3);
}

TEST(ImportFaults, NothingIsSaidOfTheChecksOfAFaultyBatch) {
    Tables tables = soundTables();
    tables.batchRows[1][12] = "many";
    EXPECT_EQ(read(tables).faults.size(), 1U);
}

db::FolderContents readFiles(const std::vector<std::pair<std::string, std::string>>& files) {
    const support::TemporaryFolder folder;
    for (const auto& [name, content] : files) folder.write(name, content);
    return db::readFolder(folder.path(), support::lateDay);
}

const std::string shortBatches = "batch,stuck_on,species,method,stuck\r\nA1,2026-03-02,Hebe albicans,media tray,24\r\n";
const std::string shortChecks = "batch,checked_on,rooted\r\nA1,2026-03-09,3\r\n";

TEST(ImportFaults, AMissingTableIsNamed) {
    const db::FolderContents contents = readFiles({{"batches.csv", shortBatches}});
    ASSERT_EQ(contents.faults.size(), 1U);
    EXPECT_EQ(contents.faults[0].file, "checks.csv");
    EXPECT_EQ(contents.faults[0].row, 0);
    EXPECT_EQ(readFiles({}).faults.size(), 2U);
}

TEST(ImportFaults, AnEmptyTableIsNamed) {
    EXPECT_EQ(readFiles({{"batches.csv", ""}, {"checks.csv", shortChecks}}).faults.at(0).file, "batches.csv");
}

TEST(ImportFaults, UnknownMissingAndDoubleColumnsAreNamed) {
    const db::FolderContents contents = readFiles(
        {{"batches.csv",
          "batch,stuck_on,species,method,colour,method\r\nA1,2026-03-02,Hebe albicans,media tray,red,media tray\r\n"},
         {"checks.csv", shortChecks}});
    ASSERT_EQ(contents.faults.size(), 3U) << shown(contents);
    EXPECT_EQ(contents.faults[0].column, "colour");
    EXPECT_EQ(contents.faults[1].column, "method");
    EXPECT_EQ(contents.faults[2].column, "stuck");
    for (const db::ImportFault& fault : contents.faults) EXPECT_EQ(fault.row, 1);
}

TEST(ImportFaults, AnUnknownColumnDoesNotHideTheRows) {
    const db::FolderContents contents =
        readFiles({{"batches.csv",
                    "batch,stuck_on,species,method,stuck,colour\r\nA1,2026-03-02,Hebe albicans,media tray,-4,red\r\n"},
                   {"checks.csv", shortChecks}});
    ASSERT_EQ(contents.faults.size(), 2U) << shown(contents);
    EXPECT_EQ(contents.faults[1].column, "stuck");
}

TEST(ImportFaults, SemicolonsAreRecognised) {
    const db::FolderContents contents =
        readFiles({{"batches.csv", "batch;stuck_on;species;method;stuck\r\n"}, {"checks.csv", shortChecks}});
    EXPECT_THAT(contents.faults.at(0).reason, HasSubstr("semicolons"));
}

TEST(ImportFaults, ATableThatNobodyKnowsIsNamed) {
    const db::FolderContents contents =
        readFiles({{"batches.csv", shortBatches}, {"checks.csv", shortChecks}, {"station.csv", "a\r\n"}});
    ASSERT_EQ(contents.faults.size(), 1U);
    EXPECT_EQ(contents.faults[0].file, "station.csv");
}

TEST(ImportFaults, NoFolderAtAllIsNamed) {
    const support::TemporaryFolder folder;
    EXPECT_EQ(db::readFolder(folder / "nowhere", support::lateDay).faults.size(), 1U);
    folder.write("file", "text");
    EXPECT_EQ(db::readFolder(folder / "file", support::lateDay).faults.size(), 1U);
}

TEST(ImportFaults, ANameThatIsNotOnTheShelfTablesIsNamed) {
    const db::FolderContents contents = readFiles(
        {{"batches.csv", shortBatches}, {"checks.csv", shortChecks}, {"methods.csv", "method\r\naerated water\r\n"}});
    ASSERT_EQ(contents.faults.size(), 1U) << shown(contents);
    EXPECT_EQ(contents.faults[0].column, "method");
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("methods.csv"));
}

TEST(ImportFaults, FaultsOfTheOtherTablesAreNamed) {
    struct Case {
        const char* file;
        const char* content;
        int row;
        const char* column;
    };
    const Case cases[] = {
        {"logbook.csv", "name,level\r\nBench,2\r\n", 2, "level"},
        {"logbook.csv", "name,paper\r\nBench,A3\r\n", 2, "paper"},
        {"logbook.csv", "name\r\n", 0, ""},
        {"logbook.csv", "name\r\nBench\r\nOther\r\n", 3, ""},
        {"plants.csv", "species,cultivar\r\nHebe albicans,\r\nHebe albicans,\r\n", 3, "species"},
        {"plants.csv", "species,is_retired\r\nHebe albicans,maybe\r\n", 2, "is_retired"},
        {"plants.csv", "species,usual_rooting_days_high\r\nHebe albicans,0\r\n", 2, "usual_rooting_days_high"},
        {"stock_plants.csv", "species,stock_plant\r\nDeutzia,gate\r\n", 2, "species"},
        {"methods.csv", "method\r\nmedia tray\r\nmedia tray\r\n", 3, "method"},
        {"stations.csv", "station,method,rows\r\nbench,media tray,27\r\n", 2, "rows"},
        {"media.csv", "medium\r\n\"\"\r\ncoir\r\ncoir\r\n", 4, "medium"},
        {"medium_components.csv", "medium,component,parts\r\ncoir,coir,1\r\n", 2, "medium"},
        {"treatments.csv", "treatment,carrier\r\nweak,syrup\r\n", 2, "carrier"},
        {"treatments.csv", "treatment,seconds\r\nweak,-1\r\n", 2, "seconds"},
        {"treatment_auxins.csv", "treatment,auxin,mg_per_l\r\nweak,IBA,5\r\n", 2, "treatment"},
        {"cutting_kinds.csv", "cutting_kind\r\nheel\r\nheel\r\n", 3, "cutting_kind"},
        {"loss_causes.csv", "cause,key\r\nrot,w\r\n", 2, "key"},
        {"loss_causes.csv", "cause,key\r\nrot,r\r\nrust,r\r\n", 3, "key"},
        {"loss_causes.csv", "cause,key\r\nrot,ro\r\n", 2, "key"},
        {"trials.csv", "trial,horizon_day\r\nspring,0\r\n", 2, "horizon_day"},
        {"trials.csv", "trial,allocation_seed\r\nspring,4294967296\r\n", 2, "allocation_seed"},
        {"sessions.csv", "session,held_on\r\nfirst,2027-01-01\r\n", 2, "held_on"},
        {"sessions.csv", "session,held_on\r\nfirst,2026-01-01\r\nfirst,2026-01-02\r\n", 3, "session"},
    };
    for (const Case& each : cases) {
        SCOPED_TRACE(testing::Message() << each.file << "\n" << each.content);
        const db::FolderContents contents = readFiles({{"batches.csv", "batch,stuck_on,species,method,stuck\r\n"},
                                                       {"checks.csv", shortChecks.substr(0, 25)},
                                                       {each.file, each.content}});
        ASSERT_EQ(contents.faults.size(), 1U) << shown(contents);
        EXPECT_EQ(contents.faults[0].file, each.file);
        EXPECT_EQ(contents.faults[0].row, each.row) << shown(contents);
        EXPECT_EQ(contents.faults[0].column, each.column) << shown(contents);
        expectSentence(contents.faults[0].reason);
    }
}

TEST(ImportFaults, ABatchIsStuckOnTheDayOfItsSession) {
    const db::FolderContents contents =
        readFiles({{"batches.csv",
                    "batch,stuck_on,species,method,stuck,session\r\nA1,2026-03-02,Hebe albicans,media tray,24,first\r\n"
                    "A2,2026-03-02,Hebe albicans,media tray,24,second\r\n"},
                   {"checks.csv", shortChecks},
                   {"sessions.csv", "session,held_on\r\nfirst,2026-03-01\r\n"}});
    ASSERT_EQ(contents.faults.size(), 2U) << shown(contents);
    EXPECT_EQ(contents.faults[0].column, "stuck_on");
    EXPECT_EQ(contents.faults[1].column, "session");
}

long peakKilobytes() {
    std::ifstream status("/proc/self/status");
    std::string word;
    long peak = 0;
    while (status >> word)
        if (word == "VmHWM:") status >> peak;
    return peak;
}

TEST(ImportFaults, ALineOfAGigabyteIsRefusedInLittleMemory) {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", shortBatches);
    folder.write("checks.csv", shortChecks + "A1,2026-03-16,");
    const long before = peakKilobytes();
    std::filesystem::resize_file(folder / "checks.csv",
                                 std::uintmax_t{1} << 30);  // NUL bytes that take no room on the disk
    std::ofstream(folder / "checks.csv", std::ios::binary | std::ios::app) << "\r\nA1,2026-03-23,99\r\n";
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    ASSERT_EQ(contents.faults.size(), 1U) << shown(contents);
    EXPECT_EQ(contents.faults[0].row, 3);
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("longer than"));
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("not read"));
    EXPECT_LT(peakKilobytes() - before, 64 * 1024);
}

TEST(ImportFaults, AHeadingOfAGigabyteIsRefused) {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", "batch");
    folder.write("checks.csv", shortChecks);
    std::filesystem::resize_file(folder / "batches.csv", std::uintmax_t{1} << 30);
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    ASSERT_EQ(contents.faults.size(), 1U) << shown(contents);
    EXPECT_EQ(contents.faults[0].file, "batches.csv");
    EXPECT_EQ(contents.faults[0].row, 1);
}

TEST(ImportFaults, AQuoteThatIsOpenOverAMegabyteIsRefused) {
    const support::TemporaryFolder folder;
    folder.write("batches.csv", shortBatches);
    std::string checks = shortChecks + "A1,\"2026-03-16,3\r\n";
    for (int i = 0; i < 100'000; ++i) checks += "A1,2026-03-23,0\r\n";
    folder.write("checks.csv", checks);
    const db::FolderContents contents = db::readFolder(folder.path(), support::lateDay);
    ASSERT_FALSE(contents.faults.empty());
    EXPECT_EQ(contents.faults[0].row, 3);
    EXPECT_THAT(contents.faults[0].reason, HasSubstr("not closed"));
    EXPECT_TRUE(contents.moreFaults);  // the same day a hundred thousand times
}

}  // namespace
