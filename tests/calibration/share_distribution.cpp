// SPDX-License-Identifier: MIT
#include "tests/calibration/share_distribution.h"

#include <cmath>

namespace calibration {
namespace {

struct Moments {
    double mean{}, variance{};
};

double logistic(double x) {
    return 1 / (1 + stats::portableExp(-x));
}

// By the trapezoidal rule, which for a normal weight is right to far more digits than a simulation can see.
Moments momentsOfLogitNormal(double middle, double width) {
    constexpr double reach = 6, step = 0.5;
    double weights = 0, sum = 0, squares = 0;
    for (double z = -reach; z <= reach; z += step) {
        const double weight = stats::portableExp(-z * z / 2), share = logistic(middle + width * z);
        weights += weight;
        sum += weight * share;
        squares += weight * share * share;
    }
    const double mean = sum / weights;
    return {.mean = mean, .variance = squares / weights - mean * mean};
}

double middleFor(double rate, double width) {
    double low = -40, high = 40;
    for (int halving = 0; halving < 24; ++halving) {
        const double middle = (low + high) / 2;
        (momentsOfLogitNormal(middle, width).mean < rate ? low : high) = middle;
    }
    return (low + high) / 2;
}

double widthFor(double rate, double variance) {
    double low = 0, high = 6;
    for (int halving = 0; halving < 18; ++halving) {
        const double width = (low + high) / 2;
        (momentsOfLogitNormal(middleFor(rate, width), width).variance < variance ? low : high) = width;
    }
    return (low + high) / 2;
}

}  // namespace

ShareDistribution::ShareDistribution(double rate, double correlation, Spread spread)
    : rate_(rate), correlation_(correlation), spread_(spread) {
    if (correlation == 0 || spread == Spread::Beta) return;
    width_ = widthFor(rate, correlation * rate * (1 - rate));
    middle_ = middleFor(rate, width_);
}

double ShareDistribution::draw(stats::SeededRandom& random) const {
    if (correlation_ == 0) return rate_;
    if (spread_ == Spread::LogitNormal) return logistic(random.normal(middle_, width_));
    const double total = 1 / correlation_ - 1;
    return random.beta(rate_ * total, (1 - rate_) * total);
}

}  // namespace calibration
