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

struct LawOfRates {
    double a{}, b{};  // of the beta distribution that a logbook's rate is drawn from
};

/// `earlier` batches and one going on, all of one rate and one likeness within batches; the likeness is drawn from what the program holds for
/// likely before any record, Beta(1, 4).
std::vector<core::BatchRecord> fromOneLaw(int earlier, const LawOfRates& law, stats::SeededRandom& random) {
    const double rate = random.beta(law.a, law.b), likeness = random.beta(1, 4), sum = (1 - likeness) / likeness;
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

constexpr std::array setRates{0.1, 0.05, 0.01};
constexpr int flagRuns = 1000;

/// How often the batch going on was flagged at each of setRates.
std::array<double, setRates.size()> flaggedShares(int earlier, const LawOfRates& law, stats::SeededRandom& random) {
    std::array<int, setRates.size()> flagged{};
    for (int run = 0; run < flagRuns; ++run) {
        const std::vector<core::BatchRecord> batches = fromOneLaw(earlier, law, random);
        // What isn't flagged at a rate isn't at a smaller one.
        for (std::size_t i = 0; i < setRates.size() && isFlagged(batches, setRates[i]); ++i) ++flagged[i];
    }
    std::array<double, setRates.size()> shares{};
    for (std::size_t i = 0; i < setRates.size(); ++i) {
        shares[i] = static_cast<double>(flagged[i]) / flagRuns;
        std::cout << "[ " << earlier << " earlier batches, set to " << setRates[i] << ": flagged " << shares[i]
                  << " ]\n";
    }
    return shares;
}

double threeErrors(double rate) {
    return 3 * std::sqrt(rate * (1 - rate) / flagRuns);
}

TEST(BatchesBehind, AreNeverMoreFalseAlarmsThanIsSetWhateverTheRates) {
    stats::SeededRandom random(20261130);
    std::cout << "[ seed 20261130 ]\n";
    for (const int earlier : {3, 10, 30}) {
        const auto shares = flaggedShares(earlier, {0.5, 0.5}, random);  // Jeffreys's: many near 0 and 1
        for (std::size_t i = 0; i < setRates.size(); ++i) {
            EXPECT_LE(shares[i], setRates[i] + threeErrors(setRates[i])) << earlier;
            // Counts are whole, and a rate near 0 or 1 leaves no room for alarms.
            if (earlier == 30) {
                EXPECT_GE(shares[i], setRates[i] / 4) << "so rare that nobody is warned";
            }
        }
    }
}

TEST(BatchesBehind, AreAsManyFalseAlarmsAsIsSetWhereRatesLeaveRoomForThem) {
    stats::SeededRandom random(20261131);
    std::cout << "[ seed 20261131 ]\n";
    const auto shares = flaggedShares(30, {5, 3}, random);  // mostly from 30 to 90 in 100
    for (std::size_t i = 0; i < setRates.size(); ++i)
        EXPECT_NEAR(shares[i], setRates[i], threeErrors(setRates[i])) << setRates[i];
}

}  // namespace
