// SPDX-License-Identifier: MIT
#include "stats/proportion/clopper_pearson_interval.h"

#include <boost/math/special_functions/beta.hpp>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/require.h"

namespace stats {

Interval clopperPearsonInterval(int successes, int trials, double level) {
    requireCounts("clopperPearsonInterval", successes, trials);
    requireLevel("clopperPearsonInterval", level);
    const double x = successes, failures = trials - successes, tail = (1 - level) / 2;
    return {.low = successes == 0 ? 0.0 : boost::math::ibeta_inv(x, failures + 1, tail, BoostPolicy{}),
            .high = successes == trials ? 1.0 : boost::math::ibetac_inv(x + 1, failures, tail, BoostPolicy{})};
}

}  // namespace stats
