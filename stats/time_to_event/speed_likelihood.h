// SPDX-License-Identifier: MIT
// What one row contributes to the log likelihood of a smooth curve, with its derivatives. Only for speed_model.cpp and
// its test. Everything is computed on the log scale, so that a row far out in a tail is improbable and not impossible.
#pragma once

#include <cmath>
#include <numbers>

#include "stats/numeric/jet.h"
#include "stats/time_to_event/observation.h"
#include "stats/time_to_event/speed_shape.h"

namespace stats {

/// log P(W <= z).
template <std::size_t N>
Jet<N> logShareBy(SpeedShape shape, const Jet<N>& z) {
    if (shape == SpeedShape::LogNormal) return logNormalCdf(z);
    if (shape == SpeedShape::LogLogistic) return -log1pExp(-z);
    return log1mExp(exp(z));
}

/// log P(W > z).
template <std::size_t N>
Jet<N> logShareAfter(SpeedShape shape, const Jet<N>& z) {
    if (shape == SpeedShape::LogNormal) return logNormalCdf(-z);
    if (shape == SpeedShape::LogLogistic) return -log1pExp(z);
    return -exp(z);
}

/// log P(a < W <= b), a < b.
template <std::size_t N>
Jet<N> logShareBetween(SpeedShape shape, const Jet<N>& a, const Jet<N>& b) {
    if (shape == SpeedShape::LogLogistic) return -log1pExp(-b) - log1pExp(a) + log1mExp(b - a);
    if (shape == SpeedShape::Weibull) {
        const Jet<N> before = exp(a);
        return log1mExp(before * expm1(b - a)) - before;
    }
    // From the side on which both are small.
    if (a.value() > 0) return logShareBetween(shape, -b, -a);
    const Jet<N> upper = logNormalCdf(b);
    return upper + log1mExp(upper - logNormalCdf(a));
}

/// log of the density of W.
template <std::size_t N>
Jet<N> logDensity(SpeedShape shape, const Jet<N>& z) {
    if (shape == SpeedShape::LogNormal) return -0.5 * z * z - Jet<N>(std::log(2 * std::numbers::pi) / 2);
    if (shape == SpeedShape::LogLogistic) return z - 2 * log1pExp(z);
    return z - exp(z);
}

/// The parameters, with what all rows need of them.
template <std::size_t N>
struct SpeedJets {
    SpeedShape shape{};
    Jet<N> mu, logSigma, inverseSigma;
    SpeedJets(SpeedShape theShape, const Jet<N>& theMu, const Jet<N>& theLogSigma)
        : shape(theShape), mu(theMu), logSigma(theLogSigma), inverseSigma(exp(-theLogSigma)) {}
};

/// Of a row of cause 1 with by > 0, or of cause 0: log P(after < T <= by), the log density of T on an exact day, or log
/// P(T > after).
template <std::size_t N>
Jet<N> logProbability(const Observation& row, const SpeedJets<N>& at) {
    const auto standard = [&at](double day) { return (std::log(day) - at.mu) * at.inverseSigma; };
    if (row.cause == 0) return row.after > 0 ? logShareAfter(at.shape, standard(row.after)) : Jet<N>(0);
    if (row.after == row.by) return logDensity(at.shape, standard(row.by)) - at.logSigma - Jet<N>(std::log(row.by));
    if (row.after == 0) return logShareBy(at.shape, standard(row.by));
    return logShareBetween(at.shape, standard(row.after), standard(row.by));
}

/// The same where only a share pi roots: log(pi P) for cause 1, log(1 - pi + pi P) for cause 0.
template <std::size_t N>
Jet<N> logProbabilityWithCure(const Observation& row, const SpeedJets<N>& at, const Jet<N>& logitShare) {
    const Jet<N> log = logProbability(row, at);
    if (row.cause == 1) return log - log1pExp(-logitShare);
    return log1pExp(logitShare + log) - log1pExp(logitShare);
}

}  // namespace stats
