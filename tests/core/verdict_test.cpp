// SPDX-License-Identifier: MIT
#include "core/comparison/verdict.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using core::Verdict;
using examples::batchesAt;
using examples::compared;
using examples::together;
using support::benchEast;
using support::benchWest;
using support::tubNorth;
using support::tubSouth;
using testing::HasSubstr;
using testing::Not;

core::Pair only(const core::Comparison& comparison) {
    return comparison.pairs.at(0);
}

TEST(Verdict, DoesNotTellAMethodFromItsOnlyStationWhateverTheCount) {
    const auto pair =
        only(compared(together({batchesAt(tubNorth, {20, 20, 20, 19}), batchesAt(benchWest, {1, 0, 1, 0})})));
    EXPECT_LT(pair.boschloo, 1e-20);
    EXPECT_EQ(pair.verdict, Verdict::CannotTellMethodFromStation);
    EXPECT_THAT(pair.inWords,
                HasSubstr("the method and the station can't be told apart, however many cuttings are counted"));
    EXPECT_THAT(pair.inWords, HasSubstr("aerated water stood at one station only"));
}

TEST(Verdict, DoesNotTellAMethodFromItsOnlyBatch) {
    const auto pair =
        only(compared(together({batchesAt(tubNorth, {20}), batchesAt(benchWest, {1, 0}), batchesAt(benchEast, {2})})));
    EXPECT_EQ(pair.verdict, Verdict::CannotTellMethodFromStation);
    EXPECT_THAT(pair.inWords, HasSubstr("aerated water is one batch only"));
}

TEST(Verdict, SaysWhereNoStationIsRecorded) {
    const auto pair = only(compared(examples::rootCuttingsOf1935(), {.factor = core::Factor::Treatment}));
    EXPECT_EQ(pair.verdict, Verdict::CannotTellMethodFromStation);
    EXPECT_THAT(pair.inWords, HasSubstr("no station is recorded for “Nothing”"));
}

TEST(Verdict, AsksForThreeBatchesAnArm) {
    const auto pair = only(compared(together(
        {batchesAt(tubNorth, {20}), batchesAt(tubSouth, {20}), batchesAt(benchWest, {1}), batchesAt(benchEast, {1})})));
    EXPECT_EQ(pair.verdict, Verdict::TooFewBatches);
    EXPECT_THAT(pair.inWords, HasSubstr("2 batches of aerated water and 2 batches of media tray"));
    EXPECT_TRUE(pair.difference->withSpread.has_value() || pair.batchRatesP == std::nullopt);
}

TEST(Verdict, RestsOnBatchRatesAndNotOnPooledCounts) {
    // Pooled, 106 of 160 against 64 of 160 are far apart; batch by batch they overlap.
    const auto pair =
        only(compared(together({batchesAt(tubNorth, {20, 3, 19, 11}), batchesAt(tubSouth, {20, 4, 18, 11}),
                                batchesAt(benchWest, {2, 17, 1, 9}), batchesAt(benchEast, {3, 16, 6, 10})})));
    EXPECT_LT(pair.boschloo, 0.001);
    EXPECT_GT(*pair.batchRatesP, 0.05);
    EXPECT_EQ(pair.verdict, Verdict::NoClearDifference);
    EXPECT_THAT(pair.inWords, HasSubstr("would likely settle it"));
    EXPECT_THAT(pair.inWords, HasSubstr("allowing for the spread between batches"));
}

TEST(Verdict, NamesTheBetterArm) {
    const auto batches = together({batchesAt(tubNorth, {18, 17, 19}), batchesAt(tubSouth, {18, 16}),
                                   batchesAt(benchWest, {9, 11, 8}), batchesAt(benchEast, {10, 9})});
    const auto pair = only(compared(batches));
    EXPECT_EQ(pair.verdict, Verdict::FirstBetter);
    EXPECT_THAT(pair.inWords,
                HasSubstr("Of 100 cuttings, aerated water would root about 41 more than media tray by day 28"));
    EXPECT_THAT(pair.inWords, HasSubstr("Batch by batch, aerated water did better by more than luck would explain."));
    EXPECT_THAT(pair.inWords, Not(HasSubstr("significant")));
}

