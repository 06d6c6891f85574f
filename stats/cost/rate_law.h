// SPDX-License-Identifier: MIT
// The law of one rate, from the points of ratePosterior(): for cost/ only.
#pragma once

#include <string_view>
#include <vector>

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

  private:
    std::vector<Point> points_;
    std::vector<double> angles_;
    std::vector<double> below_;  // P(rate < the point's)
};

}  // namespace stats
