// SPDX-License-Identifier: MIT
#include "core/comparison/goes_with.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using support::aBatch;
using testing::HasSubstr;
using testing::Not;

core::GoesWith goesWith(const std::vector<core::BatchRecord>& batches) {
    return examples::compared(batches).goesWith;
}

// Eight batches, half by each method; whether the gel was used has nothing to do with the method.
std::vector<core::BatchRecord> crossed(const std::vector<int>& rooted) {
    std::vector<core::BatchRecord> batches;
    for (std::size_t i = 0; i < rooted.size(); ++i)
        batches.push_back(aBatch()
                              .at(i % 2 == 0 ? support::tubNorth : support::benchWest)
                              .treated(i / 2 % 2 == 0 ? support::nothing : support::weakGel)
                              .stuck(20)
                              .looked(28, {.rooted = rooted[i], .lost = 20 - rooted[i]}));
    return batches;
}

TEST(GoesWith, FindsWhatSetsBatchesApartAndNotWhatDoesNot) {
    const core::GoesWith answer = goesWith(crossed({18, 8, 17, 7, 18, 9, 17, 8, 18, 8, 17, 7}));
    ASSERT_TRUE(answer.whyNot.empty()) << answer.whyNot;
    ASSERT_EQ(answer.associations.size(), 2u);
    const core::Association &method = answer.associations[0], &auxin = answer.associations[1];
    EXPECT_THAT(method.name, HasSubstr("method "));
    EXPECT_LT(*method.holmP, 0.01);
    EXPECT_GT(*auxin.holmP, 0.05);
    EXPECT_THAT(answer.inWords, HasSubstr(method.name));
    EXPECT_THAT(answer.inWords, Not(HasSubstr(auxin.name)));
    EXPECT_THAT(answer.inWords, HasSubstr("not an experiment"));
}

TEST(GoesWith, AllowsForBatchesThatDifferOnTheirOwn) {
    const core::GoesWith answer = goesWith(crossed({20, 8, 4, 2, 18, 19, 3, 8, 18, 1, 17, 7}));
    EXPECT_GT(answer.dispersion, 3);
    for (const core::Association& each : answer.associations) {
        ASSERT_TRUE(each.withSpread);
        EXPECT_LT(each.withSpread->low, each.asCounted.low);
        EXPECT_GT(each.withSpread->high, each.asCounted.high);
    }
}

TEST(GoesWith, StaysFiniteWhereOneWayRootedAllAndTheOtherNone) {
    const core::GoesWith answer = goesWith(crossed({20, 0, 20, 0, 20, 0, 20, 0}));
    ASSERT_FALSE(answer.associations.empty());
    for (const core::Association& each : answer.associations) {
        EXPECT_TRUE(std::isfinite(each.oddsRatio));
        EXPECT_GT(each.oddsRatio, 0);
    }
}

TEST(GoesWith, NamesWhatCannotBeToldFromTheRest) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 8; ++i)
        batches.push_back(aBatch()
                              .at(i % 2 == 0 ? support::tubNorth : support::benchWest)
                              .cut(i % 2 == 0 ? support::stemTip : support::nodal)
                              .looked(28, {.rooted = 5 + i, .lost = 3}));
    const core::GoesWith answer = goesWith(batches);
    ASSERT_EQ(answer.associations.size(), 1u);
    ASSERT_EQ(answer.cannotBeTold.size(), 1u);
    EXPECT_THAT(answer.cannotBeTold.front(), HasSubstr("cutting "));
}

TEST(GoesWith, SaysWhyThereIsNothingToSay) {
    EXPECT_THAT(goesWith({aBatch().looked(28, {4}), aBatch().looked(28, {5})}).inWords,
                HasSubstr("Nothing on record differs"));
    EXPECT_THAT(goesWith(crossed({12, 8, 17, 7})).inWords, HasSubstr("too few batches"));
}

}  // namespace
