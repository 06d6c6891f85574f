// SPDX-License-Identifier: MIT
// The manual's page of keys is the list itself.
#include <cstdlib>
#include <fstream>

#include "app/desktop/help/key_list.h"
#include "tests/desktop/whole/whole_window.h"

#include <QMenuBar>

namespace {

const std::string keyboardPage = STRIKEBOOK_SOURCE_DIR "/docs/manual/keyboard.md";
const std::string tablesBegin =
    "<!-- The tables are the program's own list: STRIKEBOOK_APPROVE=1 tests/run writes them anew. -->\n";

QString cell(QString text) {
    return text.replace('|', "\\|");
}

std::string tablesOf(const std::vector<desktop::KeyLine>& lines) {
    QString page, place;
    for (const desktop::KeyLine& line : lines) {
        if (line.place != place) page += "\n## " + line.place + "\n\n| key | what it does |\n| --- | --- |\n";
        place = line.place;
        page += "| `" + cell(line.keys) + "` | " + cell(line.what) + " |\n";
    }
    return page.toStdString();
}

class KeyboardPage : public whole::Window {};

TEST_F(KeyboardPage, IsTheListInTheProgram) {
    std::ifstream stream(keyboardPage);
    const std::string committed{std::istreambuf_iterator<char>(stream), {}};
    const std::size_t begin = committed.find(tablesBegin);
    ASSERT_NE(begin, std::string::npos) << "the page has lost the line before its tables";
    const std::string wanted =
        committed.substr(0, begin + tablesBegin.size()) + tablesOf(desktop::keyLines(*window_->menuBar()));
    if (std::getenv("STRIKEBOOK_APPROVE") != nullptr) {
        std::ofstream(keyboardPage) << wanted;
        return;
    }
    EXPECT_EQ(committed, wanted) << "docs/manual/keyboard.md is stale: STRIKEBOOK_APPROVE=1 tests/run writes it anew";
}

}  // namespace
