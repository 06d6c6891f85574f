// SPDX-License-Identifier: MIT
#include "stats/time_to_event/kaplan_meier.h"

#include <cmath>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {

std::vector<SurvivalStep> kaplanMeier(std::span<const ExactDay> rows, double level) {
    requireLevel("kaplanMeier", level);
    for (const ExactDay& row : rows) {
        if (row.cause == 2) throwDomainError("kaplanMeier", "cause", row.cause, "0 or 1");
    }
    const double z = normalQuantileOfLevel(level);
    std::vector<SurvivalStep> steps;
    double greenwood = 0, before = 1;
    for (const IncidenceStep& incidence : aalenJohansen(rows)) {
        SurvivalStep step{.day = incidence.day,
                          .atRisk = incidence.atRisk,
                          .events = incidence.events1,
                          .survival = incidence.eventFree > 1e-12 * before ? incidence.eventFree : 0,
                          .standardError = {},
                          .limits = {}};
        if (step.survival > 0) {
            // d / (r (r - d)), with (r - d) / r read off the curve.
            greenwood += step.events / step.atRisk / (step.atRisk * (step.survival / before));
            step.standardError = step.survival * std::sqrt(greenwood);
            if (step.survival < 1) {
                const double log = -std::log(step.survival), reach = z * std::sqrt(greenwood) / log;
                step.limits =
                    Interval{.low = std::exp(-log * std::exp(reach)), .high = std::exp(-log * std::exp(-reach))};
            }
        }
        before = step.survival;
        steps.push_back(step);
    }
    return steps;
}

}  // namespace stats
