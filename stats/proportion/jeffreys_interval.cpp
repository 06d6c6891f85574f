// SPDX-License-Identifier: MIT
#include "stats/proportion/jeffreys_interval.h"

#include <boost/math/special_functions/beta.hpp>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/require.h"

namespace stats {

Interval jeffreysInterval(int successes, int trials, double level) {
    const Interval tails = jeffreysEqualTails(successes, trials, level);
    return {.low = successes == 0 ? 0.0 : tails.low, .high = successes == trials ? 1.0 : tails.high};
}

Interval jeffreysEqualTails(int successes, int trials, double level) {
    requireCounts("jeffreysInterval", successes, trials);
    requireLevel("jeffreysInterval", level);
    const double a = successes + 0.5, b = trials - successes + 0.5, tail = (1 - level) / 2;
    return {.low = boost::math::ibeta_inv(a, b, tail, BoostPolicy{}),
            .high = boost::math::ibetac_inv(a, b, tail, BoostPolicy{})};
}

}  // namespace stats
