// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/log_factorial.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"

namespace stats {
namespace {

using Arms = std::vector<BetaBinomialLikelihood>;

// Both along the ridge on which each arm has its best mean. By the envelope theorem the slope needs no derivative of
// the means.
double profileLogLikelihood(const Arms& arms, double correlation) {
    double sum = 0;
    for (const auto& arm : arms) sum += arm.logLikelihood(arm.bestMean(correlation), correlation);
    return sum;
}

double profileSlope(const Arms& arms, double correlation) {
    double sum = 0;
    for (const auto& arm : arms) sum += arm.derivatives(arm.bestMean(correlation), correlation).r;
    return sum;
}

struct CorrelationMaximum {
    std::optional<double> correlation;
    bool converged{true};
    int iterations{};
};

// Arms that are not degenerate only. The profile need not have one hill only, so a grid (denser near 0) chooses which
// to climb.
CorrelationMaximum bestCorrelation(const Arms& arms) {
    const auto all = [&arms](auto claim) { return std::all_of(arms.begin(), arms.end(), claim); };
    if (all([](const auto& arm) { return !arm.hasTrayOfTwo(); })) return {};
    if (all([](const auto& arm) { return arm.isAllOrNothing(); })) return {.correlation = 1.0};
    constexpr int kPoints = 16;
    const auto gridPoint = [](int k) { return std::min(1 - 1e-9, std::pow(k / static_cast<double>(kPoints), 2)); };
    int best = 0;
    double largest = -std::numeric_limits<double>::infinity();
    CorrelationMaximum maximum;
    for (int k = 0; k <= kPoints; ++k) {
        ++maximum.iterations;
        const double value = profileLogLikelihood(arms, gridPoint(k));
        if (value > largest) {
            largest = value;
            best = k;
        }
    }
    const double low = gridPoint(std::max(0, best - 1)), high = gridPoint(std::min(kPoints, best + 1));
    const auto slope = [&arms, &maximum](double correlation) {
        ++maximum.iterations;
        return profileSlope(arms, correlation);
    };
    const double atLow = slope(low);
    if (atLow <= 0 || slope(high) >= 0) {
        // Falling from the start: the boundary. Otherwise the grid point stands, and we say that it is no more than
        // that.
        maximum.correlation = best == 0 || low == 0 ? 0.0 : gridPoint(best);
        maximum.converged = low == 0 && atLow <= 0;
        return maximum;
    }
    maximum.correlation = bracketedRoot(slope, low, high);
    return maximum;
}

double boundaryMean(const BetaBinomialLikelihood& arm, double correlation) {
    if (correlation == 1.0) return arm.allSuccessTrays() / arm.trays();
    return correlation == 0.0 ? arm.successes() / arm.trials() : arm.bestMean(correlation);
}

void setStandardErrors(BetaBinomialFit& fit, const BetaBinomialLikelihood& arm) {
    const double mean = *fit.mean;
    if (!fit.correlation || *fit.correlation == 0.0) {
        fit.standardErrorOfMean = std::sqrt(mean * (1 - mean) / arm.trials());
        return;
    }
    if (*fit.correlation == 1.0) {
        fit.standardErrorOfMean = std::sqrt(mean * (1 - mean) / arm.trays());
        return;
    }
    const LikelihoodDerivatives d = arm.derivatives(mean, *fit.correlation);
    const double determinant = d.mm * d.rr - d.mr * d.mr;
    if (!(determinant > 0 && d.rr < 0)) return;
    fit.standardErrorOfMean = std::sqrt(-d.rr / determinant);
    fit.standardErrorOfCorrelation = std::sqrt(-d.mm / determinant);
}

}  // namespace

BetaBinomialFit fitBetaBinomial(std::span<const Tray> trays) {
    requireTrays("fitBetaBinomial", trays);
    const std::vector<Tray> counted = traysWithTrials(trays);
    BetaBinomialFit fit;
    if (counted.empty()) return fit;
    const Arms arms{BetaBinomialLikelihood(counted)};
    const BetaBinomialLikelihood& arm = arms.front();
    if (arm.isDegenerate()) {
        fit.mean = arm.successes() / arm.trials();
        return fit;
    }
    const double rate = arm.successes() / arm.trials();
    fit.binomialLogLikelihood = arm.logLikelihood(rate, 0.0);
    const CorrelationMaximum maximum = bestCorrelation(arms);
    fit.correlation = maximum.correlation;
    fit.converged = maximum.converged;
    fit.iterations = maximum.iterations;
    const double correlation = maximum.correlation.value_or(0.0);
    fit.mean = boundaryMean(arm, correlation);
    fit.logLikelihood = arm.logLikelihood(*fit.mean, correlation);
    fit.isOnBoundary = !fit.correlation || correlation == 0.0 || correlation == 1.0;
    fit.likelihoodRatio = correlation == 0.0 ? 0.0 : std::max(0.0, 2 * (fit.logLikelihood - fit.binomialLogLikelihood));
    if (fit.likelihoodRatio > 0) {
        fit.pOnOneDegree = chiSquareTail(fit.likelihoodRatio, 1);
        fit.p = fit.pOnOneDegree / 2;
    }
    setStandardErrors(fit, arm);
    return fit;
}

CommonCorrelationFit fitCommonCorrelation(std::span<const std::vector<Tray>> arms) {
    CommonCorrelationFit fit;
    Arms telling;
    for (const auto& trays : arms) {
        requireTrays("fitCommonCorrelation", trays);
        const std::vector<Tray> counted = traysWithTrials(trays);
        fit.means.emplace_back();
        if (counted.empty()) continue;
        BetaBinomialLikelihood arm(counted);
        fit.means.back() = arm.successes() / arm.trials();
        if (!arm.isDegenerate()) telling.push_back(std::move(arm));
    }
    if (telling.empty()) return fit;
    const CorrelationMaximum maximum = bestCorrelation(telling);
    fit.correlation = maximum.correlation;
    fit.converged = maximum.converged;
    fit.iterations = maximum.iterations;
    const double correlation = maximum.correlation.value_or(0.0);
    auto next = telling.begin();
    for (auto& mean : fit.means) {
        if (!mean || *mean == 0 || *mean == 1) continue;
        mean = boundaryMean(*next, correlation);
        fit.logLikelihood += next->logLikelihood(*mean, correlation);
        ++next;
    }
    return fit;
}

BetaBinomialComparison compareBetaBinomial(std::span<const std::vector<Tray>> arms) {
    BetaBinomialComparison comparison;
    comparison.ownMeans = fitCommonCorrelation(arms);
    std::vector<Tray> pooled;
    int armsWithTrials = 0;
    for (std::size_t i = 0; i < arms.size(); ++i) {
        pooled.insert(pooled.end(), arms[i].begin(), arms[i].end());
        armsWithTrials += comparison.ownMeans.means[i] ? 1 : 0;
    }
    const BetaBinomialFit common = fitBetaBinomial(pooled);
    comparison.commonMean = common.mean;
    comparison.commonCorrelation = common.correlation;
    comparison.commonLogLikelihood = common.logLikelihood;
    comparison.degreesOfFreedom = std::max(0, armsWithTrials - 1);
    comparison.likelihoodRatio = std::max(0.0, 2 * (comparison.ownMeans.logLikelihood - common.logLikelihood));
    if (comparison.degreesOfFreedom > 0)
        comparison.p = chiSquareTail(comparison.likelihoodRatio, comparison.degreesOfFreedom);
    return comparison;
}

double betaBinomialLogProbability(int successes, int trials, double mean, double correlation) {
    requireCounts("betaBinomialLogProbability", successes, trials);
    if (!(mean >= 0 && mean <= 1)) throwDomainError("betaBinomialLogProbability", "mean", mean, "from 0 to 1");
    if (!(correlation >= 0 && correlation <= 1)) {
        throwDomainError("betaBinomialLogProbability", "correlation", correlation, "from 0 to 1");
    }
    if (trials == 0) return 0;
    const double impossible = -std::numeric_limits<double>::infinity();
    if (mean == 0) return successes == 0 ? 0 : impossible;
    if (mean == 1) return successes == trials ? 0 : impossible;
    const Tray tray{.successes = successes, .trials = trials};
    return BetaBinomialLikelihood(std::span(&tray, 1)).logLikelihood(mean, correlation);
}

}  // namespace stats
