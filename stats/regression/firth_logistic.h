// SPDX-License-Identifier: MIT
// How the odds of striking go with several conditions at once, by Firth's penalised likelihood: it answers where
// ordinary logistic regression runs off to infinity, and is less biased in small records.
#pragma once

#include <span>
#include <vector>

#include "stats/regression/binomial_rows.h"

namespace stats {

struct FirthLogistic {
    LogisticFit fit;
    double penalisedLogLikelihood{};        // of the covariates as given, binomial coefficients left out
    std::vector<Coefficient> coefficients;  // intercept first; limits and tests from the profile
};

/// The fit that maximises the log likelihood plus half the log determinant of Fisher's information.
///
/// The penalty is Jeffreys' prior. Limits of a coefficient are where the penalised likelihood, maximised over all
/// others and followed outwards from its top, has first fallen by half the chi-square quantile; the test is twice the
/// fall at 0 (Heinze and Schemper). Where records are separated, the others can have several maxima: at a limit and at 0
/// a higher one is looked for from the top, and followed further if there is one. With hardly more rows than
/// coefficients the profile can rise again farther out.
/// Standard errors come from the information at the top and say little when the profile is skew: show the limits.
///
/// The first `nuisance` covariates are only allowed for: where there are any, they and the intercept have limits and
/// tests by their standard errors, which takes no search.
///
/// Domain    as requireRows() says; 0 < level < 1; nuisance at most the number of covariates; else std::domain_error. Rows without trials are left out.
/// Returns   exists = false only with NoTrials or Collinear, or where the search fails (NotConverged). All or none
///           succeeded, and separated rows, are ordinary cases with finite coefficients. Limits and tests are absent
///           where the profile can't be followed to their end: rows of thousands beside rows of one.
/// Assumes   independent trials, log odds linear in the covariates. Records are not an experiment: what went with
///           success need not have caused it.
/// Accuracy  coefficients 1e-8, limits 1e-7 relative. Gradient and Hessian are exact, the penalty's included.
/// Source    Firth (1993), Biometrika 80, 27-38; Heinze and Schemper (2002), Stat. Med. 21, 2409-2419; that it is
///           always finite: Kosmidis and Firth (2021), Biometrika 108, 71-82.
[[nodiscard]] FirthLogistic firthLogistic(std::span<const BinomialRow> rows, double level, std::size_t nuisance = 0);

/// The coefficients and their covariance alone, without profiles.
[[nodiscard]] LogisticFit firthFit(std::span<const BinomialRow> rows);

}  // namespace stats
