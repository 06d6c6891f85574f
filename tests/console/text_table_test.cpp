// SPDX-License-Identifier: MIT
#include "app/console/text_table.h"

#include <gtest/gtest.h>

#include <sstream>

namespace {

TEST(TextTable, AlignsByCharactersNotBytes) {
    using console::TextTable;
    TextTable table(
        {{"plant", TextTable::Align::Left}, {"stuck", TextTable::Align::Right}, {"", TextTable::Align::Left}});
    table.addRow({"Cistus × purpureus", "7", ""});
    table.addRow({"Hebe", "120", "x"});
    std::ostringstream out;
    table.printTo(out);
    EXPECT_EQ(out.str(),
              "plant               stuck\n"
              "Cistus × purpureus      7\n"
              "Hebe                  120  x\n");
}

}  // namespace
