// SPDX-License-Identifier: MIT
#include "db/exchange/csv_writer.h"

#include <gtest/gtest.h>

#include <sstream>

namespace {

std::string written(std::string_view text) {
    std::ostringstream out;
    db::CsvWriter(out).text(text).endRow();
    return out.str();
}

TEST(CsvWriter, EndsRowsWithCarriageReturnAndLineFeed) {
    std::ostringstream out;
    db::CsvWriter writer(out);
    writer.text("a").number(7).figure(0.5).truth(true).number(std::optional<int>()).endRow();
    writer.text("b").number(std::optional<int>(3)).endRow();
    EXPECT_EQ(out.str(), "a,7,0.5,true,\r\nb,3\r\n");
}

TEST(CsvWriter, QuotesWhatNeedsIt) {
    EXPECT_EQ(written("a,b"), "\"a,b\"\r\n");
    EXPECT_EQ(written("6\" pot"), "\"6\"\" pot\"\r\n");
    EXPECT_EQ(written("two\nlines"), "\"two\nlines\"\r\n");
    EXPECT_EQ(written("plain text"), "plain text\r\n");
}

TEST(CsvWriter, LetsNoSpreadsheetRunACell) {
    for (const char* text : {"=HYPERLINK(\"http://x\")", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1"})
        EXPECT_TRUE(db::guarded(text).starts_with('\'')) << text;
    EXPECT_EQ(db::guarded("a=1"), "a=1");
    EXPECT_EQ(db::guarded(""), "");
}

TEST(CsvWriter, TakesItsGuardOffAgain) {
    for (const char* text : {"", "plain", "=1", "'", "''", "'=1", "''=1", "'plain", "-", "+", "@", "\t", "'\t", "it's"})
        EXPECT_EQ(db::unguarded(db::guarded(text)), text) << text;
}

TEST(CsvWriter, LeavesAnApostropheThatGuardsNothing) {
    EXPECT_EQ(db::unguarded("'Nikko'"), "'Nikko'");
}

}  // namespace
