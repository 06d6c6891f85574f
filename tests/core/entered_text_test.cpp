// SPDX-License-Identifier: MIT
#include "core/units/entered_text.h"

#include <gtest/gtest.h>

namespace {

TEST(EnteredText, KnowsUtf8) {
    EXPECT_TRUE(core::isValidUtf8(""));
    EXPECT_TRUE(core::isValidUtf8("Cistus \u00D7 purpureus, \u20AC, \U0001F331"));
    EXPECT_TRUE(core::isValidUtf8("\xF4\x8F\xBF\xBF"));  // U+10FFFF
}

TEST(EnteredText, RefusesBytesThatAreNoUtf8) {
    // Rows of RFC 3629: overlong forms, surrogates, above U+10FFFF, cut off, continuation alone, Latin-1.
    for (const char* bytes :
         {"\xC0\x80", "\xE0\x80\x80", "\xF0\x80\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80",
          "\xE2\x82", "\x80", "caf\xE9", "\xC3\x28", "\xE2\x28\xA1", "\xF0\x9F\x8C", "\xFF"})
        EXPECT_FALSE(core::isValidUtf8(bytes));
}

TEST(EnteredText, SeesControlCharactersOfBothKinds) {
    EXPECT_TRUE(core::hasControlCharacters("a\tb"));
    EXPECT_TRUE(core::hasControlCharacters(std::string_view("a\0b", 3)));
    EXPECT_TRUE(core::hasControlCharacters("a\x7F"));
    EXPECT_TRUE(core::hasControlCharacters("a\u0085"));
    EXPECT_FALSE(core::hasControlCharacters("caf\u00E9\u00A0\u20AC"));
}

TEST(EnteredText, LetsALineBeEmptyAndANameNot) {
    EXPECT_FALSE(core::faultInLine("Block", ""));
    ASSERT_TRUE(core::faultInName("Name", " "));
    EXPECT_EQ(core::faultInName("Name", "")->sentence, "Name is blank; text of 1 to 200 characters is allowed.");
    EXPECT_FALSE(core::faultInName("Name", "Tub north"));
}

TEST(EnteredText, RefusesWhatIsOverlong) {
    EXPECT_FALSE(core::faultInLine("Worker", std::string(200, 'a')));
    const auto fault = core::faultInLine("Worker", std::string(201, 'a'));
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->sentence, "Worker has 201 characters (\"" + std::string(60, 'a') +
                                   "...\"); text of at most 200 characters is allowed.");
    EXPECT_FALSE(core::faultInNote("Note", std::string(4000, 'a')));
    EXPECT_TRUE(core::faultInNote("Note", std::string(4001, 'a')));
}

TEST(EnteredText, LetsANoteBreakItsLinesAndALineNot) {
    EXPECT_FALSE(core::faultInNote("Note", "one\ntwo\tthree\r\n"));
    EXPECT_TRUE(core::faultInLine("Worker", "one\ntwo"));
    EXPECT_TRUE(core::faultInNote("Note", "bell\a"));
}

TEST(EnteredText, QuotesOnlyWhatCanBeShown) {
    EXPECT_EQ(core::quotable("caf\xE9\n"), "\"caf??\"");
    EXPECT_TRUE(core::isValidUtf8(core::quotable(std::string(59, 'a') + "\u20AC\u20AC")));
}

TEST(EnteredText, CountsCharactersNotBytes) {
    EXPECT_EQ(core::charactersIn("caf\u00E9"), 4);
    std::string accented;
    for (int letter = 0; letter < 200; ++letter) accented += "\u00E9";
    EXPECT_FALSE(core::faultInLine("Worker", accented));
    EXPECT_TRUE(core::faultInLine("Worker", accented + "\u00E9"));
}

}  // namespace
