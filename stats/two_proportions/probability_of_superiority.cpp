// SPDX-License-Identifier: MIT
#include "stats/two_proportions/probability_of_superiority.h"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <numbers>

#include "stats/numeric/boost_policy.h"

namespace stats {
namespace {

struct BetaArm {
    double successes{};
    double failures{};

    // Density of asin(sqrt(p)) up to a factor, 1 at its mode.
    [[nodiscard]] double density(double angle) const {
        const double peak = std::atan2(std::sqrt(successes), std::sqrt(failures));
        double logarithm = 0;
        if (successes > 0) logarithm += 2 * successes * std::log(std::sin(angle) / std::sin(peak));
        if (failures > 0) logarithm += 2 * failures * std::log(std::cos(angle) / std::cos(peak));
        return std::exp(logarithm);
    }
    [[nodiscard]] double below(double p) const {
        return boost::math::ibeta(successes + 0.5, failures + 0.5, p, BoostPolicy{});
    }
};

// P(rate of `sharp` > rate of `blunt`), integrating over the one that is known better, so that what is averaged is the
// smoother.
double sharpAboveBlunt(const BetaArm& sharp, const BetaArm& blunt) {
    const double sd = 0.5 / std::sqrt(sharp.successes + sharp.failures + 1);
    const double middle = std::atan2(std::sqrt(sharp.successes + 0.5), std::sqrt(sharp.failures + 0.5));
    const double low = std::max(0.0, middle - 12 * sd);
    const double high = std::min(std::numbers::pi / 2, middle + 12 * sd);
    constexpr int panels = 12;
    double mass = 0, moment = 0;
    for (int panel = 0; panel < panels; ++panel) {
        const double from = low + (high - low) * panel / panels;
        const double to = low + (high - low) * (panel + 1) / panels;
        const auto weigh = [&](double angle) { return sharp.density(angle); };
        const auto weighShare = [&](double angle) {
            const double sine = std::sin(angle);
            return sharp.density(angle) * blunt.below(std::min(1.0, sine * sine));
        };
        mass += boost::math::quadrature::gauss<double, 20>::integrate(weigh, from, to);
        moment += boost::math::quadrature::gauss<double, 20>::integrate(weighShare, from, to);
    }
    return moment / mass;
}

}  // namespace

double probabilityOfSuperiority(const TwoCounts& counts) {
    requireTwoCounts("probabilityOfSuperiority", counts);
    const BetaArm first{static_cast<double>(counts.successes1),
                        static_cast<double>(counts.trials1 - counts.successes1)};
    const BetaArm second{static_cast<double>(counts.successes2),
                         static_cast<double>(counts.trials2 - counts.successes2)};
    return counts.trials1 >= counts.trials2 ? sharpAboveBlunt(first, second) : 1 - sharpAboveBlunt(second, first);
}

}  // namespace stats
