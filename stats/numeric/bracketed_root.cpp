// SPDX-License-Identifier: MIT
#include "stats/numeric/bracketed_root.h"

#include <cmath>
#include <limits>
#include <utility>

#include "stats/numeric/require.h"

namespace stats {
namespace {

struct RootPoint {
    double x;
    double value;
};

// Inverse quadratic interpolation through three points, the secant where two of them coincide; `reach` is the step from
// best.
double interpolatedStep(const RootPoint& best, const RootPoint& older, const RootPoint& opposite, double half) {
    const double s = best.value / older.value;
    double p{}, q{};
    if (older.x == opposite.x) {
        p = 2 * half * s;
        q = 1 - s;
    } else {
        const double t = older.value / opposite.value;
        const double r = best.value / opposite.value;
        p = s * (2 * half * t * (t - r) - (best.x - older.x) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
    }
    return p / -q;
}

}  // namespace

double bracketedRoot(const std::function<double(double)>& function, double low, double high, double tolerance) {
    RootPoint older{low, function(low)};
    RootPoint best{high, function(high)};
    if (older.value * best.value > 0 || std::isnan(older.value) || std::isnan(best.value))
        throwDomainError("bracketedRoot", "function(low)", older.value, "of the other sign than function(high)");
    RootPoint opposite = older;
    double step = best.x - older.x;
    double stepBefore = step;
    for (int iteration = 0; iteration < 200; ++iteration) {
        if ((best.value > 0) == (opposite.value > 0)) {
            opposite = older;
            step = stepBefore = best.x - older.x;
        }
        if (std::abs(opposite.value) < std::abs(best.value)) {
            older = best;
            std::swap(best, opposite);
        }
        const double near = 2 * std::numeric_limits<double>::epsilon() * std::abs(best.x) + tolerance / 2;
        const double half = (opposite.x - best.x) / 2;
        if (std::abs(half) <= near || best.value == 0) return best.x;
        const double interpolated = std::abs(stepBefore) >= near && std::abs(older.value) > std::abs(best.value)
                                        ? interpolatedStep(best, older, opposite, half)
                                        : half;
        // Interpolation may be used when it stays well inside the bracket and shrinks faster than halving would.
        const bool isSafe = interpolated / half > 0 && std::abs(interpolated) < 1.5 * std::abs(half) - near / 2 &&
                            std::abs(interpolated) < std::abs(stepBefore) / 2;
        stepBefore = isSafe ? step : half;
        step = isSafe ? interpolated : half;
        older = best;
        best.x += std::abs(step) > near ? step : std::copysign(near, half);
        best.value = function(best.x);
    }
    return best.x;
}

double lastPointWhere(const std::function<bool(double)>& holds, double inside, double outside) {
    for (int halving = 0; halving < 200; ++halving) {
        const double middle = inside + (outside - inside) / 2;
        if (middle == inside || middle == outside) break;
        (holds(middle) ? inside : outside) = middle;
    }
    return inside;
}

}  // namespace stats
