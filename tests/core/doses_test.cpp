// SPDX-License-Identifier: MIT
#include "core/comparison/doses.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using support::aBatch;
using testing::HasSubstr;

constexpr std::int64_t firstGel = 650;

core::Shelves withGelsOf(const std::vector<double>& doses) {
    core::Shelves shelves = support::someShelves();
    for (std::size_t i = 0; i < doses.size(); ++i)
        shelves.treatments.push_back(
            {.id = {firstGel + static_cast<std::int64_t>(i)},
             .name = "Gel " + std::to_string(i),
             .auxins = {{.name = "IBA", .form = core::AuxinForm::Acid, .milligramsPerLitre = doses[i]}},
             .carrier = core::Carrier::Gel,
             .seconds = 5,
             .isWounded = false,
             .note = {},
             .isRetired = false});
    return shelves;
}

// For each gel batches with so many rooted of 20.
std::vector<core::BatchRecord> batchesOf(const std::vector<std::vector<int>>& rooted) {
    std::vector<core::BatchRecord> batches;
    for (std::size_t gel = 0; gel < rooted.size(); ++gel)
        for (const int count : rooted[gel])
            batches.push_back(aBatch()
                                  .treated({firstGel + static_cast<std::int64_t>(gel)})
                                  .stuck(20)
                                  .looked(28, {.rooted = count, .lost = 20 - count}));
    return batches;
}

std::vector<core::DoseSeries> seriesOf(const std::vector<core::BatchRecord>& batches, const core::Shelves& shelves) {
    return examples::compared(batches, {.factor = core::Factor::Treatment}, shelves).doses;
}

TEST(Doses, FindATopBetweenTheDosesTried) {
    const auto all =
        seriesOf(batchesOf({{6, 7}, {12, 13}, {16, 15}, {11, 12}, {5, 6}}), withGelsOf({250, 500, 1000, 2000, 4000}));
    ASSERT_EQ(all.size(), 1u);
    const core::DoseSeries& series = all.front();
    EXPECT_EQ(series.auxin, "IBA, gel");
    ASSERT_EQ(series.best, core::BestDose::Inside);
    EXPECT_GT(*series.bestMilligrams, 800);
    EXPECT_LT(*series.bestMilligrams, 1250);
    ASSERT_TRUE(series.withSpread);
    EXPECT_LT(series.withSpread->low, *series.bestMilligrams);
    EXPECT_GT(series.withSpread->high, *series.bestMilligrams);
    EXPECT_FALSE(series.curve.empty());
    EXPECT_THAT(series.inWords, HasSubstr("The curve is highest near"));
}

TEST(Doses, SayThatTheRateRisesOrFalls) {
    const auto all = seriesOf(batchesOf({{18, 19, 18}, {13, 14, 13}, {8, 7, 8}}), withGelsOf({500, 1000, 2000}));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_LT(all.front().trendP, 1e-6);
    ASSERT_TRUE(all.front().batchTrendP);
    EXPECT_LT(*all.front().batchTrendP, 1e-4);
    EXPECT_LT(*all.front().trendPerStep, 0);
    EXPECT_THAT(all.front().inWords, HasSubstr("falls by about 27 of 100"));
}

TEST(Doses, TakeUntreatedBatchesInAsTheLowest) {
    auto batches = batchesOf({{12, 13}, {15, 14}, {16, 15}});
    batches.push_back(aBatch().treated(support::nothing).stuck(20).looked(28, {.rooted = 6, .lost = 14}));
    const auto all = seriesOf(batches, withGelsOf({500, 1000, 2000}));
    ASSERT_EQ(all.size(), 1u);
    ASSERT_EQ(all.front().points.size(), 4u);
    EXPECT_EQ(all.front().points.front().milligramsPerLitre, 0);
    EXPECT_EQ(all.front().points.front().rooted, 6);
}

TEST(Doses, UseFirthsEstimatorByNameWhereADoseRootedAll) {
    const auto all = seriesOf(batchesOf({{20, 20}, {20, 20}, {20, 20}}), withGelsOf({500, 1000, 2000}));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_TRUE(all.front().isFirth);
    EXPECT_NE(all.front().best, core::BestDose::NoCurve);
}

TEST(Doses, MakeNoSeriesOfOneDoseOrOfMixtures) {
    EXPECT_TRUE(seriesOf(batchesOf({{12, 13}}), withGelsOf({500})).empty());
    core::Shelves shelves = withGelsOf({500, 1000});
    for (core::Treatment& treatment : shelves.treatments)
        if (treatment.id.value >= firstGel)
            treatment.auxins.push_back({.name = "NAA", .form = core::AuxinForm::Acid, .milligramsPerLitre = 100});
    EXPECT_TRUE(seriesOf(batchesOf({{12, 13}, {14, 15}}), shelves).empty());
}

TEST(Doses, AreOnlyLookedAtWhereTreatmentsAreCompared) {
    EXPECT_TRUE(
        examples::compared(batchesOf({{12, 13}, {15, 14}, {16, 15}}), {}, withGelsOf({500, 1000, 2000})).doses.empty());
}

}  // namespace
