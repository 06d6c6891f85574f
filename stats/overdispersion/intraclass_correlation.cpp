// SPDX-License-Identifier: MIT
#include "stats/overdispersion/intraclass_correlation.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <cstddef>
#include <limits>

#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"

namespace stats {
namespace {

using TellingGroups = std::vector<BetaBinomialLikelihood>;

double adjustedProfile(const TellingGroups& groups, double correlation) {
    double sum = 0;
    for (const BetaBinomialLikelihood& group : groups) {
        const double mean = group.bestMean(correlation);
        sum += group.logLikelihood(mean, correlation) - 0.5 * std::log(-group.derivatives(mean, correlation).mm);
    }
    return sum;
}

// The adjusted profile may fall from 0 on and may have more than one hill, so a grid chooses which to climb.
double largestAdjusted(const TellingGroups& groups) {
    constexpr int points = 16;
    const auto root = [](int k) { return std::min(1 - 1e-6, static_cast<double>(k) / points); };
    const auto fall = [&groups](double u) { return -adjustedProfile(groups, u * u); };
    int best = 0;
    double least = std::numeric_limits<double>::infinity();
    for (int k = 0; k <= points; ++k) {
        const double value = fall(root(k));
        if (value < least) {
            least = value;
            best = k;
        }
    }
    const auto [u, value] =
        boost::math::tools::brent_find_minima(fall, root(std::max(0, best - 1)), root(std::min(points, best + 1)), 26);
    const double summit = value < least ? u : root(best);
    return summit * summit;
}

// Equal cells on the root of the correlation, where a spread near 0 is still seen as a hill.
struct CorrelationGrid {
    static constexpr std::size_t cells = 32;
    double low{0}, high{1};
    std::vector<double> correlations, weights;  // weights sum to 1 after normalise()

