// SPDX-License-Identifier: MIT
#include "core/money/pay_off.h"

#include <algorithm>
#include <set>

#include "stats/cost/break_even.h"

namespace core {
namespace {

constexpr int mostPoints = 24;
constexpr int leastEnd = 10;
constexpr int endWithoutAny = 100;
constexpr int mostTimesMiddle = 6;  // an axis that reached a far high would squeeze the rest into a point

stats::Outlay outlayToPayOff(const WorthOfMethod& worth) {
    return {.upFront = worth.upFront,
            .perBatch = worth.perBatch,
            .trialsPerBatch = worth.cuttingsPerBatch,
            .rates = worth.rates};
}

int endOf(const BreakEvenBatches& even) {
    constexpr int most = stats::mostBatchesToBreakEven / mostTimesMiddle;
    if (even.middle) {
        const int end = mostTimesMiddle * std::min(*even.middle, most);
        return std::max(leastEnd, even.high ? std::min(*even.high, end) : end);
    }
    return even.low ? std::max(endWithoutAny, 2 * std::min(*even.low, most)) : endWithoutAny;
}

std::set<int> numbersOf(const BreakEvenBatches& even) {
    const int end = endOf(even);
    std::set<int> numbers{1, end};
    for (int point = 1; point < mostPoints; ++point)
        numbers.insert(std::max(1, static_cast<int>(static_cast<double>(end) * point / mostPoints)));
    for (const std::optional<int>& named : {even.low, even.middle, even.high})
        if (named && *named <= end) numbers.insert(*named);
    return numbers;
}

}  // namespace

std::vector<ChanceAfter> payOffCurve(const WorthOfPair& pair, double level, const std::stop_token& stop) {
    if (!pair.breakEven) return {};
    const bool isDearEquipped = pair.breakEven->method == pair.dear.method;
    const stats::Outlay dear = outlayToPayOff(pair.dear), cheap = outlayToPayOff(pair.cheap);
    std::vector<ChanceAfter> curve;
    for (const int number : numbersOf(*pair.breakEven)) {
        if (stop.stop_requested()) return curve;
        const stats::BreakEven even = isDearEquipped ? stats::breakEven(dear, cheap, number, level)
                                                     : stats::breakEven(cheap, dear, number, level);
        curve.push_back({.batches = number, .chance = even.chanceByThen});
    }
    return curve;
}

}  // namespace core
