// SPDX-License-Identifier: MIT
#include "stats/planning/predictive_range.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <limits>
#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/planning/predictive_count.h"
#include "tests/support/accuracy_ledger.h"

namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

stats::PastBatches threeTrays(double correlation) {
    return {
        .batches = {{.successes = 12, .trials = 20}, {.successes = 15, .trials = 20}, {.successes = 9, .trials = 20}},
        .spread = stats::knownCorrelation(correlation)};
}

/// Binomial probabilities one from the other, for ranges by nothing but addition.
stats::CountRange rangeByAdding(int count, double rate, double level) {
    std::vector<double> law{std::pow(1 - rate, count)};
    for (int k = 1; k <= count; ++k) law.push_back(law.back() * (count - k + 1) / k * rate / (1 - rate));
    const double tail = (1 - level) / 2;
    stats::CountRange range{.low = 0, .high = count};
    double below = 0, above = 0;
    while (below + law[static_cast<std::size_t>(range.low)] <= tail)
        below += law[static_cast<std::size_t>(range.low++)];
    while (above + law[static_cast<std::size_t>(range.high)] <= tail)
        above += law[static_cast<std::size_t>(range.high--)];
    return range;
}

TEST(RangeForKnownRate, GivesWhatTheTableOfTheBinomialSays) {
    // P(5 or fewer of 20 at one half) = 0.0207, P(6 or fewer) = 0.0577: any table of the binomial distribution.
    EXPECT_EQ(stats::rangeForKnownRate(20, 0.5, 0.95), (stats::CountRange{.low = 6, .high = 14}));
    EXPECT_EQ(stats::rangeForKnownRate(20, 0.625, 0.95, 0.8), (stats::CountRange{.low = 6, .high = 14}));
}

TEST(RangeForKnownRate, IsFoundByAddingUpInAThousandRandomCases) {
    stats::SeededRandom random(20261126);
    std::cout << "[ seed 20261126 ]\n";
    for (int run = 0; run < 1000; ++run) {
        const int count = 1 + static_cast<int>(random.below(200));
        const double rate = 0.02 + 0.96 * random.uniform(), level = 0.5 + 0.49 * random.uniform();
        ASSERT_EQ(stats::rangeForKnownRate(count, rate, level), rangeByAdding(count, rate, level))
            << count << " at " << rate << ", level " << level;
        support::prove({"rangeForKnownRate", "a thousand random cases, lower end", "adding up the binomial"},
                       stats::rangeForKnownRate(count, rate, level).low, rangeByAdding(count, rate, level).low);
    }
}

TEST(RangeForKnownRate, IsThatNumberWhereNothingIsLeftToChance) {
    EXPECT_EQ(stats::rangeForKnownRate(30, 0, 0.95), (stats::CountRange{.low = 0, .high = 0}));
    EXPECT_EQ(stats::rangeForKnownRate(30, 1, 0.95), (stats::CountRange{.low = 30, .high = 30}));
    EXPECT_EQ(stats::rangeForKnownRate(0, 0.5, 0.95), (stats::CountRange{}));
}

TEST(RangeForPastRecords, ComesNearTheKnownRatesWhenTheRecordsAreMany) {
    const stats::CountRange many = stats::rangeForPastRecords(40, 600'000, 1'000'000, 0.95);
    EXPECT_EQ(many, stats::rangeForKnownRate(40, 0.6, 0.95));
    support::prove({"rangeForPastRecords", "a million trials, upper end", "the range of the known rate"}, many.high,
                   stats::rangeForKnownRate(40, 0.6, 0.95).high);
    const stats::CountRange few = stats::rangeForPastRecords(40, 6, 10, 0.95);
    const stats::CountRange known = stats::rangeForKnownRate(40, 0.6, 0.95);
    EXPECT_LT(few.low, known.low);
    EXPECT_GT(few.high, known.high);
}

TEST(RangeForPastRecords, SwapsItsEndsWhenSuccessAndFailureSwap) {
    for (const int successes : {0, 3, 11, 20}) {
        const stats::CountRange range = stats::rangeForPastRecords(30, successes, 20, 0.9);
        const stats::CountRange swapped = stats::rangeForPastRecords(30, 20 - successes, 20, 0.9);
        EXPECT_EQ(range, (stats::CountRange{.low = 30 - swapped.high, .high = 30 - swapped.low}));
    }
}

TEST(RangeForPastBatches, LeavesOutNoMoreThanItsTailsByTheChancesOfCounts) {
    for (const double correlation : {0.0, 0.08, 0.2})
        for (const double livesOn : {1.0, 0.85})
            for (const int count : {1, 7, 43, 90}) {
                SCOPED_TRACE(testing::Message() << count << " at " << correlation << ", live on " << livesOn);
                const stats::PastBatches past = threeTrays(correlation);
                const stats::CountRange range = stats::rangeForPastBatches(count, past, 20, 0.9, livesOn);
                const auto atLeast = [&](int k) { return stats::assuranceOfCount(k, count, past, 20, livesOn); };
                EXPECT_GE(atLeast(range.low), 0.95 - 1e-5);
                EXPECT_LT(atLeast(range.low + 1), 0.95 + 1e-5);
                EXPECT_GT(atLeast(range.high), 0.05 - 1e-5);
                EXPECT_LE(atLeast(range.high + 1), 0.05 + 1e-5);
            }
}

TEST(RangeForPastBatches, IsThatOfTheSumsWhenTraysDoNotDiffer) {
    for (const int count : {10, 43, 120}) {
        const stats::CountRange got = stats::rangeForPastBatches(count, threeTrays(0), 20, 0.95);
        const stats::CountRange want = stats::rangeForPastRecords(count, 36, 60, 0.95);
        EXPECT_EQ(got, want);
        support::prove({"rangeForPastBatches", "trays that do not differ, lower end", "rangeForPastRecords()"}, got.low,
                       want.low);
    }
}

TEST(RangeForPastBatches, IsWiderTheMoreTraysDifferTheLargerTheyAreAndTheSurerItIs) {
    const auto width = [](double correlation, int tray, double level) {
        const stats::CountRange range = stats::rangeForPastBatches(60, threeTrays(correlation), tray, level);
        return range.high - range.low;
    };
    EXPECT_GT(width(0.15, 20, 0.95), width(0, 20, 0.95));
    EXPECT_GT(width(0.15, 60, 0.95), width(0.15, 5, 0.95));
    EXPECT_GT(width(0.15, 20, 0.99), width(0.15, 20, 0.8));
    EXPECT_EQ(stats::rangeForPastBatches(0, threeTrays(0.1), 20, 0.95), (stats::CountRange{}));
}

TEST(Ranges, RefuseWhatIsNone) {
    EXPECT_THROW(static_cast<void>(stats::rangeForKnownRate(-1, 0.5, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForKnownRate(10, nan, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForKnownRate(10, 0.5, 1)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForKnownRate(10, 0.5, 0.95, 0)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForPastRecords(10, 7, 6, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForPastBatches(20'001, threeTrays(0.1), 20, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForPastBatches(10, threeTrays(0.1), 0, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::rangeForPastBatches(10, threeTrays(0.1), 20, nan)), std::domain_error);
}

}  // namespace
