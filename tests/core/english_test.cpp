// SPDX-License-Identifier: MIT
#include "core/comparison/english.h"

#include <gtest/gtest.h>

#include <vector>

namespace {

TEST(English, CountsInOneAndMany) {
    EXPECT_EQ(core::counted(1, "batch", "batches"), "1 batch");
    EXPECT_EQ(core::counted(0, "batch", "batches"), "0 batches");
}

TEST(English, SaysHowManyMoreOrFewer) {
    EXPECT_EQ(core::moreOrFewer(-0.03, 0.3), "anything from 3 fewer to 30 more");
    EXPECT_EQ(core::moreOrFewer(0.05, 0.23), "anything from 5 to 23 more");
    EXPECT_EQ(core::moreOrFewer(-0.3, -0.05), "anything from 5 to 30 fewer");
    EXPECT_EQ(core::moreOrFewer(0.001, 0.3), "anything from no difference to 30 more");
    EXPECT_EQ(core::moreOrFewer(-0.3, 0.004), "anything from 30 fewer to no difference");
    EXPECT_EQ(core::moreOrFewer(-0.001, 0.001), "hardly any difference");
}

TEST(English, NamesLevels) {
    EXPECT_EQ(core::levelWords(0.95), "95 %");
    EXPECT_EQ(core::levelWords(0.999), "99.9 %");
}

TEST(English, ListsNames) {
    EXPECT_EQ(core::listed(std::vector<std::string>{}), "");
    EXPECT_EQ(core::listed(std::vector<std::string>{"a"}), "a");
    EXPECT_EQ(core::listed(std::vector<std::string>{"a", "b", "c"}), "a, b and c");
}

TEST(English, RoundsCuttingsUp) {
    EXPECT_EQ(core::roundedUp(11), 11);
    EXPECT_EQ(core::roundedUp(41), 45);
    EXPECT_EQ(core::roundedUp(101), 110);
    EXPECT_EQ(core::roundedUp(1501), 1550);
}

TEST(English, QuotesNamesThatAreNoMethods) {
    EXPECT_EQ(core::nameInWords(core::Factor::Method, "media tray"), "media tray");
    EXPECT_EQ(core::nameInWords(core::Factor::Treatment, "Nothing"), "“Nothing”");
}

TEST(English, CallsAKindOfCuttingThat) {
    EXPECT_EQ(core::factorInWords(core::Factor::CuttingKind), "kind of cutting");
    EXPECT_EQ(core::factorInWords(core::Factor::Method), "method");
}

}  // namespace
