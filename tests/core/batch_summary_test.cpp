// SPDX-License-Identifier: MIT
#include "core/comparison/batch_summary.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "stats/proportion/wilson_interval.h"
#include "tests/core/comparison_examples.h"

namespace {

using support::aBatch;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

core::BatchSummary summaryAmong(const core::BatchRecord& record, std::vector<core::BatchRecord> others = {}) {
    others.push_back(record);
    return core::summaryOf(record, support::someShelves(), others, support::today());
}

TEST(BatchSummary, CountsTodayAndGivesTheStrikeRateOfAllStuck) {
    const auto summary = summaryAmong(aBatch().stuck(24).looked(7, {3, 1}).looked(21, {15, 2, 1}));
    EXPECT_EQ(summary.tally.rooted, 18);
    EXPECT_EQ(summary.tally.undecided(), 2);
    EXPECT_DOUBLE_EQ(summary.rate, 0.75);
    const auto wilson = stats::wilsonInterval(18, 24, 0.95);
    EXPECT_EQ(summary.asCounted.low, wilson.low);
    EXPECT_EQ(summary.asCounted.high, wilson.high);
    EXPECT_THAT(summary.inWords, HasSubstr("18 of 24 cuttings rooted so far, 2 undecided: a strike rate of 75 %"));
}

TEST(BatchSummary, HasItsCurveItsLooksAndItsLosses) {
    const auto summary = summaryAmong(aBatch().stuck(20).looked(7, {3, 1}).looked(14, {7, 2, 0, support::driedOut}));
    ASSERT_EQ(summary.rootedByDay.size(), 2u);
    EXPECT_NEAR(summary.rootedByDay[1].share, 0.5, 1e-9);
    EXPECT_EQ(summary.looks[1].waiting, 7);
    EXPECT_EQ(summary.ofStuck.p50->by, 14);
    ASSERT_EQ(summary.losses.size(), 2u);
    EXPECT_EQ(summary.losses[0].count, 2);
}

TEST(BatchSummary, SetsTheOwnPastOfPlantAndMethodBesideIt) {
    const core::Date earlier = core::addDays(support::stickingDay(), -300),
                     dayBefore = core::addDays(support::stickingDay(), -1),
                     later = core::addDays(support::stickingDay(), 3);
    const auto summary =
        summaryAmong(aBatch().stuck(24).looked(35, {18}),
                     {aBatch().stuckOn(earlier).stuck(20).looked(35, {12}),
                      aBatch().stuckOn(dayBefore).at(support::tubSouth).looked(35, {6}), aBatch().looked(35, {1}),
                      aBatch().stuckOn(later).looked(35, {24}), aBatch().at(support::benchWest).looked(35, {24}),
                      aBatch().of(support::deutzia).looked(35, {24})});
    EXPECT_EQ(summary.past.batches, 2);
    EXPECT_EQ(summary.past.rooted, 18);
    EXPECT_EQ(summary.past.assessed, 44);
    EXPECT_TRUE(summary.past.withSpread.has_value());
    EXPECT_THAT(summary.inWords,
                HasSubstr("In 2 earlier batches of this plant by this method about 41 of 100 rooted by day 35"));
}

TEST(BatchSummary, KnowsNoFuture) {
    const core::BatchRecord record = aBatch().stuck(24).looked(7, {3}).looked(21, {15});
    const std::vector<core::BatchRecord> all{record};
    const auto summary = core::summaryOf(record, support::someShelves(), all, core::addDays(record.batch.stuckOn, 10));
    EXPECT_EQ(summary.tally.rooted, 3);
    EXPECT_EQ(summary.rootedByDay.size(), 1u);
}

TEST(BatchSummary, SaysWhatIsStillOpenOrLeftOver) {
    EXPECT_THAT(summaryAmong(aBatch().looked(7, {3})).cautions,
                Contains(HasSubstr("still open: 21 cuttings are undecided")));
    EXPECT_THAT(summaryAmong(aBatch().looked(7, {3}).closed(20)).cautions,
                Contains(HasSubstr("21 cuttings were undecided when")));
    EXPECT_THAT(summaryAmong(aBatch().looked(7, {20, 4})).cautions, Not(Contains(HasSubstr("undecided"))));
    EXPECT_THAT(summaryAmong(aBatch().of(support::deutzia)).cautions, Contains(HasSubstr("is protected")));
}

TEST(BatchSummary, AnswersBeforeTheFirstLook) {
    const auto summary = summaryAmong(aBatch());
    EXPECT_EQ(summary.rate, 0);
    EXPECT_TRUE(summary.rootedByDay.empty());
    EXPECT_EQ(summary.past.batches, 0);
    EXPECT_THAT(summary.inWords, HasSubstr("There is no earlier batch"));
}

}  // namespace
