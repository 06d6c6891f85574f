// SPDX-License-Identifier: MIT
#include "stats/numeric/bernstein_maximum.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "stats/numeric/require.h"

namespace stats {
namespace {

double bernsteinSumAtAngle(std::span<const double> coefficients, double angle) {
    const double root = std::sin(angle);
    return bernsteinSum(coefficients, root * root);
}

// Golden section; the hill is smooth, so an angle good to 1e-7 of its width is a height good to 1e-14.
double hilltop(std::span<const double> coefficients, double low, double high) {
    constexpr double ratio = 0.6180339887498949;
    double left = high - ratio * (high - low);
    double right = low + ratio * (high - low);
    double leftHeight = bernsteinSumAtAngle(coefficients, left);
    double rightHeight = bernsteinSumAtAngle(coefficients, right);
    for (int step = 0; step < 32; ++step) {
        if (leftHeight > rightHeight) {
            high = right;
            right = left;
            rightHeight = leftHeight;
            left = high - ratio * (high - low);
            leftHeight = bernsteinSumAtAngle(coefficients, left);
        } else {
            low = left;
            left = right;
            leftHeight = rightHeight;
            right = low + ratio * (high - low);
            rightHeight = bernsteinSumAtAngle(coefficients, right);
        }
    }
    return std::max(leftHeight, rightHeight);
}

}  // namespace

double bernsteinSum(std::span<const double> coefficients, double p) {
    if (coefficients.empty()) throwDomainError("bernsteinSum", "number of coefficients", 0, "1 or more");
    if (!(p >= 0 && p <= 1)) throwDomainError("bernsteinSum", "p", p, "from 0 to 1");
    const std::size_t degree = coefficients.size() - 1;
    if (p == 0 || degree == 0) return coefficients.front();
    if (p == 1) return coefficients.back();
    const double odds = p / (1 - p);
    const double n = static_cast<double>(degree);
    const std::size_t mode = std::min(degree, static_cast<std::size_t>((n + 1) * p));
    constexpr double negligible = 1e-18;
    double weight = 1, sum = 1, value = coefficients[mode];
    for (std::size_t k = mode; k < degree && weight > negligible; ++k) {
        weight *= (n - static_cast<double>(k)) / (static_cast<double>(k) + 1) * odds;
        sum += weight;
        value += weight * coefficients[k + 1];
    }
    weight = 1;
    for (std::size_t k = mode; k > 0 && weight > negligible; --k) {
        weight *= static_cast<double>(k) / ((n - static_cast<double>(k) + 1) * odds);
        sum += weight;
        value += weight * coefficients[k - 1];
    }
    return value / sum;
}

double bernsteinMaximum(std::span<const double> coefficients) {
    if (coefficients.empty()) throwDomainError("bernsteinMaximum", "number of coefficients", 0, "1 or more");
    const double degree = static_cast<double>(coefficients.size() - 1);
    const auto steps = static_cast<std::size_t>(std::ceil(8 * std::numbers::pi * std::sqrt(degree + 1)));
    const double width = std::numbers::pi / 2 / static_cast<double>(steps);
    std::vector<double> heights(steps + 1);
    for (std::size_t i = 0; i <= steps; ++i)
        heights[i] = bernsteinSumAtAngle(
            coefficients, std::min(1.0, static_cast<double>(i) / static_cast<double>(steps)) * (std::numbers::pi / 2));
    heights.front() = coefficients.front();
    heights.back() = coefficients.back();
    double best = *std::max_element(heights.begin(), heights.end());
    for (std::size_t i = 1; i < steps; ++i) {
        const double before = heights[i - 1], here = heights[i], after = heights[i + 1];
        if (here < before || here < after || (here == before && here == after)) continue;
        // A smooth hilltop exceeds the highest of three points by an eighth of their second difference; ten times that
        // is safe.
        if (here + 1.25 * (2 * here - before - after) < best) continue;
        best = std::max(best,
                        hilltop(coefficients, static_cast<double>(i - 1) * width, static_cast<double>(i + 1) * width));
    }
    return best;
}

}  // namespace stats
