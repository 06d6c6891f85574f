// SPDX-License-Identifier: MIT
// Newton's method, kept on a lead, for the largest value of a smooth function of a few variables whose gradient and
// Hessian are known. For a root of one variable see newton.h.
#pragma once

#include <functional>
#include <vector>

#include "stats/numeric/square_matrix.h"

namespace stats {

struct LocalQuadratic {
    double value{};  // minus infinity where the function has none
    std::vector<double> gradient;
    SquareMatrix curvature;  // minus the Hessian
    SquareMatrix standIn{};  // for the curvature where that is not positive definite; empty where there is none
};

struct NewtonMaximum {
    std::vector<double> x;
    LocalQuadratic there;
    int iterations{};
    double lastStep{};  // the largest |step| / (1 + |x|) of the last iteration
    bool converged{};
};

/// A local maximum uphill from `start`.
///
/// Where the curvature is not positive definite the stand-in is taken, and where that is not either its diagonal is
/// raised until it is; a step beyond five times 1 + |x| is
/// cut to that, and one that would lose height is halved until it does not. A function that rises for ever towards
/// infinity keeps its steps long, so it ends at `mostIterations` without having converged.
///
/// Returns   converged once Newton's own step is below 1e-9 of 1 + |x| in each coordinate, or below 1e-5 where what it
///           promises is lost in the value's rounding, as with nearly collinear variables. The value never falls below
///           that at `start`. A start of value minus infinity: not converged.
/// Source    Nocedal and Wright (2006), Numerical Optimization, 2nd ed., sections 3.3 and 3.4.
[[nodiscard]] NewtonMaximum newtonMaximum(const std::function<LocalQuadratic(const std::vector<double>&)>& function,
                                          std::vector<double> start, int mostIterations = 100);

}  // namespace stats
