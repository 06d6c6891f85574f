// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_interval.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/rao_scott.h"
#include "stats/proportion/wilson_interval.h"

namespace stats {

TrayInterval trayInterval(std::span<const Tray> trays, double level) {
    requireTrays("trayInterval", trays);
    requireLevel("trayInterval", level);
    const DesignEffect effect = raoScottDesignEffect(trays);
    if (!effect.rate) return {};
    const double trials = static_cast<double>(effect.trials);
    TrayInterval result{.estimate = effect.rate,
                        .limits = {},
                        .effectiveTrials = trials,
                        .includesTrayVariation = effect.designEffect.has_value()};
    if (effect.effectiveTrials) {
        const double ratio =
            studentQuantileOfLevel(level, trials - 1) / studentQuantileOfLevel(level, effect.trays - 1.0);
        result.effectiveTrials = std::min(trials, *effect.effectiveTrials * ratio * ratio);
    }
    result.limits = wilsonIntervalOfEffective(*effect.rate, result.effectiveTrials, level);
    return result;
}

}  // namespace stats
