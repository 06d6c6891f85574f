// SPDX-License-Identifier: MIT
#include "db/exchange/csv_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <sstream>

#include "db/exchange/csv_writer.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

std::vector<db::CsvRow> rowsIn(const std::string& text) {
    std::istringstream in(text);
    db::CsvReader reader(in);
    std::vector<db::CsvRow> rows;
    while (auto row = reader.next()) rows.push_back(*row);
    return rows;
}

std::vector<std::vector<std::string>> cellsIn(const std::string& text) {
    std::vector<std::vector<std::string>> cells;
    for (const db::CsvRow& row : rowsIn(text)) {
        EXPECT_TRUE(row.faults.empty()) << row.faults.front().reason;
        cells.push_back(row.cells);
    }
    return cells;
}

TEST(CsvReader, ReadsPlainRowsWithEitherLineEnd) {
    EXPECT_THAT(cellsIn("a,b\r\n1,2\n3,4"),
                ElementsAre(ElementsAre("a", "b"), ElementsAre("1", "2"), ElementsAre("3", "4")));
}

TEST(CsvReader, ReadsTheExamplesOfRfc4180) {
    // RFC 4180, section 2, rules 5 to 7.
    EXPECT_THAT(cellsIn("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"),
                ElementsAre(ElementsAre("aaa", "bbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
    EXPECT_THAT(cellsIn("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
                ElementsAre(ElementsAre("aaa", "b\r\nbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
    EXPECT_THAT(cellsIn("\"aaa\",\"b\"\"bb\",\"ccc\""), ElementsAre(ElementsAre("aaa", "b\"bb", "ccc")));
}

TEST(CsvReader, KeepsBlanksAndEmptyCells) {
    EXPECT_THAT(cellsIn(" a , \r\n,,\r\n\"\",x\r\n"), ElementsAre(ElementsAre(" a ", " "), ElementsAre("", "x")));
}

TEST(CsvReader, PassesOverAByteOrderMark) {
    EXPECT_THAT(cellsIn("\xEF\xBB\xBF"
                        "a,b\r\n"),
                ElementsAre(ElementsAre("a", "b")));
}

TEST(CsvReader, CountsRowsAsASpreadsheetDoes) {
    const auto rows = rowsIn("a,b\r\n\r\n\"x\ny\",2\r\n,\r\nlast,4\r\n");
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].number, 1);
    EXPECT_EQ(rows[1].number, 3);  // behind an empty row
    EXPECT_EQ(rows[2].number, 5);  // a line break within quotes starts no row; a row of empty cells is none
}

TEST(CsvReader, NamesTheCellThatIsNotUtf8AndGoesOn) {
    const auto rows = rowsIn("a,b\r\n1,\xFF\r\n3,4\r\n");
    ASSERT_EQ(rows.size(), 3U);
    ASSERT_EQ(rows[1].faults.size(), 1U);
    EXPECT_EQ(rows[1].faults[0].cell, 1U);
    EXPECT_THAT(rows[1].faults[0].reason, HasSubstr("UTF-8"));
    EXPECT_TRUE(rows[2].faults.empty());
}

TEST(CsvReader, RefusesANulByte) {
    const auto rows = rowsIn(std::string("a,b\r\n1,x\0y\r\n", 12));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_THAT(rows[1].faults.at(0).reason, HasSubstr("NUL"));
}

TEST(CsvReader, RefusesUtf16) {
    const auto rows =
        rowsIn(std::string("\xFF\xFE"
                           "a\0,\0b\0",
                           8));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_THAT(rows[0].faults.at(0).reason, HasSubstr("UTF-16"));
}

TEST(CsvReader, NamesAnUnclosedQuoteAndReadsTheRowsBehindIt) {
    const auto rows = rowsIn("a,b\r\n1,\"open\r\n3,4\r\n5,6\r\n");
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[1].number, 2);
    EXPECT_EQ(rows[1].faults.at(0).cell, 1U);
    EXPECT_THAT(rows[1].faults.at(0).reason, HasSubstr("never closed"));
    EXPECT_THAT(rows[2].cells, ElementsAre("3", "4"));
    EXPECT_EQ(rows[3].number, 4);
}

TEST(CsvReader, BlamesTheRowWhoseQuoteIsOpenNotALaterOne) {
    const auto rows = rowsIn("a,b\r\n1,\"open\r\n3,\"x, y\"\r\n5,6\r\n");
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[1].faults.size(), 1U);
    EXPECT_THAT(rows[2].cells, ElementsAre("3", "x, y"));
    EXPECT_TRUE(rows[2].faults.empty());
}

TEST(CsvReader, RefusesAQuoteWithinAPlainCell) {
    const auto rows = rowsIn("a,b\r\n1,6\" pot\r\n3,4\r\n");
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].faults.at(0).cell, 1U);
    EXPECT_TRUE(rows[2].faults.empty());
}

TEST(CsvReader, RefusesALoneCarriageReturn) {
    EXPECT_THAT(rowsIn("a,b\r1,2\r").at(0).faults.at(0).reason, HasSubstr("carriage return"));
}

TEST(CsvReader, RefusesTooManyCells) {
    const auto rows = rowsIn("a,b\r\n" + std::string(100'000, ',') + "x\r\n3,4\r\n");
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].cells.size(), db::CsvReader::mostCells);
    ASSERT_EQ(rows[1].faults.size(), 1U);
    EXPECT_EQ(rows[1].faults[0].cell, db::CsvFault::wholeRow);
}

TEST(CsvReader, GivesUpARowThatIsTooLongAndGoesOnBehindIt) {
    const auto rows = rowsIn("a,b\r\n" + std::string(5'000'000, 'x') + ",2\r\n3,4\r\n");
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_THAT(rows[1].faults.at(0).reason, HasSubstr("longer than 1000000 bytes"));
    EXPECT_EQ(rows[2].number, 3);
    EXPECT_THAT(rows[2].cells, ElementsAre("3", "4"));
}

TEST(CsvReader, ReadsBackWhatTheWriterWroteWhateverItIs) {
    std::mt19937 random(7);
    const std::string letters = "a,\"\r\n ';=";
    for (int round = 0; round < 300; ++round) {
        std::vector<std::vector<std::string>> wanted;
        std::ostringstream out;
        db::CsvWriter writer(out);
        for (int row = 0; row < 4; ++row) {
            std::vector<std::string> cells{"row"};  // a row of empty cells is passed over
            for (int cell = 0; cell < 3; ++cell) {
                std::string text;
                for (std::size_t length = random() % 6; length > 0; --length)
                    text += letters[random() % letters.size()];
                cells.push_back(text);
            }
            for (const std::string& cell : cells) writer.text(cell);
            writer.endRow();
            wanted.push_back(cells);
        }
        auto got = cellsIn(out.str());
        for (auto& row : got)
            for (std::string& cell : row) cell = db::unguarded(cell);
        ASSERT_EQ(got, wanted) << out.str();
    }
}

TEST(CsvReader, ComesToAnEndOnAnyBytes) {
    std::mt19937 random(11);
    const std::string letters = "a1,,\"\"\r\n\n\xFF\xC3\xB6 ";
    for (int round = 0; round < 3000; ++round) {
        std::string text;
        for (std::size_t length = random() % 60; length > 0; --length) text += letters[random() % letters.size()];
        int last = 0;
        for (const db::CsvRow& row : rowsIn(text)) {
            ASSERT_GT(row.number, last) << text;
            last = row.number;
        }
        const auto lines = std::ranges::count(text, '\n') + 1;
        ASSERT_LE(last, lines) << text;
    }
}

}  // namespace
