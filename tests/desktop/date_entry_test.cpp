// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/date_entry.h"

#include <QTest>

#include "app/desktop/widgets/date_edit.h"
#include "gtest/gtest.h"

namespace {

using namespace std::chrono_literals;

constexpr core::Date thirtiethOfMarch{2026y / 3 / 30};

struct Typed {
    const char* text;
    core::Date means;
};

TEST(DateEntry, ReadsADayAsItIsTypedAtTheBench) {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    for (const Typed& typed :
         {Typed{"14", 2026y / 3 / 14}, Typed{"30", 2026y / 3 / 30}, Typed{"31", 2026y / 1 / 31},
          Typed{"14.3", 2026y / 3 / 14}, Typed{"14/3", 2026y / 3 / 14}, Typed{"14.3.", 2026y / 3 / 14},
          Typed{"1.12", 2025y / 12 / 1}, Typed{"14.3.25", 2025y / 3 / 14}, Typed{"14.3.2024", 2024y / 3 / 14},
          Typed{"29.2", 2024y / 2 / 29}, Typed{"-3", 2026y / 3 / 27}, Typed{"\u22123", 2026y / 3 / 27},
          Typed{"-0", 2026y / 3 / 30}, Typed{"t", 2026y / 3 / 30}, Typed{" T ", 2026y / 3 / 30},
          Typed{"y", 2026y / 3 / 29}, Typed{"2026-03-14", 2026y / 3 / 14}, Typed{"2026-04-14", 2026y / 4 / 14}}) {
        EXPECT_EQ(desktop::dateFrom(typed.text, thirtiethOfMarch, british), typed.means) << typed.text;
    }
}

TEST(DateEntry, PutsTheMonthFirstWhereTheLocaleDoes) {
    const QLocale american(QLocale::English, QLocale::UnitedStates);
    EXPECT_EQ(desktop::dateFrom("3/14", thirtiethOfMarch, american), core::Date(2026y / 3 / 14));
    EXPECT_EQ(desktop::dateFrom("14/3", thirtiethOfMarch, american), std::nullopt);
}

TEST(DateEntry, RefusesWhatNoCalendarHas) {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    for (const char* text : {"", " ", "0", "32", "31.2", "14.13", "31.2.26", "2026-02-30", "20260314", "14.3.202",
                             "3 days", "x", "-", "-x", "--3", "1e3", "14..3"})
        EXPECT_EQ(desktop::dateFrom(text, thirtiethOfMarch, british), std::nullopt) << text;
}

TEST(DateEntry, ReadsDaysToComeFromTodayOn) {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    for (const Typed& typed : {Typed{"14", 2026y / 4 / 14}, Typed{"30", 2026y / 3 / 30}, Typed{"31", 2026y / 3 / 31},
                               Typed{"14.3", 2027y / 3 / 14}, Typed{"1.12", 2026y / 12 / 1},
                               Typed{"29.2", 2028y / 2 / 29}, Typed{"+21", 2026y / 4 / 20}, Typed{"-3", 2026y / 3 / 27},
                               Typed{"t", 2026y / 3 / 30}, Typed{"14.3.25", 2025y / 3 / 14}})
        EXPECT_EQ(desktop::dateFrom(typed.text, thirtiethOfMarch, british, desktop::DayLean::Ahead), typed.means)
            << typed.text;
    EXPECT_EQ(desktop::dateFrom("+21", thirtiethOfMarch, british), std::nullopt);
}

TEST(DateEdit, WritesBackWhatItUnderstoodOnLeavingTheField) {
    desktop::DateEdit edit(thirtiethOfMarch);
    QTest::keyClicks(edit.line(), "-3");
    EXPECT_EQ(edit.date(), core::Date(2026y / 3 / 27));
    QTest::keyClick(edit.line(), Qt::Key_Return);
    EXPECT_EQ(edit.line()->text(), "2026-03-27");
    QTest::keyClick(edit.line(), Qt::Key_Down);
    EXPECT_EQ(edit.date(), core::Date(2026y / 3 / 26));
}

TEST(DateEdit, KeepsWhatItCannotReadAndSaysSo) {
    desktop::DateEdit edit(thirtiethOfMarch);
    QTest::keyClicks(edit.line(), "Easter");
    QTest::keyClick(edit.line(), Qt::Key_Return);
    EXPECT_EQ(edit.line()->text(), "Easter");
    EXPECT_TRUE(edit.fault().contains("Easter"));
    EXPECT_EQ(edit.date(), std::nullopt);
}

}  // namespace
