// SPDX-License-Identifier: MIT
// A chart of strike rate over batches: between which counts each batch should lie when nothing has changed. What a
// single batch's odds are, given few past ones: predictive_tail.h, which doesn't take the centre for known.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/interval.h"
#include "stats/overdispersion/tray.h"

namespace stats {

enum class ChartSignal { Inside, Below, Above, NoTrials };

struct ChartPoint {
    std::optional<double> rate;  // absent without trials
    int fewest{};                // counts that lie inside
    int most{};
    Interval limits{0, 1};  // as rates: fewest / trials to most / trials
    ChartSignal signal{ChartSignal::NoTrials};
};

struct ChartQuestion {
    double correlation{};  // how much batches differ when nothing has changed: PooledSpread::correlation
    double falseAlarmRate{
        0.0027};  // of one batch, both sides together; the default is that of three standard deviations
    std::optional<double> centre{};  // a rate set beforehand; else it is estimated from all batches charted
};

struct ControlChart {
    std::optional<double> centre;  // absent without trials, unless set beforehand
    std::vector<ChartPoint> points;
};

/// Centre line and limits for batches of unequal sizes that differ more than chance has it.
///
/// The centre is the mean that is most likely at this correlation, which weighs a batch of n as n / (1 + (n - 1)
/// correlation), nearly. Limits are exact quantiles of each batch's beta-binomial law about it: at most half the false
/// alarm rate lies below `fewest`, and at most half above `most`. Limits by the normal approximation would call a small
/// batch of none or all an alarm too often or never.
///
/// The centre is taken for known though a batch pulls it towards itself, and counts are whole, so alarms are rarer than
/// the rate set: simulated at 0.01, with batches of 10 to 39 and correlations of 0 to 0.2, 0.0015 of batches in charts
/// of five and 0.0034 in charts of forty.
///
/// Domain    0 <= successes <= trials <= 1 000 000 in each batch, 0 <= correlation < 1, 0 < falseAlarmRate < 1, 0 <=
///           centre <= 1; else std::domain_error.
/// Returns   one point a batch. All or none succeeded in all batches: the centre is 1 or 0, and limits are those of
///           (successes + 1/2) / (trials + 1), since no rate is known to be certain.
/// Assumes   batches independent; the correlation right.
/// Accuracy  counts are exact, given the centre (within 1e-12).
/// Source    Shewhart (1931), Economic Control of Quality of Manufactured Product; for spread beyond the binomial:
///           Laney (2002), Qual. Eng. 14, 531-537, whose limits are normal ones.
[[nodiscard]] ControlChart controlChart(std::span<const Tray> batches, const ChartQuestion& question);

}  // namespace stats
