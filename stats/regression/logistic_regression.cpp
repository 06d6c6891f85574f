// SPDX-License-Identifier: MIT
#include "stats/regression/logistic_regression.h"

#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/regression/logistic_design.h"

namespace stats {

LogisticFit logisticRegression(std::span<const BinomialRow> rows) {
    requireRows("logisticRegression", rows);
    const LogisticDesign design(rows);
    LogisticFit none;
    none.problem = design.problem();
    none.collinearCovariate = design.collinearCovariate();
    if (none.problem != FitProblem::None) return none;
    none.problem = FitProblem::AllOrNone;
    if (design.isAllOrNone()) return none;
    const NewtonMaximum maximum = newtonMaximum(
        [&design](const std::vector<double>& scaled) { return design.logLikelihood(scaled); }, design.start());
    LogisticFit fit = design.report(maximum);
    // The log likelihood is concave and strictly so in every direction, so only a maximum at infinity is never reached,
    // unless rounding is in the way.
    if (!fit.exists && design.isBeyondDoubt(maximum.x)) fit.problem = FitProblem::Separated;
    return fit;
}

std::vector<Coefficient> waldCoefficients(const LogisticFit& fit, double level, double dispersion) {
    requireLevel("waldCoefficients", level);
    if (!(dispersion >= 1 && std::isfinite(dispersion))) {
        throwDomainError("waldCoefficients", "dispersion", dispersion, "1 or more");
    }
    const bool isSpread = dispersion > 1;
    if (isSpread && fit.exists && fit.degreesOfFreedom < 1) {
        throwDomainError("waldCoefficients", "degreesOfFreedom", fit.degreesOfFreedom, "1 or more with a dispersion");
    }
    std::vector<Coefficient> result;
    for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
        const double quantile =
            isSpread ? studentQuantileOfLevel(level, fit.degreesOfFreedom) : normalQuantileOfLevel(level);
        const double estimate = fit.coefficients[i], error = std::sqrt(dispersion * fit.covariance.at(i, i));
        const double z = estimate / error;
        result.push_back({.estimate = estimate,
                          .standardError = error,
                          .limits = Interval{.low = estimate - quantile * error, .high = estimate + quantile * error},
                          .chiSquare = z * z,
                          .p = isSpread ? studentTwoSidedTail(z, fit.degreesOfFreedom) : chiSquareTail(z * z, 1)});
    }
    return result;
}

}  // namespace stats
