// SPDX-License-Identifier: MIT
#include "core/comparison/as_good_as.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using examples::batchesAt;
using examples::together;
using testing::HasSubstr;

core::Pair pairWith(const std::vector<std::vector<core::BatchRecord>>& lists, double margin) {
    return examples::compared(together(lists), {.margin = margin}).pairs.front();
}

TEST(AsGoodAs, IsShownByBatchesThatHardlyDiffer) {
    const core::Pair pair = pairWith({batchesAt(support::tubNorth, {15, 16}), batchesAt(support::tubSouth, {15, 14}),
                                      batchesAt(support::benchWest, {15, 15}), batchesAt(support::benchEast, {16, 15})},
                                     0.15);
    ASSERT_TRUE(pair.firstAsGood && pair.secondAsGood);
    EXPECT_TRUE(pair.firstAsGood->isShown);
    EXPECT_TRUE(pair.secondAsGood->isShown);
    EXPECT_THAT(pair.inWords, HasSubstr("is as good as"));
    EXPECT_THAT(pair.inWords, HasSubstr("within 15 of 100"));
}

TEST(AsGoodAs, IsNotShownByFindingNoDifference) {
    const core::Pair pair = pairWith({batchesAt(support::tubNorth, {5, 18}), batchesAt(support::tubSouth, {12, 9}),
                                      batchesAt(support::benchWest, {17, 6}), batchesAt(support::benchEast, {8, 13})},
                                     0.1);
    EXPECT_EQ(pair.verdict, core::Verdict::NoClearDifference);
    EXPECT_FALSE(pair.firstAsGood->isShown);
    EXPECT_FALSE(pair.secondAsGood->isShown);
    EXPECT_THAT(pair.inWords, HasSubstr("is not shown"));
}

TEST(AsGoodAs, CannotBeToldWhereTheStationStandsForTheMethod) {
    const core::Pair pair =
        pairWith({batchesAt(support::tubNorth, {15, 16, 15}), batchesAt(support::benchWest, {15, 15, 16})}, 0.3);
    EXPECT_EQ(pair.verdict, core::Verdict::CannotTellMethodFromStation);
    EXPECT_FALSE(pair.firstAsGood->isShown);
    EXPECT_THAT(pair.inWords, HasSubstr("can't be told from these batches either"));
}

TEST(AsGoodAs, IsNotAskedUnlessAMarginIsSet) {
    const core::Pair pair = examples::compared(examples::tubsAndTrays()).pairs.front();
    EXPECT_FALSE(pair.firstAsGood);
    EXPECT_THAT(pair.inWords, testing::Not(HasSubstr("as good as")));
}

TEST(AsGoodAs, RefusesAMarginThatIsNone) {
    for (const double margin : {0.0, 1.0, -0.1}) {
        const auto refused = core::compare({.margin = margin}, support::someShelves(), examples::tubsAndTrays());
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error().front().field, "Margin");
        EXPECT_THAT(refused.error().front().sentence, HasSubstr("between 1 and 99"));
    }
}

}  // namespace
