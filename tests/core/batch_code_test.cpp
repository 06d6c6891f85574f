// SPDX-License-Identifier: MIT
#include "core/batch/batch_code.h"

#include <gtest/gtest.h>

#include <set>

namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

TEST(BatchCode, HasYearNumberAndCheckLetter) {
    EXPECT_EQ(core::batchCode(2026, 47), "B260047K");
    EXPECT_EQ(core::batchCode(2026, 9999).substr(0, 7), "B269999");
    EXPECT_EQ(core::batchCode(2005, 1).substr(0, 7), "B050001");
}

TEST(BatchCode, UsesNoLetterThatAnotherKeyboardSwaps) {
    std::set<char> letters;
    for (int number = 1; number <= 200; ++number) letters.insert(core::batchCode(2026, number).back());
    EXPECT_EQ(letters.size(), 13U);
    for (const char swapped : {'A', 'I', 'L', 'M', 'O', 'Q', 'S', 'U', 'W', 'Y', 'Z'})
        EXPECT_FALSE(letters.contains(swapped));
}

TEST(BatchCode, FindsOutEveryWrongCharacter) {
    for (const int number : {1, 47, 999, 5208, 9999}) {
        const std::string code = core::batchCode(2026, number);
        ASSERT_TRUE(core::isBatchCode(code));
        for (std::size_t place = 0; place < code.size(); ++place)
            for (const char wrong : alphabet) {
                std::string typed = code;
                typed[place] = wrong;
                EXPECT_EQ(core::isBatchCode(typed), typed == code) << typed;
            }
    }
}

TEST(BatchCode, FindsOutTwoSwappedNeighbours) {
    for (int number = 1; number <= 9999; ++number) {
        const std::string code = core::batchCode(2031, number);
        for (std::size_t place = 0; place + 1 < code.size(); ++place) {
            std::string typed = code;
            std::swap(typed[place], typed[place + 1]);
            ASSERT_EQ(core::isBatchCode(typed), typed == code) << code << " " << typed;
        }
    }
}

TEST(BatchCode, GivesBackItsRunningNumberInItsYearOnly) {
    EXPECT_EQ(core::runningNumber("B260047K", 2026), 47);
    EXPECT_EQ(core::runningNumber("B260047K", 2025), 0);
    EXPECT_EQ(core::runningNumber("B260047D", 2026), 0);
    EXPECT_EQ(core::runningNumber("tray 5", 2026), 0);
}

TEST(BatchCode, IsNotMadeOfTheNumberZero) {
    std::string code = "B260000D";
    for (const char letter : std::string_view("DEFGHJKNPRTVX")) {
        code.back() = letter;
        EXPECT_FALSE(core::isBatchCode(code));
    }
}

TEST(BatchCode, TakesForeignCodesThatCanBeReadAndFound) {
    EXPECT_TRUE(core::isAcceptableCode("1"));
    EXPECT_TRUE(core::isAcceptableCode("tray 5 / 2024"));
    std::string forty;
    for (int character = 0; character < 40; ++character) forty += "\u00E9";
    EXPECT_TRUE(core::isAcceptableCode(forty));
    EXPECT_FALSE(core::isAcceptableCode(forty + "x"));
    for (const char* code : {"", " a", "a ", "a\tb", "a\n", "\xFF"}) EXPECT_FALSE(core::isAcceptableCode(code)) << code;
}

}  // namespace
