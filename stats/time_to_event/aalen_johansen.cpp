// SPDX-License-Identifier: MIT
#include "stats/time_to_event/aalen_johansen.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/require.h"

namespace stats {
namespace {

void requireExactDays(std::span<const ExactDay> rows) {
    for (const ExactDay& row : rows) {
        if (!(row.day >= 0) || std::isinf(row.day))
            throwDomainError("aalenJohansen", "day", row.day, "0 or more and finite");
        if (row.cause < 0 || row.cause > 2) throwDomainError("aalenJohansen", "cause", row.cause, "0, 1 or 2");
        if (!(row.weight >= 0) || std::isinf(row.weight)) {
            throwDomainError("aalenJohansen", "weight", row.weight, "0 or more and finite");
        }
    }
}

// Delta-method variance of the share of one cause at `now`: sum over steps j up to now of
// (F - F_j)^2 d_j / (r_j (r_j - d_j)) + S_j-^2 (r_j - d_kj) d_kj / r_j^3 - 2 (F - F_j) S_j- d_kj / r_j^2.
double varianceOf(const std::vector<IncidenceStep>& steps, std::size_t now, double IncidenceStep::*share,
                  double IncidenceStep::*events) {
    double variance = 0, eventFree = 1;
    for (std::size_t j = 0; j <= now; ++j) {
        const IncidenceStep& step = steps[j];
        const double r = step.atRisk, d = step.events1 + step.events2, own = step.*events;
        const double rise = steps[now].*share - step.*share;
        // Where everyone at risk had an event nothing rises afterwards, and the term is 0.
        if (r > d) variance += rise * rise * d / (r * (r - d));
        variance += eventFree * eventFree * (r - own) * own / (r * r * r) - 2 * rise * eventFree * own / (r * r);
        eventFree = step.eventFree;
    }
    return std::max(0.0, variance);
}

}  // namespace

std::vector<IncidenceStep> aalenJohansen(std::span<const ExactDay> rows) {
    requireExactDays(rows);
    std::vector<ExactDay> sorted(rows.begin(), rows.end());
    std::sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    double atRisk = 0;
    for (const ExactDay& row : sorted) atRisk += row.weight;

    std::vector<IncidenceStep> steps;
    double eventFree = 1, share1 = 0, share2 = 0;
    for (std::size_t i = 0; i < sorted.size();) {
        IncidenceStep step{.day = sorted[i].day, .atRisk = atRisk};
        double withdrawn = 0;
        for (; i < sorted.size() && sorted[i].day == step.day; ++i) {
            const ExactDay& row = sorted[i];
            (row.cause == 0 ? withdrawn : row.cause == 1 ? step.events1 : step.events2) += row.weight;
        }
        const double events = step.events1 + step.events2;
        atRisk = std::max(0.0, atRisk - events - withdrawn);
        if (events == 0) continue;
        share1 += eventFree * step.events1 / step.atRisk;
        share2 += eventFree * step.events2 / step.atRisk;
        eventFree *= std::max(0.0, step.atRisk - events) / step.atRisk;
        step.share1 = share1;
        step.share2 = share2;
        step.eventFree = eventFree;
        steps.push_back(step);
    }
    for (std::size_t now = 0; now < steps.size(); ++now) {
        steps[now].variance1 = varianceOf(steps, now, &IncidenceStep::share1, &IncidenceStep::events1);
        steps[now].variance2 = varianceOf(steps, now, &IncidenceStep::share2, &IncidenceStep::events2);
    }
    return steps;
}

}  // namespace stats
