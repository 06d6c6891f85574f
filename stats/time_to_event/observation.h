// SPDX-License-Identifier: MIT
// What is known about when something happened: it was found at a check, so it came between two checks.
#pragma once

#include <limits>
#include <span>
#include <string_view>

namespace stats {

/// `weight` like units, of which the same is known.
///
/// cause 0: neither event had been seen by day `after`; `by` is infinite. (Still watched, or withdrawn: the same to the
/// estimate.) cause 1 or 2: that event happened in (after, by], after < by; or on the very day `by`, after = by.
struct Observation {
    double after{};
    double by{std::numeric_limits<double>::infinity()};
    int cause{};
    double weight{1.0};
};

/// std::domain_error that names the function and the observation unless 0 <= after <= by, `by` finite for causes 1 and
/// 2 and infinite for cause 0, and 0 <= weight < infinity.
void requireObservations(std::string_view function, std::span<const Observation> observations);

}  // namespace stats
