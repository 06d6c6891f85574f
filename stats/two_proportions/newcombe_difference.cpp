// SPDX-License-Identifier: MIT
#include "stats/two_proportions/newcombe_difference.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/require.h"
#include "stats/proportion/wilson_continuity_interval.h"
#include "stats/proportion/wilson_interval.h"

namespace stats {
namespace {

using ProportionInterval = Interval (*)(int successes, int trials, double level);

Interval squareAndAdd(const TwoCounts& counts, double level, ProportionInterval intervalOf) {
    if (counts.trials1 == 0 || counts.trials2 == 0) return {.low = -1, .high = 1};
    const double first = static_cast<double>(counts.successes1) / counts.trials1;
    const double second = static_cast<double>(counts.successes2) / counts.trials2;
    const Interval ofFirst = intervalOf(counts.successes1, counts.trials1, level);
    const Interval ofSecond = intervalOf(counts.successes2, counts.trials2, level);
    const double difference = first - second;
    return {.low = std::max(-1.0, difference - std::hypot(first - ofFirst.low, ofSecond.high - second)),
            .high = std::min(1.0, difference + std::hypot(ofFirst.high - first, second - ofSecond.low))};
}

}  // namespace

Interval newcombeDifference(const TwoCounts& counts, double level) {
    requireTwoCounts("newcombeDifference", counts);
    requireLevel("newcombeDifference", level);
    return squareAndAdd(counts, level, wilsonInterval);
}

Interval newcombeContinuityDifference(const TwoCounts& counts, double level) {
    requireTwoCounts("newcombeContinuityDifference", counts);
    requireLevel("newcombeContinuityDifference", level);
    return squareAndAdd(counts, level, wilsonContinuityInterval);
}

}  // namespace stats
