// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_trend.h"

#include <cmath>
#include <vector>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/tray_rates.h"
#include "stats/several_proportions/arm_count.h"

namespace stats {
namespace {

struct ScoredRate {
    double score{};
    double rate{};
};

// Empty where the scores don't differ. Each rate and score is that of a tray less the mean.
std::vector<ScoredRate> centredRates(std::span<const ScoredTray> trays) {
    std::vector<ScoredRate> rates;
    ScoredRate mean;
    bool doScoresDiffer = false;
    for (const ScoredTray& each : trays) {
        requireScore("trayTrend", each.score);
        requireCounts("trayTrend", each.tray.successes, each.tray.trials);
        if (each.tray.trials == 0) continue;
        rates.push_back({.score = each.score, .rate = rateOf(each.tray)});
        doScoresDiffer = doScoresDiffer || each.score != rates.front().score;
    }
    if (!doScoresDiffer) return {};
    for (const ScoredRate& each : rates) {
        mean.score += each.score / static_cast<double>(rates.size());
        mean.rate += each.rate / static_cast<double>(rates.size());
    }
    for (ScoredRate& each : rates) each = {.score = each.score - mean.score, .rate = each.rate - mean.rate};
    return rates;
}

}  // namespace

TrayTrend trayTrend(std::span<const ScoredTray> trays, double level) {
    requireLevel("trayTrend", level);
    const std::vector<ScoredRate> rates = centredRates(trays);
    TrayTrend trend;
    double products = 0, squares = 0, residual = 0;
    for (const ScoredRate& each : rates) {
        products += each.score * each.rate;
        squares += each.score * each.score;
    }
    if (squares == 0) return trend;
    const double slope = products / squares;
    trend.slope = slope;
    trend.degreesOfFreedom = static_cast<int>(rates.size()) - 2;
    if (trend.degreesOfFreedom == 0) return trend;
    bool isOnLine = true;
    for (const ScoredRate& each : rates) {
        const double distance = each.rate - slope * each.score;
        isOnLine = isOnLine && std::abs(distance) < 1e-12;
        residual += distance * distance;
    }
    const double error = isOnLine ? 0 : std::sqrt(residual / trend.degreesOfFreedom / squares);
    trend.standardError = error;
    if (error == 0) return trend;
    trend.t = slope / error;
    trend.p = studentTwoSidedTail(*trend.t, trend.degreesOfFreedom);
    const double reach = studentQuantileOfLevel(level, trend.degreesOfFreedom) * error;
    trend.limits = Interval{.low = slope - reach, .high = slope + reach};
    return trend;
}

}  // namespace stats
