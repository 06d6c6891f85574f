// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_analysis_of_variance.h"

#include "stats/numeric/distribution_tails.h"
#include "stats/overdispersion/tray_rates.h"

namespace stats {

TrayAnalysisOfVariance trayAnalysisOfVariance(std::span<const std::vector<Tray>> arms) {
    struct ArmRates {
        double trays{};
        double mean{};
    };
    std::vector<ArmRates> means;
    double within = 0, trays = 0, sum = 0;
    for (const std::vector<Tray>& arm : arms) {
        requireTrays("trayAnalysisOfVariance", arm);
        const std::vector<Tray> used = traysWithTrials(arm);
        if (used.empty()) continue;
        const RateSpread spread = rateSpread(used);
        const double count = static_cast<double>(used.size());
        means.push_back({.trays = count, .mean = spread.mean});
        within += spread.squares;
        trays += count;
        sum += count * spread.mean;
    }
    TrayAnalysisOfVariance result;
    if (means.empty()) return result;
    result.betweenDegrees = static_cast<int>(means.size()) - 1;
    result.withinDegrees = static_cast<int>(trays) - static_cast<int>(means.size());
    if (result.withinDegrees == 0) return result;
    result.withinVariance = within / result.withinDegrees;
    if (result.betweenDegrees == 0 || within == 0) return result;
    double between = 0;
    for (const ArmRates& arm : means) between += arm.trays * (arm.mean - sum / trays) * (arm.mean - sum / trays);
    result.f = between / result.betweenDegrees / *result.withinVariance;
    result.p = varianceRatioTail(*result.f, result.betweenDegrees, result.withinDegrees);
    return result;
}

}  // namespace stats
