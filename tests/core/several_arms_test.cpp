// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/comparison_examples.h"

namespace {

using support::aBatch;

// Three treatments at four stations, four batches of each with so many rooted of 20.
std::vector<core::BatchRecord> threeTreatments(const std::vector<std::vector<int>>& rooted,
                                               const core::Shelves& shelves) {
    const core::StationId stations[] = {support::tubNorth, support::tubSouth, support::benchWest, support::benchEast};
    std::vector<core::BatchRecord> batches;
    for (std::size_t arm = 0; arm < rooted.size(); ++arm)
        for (std::size_t i = 0; i < rooted[arm].size(); ++i)
            batches.push_back(aBatch()
                                  .at(stations[i % 4])
                                  .treated(shelves.treatments[arm].id)
                                  .stuck(20)
                                  .looked(28, {.rooted = rooted[arm][i], .lost = 20 - rooted[arm][i]}));
    return batches;
}

core::Shelves withThreeTreatments() {
    core::Shelves shelves = support::someShelves();
    shelves.treatments.push_back(
        {.id = {603},
         .name = "Strong gel",
         .auxins = {{.name = "IBA", .form = core::AuxinForm::Acid, .milligramsPerLitre = 3000}},
         .carrier = core::Carrier::Gel,
         .seconds = 5,
         .isWounded = false,
         .note = {},
         .isRetired = false});
    return shelves;
}

TEST(SeveralArms, AreJudgedTogetherByChiSquareAndByBatchRates) {
    const core::Shelves shelves = withThreeTreatments();
    const auto batches = threeTreatments({{10, 11, 9, 10}, {12, 14, 13, 13}, {18, 17, 19, 18}}, shelves);
    const core::Comparison comparison = examples::compared(batches, {.factor = core::Factor::Treatment}, shelves);
    ASSERT_TRUE(comparison.severalArms);
    // R 4.2: chisq.test(rbind(c(40, 52, 72), 80 - c(40, 52, 72)))
    EXPECT_NEAR(comparison.severalArms->chiSquare, 30.1925545571, 1e-9);
    EXPECT_EQ(comparison.severalArms->degreesOfFreedom, 2);
    // R 4.2: anova(lm(rate ~ arm)) of the twelve batch rates
    ASSERT_TRUE(comparison.severalArms->f);
    EXPECT_NEAR(*comparison.severalArms->f, 98, 1e-9);
    EXPECT_LT(*comparison.severalArms->batchRatesP, 1e-5);
}

TEST(SeveralArms, RaiseThePOfEachPairByHolm) {
    const core::Shelves shelves = withThreeTreatments();
    const auto batches = threeTreatments({{10, 15, 9, 12}, {12, 17, 9, 13}, {14, 17, 13, 18}}, shelves);
    const core::Comparison comparison = examples::compared(batches, {.factor = core::Factor::Treatment}, shelves);
    ASSERT_EQ(comparison.pairs.size(), 3u);
    std::vector<double> raw;
    for (const core::Pair& pair : comparison.pairs) {
        ASSERT_TRUE(pair.batchRatesP && pair.batchRatesHolm && pair.boschlooHolm);
        EXPECT_GE(*pair.batchRatesHolm, *pair.batchRatesP);
        raw.push_back(*pair.batchRatesP);
    }
    std::sort(raw.begin(), raw.end());
    for (const core::Pair& pair : comparison.pairs) {
        if (*pair.batchRatesP == raw[0]) {
            EXPECT_NEAR(*pair.batchRatesHolm, std::min(1.0, 3 * raw[0]), 1e-12);
        }
    }
}

TEST(SeveralArms, AreNoQuestionWithTwo) {
    const core::Comparison comparison = examples::compared(examples::tubsAndTrays());
    EXPECT_FALSE(comparison.severalArms);
    EXPECT_EQ(comparison.pairs.front().batchRatesHolm, comparison.pairs.front().batchRatesP);
}

TEST(SeveralArms, HaveNoTestOnBatchRatesWhereAnArmHasFewerThanThree) {
    const core::Shelves shelves = withThreeTreatments();
    const auto batches = threeTreatments({{10, 15, 9, 12}, {12, 17, 9, 13}, {14, 17}}, shelves);
    const core::Comparison comparison = examples::compared(batches, {.factor = core::Factor::Treatment}, shelves);
    ASSERT_TRUE(comparison.severalArms);
    EXPECT_FALSE(comparison.severalArms->batchRatesP);
}

}  // namespace
