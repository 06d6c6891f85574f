// SPDX-License-Identifier: MIT
#include "app/plot/figure_table.h"

#include "gtest/gtest.h"

TEST(CsvText, QuotesWhatNeedsIt) {
    const plot::FigureTable table{
        .title = "t", .headings = {"Arm", "Note"}, .rows = {{"a, b", "say \"yes\""}, {"plain", "two\nlines"}}};
    EXPECT_EQ(plot::csvText(table).toStdString(),
              "Arm,Note\r\n\"a, b\",\"say \"\"yes\"\"\"\r\nplain,\"two\nlines\"\r\n");
}

TEST(CsvText, GuardsWhatASpreadsheetWouldRunButLeavesNumbers) {
    const plot::FigureTable table{
        .title = "t", .headings = {"A"}, .rows = {{"=1+1"}, {"@x"}, {"-3"}, {"-3.5"}, {"+cmd"}}};
    EXPECT_EQ(plot::csvText(table).toStdString(), "A\r\n\"'=1+1\"\r\n\"'@x\"\r\n-3\r\n-3.5\r\n\"'+cmd\"\r\n");
}

TEST(TabText, KeepsOneCellOneCell) {
    const plot::FigureTable table{.title = "t", .headings = {"A", "B"}, .rows = {{"tab\there", "line\nend"}}};
    EXPECT_EQ(plot::tabText(table).toStdString(), "A\tB\ntab here\tline end\n");
}
