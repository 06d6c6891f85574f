// SPDX-License-Identifier: MIT
#include "stats/proportion/mid_p_interval.h"

#include <boost/math/special_functions/beta.hpp>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/require.h"

namespace stats {

Interval midPInterval(int successes, int trials, double level) {
    requireCounts("midPInterval", successes, trials);
    requireLevel("midPInterval", level);
    const double x = successes, failures = trials - x, tail = (1 - level) / 2;
    // Half of P(X >= x) and P(X > x) is P(X > x) and half of P(X = x); the same for the lower tail.
    const auto upperTail = [&](double p) {
        const double beyond = failures == 0 ? 0 : boost::math::ibeta(x + 1, failures, p, BoostPolicy{});
        return (boost::math::ibeta(x, failures + 1, p, BoostPolicy{}) + beyond) / 2 - tail;
    };
    const auto lowerTail = [&](double p) {
        const double below = x == 0 ? 0 : boost::math::ibetac(x, failures + 1, p, BoostPolicy{});
        return (boost::math::ibetac(x + 1, failures, p, BoostPolicy{}) + below) / 2 - tail;
    };
    return {.low = successes == 0 ? 0.0 : bracketedRoot(upperTail, 0, 1),
            .high = successes == trials ? 1.0 : bracketedRoot(lowerTail, 0, 1)};
}

}  // namespace stats
