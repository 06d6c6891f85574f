// SPDX-License-Identifier: MIT
#include "core/units/days.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;

TEST(Days, ReadsAnIsoDate) {
    EXPECT_EQ(core::dateFromIso("2026-03-14"), core::Date(2026y / 3 / 14));
    EXPECT_EQ(core::dateFromIso("2024-02-29"), core::Date(2024y / 2 / 29));
    EXPECT_EQ(core::dateFromIso("1800-01-01"), core::Date(1800y / 1 / 1));
}

TEST(Days, RefusesWhatIsNoIsoDateOrNoDay) {
    for (const char* text : {"", "2026-3-14", "2026-03-14 ", " 2026-03-14", "2026/03/14", "14.03.2026", "2026-02-30",
                             "2025-02-29", "2026-13-01", "2026-00-10", "2026-01-00", "1799-12-31", "0000-01-01",
                             "-026-03-14", "2026-03-1x", "+026-03-14", "20260314"})
        EXPECT_FALSE(core::dateFromIso(text)) << text;
}

TEST(Days, WritesWhatItReads) {
    for (core::Date day = 1800y / 1 / 1; day < core::Date(2101y / 1 / 1); day = core::addDays(day, 97))
        EXPECT_EQ(core::dateFromIso(core::isoText(day)), day);
    EXPECT_EQ(core::isoText(9999y / 12 / 31), "9999-12-31");
}

TEST(Days, CountsOverMonthsAndLeapDays) {
    EXPECT_EQ(core::daysBetween(2024y / 2 / 28, 2024y / 3 / 1), 2);
    EXPECT_EQ(core::daysBetween(2026y / 3 / 1, 2026y / 2 / 28), -1);
    EXPECT_EQ(core::addDays(2025y / 12 / 31, 1), core::Date(2026y / 1 / 1));
    EXPECT_EQ(core::addDays(2026y / 1 / 1, -1), core::Date(2025y / 12 / 31));
}

}  // namespace
