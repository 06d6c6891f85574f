// SPDX-License-Identifier: MIT
#include "core/units/number_entry.h"

#include <gtest/gtest.h>

#include <string>

namespace {

TEST(NumberEntry, TakesOnePointOrCommaAsTheDecimalSign) {
    EXPECT_EQ(core::numberFrom("1.2"), 1.2);
    EXPECT_EQ(core::numberFrom("1,2"), 1.2);
    EXPECT_EQ(core::numberFrom("  12 "), 12.0);
    EXPECT_EQ(core::numberFrom(".5"), 0.5);
    EXPECT_EQ(core::numberFrom("1,234"), 1.234);
}

TEST(NumberEntry, TakesAMinusSignHoweverItIsWritten) {
    EXPECT_EQ(core::numberFrom("-3"), -3.0);
    EXPECT_EQ(core::numberFrom("\u22123,5"), -3.5);
}

TEST(NumberEntry, RefusesGroupingAndWhatElseItDoesNotUnderstand) {
    for (const char* typed : {"", " ", "1.234.567", "1,234.5", "1 234", "1'234", "5.", ".", ",", "-", "--1", "+1",
                              "1e3", "inf", "nan", "0x10", "1.2 mS", "\u0663"})
        EXPECT_FALSE(core::numberFrom(typed)) << typed;
}

TEST(NumberEntry, RefusesANumberThatNoDoubleHolds) {
    EXPECT_FALSE(core::numberFrom(std::string(400, '9')));
}

TEST(NumberEntry, CountsAreDigitsOnly) {
    EXPECT_EQ(core::countFrom("0"), 0);
    EXPECT_EQ(core::countFrom(" 0024 "), 24);
    EXPECT_EQ(core::countFrom("1000000000"), 1'000'000'000);
    for (const char* typed : {"", " ", "-1", "+1", "1.0", "1,5", "1 000", "1000000001", "99999999999999999999", "a"})
        EXPECT_FALSE(core::countFrom(typed)) << typed;
}

}  // namespace
