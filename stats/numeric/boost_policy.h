// SPDX-License-Identifier: MIT
// The one policy with which Boost.Math is called here. Only for source files of this library: no public header shows
// Boost.
#pragma once

#include <boost/math/policies/policy.hpp>

namespace stats {

// Working in double, not in long double: beta quantiles come ten times as fast and stay within 3e-14 of the default's.
using BoostPolicy = boost::math::policies::policy<boost::math::policies::promote_double<false>,
                                                  boost::math::policies::promote_float<false>>;

}  // namespace stats
