// SPDX-License-Identifier: MIT
// How the odds of striking go with several conditions at once, by maximum likelihood. With few records, or where a
// condition always went with success, use firth_logistic.h, which always answers.
#pragma once

#include <span>
#include <vector>

#include "stats/regression/binomial_rows.h"

namespace stats {

/// The maximum-likelihood fit of log odds = b0 + b1 x1 + b2 x2 + ...
///
/// Newton's method with the exact Hessian; the log likelihood is concave, so what it finds is the maximum.
///
/// Domain    as requireRows() says. Rows without trials are left out; none at all is allowed.
/// Returns   exists = false and the reason where no finite coefficients are most likely; never large numbers that stand
///           for infinite ones.
/// Assumes   independent trials, log odds linear in the covariates. Records are not an experiment: what went with
///           success need not have caused it.
/// Accuracy  1e-8 relative.
/// Source    Cox (1958), J. R. Stat. Soc. B 20, 215-242; when it exists: Albert and Anderson (1984), Biometrika 71,
///           1-10.
[[nodiscard]] LogisticFit logisticRegression(std::span<const BinomialRow> rows);

/// Each coefficient with its interval estimate +- z s.e. and Wald's test; empty where the fit doesn't exist.
///
/// With `dispersion` above 1 standard errors grow by its root, and Student's distribution on the fit's residual degrees
/// of freedom (which must then be above 0) takes the place of the normal one.
///
/// Domain    0 < level < 1, dispersion finite and at least 1; else std::domain_error.
[[nodiscard]] std::vector<Coefficient> waldCoefficients(const LogisticFit& fit, double level, double dispersion = 1);

}  // namespace stats
