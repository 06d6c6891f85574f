// SPDX-License-Identifier: MIT
#include "tests/calibration/judged_rates.h"

#include <cmath>
#include <string>

#include "stats/numeric/distribution_tails.h"
#include "stats/overdispersion/intraclass_correlation.h"
#include "stats/overdispersion/tray_interval.h"
#include "stats/proportion/agresti_coull_interval.h"
#include "stats/proportion/clopper_pearson_interval.h"
#include "stats/proportion/jeffreys_interval.h"
#include "stats/proportion/mid_p_interval.h"
#include "stats/proportion/wilson_continuity_interval.h"
#include "stats/proportion/wilson_interval.h"

namespace calibration {
namespace {

using Trays = std::vector<stats::Tray>;

struct IntervalAsCounted {
    const char* name{};
    stats::Interval (*interval)(int, int, double){};
};

constexpr IntervalAsCounted intervalsAsCounted[] = {
    {"Wilson", stats::wilsonInterval},
    {"Wilson with continuity correction", stats::wilsonContinuityInterval},
    {"Clopper-Pearson", stats::clopperPearsonInterval},
    {"Jeffreys", stats::jeffreysInterval},
    {"Agresti-Coull", stats::agrestiCoullInterval},
    {"mid-p", stats::midPInterval},
};

void addInterval(Tally& tally, const std::string& thing, const Cell& cell, const stats::Interval& interval,
                 double truth) {
    tally.add(thing, cell, interval.low <= truth && truth <= interval.high, interval.high - interval.low);
}

stats::Tray together(const Trays& trays) {
    stats::Tray all;
    for (const stats::Tray& tray : trays) {
        all.successes += tray.successes;
        all.trials += tray.trials;
    }
    return all;
}

// Design effect of trays of unequal size: the mean size weighted by size.
double designEffect(const Trays& trays, double correlation) {
    double cuttings = 0, squares = 0;
    for (const stats::Tray& tray : trays) {
        cuttings += tray.trials;
        squares += static_cast<double>(tray.trials) * tray.trials;
    }
    return 1 + (squares / cuttings - 1) * correlation;
}

// Student's interval about the mean of what `scale` makes of each tray's rate, put back onto rates by `back`.
template <class Scale, class Back>
stats::Interval studentInterval(const Trays& trays, Scale scale, Back back) {
    const auto count = static_cast<double>(trays.size());
    double mean = 0, squares = 0;
    for (const stats::Tray& tray : trays) mean += scale(tray) / count;
    for (const stats::Tray& tray : trays) squares += std::pow(scale(tray) - mean, 2);
    const double reach =
        stats::studentQuantile(0.5 + nominalLevel / 2, count - 1) * std::sqrt(squares / (count - 1) / count);
    return {.low = back(mean - reach), .high = back(mean + reach)};
}

void judgeStudentIntervals(const Trays& trays, const Cell& cell, double truth, Tally& tally) {
    const auto plainRate = [](const stats::Tray& tray) { return static_cast<double>(tray.successes) / tray.trials; };
    addInterval(tally, "Student on tray rates", cell, studentInterval(trays, plainRate, [](double x) { return x; }),
                truth);
    const auto arcsine = [](const stats::Tray& tray) {
        return std::asin(std::sqrt((tray.successes + 0.375) / (tray.trials + 0.75)));
    };
    const auto squaredSine = [](double angle) {
        constexpr double quarterTurn = 1.5707963267948966;
        return std::pow(std::sin(std::min(quarterTurn, std::max(0.0, angle))), 2);
    };
    addInterval(tally, "Student on arcsines of tray rates", cell, studentInterval(trays, arcsine, squaredSine), truth);
    const auto logit = [](const stats::Tray& tray) {
        return std::log((tray.successes + 0.5) / (tray.trials - tray.successes + 0.5));
    };
    addInterval(tally, "Student on logits of tray rates", cell,
                studentInterval(trays, logit, [](double x) { return 1 / (1 + std::exp(-x)); }), truth);
}

}  // namespace

void judgeRatesAsCounted(const Season& season, Tally& tally) {
    const Cell cell{.correlation = season.plan.correlation, .trays = season.plan.trays[0]};
    const Trays trays = season.traysSeen()[0];
    if (trays.empty()) return;
    const stats::Tray all = together(trays);
    for (const IntervalAsCounted& row : intervalsAsCounted) {
        const stats::Interval interval = row.interval(all.successes, all.trials, nominalLevel);
        addInterval(tally, row.name, cell, interval, season.plan.rate[0]);
        if (cell.trays == 1)
            addInterval(tally, std::string(row.name) + ", of the tray", cell, interval, season.arms[0].front().share);
    }
}

void judgeRatesWithSpread(const Season& season, Tally& tally) {
    const Cell cell{.correlation = season.plan.correlation, .trays = season.plan.trays[0]};
    const auto arms = season.traysSeen();
    const Trays& trays = arms[0];
    if (trays.size() < 2) return;
    const double truth = season.plan.rate[0];
    const stats::Tray all = together(trays);
    const stats::TrayInterval shown = stats::trayInterval(trays, nominalLevel);
    if (shown.includesTrayVariation) addInterval(tally, "Korn-Graubard, where shown", cell, shown.limits, truth);
    addInterval(tally, "Korn-Graubard, else Wilson", cell, shown.limits, truth);
    const double correlation = stats::pooledSpread(arms).correlation;
    const double leftBySpread = all.trials / designEffect(trays, correlation);
    const double rate = static_cast<double>(all.successes) / all.trials;
    const stats::Interval pooled = stats::wilsonIntervalOfEffective(rate, leftBySpread, nominalLevel);
    addInterval(tally, "Korn-Graubard, else pooled spread", cell, shown.includesTrayVariation ? shown.limits : pooled,
                truth);
    addInterval(tally, "Korn-Graubard, at least pooled spread", cell,
                stats::wilsonIntervalOfEffective(rate, std::min(leftBySpread, shown.effectiveTrials), nominalLevel),
                truth);
    addInterval(tally, "pooled spread alone", cell, pooled, truth);
    judgeStudentIntervals(trays, cell, truth, tally);
}

}  // namespace calibration
