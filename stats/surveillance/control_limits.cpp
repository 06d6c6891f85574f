// SPDX-License-Identifier: MIT
#include "stats/surveillance/control_limits.h"

#include <cstddef>

#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"

namespace stats {
namespace {

void requireChart(std::span<const Tray> batches, const ChartQuestion& question) {
    constexpr int mostTrials = 1'000'000;
    requireTrays("controlChart", batches);
    for (const Tray& batch : batches)
        if (batch.trials > mostTrials) throwDomainError("controlChart", "trials", batch.trials, "at most 1000000");
    if (!(question.correlation >= 0 && question.correlation < 1))
        throwDomainError("controlChart", "correlation", question.correlation, "from 0 to below 1");
    if (!(question.falseAlarmRate > 0 && question.falseAlarmRate < 1))
        throwDomainError("controlChart", "falseAlarmRate", question.falseAlarmRate, "between 0 and 1");
    if (question.centre && !(*question.centre >= 0 && *question.centre <= 1))
        throwDomainError("controlChart", "centre", *question.centre, "from 0 to 1");
}

struct ChartCentre {
    std::optional<double> shown;
    double forLimits{};
};

ChartCentre centreOf(std::span<const Tray> counted, const ChartQuestion& question) {
    if (question.centre) return {.shown = question.centre, .forLimits = *question.centre};
    if (counted.empty()) return {};
    const BetaBinomialLikelihood likelihood(counted);
    if (likelihood.isDegenerate())
        return {.shown = likelihood.successes() / likelihood.trials(),
                .forLimits = (likelihood.successes() + 0.5) / (likelihood.trials() + 1)};
    const double mean = likelihood.bestMean(question.correlation);
    return {.shown = mean, .forLimits = mean};
}

ChartPoint pointOf(const Tray& batch, double centre, const ChartQuestion& question) {
    ChartPoint point;
    if (batch.trials == 0) return point;
    const double trials = batch.trials, tail = question.falseAlarmRate / 2;
    const std::vector<double> law = betaBinomialProbabilities(batch.trials, centre, question.correlation);
    double below = law.front(), above = law.back();
    int fewest = 0, most = batch.trials;
    while (fewest < batch.trials && below <= tail) below += law[static_cast<std::size_t>(++fewest)];
    while (most > 0 && above <= tail) above += law[static_cast<std::size_t>(--most)];
    point.rate = batch.successes / trials;
    point.fewest = fewest;
    point.most = most;
    point.limits = {.low = fewest / trials, .high = most / trials};
    point.signal = batch.successes < fewest ? ChartSignal::Below
                   : batch.successes > most ? ChartSignal::Above
                                            : ChartSignal::Inside;
    return point;
}

}  // namespace

ControlChart controlChart(std::span<const Tray> batches, const ChartQuestion& question) {
    requireChart(batches, question);
    const ChartCentre centre = centreOf(traysWithTrials(batches), question);
    ControlChart chart{.centre = centre.shown, .points = {}};
    for (const Tray& batch : batches) chart.points.push_back(pointOf(batch, centre.forLimits, question));
    return chart;
}

}  // namespace stats
