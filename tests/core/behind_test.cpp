// SPDX-License-Identifier: MIT
#include "core/comparison/behind.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <iostream>

#include "stats/numeric/seeded_random.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;
using testing::HasSubstr;

/// Eight earlier batches of 20 that rooted 14 to 16, and one going on, all looked at on the plant's horizon day.
std::vector<core::BatchRecord> pastAndOneWith(int rooted) {
    std::vector<core::BatchRecord> batches;
    for (const int earlier : {15, 16, 14, 15, 16, 15, 14, 15})
        batches.push_back(aBatch().stuck(20).looked(14, {.rooted = 7}).looked(35, {.rooted = earlier - 7}));
    batches.push_back(aBatch()
                          .code("GOING-ON")
                          .stuck(20)
                          .stuckOn(core::addDays(support::stickingDay(), 60))
                          .looked(35, {.rooted = rooted}));
    return batches;
}

core::Date lookedOn() {
    return core::addDays(support::stickingDay(), 95);
}

std::vector<core::BehindThePast> behind(const std::vector<core::BatchRecord>& batches) {
    return core::batchesBehind(batches, support::someShelves(), lookedOn());
}

TEST(BatchesBehind, PointsOutTheBatchThatDoesWorseThanItsForerunners) {
    const auto found = behind(pastAndOneWith(1));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].code, "GOING-ON");
    EXPECT_EQ(found[0].against.rooted, 1);
    EXPECT_LT(found[0].against.chanceOfSoFew, core::LogbookFacts{}.falseAlarmRate);
    EXPECT_THAT(found[0].against.inWords, HasSubstr("So few or fewer would come"));
}

TEST(BatchesBehind, IsSilentAboutAnOrdinaryBatch) {
    EXPECT_TRUE(behind(pastAndOneWith(14)).empty());
}

TEST(BatchesBehind, SpeaksUpAsOftenAsTheGrowerAllowsFalseAlarms) {
    const std::vector<core::BatchRecord> batches = pastAndOneWith(11);
    core::Shelves shelves = support::someShelves();
    EXPECT_TRUE(core::batchesBehind(batches, shelves, lookedOn()).empty());
    shelves.facts.falseAlarmRate = 0.5;
    const auto found = core::batchesBehind(batches, shelves, lookedOn());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_GT(found[0].against.chanceOfSoFew, 0.01);
}

TEST(BatchesBehind, IsSilentAboutBatchesThatAreOver) {
    std::vector<core::BatchRecord> batches = pastAndOneWith(1);
    batches.back().batch.closedOn = lookedOn();
    batches.back().batch.closeReason = "given up";
    EXPECT_TRUE(behind(batches).empty());
}

TEST(BatchesBehind, IsSilentWithoutAPastOrALook) {
    std::vector<core::BatchRecord> batches = pastAndOneWith(1);
    EXPECT_TRUE(behind({batches.back()}).empty());
    batches.back().checks.clear();
    EXPECT_TRUE(behind(batches).empty());
    EXPECT_TRUE(behind({}).empty());
}

/// `earlier` batches and one going on, all of one rate and one likeness within batches, both drawn from what the program holds for likely
/// before any record: Jeffreys's rule, and Beta(1, 4).
std::vector<core::BatchRecord> fromOneLaw(int earlier, stats::SeededRandom& random) {
    const double rate = random.beta(0.5, 0.5), likeness = random.beta(1, 4), sum = (1 - likeness) / likeness;
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i <= earlier; ++i) {
        const int stuck = 12 + static_cast<int>(random.below(17));
        const int rooted = random.binomial(stuck, random.beta(rate * sum, (1 - rate) * sum));
        const core::Date day = core::addDays(support::stickingDay(), i < earlier ? 0 : 60);
        batches.push_back(aBatch().stuck(stuck).stuckOn(day).looked(35, {.rooted = rooted}));
    }
    return batches;
}

bool isFlagged(const std::vector<core::BatchRecord>& batches, double falseAlarmRate) {
    core::Shelves shelves = support::someShelves();
    shelves.facts.falseAlarmRate = falseAlarmRate;
    return !core::batchesBehind(batches, shelves, lookedOn()).empty();
}

TEST(BatchesBehind, KeepToTheRateOfFalseAlarmsThatIsSet) {
    stats::SeededRandom random(20261130);
    std::cout << "[ seed 20261130 ]\n";
    constexpr std::array rates{0.1, 0.05, 0.01};
    constexpr int runs = 1000;
    for (const int earlier : {3, 10, 30}) {
        std::array<int, rates.size()> flagged{};
        for (int run = 0; run < runs; ++run) {
            const std::vector<core::BatchRecord> batches = fromOneLaw(earlier, random);
            // What isn't flagged at a rate isn't at a smaller one.
            for (std::size_t i = 0; i < rates.size() && isFlagged(batches, rates[i]); ++i) ++flagged[i];
        }
        for (std::size_t i = 0; i < rates.size(); ++i) {
            const double share = static_cast<double>(flagged[i]) / runs;
            std::cout << "[ " << earlier << " earlier batches, set to " << rates[i] << ": flagged " << share << " ]\n";
            EXPECT_LE(share, rates[i] + 3 * std::sqrt(rates[i] * (1 - rates[i]) / runs)) << earlier;
            // Counts are whole, and a rate near 0 or 1 leaves no room for alarms.
            if (earlier == 30) {
                EXPECT_GE(share, rates[i] / 4) << "so rare that nobody is warned";
            }
        }
    }
}

}  // namespace
