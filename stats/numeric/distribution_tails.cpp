// SPDX-License-Identifier: MIT
#include "stats/numeric/distribution_tails.h"

#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

using Student = boost::math::students_t_distribution<double, BoostPolicy>;

}  // namespace

double chiSquareTail(double x, int degreesOfFreedom) {
    if (degreesOfFreedom < 1) throwDomainError("chiSquareTail", "degreesOfFreedom", degreesOfFreedom, "1 or more");
    if (!(x >= 0)) throwDomainError("chiSquareTail", "x", x, "0 or more");
    if (std::isinf(x)) return 0;
    // One degree is the common case, and erfc is quicker.
    if (degreesOfFreedom == 1) return std::erfc(std::sqrt(x / 2));
    return boost::math::gamma_q(degreesOfFreedom / 2.0, x / 2, BoostPolicy());
}

double studentTwoSidedTail(double t, double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0))
        throwDomainError("studentTwoSidedTail", "degreesOfFreedom", degreesOfFreedom, "above 0");
    if (std::isnan(t)) throwDomainError("studentTwoSidedTail", "t", t, "a number");
    if (std::isinf(t)) return 0;
    return 2 * boost::math::cdf(Student(degreesOfFreedom), -std::abs(t));
}

double studentQuantileOfLevel(double level, double degreesOfFreedom) {
    requireLevel("studentQuantileOfLevel", level);
    if (!(degreesOfFreedom > 0))
        throwDomainError("studentQuantileOfLevel", "degreesOfFreedom", degreesOfFreedom, "above 0");
    return boost::math::quantile(boost::math::complement(Student(degreesOfFreedom), (1 - level) / 2));
}

double studentQuantile(double probability, double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0)) throwDomainError("studentQuantile", "degreesOfFreedom", degreesOfFreedom, "above 0");
    if (!(probability > 0 && probability < 1)) {
        throwDomainError("studentQuantile", "probability", probability, "between 0 and 1");
    }
    return boost::math::quantile(Student(degreesOfFreedom), probability);
}

double varianceRatioTail(double f, int above, int below) {
    if (above < 1) throwDomainError("varianceRatioTail", "above", above, "1 or more");
    if (below < 1) throwDomainError("varianceRatioTail", "below", below, "1 or more");
    if (!(f >= 0)) throwDomainError("varianceRatioTail", "f", f, "0 or more");
    // Of two forms the one whose argument is not near 1, so that neither tail loses digits.
    const double part = above * f / below;
    if (std::isinf(part)) return 0;
    return part > 1 ? boost::math::ibeta(below / 2.0, above / 2.0, 1 / (1 + part), BoostPolicy())
                    : boost::math::ibetac(above / 2.0, below / 2.0, part / (1 + part), BoostPolicy());
}

}  // namespace stats
