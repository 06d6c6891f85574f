// SPDX-License-Identifier: MIT
#include "core/money/pay_off.h"

#include <algorithm>
#include <cmath>

#include "gtest/gtest.h"

namespace {

core::WorthOfMethod aMethod(core::MethodId id, double rate, double upFront, double perBatch) {
    core::WorthOfMethod method;
    method.method = id;
    method.upFront = upFront;
    method.perBatch = perBatch;
    method.cuttingsPerBatch = 20;
    // As good as known: a narrow bell.
    double sum = 0;
    for (int step = -20; step <= 20; ++step) {
        const double weight = std::exp(-0.02 * step * step);
        method.rates.push_back({.rate = rate + step * 1e-4, .correlation = 0, .weight = weight});
        sum += weight;
    }
    for (stats::RatePoint& point : method.rates) point.weight /= sum;
    return method;
}

core::WorthOfPair aPair(double upFront) {
    core::WorthOfPair pair{.dear = aMethod({1}, 0.8, upFront, 8), .cheap = aMethod({2}, 0.5, 0, 8)};
    pair.breakEven =
        core::BreakEvenBatches{.method = {1}, .name = "tub", .chanceEver = 1, .low = 12, .middle = 14, .high = {}};
    return pair;
}

/// (upFront + 8 n) / (20 n 0.8) = 8 / (20 x 0.5): upFront = 4.8 n.
TEST(PayOffCurve, RisesFromNoneToAllWhereItIsPaidFor) {
    const std::vector<core::ChanceAfter> curve = core::payOffCurve(aPair(62.4), 0.95);  // 13 batches
    ASSERT_FALSE(curve.empty());
    for (const core::ChanceAfter& point : curve) {
        if (point.batches <= 12) {
            EXPECT_LT(point.chance, 0.01) << point.batches;
        } else if (point.batches >= 14) {
            EXPECT_GT(point.chance, 0.99) << point.batches;
        }
    }
}

TEST(PayOffCurve, IsByRisingNumbersWithThoseNamedAmongThem) {
    const std::vector<core::ChanceAfter> curve = core::payOffCurve(aPair(62.4), 0.95);
    EXPECT_TRUE(std::ranges::is_sorted(curve, std::ranges::less_equal{}, &core::ChanceAfter::batches));
    EXPECT_EQ(std::ranges::adjacent_find(curve, {}, &core::ChanceAfter::batches), curve.end());
    for (const int named : {1, 12, 14})
        EXPECT_NE(std::ranges::find(curve, named, &core::ChanceAfter::batches), curve.end()) << named;
    EXPECT_LE(curve.size(), 30U);
}

TEST(PayOffCurve, CountsForTheOneWithTheDearerThings) {
    core::WorthOfPair pair = aPair(62.4);
    std::swap(pair.dear, pair.cheap);
    const std::vector<core::ChanceAfter> curve = core::payOffCurve(pair, 0.95);
    ASSERT_FALSE(curve.empty());
    EXPECT_GT(curve.back().chance, 0.99);
}

TEST(PayOffCurve, IsEmptyWithoutABreakEvenAndDrawnWhereThereIsNever) {
    core::WorthOfPair pair = aPair(62.4);
    pair.breakEven =
        core::BreakEvenBatches{.method = {1}, .name = "tub", .chanceEver = 0, .low = {}, .middle = {}, .high = {}};
    EXPECT_EQ(core::payOffCurve(pair, 0.95).back().batches, 100);
    pair.breakEven.reset();
    EXPECT_TRUE(core::payOffCurve(pair, 0.95).empty());
}

}  // namespace
