// SPDX-License-Identifier: MIT
// Words and habits that belong in no source of ours.
#include <gtest/gtest.h>

#include <regex>

#include "tests/house/source_tree.h"

namespace {

void expectNowhere(const std::vector<std::string>& folders, const std::regex& pattern,
                   const std::string& exceptIn = {}) {
    for (const auto& source : house::sourcesIn(folders)) {
        if (source.path == exceptIn || source.path == "tests/house/words_test.cpp") continue;
        for (std::size_t line = 0; line < source.lines.size(); ++line)
            EXPECT_FALSE(std::regex_search(source.lines[line], pattern))
                << source.path << ":" << line + 1 << ": " << source.lines[line];
    }
}

const std::vector<std::string> everywhere = {"stats", "core", "db", "app", "tests"};

TEST(Words, NothingIsLeftUnfinished) {
    expectNowhere(everywhere, std::regex("TODO|FIXME|\\bXXX\\b|not implemented|GTEST_SKIP|DISABLED_|QSKIP"));
}

TEST(Words, NoTestSleeps) {
    expectNowhere({"tests"}, std::regex("sleep_for|sleep_until|QThread::m?u?sleep|QTest::qWait\\(|usleep"));
}

TEST(Words, NothingBelowAppAsksWhatTimeItIs) {
    expectNowhere({"stats", "core", "db"},
                  std::regex("system_clock::now|time\\(nullptr\\)|QDate::currentDate|steady_clock"));
}

TEST(Words, NoExceptionIsSwallowed) {
    expectNowhere({"stats", "core", "db", "app"}, std::regex("catch \\(\\.\\.\\.\\)"));
}

TEST(Words, QtTestMacrosThatFailInSilenceUnderGoogleTestAreNotUsed) {
    expectNowhere({"tests"}, std::regex("QCOMPARE|QVERIFY|QTRY_"));
}

}  // namespace
