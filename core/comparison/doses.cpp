// SPDX-License-Identifier: MIT
#include "core/comparison/doses.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "core/comparison/course.h"
#include "core/comparison/dose_words.h"
#include "stats/overdispersion/tray_trend.h"
#include "stats/proportion/wilson_interval.h"
#include "stats/regression/dose_response.h"
#include "stats/several_proportions/cochran_armitage_trend.h"

namespace core {
namespace {

using AuxinKey = std::tuple<std::string, AuxinForm, Carrier>;
using TraysByDose = std::map<double, std::vector<stats::Tray>>;

Limits asLimits(const stats::Interval& interval) {
    return {.low = interval.low, .high = interval.high};
}

struct DosedBatches {
    std::map<AuxinKey, TraysByDose> ofAuxin;
    std::vector<stats::Tray> untreated;
};

DosedBatches dosedBatches(const Shelves& shelves, std::span<const BatchRecord* const> batches, int horizonDay) {
    DosedBatches dosed;
    for (const BatchRecord* record : batches) {
        const Treatment* treatment = find(shelves.treatments, record->batch.treatment);
        if (treatment == nullptr || treatment->auxins.size() > 1) continue;
        const HorizonFate fate = fateAt(horizonDay, record->batch.stuck, looksOf(*record));
        if (fate.assessed == 0) continue;
        const stats::Tray tray{.successes = fate.rooted, .trials = fate.assessed};
        if (treatment->auxins.empty() || treatment->auxins.front().milligramsPerLitre == 0) {
            dosed.untreated.push_back(tray);
            continue;
        }
        const Auxin& auxin = treatment->auxins.front();
        dosed.ofAuxin[{auxin.name, auxin.form, treatment->carrier}][auxin.milligramsPerLitre].push_back(tray);
    }
    return dosed;
}

std::vector<DosePoint> pointsOf(const TraysByDose& doses, double level) {
    std::vector<DosePoint> points;
    for (const auto& [dose, trays] : doses) {
        DosePoint point{.milligramsPerLitre = dose,
                        .batches = static_cast<int>(trays.size()),
                        .rooted = 0,
                        .assessed = 0,
                        .rate = 0,
                        .asCounted = {}};
        for (const stats::Tray& tray : trays) {
            point.rooted += tray.successes;
            point.assessed += tray.trials;
        }
        point.rate = static_cast<double>(point.rooted) / point.assessed;
        point.asCounted = asLimits(stats::wilsonInterval(point.rooted, point.assessed, level));
        points.push_back(point);
    }
    return points;
}

// Doses are usually tried in steps that double or more, so their order is a better scale for a trend than milligrams, and untreated
// cuttings have a place in it.
void testTrend(const TraysByDose& doses, double level, DoseSeries& series) {
    std::vector<stats::ArmCount> arms;
    std::vector<double> scores;
    std::vector<stats::ScoredTray> trays;
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        arms.push_back({.successes = series.points[i].rooted, .trials = series.points[i].assessed});
        scores.push_back(static_cast<double>(i));
    }
    for (const auto& [dose, ofDose] : doses) {
        const auto place = std::distance(doses.begin(), doses.find(dose));
        for (const stats::Tray& tray : ofDose) trays.push_back({.score = static_cast<double>(place), .tray = tray});
    }
    series.trendP = stats::cochranArmitageTrend(arms, scores).p;
    const stats::TrayTrend trend = stats::trayTrend(trays, level);
    series.trendPerStep = trend.slope;
    if (trays.size() >= series.points.size() + 2) series.batchTrendP = trend.p;
}

BestDose bestOf(stats::Peak peak) {
    switch (peak) {
        case stats::Peak::NoFit:
            return BestDose::NoCurve;
        case stats::Peak::Inside:
            return BestDose::Inside;
        case stats::Peak::None:
            return BestDose::NoTop;
        case stats::Peak::BelowDoses:
            return BestDose::BelowLowest;
        case stats::Peak::AboveDoses:
            return BestDose::AboveHighest;
    }
    return BestDose::NoCurve;
}

void drawCurve(const stats::DoseResponse& response, double lowest, double highest, double level, DoseSeries& series) {
    constexpr int steps = 40;
    for (int i = 0; i <= steps; ++i) {
        const double dose = lowest * std::pow(highest / lowest, static_cast<double>(i) / steps);
        const auto point = stats::rateAtDose(response, dose, level);
        if (!point) return;
        DoseCurvePoint drawn{
            .milligramsPerLitre = dose, .rate = point->rate, .asCounted = asLimits(point->asCounted), .withSpread = {}};
        if (point->withSpread) drawn.withSpread = asLimits(*point->withSpread);
        series.curve.push_back(drawn);
    }
}

void fitCurve(const TraysByDose& doses, double level, DoseSeries& series) {
    std::vector<stats::DoseTray> trays;
    std::size_t above = 0;
    for (const auto& [dose, ofDose] : doses) {
        if (dose > 0) ++above;
        for (const stats::Tray& tray : ofDose)
            trays.push_back({.dose = dose, .successes = tray.successes, .trials = tray.trials});
    }
    if (above < 3) return;
    stats::DoseResponse response = stats::doseResponse(trays, level);
    if (response.problem == stats::FitProblem::Separated || response.problem == stats::FitProblem::AllOrNone) {
        response = stats::doseResponse(trays, level, stats::DoseEstimator::Firth);
        series.isFirth = true;
    }
    series.best = bestOf(response.peak);
    if (series.best == BestDose::NoCurve) {
        series.whyNoCurve = whyNoCurve(response.problem);
        return;
    }
    series.bestMilligrams = response.bestDose;
    series.bestRate = response.bestRate;
    if (response.asCounted.limits) series.asCounted = asLimits(*response.asCounted.limits);
    if (response.withSpread.limits) series.withSpread = asLimits(*response.withSpread.limits);
    series.isUnboundedWithSpread = response.withSpread.kind == stats::PeakLimits::Unbounded;
    const double lowest = doses.upper_bound(0.0)->first, highest = doses.rbegin()->first;
    drawCurve(response, lowest, highest, level, series);
}

}  // namespace

std::vector<DoseSeries> doseSeriesOf(const Shelves& shelves, std::span<const BatchRecord* const> batches,
                                     int horizonDay, double level) {
    DosedBatches dosed = dosedBatches(shelves, batches, horizonDay);
    std::vector<DoseSeries> all;
    for (auto& [key, doses] : dosed.ofAuxin) {
        if (!dosed.untreated.empty()) doses[0.0] = dosed.untreated;
        if (doses.upper_bound(0.0) == std::prev(doses.end())) continue;  // one dose is no series
        const auto& [auxin, form, carrier] = key;
        DoseSeries series;
        series.auxin = auxinInWords(auxin, form, carrier);
        series.isPowder = carrier == Carrier::Powder;
        series.points = pointsOf(doses, level);
        for (const auto& [dose, trays] : doses)
            for (const stats::Tray& tray : trays) series.batches.push_back({dose, tray.successes, tray.trials});
        testTrend(doses, level, series);
        fitCurve(doses, level, series);
        series.inWords = doseSeriesInWords(series, level);
        all.push_back(std::move(series));
    }
    return all;
}

}  // namespace core
