// SPDX-License-Identifier: MIT
#include "core/comparison/unusual.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/comparison/spread.h"
#include "tests/core/comparison_examples.h"

namespace {

using support::aBatch;
using testing::HasSubstr;

std::vector<core::BatchRecord> eightAlikeAndOneOf(int rooted) {
    std::vector<core::BatchRecord> batches = examples::batchesAt(support::tubNorth, {15, 16, 14, 15, 16, 15, 14, 15});
    batches.push_back(examples::batchesAt(support::tubNorth, {rooted}).front());
    return batches;
}

std::vector<core::Course> coursesOf(const std::vector<core::BatchRecord>& batches) {
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : batches) courses.push_back(core::courseOf(record, 28));
    return courses;
}

core::AgainstThePast lastAgainstTheRest(const std::vector<core::BatchRecord>& batches) {
    const std::vector<core::Course> courses = coursesOf(batches);
    return core::againstThePast(courses.back(), std::span(courses).first(courses.size() - 1), 28,
                                core::pooledSpreadOf(batches, 28, 0.95))
        .value();
}

TEST(AgainstThePast, FindsAPoorBatchUnlikelyAndAnOrdinaryOneNot) {
    const core::AgainstThePast poor = lastAgainstTheRest(eightAlikeAndOneOf(2));
    EXPECT_EQ(poor.pastBatches, 8);
    EXPECT_EQ(poor.rooted, 2);
    EXPECT_LT(poor.chanceOfSoFew, 0.01);
    EXPECT_GT(poor.usualFewest, 2);
    EXPECT_THAT(poor.inWords, HasSubstr("So few or fewer would come"));
    const core::AgainstThePast ordinary = lastAgainstTheRest(eightAlikeAndOneOf(15));
    EXPECT_GT(ordinary.chanceOfSoFew, 0.2);
    EXPECT_LT(ordinary.chanceOfSoFew, 0.8);
    EXPECT_THAT(ordinary.inWords, HasSubstr("nothing out of the ordinary"));
}

TEST(AgainstThePast, IsJudgedOnTheDayOfItsLastLook) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 5; ++i)
        batches.push_back(aBatch().stuck(20).looked(7, {.rooted = 2}).looked(28, {.rooted = 14}));
    batches.push_back(aBatch().stuck(20).looked(7, {.rooted = 2}));
    const core::AgainstThePast young = lastAgainstTheRest(batches);
    EXPECT_EQ(young.day, 7);
    EXPECT_GT(young.chanceOfSoFew, 0.2) << "two of twenty by day 7 is what the others had";
}

TEST(AgainstThePast, IsAbsentBeforeTheFirstLookAndWithoutAPast) {
    const std::vector<core::BatchRecord> batches{aBatch().looked(28, {15}), aBatch()};
    const auto courses = coursesOf(batches);
    const stats::PooledSpread spread = core::pooledSpreadOf(batches, 28, 0.95);
    EXPECT_FALSE(core::againstThePast(courses[1], std::span(courses).first(1), 28, spread));
    EXPECT_FALSE(core::againstThePast(courses[0], {}, 28, spread));
}

TEST(StrikeChart, PutsBatchesInOrderAndCallsOnlyTheOddOneOut) {
    auto batches = eightAlikeAndOneOf(1);
    // One in nine might as well mean that batches differ; one in forty-one does not.
    for (int again = 0; again < 4; ++again) {
        const auto more = examples::batchesAt(support::tubNorth, {15, 16, 14, 15, 16, 15, 14, 15});
        batches.insert(batches.begin(), more.begin(), more.end());
    }
    const core::StrikeChart chart =
        core::strikeChart(coursesOf(batches), 0.01, core::pooledSpreadOf(batches, 28, 0.95));
    ASSERT_EQ(chart.batches.size(), 41u);
    int below = 0;
    for (const core::ChartedBatch& batch : chart.batches) below += batch.signal == core::ChartSignal::Below ? 1 : 0;
    EXPECT_EQ(below, 1);
    const auto odd =
        std::find_if(chart.batches.begin(), chart.batches.end(), [](const auto& batch) { return batch.rooted == 1; });
    EXPECT_EQ(odd->signal, core::ChartSignal::Below);
    EXPECT_THAT(chart.inWords, HasSubstr("Fewer than luck would explain: " + odd->code));
    EXPECT_THAT(chart.inWords, HasSubstr("10 batches in a thousand"));
}

TEST(StrikeChart, SaysNothingOfABatchWhoseFateIsNotKnown) {
    const std::vector<core::BatchRecord> batches{aBatch().looked(28, {15}), aBatch()};
    const core::StrikeChart chart =
        core::strikeChart(coursesOf(batches), 0.01, core::pooledSpreadOf(batches, 28, 0.95));
    EXPECT_EQ(chart.batches.back().signal, core::ChartSignal::NothingKnown);
    EXPECT_FALSE(chart.batches.back().rate);
    EXPECT_FALSE(core::strikeChart({}, 0.01, core::pooledSpreadOf({}, 28, 0.95)).centre);
}

}  // namespace
