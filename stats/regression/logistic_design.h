// SPDX-License-Identifier: MIT
// The rows of a logistic regression made ready for the search: covariates centred and scaled, so that the same steps
// and bounds do for pH and for microsiemens. For the fits of this folder only.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "stats/numeric/newton_maximum.h"
#include "stats/regression/binomial_rows.h"

namespace stats {

class LogisticDesign {
  public:
    /// Rows without trials are left out.
    explicit LogisticDesign(std::span<const BinomialRow> rows);

    /// Why no fit of any kind can exist: NoTrials, Collinear or None.
    [[nodiscard]] FitProblem problem() const { return problem_; }
    [[nodiscard]] std::optional<std::size_t> collinearCovariate() const { return collinearCovariate_; }
    [[nodiscard]] bool isAllOrNone() const;
    /// Some row of nothing but successes, or failures, has next to no others expected: where separated rows end up.
    [[nodiscard]] bool isBeyondDoubt(const std::vector<double>& scaled) const;
    [[nodiscard]] std::size_t coefficients() const { return centre_.size(); }

    /// The log likelihood at coefficients of the scaled covariates.
    [[nodiscard]] LocalQuadratic logLikelihood(const std::vector<double>& scaled) const;
    /// The same with Firth's penalty, half the log determinant of the information. Its curvature is exact.
    [[nodiscard]] LocalQuadratic penalised(const std::vector<double>& scaled) const;
    /// Half the log determinant of the information of the covariates as given, less that of the scaled ones.
    [[nodiscard]] double penaltyOfScale() const;
    /// Intercept at the overall odds, pulled a little towards even ones; the rest 0.
    [[nodiscard]] std::vector<double> start() const;

    [[nodiscard]] double centre(std::size_t coefficient) const { return centre_[coefficient]; }
    [[nodiscard]] double scale(std::size_t coefficient) const { return scale_[coefficient]; }
    /// Everything that is reported of a fit at these coefficients; NotConverged where they are no answer.
    [[nodiscard]] LogisticFit report(const NewtonMaximum& maximum) const;

  private:
    struct Row {
        double successes{}, trials{};
        std::vector<double> x;  // 1 first, then scaled covariates
    };
    void scaleCovariates();
    void findCollinear();
    void addPearson(const std::vector<double>& scaled, LogisticFit& fit) const;

    std::vector<Row> rows_;
    std::vector<double> centre_{0.0}, scale_{1.0};  // of the intercept: 0 and 1
    FitProblem problem_{FitProblem::NoTrials};
    std::optional<std::size_t> collinearCovariate_;
};

}  // namespace stats
