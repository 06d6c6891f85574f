// SPDX-License-Identifier: MIT
// The law of a mean rate whatever the correlation, from the points of ratePosterior(): how likely it is below a bound, and between
// which limits it is.
#pragma once

#include <string_view>
#include <vector>

#include "stats/interval.h"
#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

class RateLaw {
  public:
    struct Point {
        double rate{};
        double weight{};
    };

    /// Throws std::domain_error that names `function` unless there are points, rates are above 0 and below 1, and weights are above 0 and
    /// sum to 1 within 1e-6.
    RateLaw(std::string_view function, const std::vector<RatePoint>& points);

    /// Rates rising, each once.
    [[nodiscard]] const std::vector<Point>& points() const { return points_; }
    /// P(rate < bound): half of a point's weight lies on either side of it, and a straight line over asin(sqrt(rate)) between two.
    [[nodiscard]] double below(double bound) const;
    /// The rate that lies above a share of the law; below() the other way round. 0 <= share <= 1.
    [[nodiscard]] double quantile(double share) const;
    /// Equal tails. 0 < level < 1, else std::domain_error.
    [[nodiscard]] Interval interval(double level) const;

  private:
    std::vector<Point> points_;
    std::vector<double> angles_;
    std::vector<double> below_;  // P(rate < the point's)
};

}  // namespace stats