TEST(Verdict, DoesNotCallMoreOfTheSameASpread) {
    // No batch differs from the others of its arm: no t, so what chance could deal decides, from four batches on.
    const auto four = only(compared(together({batchesAt(tubNorth, {18, 18}), batchesAt(tubSouth, {18, 18}),
                                              batchesAt(benchWest, {9, 9}), batchesAt(benchEast, {9, 9})})));
    EXPECT_FALSE(four.batchRatesP.has_value());
    EXPECT_EQ(four.verdict, Verdict::FirstBetter);
    const auto same = only(compared(together({batchesAt(tubNorth, {9, 9}), batchesAt(tubSouth, {9}),
                                              batchesAt(benchWest, {9, 9}), batchesAt(benchEast, {9})})));
    EXPECT_EQ(same.verdict, Verdict::NoClearDifference);
    EXPECT_THAT(same.inWords, HasSubstr("about the same number"));
}

TEST(Verdict, LetsArmsShareAStation) {
    std::vector<core::BatchRecord> batches;
    for (const int rooted : {16, 17, 15}) {
        batches.push_back(support::aBatch().at(tubNorth).treated(support::weakGel).stuck(20).looked(28, {rooted}));
        batches.push_back(support::aBatch().at(tubNorth).treated(support::nothing).stuck(20).looked(28, {rooted - 10}));
    }
    const auto pair = only(compared(batches, {.factor = core::Factor::Treatment}));
    EXPECT_NE(pair.verdict, Verdict::CannotTellMethodFromStation);
    EXPECT_THAT(pair.inWords, HasSubstr("“IBA gel 1000” did better"));
}

TEST(Verdict, DoesNotSpeakOfRatesBelowFiveCuttings) {
    const std::vector<core::BatchRecord> batches{support::aBatch().at(tubNorth).stuck(4).looked(28, {4}),
                                                 support::aBatch().at(benchWest).stuck(24).looked(28, {4})};
    EXPECT_THAT(only(compared(batches)).inWords, HasSubstr("too early to speak of rates"));
}

TEST(Verdict, DoesNotHangOnHowBatchesOfUnequalSizeAreWeighed) {
    // One huge batch that did well among small ones that did badly: of all cuttings water is ahead, of the batches the trays are.
    std::vector<core::BatchRecord> batches{support::aBatch().at(tubNorth).stuck(1000).looked(28, {600})};
    for (int i = 0; i < 8; ++i) {
        batches.push_back(support::aBatch().at(tubSouth).stuck(20).looked(28, {2}));
        batches.push_back(support::aBatch().at(i % 2 == 0 ? benchWest : benchEast).stuck(20).looked(28, {8 + i % 3}));
    }
    const auto pair = only(compared(batches));
    EXPECT_GT(pair.difference->value, 0.08);
    EXPECT_LT(*pair.difference->ofBatches, -0.25);
    EXPECT_LT(pair.difference->withSpread->low, -0.25);
    EXPECT_GT(pair.difference->withSpread->high, 0.08);
    EXPECT_EQ(pair.verdict, Verdict::NoClearDifference);
    EXPECT_THAT(pair.inWords, HasSubstr("aerated water would root about 9 more than media tray"));
    EXPECT_THAT(pair.inWords, HasSubstr("allowing for the spread between batches"));
}

TEST(Verdict, IsNoLighterForALowLevel) {
    const auto batches = together({batchesAt(tubNorth, {14, 9, 16}), batchesAt(tubSouth, {11}),
                                   batchesAt(benchWest, {9, 12, 6}), batchesAt(benchEast, {12})});
    const auto pair = only(compared(batches, {.level = 0.5}));
    EXPECT_GT(*pair.batchRatesP, 0.1);
    EXPECT_LT(*pair.batchRatesP, 0.5);
    EXPECT_EQ(pair.verdict, Verdict::NoClearDifference);
}

TEST(Verdict, CallsAKindOfCuttingThat) {
    const std::vector<core::BatchRecord> batches{
        support::aBatch().at(tubNorth).cut(support::stemTip).stuck(20).looked(28, {9}),
        support::aBatch().at(tubSouth).cut(support::nodal).stuck(20).looked(28, {4})};
    const core::ComparisonQuestion question{.factor = core::Factor::CuttingKind};
    EXPECT_THAT(only(compared(batches, question)).inWords, HasSubstr("so the kind of cutting and the station"));
    EXPECT_THAT(compared({batches.front()}, question).inWords, HasSubstr("only one kind of cutting"));
}

}  // namespace
