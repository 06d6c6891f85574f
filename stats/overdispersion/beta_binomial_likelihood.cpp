// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial_likelihood.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/log_factorial.h"
#include "stats/numeric/newton.h"

namespace stats {
namespace {

// From how many trays have exactly k to how many have more than j.
void accumulateFromAbove(std::vector<double>& counts) {
    for (std::size_t j = counts.size(); j-- > 1;) counts[j - 1] += counts[j];
}

}  // namespace

BetaBinomialLikelihood::BetaBinomialLikelihood(std::span<const Tray> trays) {
    int largest = 0;
    for (const Tray& tray : trays) largest = std::max(largest, tray.trials);
    const auto size = static_cast<std::size_t>(largest);
    successesAbove_.assign(size, 0);
    failuresAbove_.assign(size, 0);
    trialsAbove_.assign(size, 0);
    for (const Tray& tray : trays) {
        const int failures = tray.trials - tray.successes;
        if (tray.successes > 0) ++successesAbove_[static_cast<std::size_t>(tray.successes) - 1];
        if (failures > 0) ++failuresAbove_[static_cast<std::size_t>(failures) - 1];
        ++trialsAbove_[static_cast<std::size_t>(tray.trials) - 1];
        ++trayCount_;
        trials_ += tray.trials;
        successes_ += tray.successes;
        mixedTrays_ += tray.successes > 0 && failures > 0 ? 1 : 0;
        allSuccessTrays_ += failures == 0 ? 1 : 0;
        logCoefficients_ += logChoose(tray.trials, tray.successes);
    }
    accumulateFromAbove(successesAbove_);
    accumulateFromAbove(failuresAbove_);
    accumulateFromAbove(trialsAbove_);
}

double BetaBinomialLikelihood::logLikelihood(double mean, double correlation) const {
    const double rest = 1 - correlation;
    double sum = logCoefficients_ + successesAbove_[0] * std::log(mean) + failuresAbove_[0] * std::log1p(-mean);
    if (mixedTrays_ > 0) sum += mixedTrays_ * std::log1p(-correlation);
    for (std::size_t j = 1; j < trialsAbove_.size(); ++j) {
        const double shared = static_cast<double>(j) * correlation;
        if (successesAbove_[j] > 0) sum += successesAbove_[j] * std::log(mean * rest + shared);
        if (failuresAbove_[j] > 0) sum += failuresAbove_[j] * std::log((1 - mean) * rest + shared);
        sum -= trialsAbove_[j] * std::log(rest + shared);
    }
    return sum;
}

LikelihoodDerivatives BetaBinomialLikelihood::derivatives(double mean, double correlation) const {
    const double rest = 1 - correlation, other = 1 - mean;
    LikelihoodDerivatives d;
    d.m = successesAbove_[0] / mean - failuresAbove_[0] / other;
    d.mm = -successesAbove_[0] / (mean * mean) - failuresAbove_[0] / (other * other);
    if (mixedTrays_ > 0) {
        d.r = -mixedTrays_ / rest;
        d.rr = -mixedTrays_ / (rest * rest);
    }
    for (std::size_t j = 1; j < trialsAbove_.size(); ++j) {
        const double s = successesAbove_[j], f = failuresAbove_[j], t = trialsAbove_[j], index = static_cast<double>(j);
        const double u = mean * rest + index * correlation, uR = (index - mean) / u, uM = rest / u;
        const double v = other * rest + index * correlation, vR = (index - other) / v, vM = -rest / v;
        const double wR = (index - 1) / (rest + index * correlation);
        d.m += s * uM + f * vM;
        d.r += s * uR + f * vR - t * wR;
        d.mm -= s * uM * uM + f * vM * vM;
        d.rr -= s * uR * uR + f * vR * vR - t * wR * wR;
        d.mr += s * (-1 / u - uM * uR) + f * (1 / v - vM * vR);
    }
    return d;
}

double BetaBinomialLikelihood::bestMean(double correlation) const {
    const double rest = 1 - correlation;
    // derivatives() without what concerns the correlation, since this is called most.
    const auto slope = [this, correlation, rest](double mean) {
        const double other = 1 - mean;
        ValueAndSlope at{.value = successesAbove_[0] / mean - failuresAbove_[0] / other,
                         .slope = -successesAbove_[0] / (mean * mean) - failuresAbove_[0] / (other * other)};
        for (std::size_t j = 1; j < trialsAbove_.size(); ++j) {
            const double shared = static_cast<double>(j) * correlation;
            const double u = rest / (mean * rest + shared), v = rest / (other * rest + shared);
            at.value += successesAbove_[j] * u - failuresAbove_[j] * v;
            at.slope -= successesAbove_[j] * u * u + failuresAbove_[j] * v * v;
        }
        return at;
    };
    return newtonRootOfFalling(slope, 0.0, 1.0, successes_ / trials_).x;
}

}  // namespace stats
