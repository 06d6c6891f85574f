// SPDX-License-Identifier: MIT
#include "core/causes/losses.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stop_token>

#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::driedOut;
using support::rotted;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr core::LossCauseId notKnown{};

/// Stuck on 2026-03-02; looks on 03-16 and 04-06.
std::vector<core::BatchRecord> threeBatches() {
    return {aBatch()
                .at(support::tubNorth)
                .stuck(20)
                .looked(14, {.lost = 6, .cause = rotted})
                .looked(35, {.rooted = 12, .lost = 2, .cause = driedOut}),
            aBatch()
                .at(support::tubSouth)
                .stuck(10)
                .looked(14, {.lost = 1, .cause = rotted})
                .looked(35, {.rooted = 8, .lost = 1, .cause = notKnown}),
            aBatch().at(support::benchWest).of(support::deutzia).stuck(10).looked(14, {.rooted = 10})};
}

core::Losses allLosses(const core::LossQuestion& question = {}) {
    return core::lossesOver(threeBatches(), support::someShelves(), question);
}

TEST(Losses, AreCountedByCauseMostFirstWithRunningShares) {
    const core::Losses losses = allLosses();
    EXPECT_EQ(losses.lost, 10);
    EXPECT_EQ(losses.stood, 40);
    EXPECT_EQ(losses.batches, 3);
    EXPECT_EQ(losses.batchesWithLosses, 2);
    ASSERT_EQ(losses.rows.size(), 3u);
    EXPECT_EQ(losses.rows[0].cause, rotted);
    EXPECT_EQ(losses.rows[0].loss.count, 7);
    EXPECT_EQ(losses.rows[0].batches, 2);
    EXPECT_DOUBLE_EQ(losses.rows[0].share, 0.7);
    EXPECT_LT(losses.rows[0].asCounted.low, 0.7);
    EXPECT_GT(losses.rows[0].asCounted.high, 0.7);
    ASSERT_TRUE(losses.rows[0].withSpread.has_value());
    EXPECT_DOUBLE_EQ(losses.rows[1].runningShare, 0.9);
    EXPECT_DOUBLE_EQ(losses.rows[2].runningShare, 1);
}

TEST(Losses, WithoutACauseAreARowOfTheirOwn) {
    const core::Losses losses = allLosses();
    EXPECT_EQ(losses.rows[1].loss.cause, "dried out");  // two
    EXPECT_EQ(losses.rows[2].loss.cause, "cause not known");
    EXPECT_EQ(losses.rows[2].loss.count, 1);
    EXPECT_THAT(losses.inWords,
                HasSubstr("Of 40 cuttings in 3 batches 10 were lost. Most were lost to \u201crotted\u201d: 7 of 10."));
    EXPECT_THAT(losses.inWords, HasSubstr("The cause of 1 cutting is not known."));
}

TEST(Losses, ByMonthAreOfThoseThatStoodInIt) {
    const core::Losses losses = allLosses();
    ASSERT_EQ(losses.months.size(), 2u);
    EXPECT_EQ(losses.months[0].month, std::chrono::year{2026} / std::chrono::March);
    EXPECT_EQ(losses.months[0].count.stood, 40);
    EXPECT_EQ(losses.months[0].count.lost, 7);
    EXPECT_EQ(losses.months[1].count.batches, 2);
    EXPECT_EQ(losses.months[1].count.stood, 14 + 9);  // undecided when April began
    EXPECT_EQ(losses.months[1].count.lost, 3);
    EXPECT_THAT(losses.months[1].count.byCause, ElementsAre(0, 2, 1));
    EXPECT_NEAR(losses.months[1].count.rate.value(), 3.0 / 23, 1e-12);
}

TEST(Losses, ByStationHaveTheLargestRateFirst) {
    const core::Losses losses = allLosses();
    ASSERT_EQ(losses.stations.size(), 3u);
    EXPECT_EQ(losses.stations[0].name, "Tub north");
    EXPECT_NEAR(losses.stations[0].count.rate.value(), 8.0 / 20, 1e-12);
    EXPECT_EQ(losses.stations[2].name, "Bench west");
    EXPECT_EQ(losses.stations[2].count.rate.value(), 0);
    EXPECT_THAT(losses.stations[1].count.byCause, ElementsAre(1, 0, 1));
}

TEST(Losses, OfASpanLeaveOutWhatWasDecidedBeforeIt) {
    const core::Date april{std::chrono::year{2026}, std::chrono::April, std::chrono::day{1}};
    const core::Losses losses = allLosses({.from = april});
    EXPECT_EQ(losses.lost, 3);
    EXPECT_EQ(losses.stood, 23);
    EXPECT_EQ(losses.batches, 2);
    const core::Losses march = allLosses({.until = core::addDays(april, -1)});
    EXPECT_EQ(march.lost, 7);
    EXPECT_EQ(march.stood, 40);
}

TEST(Losses, CanBeOfOnePlantOrMethod) {
    EXPECT_EQ(allLosses({.plant = support::deutzia}).stood, 10);
    EXPECT_THAT(allLosses({.plant = support::deutzia}).rows, IsEmpty());
    EXPECT_THAT(allLosses({.plant = support::deutzia}).inWords,
                HasSubstr("Nothing was lost of 10 cuttings in 1 batch."));
    EXPECT_EQ(allLosses({.method = support::aeratedWater}).stood, 30);
}

TEST(Losses, SayHowFewBatchesTheSpreadCouldBeSeenIn) {
    const std::vector<core::BatchRecord> one{
        aBatch().stuck(20).looked(14, {.lost = 6}).looked(20, {.lost = 3, .cause = driedOut})};
    const core::Losses losses = core::lossesOver(one, support::someShelves(), {});
    EXPECT_EQ(losses.batchesWithLosses, 1);
    EXPECT_FALSE(losses.rows[0].withSpread.has_value());
}

TEST(Losses, StandUntilABatchIsClosedByHand) {
    const std::vector<core::BatchRecord> batches{aBatch().stuck(20).looked(14, {.lost = 6}).closed(20),
                                                 aBatch().stuck(10).looked(14, {}).looked(100, {.lost = 1})};
    const core::Losses losses = core::lossesOver(batches, support::someShelves(), {});
    ASSERT_EQ(losses.months.size(), 4u);  // March to June
    EXPECT_EQ(losses.months[0].count.stood, 30);
    EXPECT_EQ(losses.months[1].count.stood, 10);
    EXPECT_EQ(losses.months[3].count.lost, 1);
}

TEST(Losses, OfNothingAreAnAnswer) {
    const core::Losses losses = core::lossesOver({}, support::someShelves(), {});
    EXPECT_FALSE(losses.from.has_value());
    EXPECT_THAT(losses.rows, IsEmpty());
    EXPECT_THAT(losses.months, IsEmpty());
    EXPECT_THAT(losses.inWords, HasSubstr("No cuttings stood at risk"));
    const core::Date day = support::stickingDay();
    EXPECT_EQ(allLosses({.from = core::addDays(day, 9), .until = day}).stood, 0);  // ends before it begins
}

TEST(Losses, CanBeStopped) {
    std::stop_source stop;
    stop.request_stop();
    EXPECT_THAT(core::lossesOver(threeBatches(), support::someShelves(), {}, stop.get_token()).rows, IsEmpty());
}

}  // namespace