    [[nodiscard]] double width() const { return (high - low) / static_cast<double>(cells); }
    [[nodiscard]] double edge(double index) const {
        const double u = low + width() * index;
        return u * u;
    }
};

CorrelationGrid gridOver(const TellingGroups& groups, const SpreadPrior& prior, double low, double high) {
    CorrelationGrid grid{.low = low, .high = high, .correlations = {}, .weights = {}};
    for (std::size_t i = 0; i < CorrelationGrid::cells; ++i) {
        const double correlation = grid.edge(static_cast<double>(i) + 0.5);
        grid.correlations.push_back(correlation);
        grid.weights.push_back(adjustedProfile(groups, correlation) + (prior.a - 0.5) * std::log(correlation) +
                               (prior.b - 1) * std::log1p(-correlation));
    }
    return grid;
}

// Narrows the grid until it covers little more than what is likely at all.
CorrelationGrid posteriorGrid(const TellingGroups& groups, const SpreadPrior& prior) {
    constexpr double unlikely = 14;  // in logarithms below the largest
    CorrelationGrid grid = gridOver(groups, prior, 0, 1);
    for (int round = 0; round < 8; ++round) {
        const double least = *std::max_element(grid.weights.begin(), grid.weights.end()) - unlikely;
        const auto isLikely = [least](double each) { return each >= least; };
        const auto first = std::find_if(grid.weights.begin(), grid.weights.end(), isLikely) - grid.weights.begin();
        const auto last = grid.weights.rend() - std::find_if(grid.weights.rbegin(), grid.weights.rend(), isLikely);
        const double low = std::max(0.0, grid.low + grid.width() * static_cast<double>(first - 1));
        const double high = std::min(1.0, grid.low + grid.width() * static_cast<double>(last + 1));
        if (high - low > 0.7 * (grid.high - grid.low)) break;
        grid = gridOver(groups, prior, low, high);
    }
    const double largest = *std::max_element(grid.weights.begin(), grid.weights.end());
    double sum = 0;
    for (double& each : grid.weights) sum += each = std::exp(each - largest);
    for (double& each : grid.weights) each /= sum;
    return grid;
}

double quantileOf(const CorrelationGrid& grid, double probability) {
    double below = 0;
    for (std::size_t i = 0; i < CorrelationGrid::cells; ++i) {
        if (below + grid.weights[i] >= probability)
            return grid.edge(static_cast<double>(i) + std::max(0.0, probability - below) / grid.weights[i]);
        below += grid.weights[i];
    }
    return grid.edge(static_cast<double>(CorrelationGrid::cells));
}

// Equal tails would never let the correlation be 0; where 0 is denser than the far end, the interval begins there.
Interval limitsOf(const CorrelationGrid& grid, double level) {
    const double high = quantileOf(grid, level);
    const auto density = [&grid](std::size_t i) {
        const auto index = static_cast<double>(i);
        return grid.weights[i] / (grid.edge(index + 1) - grid.edge(index));
    };
    std::size_t cellOfHigh = 0;
    while (cellOfHigh + 1 < CorrelationGrid::cells && grid.edge(static_cast<double>(cellOfHigh + 1)) < high)
        ++cellOfHigh;
    if (grid.low == 0 && density(0) >= density(cellOfHigh)) return {.low = 0, .high = high};
    return {.low = quantileOf(grid, 0.5 - level / 2), .high = quantileOf(grid, 0.5 + level / 2)};
}

// The mean of each twelfth of the posterior.
std::vector<WeightedCorrelation> equallyLikely(const CorrelationGrid& grid) {
    constexpr std::size_t slices = 12;
    std::vector<WeightedCorrelation> law(slices, {.correlation = 0, .weight = 1.0 / slices});
    std::size_t slice = 0;
    double room = 1.0 / slices;
    for (std::size_t i = 0; i < CorrelationGrid::cells; ++i) {
        double left = grid.weights[i];
        while (left > room && slice + 1 < slices) {
            law[slice].correlation += room * grid.correlations[i] * slices;
            left -= room;
            room = 1.0 / slices;
            ++slice;
        }
        law[slice].correlation += left * grid.correlations[i] * slices;
        room -= left;
    }
    return law;
}

void requirePrior(const SpreadPrior& prior) {
    for (const double each : {prior.a, prior.b})
        if (!(each >= 1 && std::isfinite(each))) throwDomainError("pooledSpread", "prior", each, "1 or more");
}

}  // namespace

PooledSpread pooledSpread(std::span<const std::vector<Tray>> groups, double level, const SpreadPrior& prior) {
    requireLevel("pooledSpread", level);
    requirePrior(prior);
    PooledSpread spread;
    TellingGroups telling;
    for (const auto& trays : groups) {
        requireTrays("pooledSpread", trays);
        const std::vector<Tray> counted = traysWithTrials(trays);
        if (counted.size() < 2) continue;
        BetaBinomialLikelihood group(counted);
        if (group.isDegenerate() || !group.hasTrayOfTwo()) continue;
        telling.push_back(std::move(group));
        spread.batches += static_cast<int>(counted.size());
    }
    spread.groups = static_cast<int>(telling.size());
    const CorrelationGrid grid = posteriorGrid(telling, prior);
    double mean = 0, square = 0;
    for (std::size_t i = 0; i < CorrelationGrid::cells; ++i) mean += grid.weights[i] * grid.correlations[i];
    for (std::size_t i = 0; i < CorrelationGrid::cells; ++i)
        square += grid.weights[i] * std::pow(grid.correlations[i] - mean, 2);
    spread.correlation = mean;
    spread.limits = limitsOf(grid, level);
    spread.law = equallyLikely(grid);
    if (telling.empty()) return spread;
    const double sum = prior.a + prior.b;
    const double priorVariance = prior.a * prior.b / (sum * sum * (sum + 1));
    spread.basis = SpreadBasis::RecordsAndPrior;
    spread.ownEstimate = largestAdjusted(telling);
    spread.weightOfRecords = std::clamp(1 - square / priorVariance, 0.0, 1.0);
    return spread;
}

std::vector<WeightedCorrelation> knownCorrelation(double correlation) {
    if (!(correlation >= 0 && correlation < 1))
        throwDomainError("knownCorrelation", "correlation", correlation, "from 0 to below 1");
    return {{.correlation = correlation, .weight = 1}};
}

}  // namespace stats
