// SPDX-License-Identifier: MIT
#include "stats/numeric/newton.h"

#include <cmath>

#include "stats/numeric/require.h"

namespace stats {

NewtonRoot newtonRootOfFalling(const std::function<ValueAndSlope(double)>& function, double low, double high,
                               double start) {
    if (!(low < start && start < high)) throwDomainError("newtonRootOfFalling", "start", start, "between low and high");
    NewtonRoot root{.x = start, .iterations = 0, .converged = false};
    while (root.iterations < 200 && !root.converged) {
        ++root.iterations;
        const ValueAndSlope here = function(root.x);
        if (here.value == 0) {
            root.converged = true;
            break;
        }
        (here.value > 0 ? low : high) = root.x;
        double next = root.x - here.value / here.slope;
        if (!(next > low && next < high)) next = low + (high - low) / 2;
        root.converged = std::abs(next - root.x) <= 4e-16 * std::abs(next) || next == low || next == high;
        root.x = next;
    }
    return root;
}

}  // namespace stats
