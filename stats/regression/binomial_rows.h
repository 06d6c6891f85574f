// SPDX-License-Identifier: MIT
// What the logistic regressions of this folder take and why a fit may not exist. One row is one tray, or one cutting,
// with what was true of it.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "stats/interval.h"
#include "stats/numeric/square_matrix.h"

namespace stats {

struct BinomialRow {
    int successes{};
    int trials{};
    std::vector<double> covariates;  // without the intercept, which each fit puts in front
};

enum class FitProblem {
    None,
    NoTrials,      // no row has any
    Collinear,     // a covariate is constant, or a combination of those before it
    AllOrNone,     // all succeeded, or none did
    Separated,     // some combination of covariates tells successes from failures without fault, so odds run off to
                   // infinity
    NotConverged,  // the search ended without an answer
};

/// A coefficient on the scale of log odds, a unit of its covariate; its exponential is an odds ratio.
struct Coefficient {
    double estimate{};
    double standardError{};
    std::optional<Interval> limits;
    std::optional<double> chiSquare;  // of the test that it is 0, on one degree of freedom
    std::optional<double> p;
};

struct LogisticFit {
    bool exists{};
    FitProblem problem{FitProblem::NoTrials};       // None where it exists
    std::optional<std::size_t> collinearCovariate;  // the first that is one, counted from 0
    std::vector<double> coefficients;               // intercept first; empty where the fit doesn't exist
    SquareMatrix covariance;                        // the inverse of Fisher's information there
    double logLikelihood{};                         // binomial coefficients left out, the penalty not in it
    std::optional<double> pearsonChiSquare;         // absent where a fitted rate is 0 or 1 to all digits but missed
    int degreesOfFreedom{};                         // rows with trials less coefficients, 0 at the least
    int iterations{};
    double lastStep{};
};

/// Domain    0 <= successes <= trials in each row, as many covariates in each, each finite and, where it is not 0, of a
///           size from 1e-100 to 1e100; else std::domain_error.
void requireRows(std::string_view function, std::span<const BinomialRow> rows);

}  // namespace stats
