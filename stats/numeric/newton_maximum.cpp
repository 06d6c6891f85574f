// SPDX-License-Identifier: MIT
#include "stats/numeric/newton_maximum.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "stats/numeric/cholesky.h"

namespace stats {
namespace {

struct UphillStep {
    std::vector<double> step;  // empty when no ridge helps, as with a curvature that isn't finite
    bool isWhole{};            // no ridge was needed
};

UphillStep uphillStep(const LocalQuadratic& here) {
    constexpr double mostRidge = 1e12;
    const Cholesky exact(here.curvature);
    if (exact.isPositiveDefinite()) return {exact.solve(here.gradient), true};
    for (double ridge = 0; ridge <= mostRidge; ridge = ridge == 0 ? 1e-6 : 10 * ridge) {
        SquareMatrix curvature = here.standIn.size > 0 ? here.standIn : here.curvature;
        for (std::size_t i = 0; i < curvature.size; ++i) {
            curvature.at(i, i) += ridge * (std::abs(curvature.at(i, i)) + 1e-300);
        }
        const Cholesky decomposed(curvature);
        if (decomposed.isPositiveDefinite())
            return {decomposed.solve(here.gradient), ridge == 0 && here.standIn.size > 0};
    }
    return {};
}

double relativeSize(const std::vector<double>& step, const std::vector<double>& x) {
    double size = 0;
    for (std::size_t i = 0; i < x.size(); ++i) size = std::max(size, std::abs(step[i]) / (1 + std::abs(x[i])));
    return size;
}

// What Newton's step promises.
double gain(const std::vector<double>& step, const LocalQuadratic& here) {
    double sum = 0;
    for (std::size_t i = 0; i < step.size(); ++i) sum += step[i] * here.gradient[i] / 2;
    return sum;
}

// As far along the step as the function does not fall; halving stops where nothing is left of the step.
void climb(const std::function<LocalQuadratic(const std::vector<double>&)>& function, const std::vector<double>& step,
           double share, NewtonMaximum& at) {
    // What rounding alone may take away; without it the last steps would be halved for ever.
    const double noise = 1e-13 * (1 + std::abs(at.there.value));
    for (int halving = 0; halving < 60; ++halving, share /= 2) {
        std::vector<double> next = at.x;
        for (std::size_t i = 0; i < next.size(); ++i) next[i] += share * step[i];
        LocalQuadratic there = function(next);
        if (!(there.value >= at.there.value - noise)) continue;
        at.x = std::move(next);
        at.there = std::move(there);
        return;
    }
}

}  // namespace

NewtonMaximum newtonMaximum(const std::function<LocalQuadratic(const std::vector<double>&)>& function,
                            std::vector<double> start, int mostIterations) {
    constexpr double near = 1e-9, nearEnough = 1e-5, far = 5;
    NewtonMaximum result{.x = std::move(start), .there = {}};
    result.there = function(result.x);
    if (!std::isfinite(result.there.value)) return result;
    while (result.iterations < mostIterations && !result.converged) {
        const UphillStep uphill = uphillStep(result.there);
        if (uphill.step.size() != result.x.size()) return result;
        ++result.iterations;
        result.lastStep = relativeSize(uphill.step, result.x);
        const bool isFlat = gain(uphill.step, result.there) < 1e-16 * (1 + std::abs(result.there.value));
        if (!std::isfinite(result.lastStep)) return result;
        climb(function, uphill.step, result.lastStep > far ? far / result.lastStep : 1, result);
        // A step that a ridge has shortened may be small far from any maximum.
        result.converged = uphill.isWhole && (result.lastStep < near || (result.lastStep < nearEnough && isFlat));
    }
    return result;
}

}  // namespace stats
