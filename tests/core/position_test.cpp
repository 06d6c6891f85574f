// SPDX-License-Identifier: MIT
#include "core/station/position.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

#include "core/station/station.h"
#include "stats/numeric/seeded_random.h"

namespace {

using core::Position;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(Position, HasALetterForItsRowAndANumberForItsColumn) {
    EXPECT_EQ(core::nameOf({0, 0}), "A1");
    EXPECT_EQ(core::nameOf({25, 999}), "Z1000");
    EXPECT_EQ(core::positionNamed("c12"), (Position{2, 11}));
}

TEST(Position, EveryNameReadsBackAsItself) {
    for (int row = 0; row < core::mostRows; ++row)
        for (int column = 0; column < core::mostColumns; ++column)
            ASSERT_EQ(core::positionNamed(core::nameOf({row, column})), (Position{row, column}));
}

TEST(Position, NonsenseNamesNone) {
    for (const char* text : {"", "A", "1", "A0", "A01", "A1001", "AA1", "1A", "A1x", "A-1", "A+1", "A 1",
                             "\xC3\x84"
                             "1",
                             "A1.5", "A99999999999", " A1", "A1 "})
        EXPECT_FALSE(core::positionNamed(text)) << text;
}

TEST(PositionText, JoinsRunsOfARow) {
    EXPECT_EQ(core::textOf({}), "");
    EXPECT_EQ(core::textOf({{1, 1}, {0, 0}, {0, 1}, {0, 2}, {1, 1}, {0, 4}}), "A1-A3, A5, B2");
}

TEST(PositionText, ReadsWhatAHandTypes) {
    const auto expected = core::positionsFrom("A1-A3, B2");
    ASSERT_TRUE(expected);
    for (const char* typed : {"a1 a2 a3 b2", "B2;a1-a3", "a3-a1,,b2", " A1\tA2-A3 , B2 b2 "})
        EXPECT_EQ(core::positionsFrom(typed), expected) << typed;
    EXPECT_EQ(core::tidyPositions("b2;a1-a3"), "A1-A3, B2");
    EXPECT_EQ(core::tidyPositions("the left half"), "the left half");
}

TEST(PositionText, ABlockIsWhatLiesBetweenItsCorners) {
    EXPECT_EQ(core::tidyPositions("B3-A2"), "A2-A3, B2-B3");
    EXPECT_EQ(core::positionsFrom("A1-Z1000")->size(), 26'000U);
}

TEST(PositionText, NonsenseIsNotRead) {
    for (const char* text : {"A1-", "-A1", "A1-B", "A1--A3", "A1 - A3", "A1..A3", "A1-A3-A5", "all", "A1,?"})
        EXPECT_FALSE(core::positionsFrom(text)) << text;
    EXPECT_THAT(core::positionsFrom(" , ").value(), IsEmpty());
}

TEST(PositionText, AnySetOfPositionsComesBack) {
    const std::uint64_t seed = std::random_device{}();
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    stats::SeededRandom random(seed);
    for (int round = 0; round < 2000; ++round) {
        std::vector<Position> positions;
        const auto columns = 1 + random.below(40);
        for (auto count = random.below(60); count > 0; --count)
            positions.push_back({static_cast<int>(random.below(26)), static_cast<int>(random.below(columns))});
        const std::set<Position> expected(positions.begin(), positions.end());
        const auto read = core::positionsFrom(core::textOf(positions));
        ASSERT_TRUE(read);
        ASSERT_TRUE(std::ranges::equal(*read, expected));
    }
}

TEST(PositionText, NoTextReadsOutsideOfWhatAStationCanHave) {
    const std::uint64_t seed = std::random_device{}();
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    stats::SeededRandom random(seed);
    const std::string signs = "ABZabz0159 ,;-\t\xC3";
    for (int round = 0; round < 20'000; ++round) {
        std::string text;
        for (auto length = random.below(12); length > 0; --length) text += signs[random.below(signs.size())];
        const auto read = core::positionsFrom(text);
        if (!read) continue;
        for (const Position position : *read)
            ASSERT_TRUE(position.row >= 0 && position.row < core::mostRows && position.column >= 0 &&
                        position.column < core::mostColumns)
                << text;
        ASSERT_EQ(core::positionsFrom(core::textOf(*read)), read) << text;
    }
}

TEST(Station, HoldsACuttingWhereNothingIsBlocked) {
    core::Station lid;
    EXPECT_FALSE(lid.hasLayout());
    EXPECT_EQ(lid.positions(), 0);
    lid.rows = 2;
    lid.columns = 3;
    EXPECT_EQ(lid.positions(), 6);
    lid.blocked = "A2, B1-B2";
    EXPECT_EQ(lid.positions(), 3);
    EXPECT_THAT(core::usablePositions(lid), ElementsAre(Position{0, 0}, Position{0, 2}, Position{1, 2}));
}

}  // namespace
