// SPDX-License-Identifier: MIT
#include "stats/cost/break_even.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <utility>
#include <vector>

#include "tests/stats/drawn_rates.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using simulated::ratesOf;

// Invented: a tub for 96.00 that costs 5.20 a batch of 24, against trays for 12.00 that cost 7.90 a batch of 24.
stats::Outlay tub(std::vector<stats::RatePoint> rates) {
    return {.upFront = 96, .perBatch = 5.2, .trialsPerBatch = 24, .rates = std::move(rates)};
}
stats::Outlay tray(std::vector<stats::RatePoint> rates) {
    return {.upFront = 12, .perBatch = 7.9, .trialsPerBatch = 24, .rates = std::move(rates)};
}

/// All but certain to be a half.
std::vector<stats::RatePoint> aHalf() {
    return {{0.5 - 1e-6, 0, 1e-9}, {0.5, 0, 1 - 2e-9}, {0.5 + 1e-6, 0, 1e-9}};
}

double costOfSuccesses(double successes, const stats::Outlay& outlay, double rate) {
    return outlay.upFront + successes / (outlay.trialsPerBatch * rate) * outlay.perBatch;
}

TEST(BreakEven, AgreesWithAMillionDraws) {
    SCOPED_TRACE(simulated::seedOfDraws);
    const stats::BreakEven got = stats::breakEven(tub(ratesOf(70, 96)), tray(ratesOf(66, 96)), 30, 0.9);
    const std::vector<simulated::Rates> drawn = simulated::drawnRates({70, 96}, {66, 96});
    const auto shareBy = [&](double batches) {
        return simulated::shareOf(drawn, [&](const simulated::Rates& rates) {
            const auto one = tub({}), other = tray({});
            const double successes = batches * one.trialsPerBatch * rates.first;
            return costOfSuccesses(successes, one, rates.first) < costOfSuccesses(successes, other, rates.second) &&
                   one.perBatch / rates.first < other.perBatch / rates.second;
        });
    };
    const double byThen = shareBy(30), ever = shareBy(1e12);
    EXPECT_NEAR(got.chanceByThen, byThen, simulated::fourErrors(byThen) + 1e-4);
    EXPECT_NEAR(got.chanceEver, ever, simulated::fourErrors(ever) + 1e-4);
    support::prove({"breakEven", "70 and 66 of 96, chance by the 30th batch", "a million draws"}, got.chanceByThen,
                   byThen);
    ASSERT_TRUE(got.low && got.middle && got.high);
    for (const auto& [batches, chance] :
         {std::pair(*got.low, 0.05), std::pair(*got.middle, 0.5), std::pair(*got.high, 0.95)}) {
        const double at = shareBy(batches), before = shareBy(batches - 1);
        EXPECT_GE(at + simulated::fourErrors(at) + 1e-4, chance) << batches;
        EXPECT_LT(before - simulated::fourErrors(before) - 1e-4, chance) << batches;
    }
}

TEST(BreakEven, IsThePlainQuotientWhereBothRatesAreAllButKnown) {
    // 84 more up front, 2.70 saved a batch: after 31.1 batches.
    const auto rates = aHalf();
    const stats::BreakEven got = stats::breakEven(tub(rates), tray(rates), 40, 0.5);
    EXPECT_EQ(*got.middle, 32);
    EXPECT_GT(got.chanceByThen, 0.99);
}

TEST(BreakEven, CountsWhatTheCheapWayNeedsUpFrontOnce) {
    // Alike in everything but 52.95 more up front and 0.10 saved a batch: 529.5 batches, whatever the other needs up front itself.
    const auto rates = aHalf();
    const stats::BreakEven got =
        stats::breakEven({.upFront = 154.95, .perBatch = 18.6, .trialsPerBatch = 24, .rates = rates},
                         {.upFront = 102, .perBatch = 18.7, .trialsPerBatch = 24, .rates = rates}, 529, 0.5);
    EXPECT_LT(got.chanceByThen, 0.01);
    EXPECT_EQ(*got.middle, 530);
}

TEST(BreakEven, NeverComesWhereTheDearWayCostsMoreWithEachBatchToo) {
    const auto rates = aHalf();
    const stats::BreakEven got =
        stats::breakEven({.upFront = 96, .perBatch = 9, .trialsPerBatch = 24, .rates = rates}, tray(rates), 1000, 0.95);
    EXPECT_LT(got.chanceEver, 1e-6);
    EXPECT_FALSE(got.low || got.middle || got.high);
}

TEST(BreakEven, ComesWithTheFirstBatchWhereItIsCheaperFromTheStart) {
    const auto rates = aHalf();
    const stats::BreakEven got =
        stats::breakEven({.upFront = 2, .perBatch = 3, .trialsPerBatch = 24, .rates = rates}, tray(rates), 1, 0.95);
    EXPECT_EQ(got.low, 1);
    EXPECT_EQ(got.high, 1);
}

TEST(BreakEven, RefusesWhatIsOutsideItsDomain) {
    const auto rates = ratesOf(5, 10);
    EXPECT_THROW((void)stats::breakEven(tub(rates), tray(rates), 0, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::breakEven(tub(rates), tray(rates), 10, 1), std::domain_error);
    EXPECT_THROW((void)stats::breakEven(tub({}), tray(rates), 10, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::breakEven({.upFront = -1, .perBatch = 1, .trialsPerBatch = 1, .rates = rates},
                                        tray(rates), 10, 0.95),
                 std::domain_error);
    EXPECT_THROW((void)stats::breakEven({.upFront = 1, .perBatch = 1, .trialsPerBatch = 0, .rates = rates}, tray(rates),
                                        10, 0.95),
                 std::domain_error);
}

}  // namespace
