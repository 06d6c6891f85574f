// SPDX-License-Identifier: MIT
#include "core/comparison/course.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

#include "tests/support/builders.h"

namespace {

using support::aBatch;

core::HorizonFate fateOn(int day, const core::BatchRecord& record) {
    return core::courseOf(record, day).fate;
}

TEST(FateAtHorizon, KnowsAllThatAreSeenOnTheDay) {
    const auto fate = fateOn(14, aBatch().stuck(20).looked(7, {3, 1}).looked(14, {4, 2}));
    EXPECT_EQ(fate.rooted, 7);
    EXPECT_EQ(fate.lost, 3);
    EXPECT_EQ(fate.undecided, 10);
    EXPECT_EQ(fate.assessed, 20);
}

TEST(FateAtHorizon, KnowsThatWhatIsUnrootedLaterWasUnrootedThen) {
    // Of the 16 undecided on day 7, two are found rooted on day 21: they may have rooted before day 14 or after. The others had not.
    const auto fate = fateOn(14, aBatch().stuck(20).looked(7, {3, 1}).looked(21, {2, 5, 1}));
    EXPECT_EQ(fate.rooted, 3);
    EXPECT_EQ(fate.undecided, 16);
    EXPECT_EQ(fate.assessed, 18);
}

TEST(FateAtHorizon, DoesNotKnowThoseWithdrawnBeforeTheDay) {
    EXPECT_EQ(fateOn(14, aBatch().stuck(20).looked(7, {3, 1, 4}).looked(14)).assessed, 16);
}

TEST(FateAtHorizon, KnowsThoseWithdrawnOnTheDayToBeUnrooted) {
    const auto fate = fateOn(14, aBatch().stuck(20).looked(7, {3, 1}).looked(14, {0, 0, 4}));
    EXPECT_EQ(fate.withdrawn, 4);
    EXPECT_EQ(fate.assessed, 20);
}

TEST(FateAtHorizon, DoesNotKnowTheUndecidedOfABatchLastSeenBefore) {
    const auto fate = fateOn(14, aBatch().stuck(20).looked(7, {3, 1}));
    EXPECT_EQ(fate.undecided, 16);
    EXPECT_EQ(fate.assessed, 4);
}

TEST(FateAtHorizon, KnowsNothingOfABatchNeverLookedAt) {
    const auto fate = fateOn(14, aBatch().stuck(20));
    EXPECT_EQ(fate.undecided, 20);
    EXPECT_EQ(fate.assessed, 0);
}

TEST(FateAtHorizon, AlwaysAddsUpToStuckInRandomBatches) {
    constexpr unsigned seed = 20260404;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 500; ++round) {
        const int stuck = 1 + static_cast<int>(random() % 40);
        auto batch = aBatch().stuck(stuck);
        int left = stuck;
        const auto some = [&] {
            const int count = static_cast<int>(random() % (static_cast<unsigned>(left) / 3 + 1));
            left -= count;
            return count;
        };
        for (int day = 1 + static_cast<int>(random() % 9); day < 60; day += 1 + static_cast<int>(random() % 15)) {
            const int rooted = some(), lost = some(), withdrawn = some();
            batch.looked(day, {rooted, lost, withdrawn});
        }
        const auto fate = fateOn(static_cast<int>(random() % 70), batch);
        EXPECT_EQ(fate.rooted + fate.lost + fate.withdrawn + fate.undecided, stuck);
        EXPECT_GE(fate.assessed, fate.rooted + fate.lost);
        EXPECT_LE(fate.assessed, stuck);
        double weights = 0;
        for (const auto& row : core::observationsOf(core::courseOf(batch, 28))) weights += row.weight;
        EXPECT_EQ(weights, stuck);
    }
}

TEST(Observations, PutWhatALookFoundAfterTheLookBefore) {
    const auto rows =
        core::observationsOf(core::courseOf(aBatch().stuck(20).looked(7, {3, 1}).looked(14, {4, 0, 2}), 28));
    constexpr double never = std::numeric_limits<double>::infinity();
    struct Row {
        double after, by;
        int cause;
        double weight;
    };
    const Row expected[] = {{0, 7, 1, 3}, {0, 7, 2, 1}, {7, 14, 1, 4}, {14, never, 0, 2}, {14, never, 0, 10}};
    ASSERT_EQ(rows.size(), std::size(expected));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].after, expected[i].after);
        EXPECT_EQ(rows[i].by, expected[i].by);
        EXPECT_EQ(rows[i].cause, expected[i].cause);
        EXPECT_EQ(rows[i].weight, expected[i].weight);
    }
    const auto together = core::merged(rows);
    ASSERT_EQ(together.size(), 4u);
    EXPECT_EQ(together.back().weight, 12);
}

TEST(Looks, AreInOrderOfDayAndLeaveOutWhatIsToCome) {
    auto record = aBatch().looked(21, {1}).looked(7, {2}).looked(14, {3}).build();
    const auto looks = core::looksOf(record, core::addDays(record.batch.stuckOn, 14));
    ASSERT_EQ(looks.size(), 2u);
    EXPECT_EQ(looks[0].day, 7);
    EXPECT_EQ(looks[1].rooted, 3);
}

}  // namespace
