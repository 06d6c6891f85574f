// SPDX-License-Identifier: MIT
// Newton's method kept on a lead: for a function that only falls, with its slope at hand. Without a slope see
// bracketed_root.h.
#pragma once

#include <functional>

namespace stats {

struct ValueAndSlope {
    double value{};
    double slope{};
};

struct NewtonRoot {
    double x{};
    int iterations{};
    bool converged{};
};

/// The root of a strictly falling function between `low` and `high`, from `start`.
///
/// A step that would leave the interval still in question is replaced by halving it, so it cannot run away. The
/// function is never asked for its value at `low` or `high`, where it may be infinite.
///
/// Domain    low < start < high, else std::domain_error.
/// Returns   x within 4e-16 relative of where the sign changes; converged = false after 200 steps. Where the function
///           has one sign all the way, x goes to that end.
[[nodiscard]] NewtonRoot newtonRootOfFalling(const std::function<ValueAndSlope(double)>& function, double low,
                                             double high, double start);

}  // namespace stats
