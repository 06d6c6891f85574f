// SPDX-License-Identifier: MIT
#include "core/comparison/speed.h"

#include <algorithm>
#include <array>
#include <limits>

#include "stats/time_to_event/speed_comparison.h"

namespace core {
namespace {

constexpr std::array shapes{stats::SpeedShape::LogNormal, stats::SpeedShape::LogLogistic, stats::SpeedShape::Weibull};

std::string nameOfShape(stats::SpeedShape shape) {
    switch (shape) {
        case stats::SpeedShape::LogNormal:
            return "log-normal";
        case stats::SpeedShape::LogLogistic:
            return "log-logistic";
        case stats::SpeedShape::Weibull:
            return "Weibull";
    }
    return {};
}

std::string reasonInWords(const std::optional<stats::NoSpeedFit>& reason) {
    if (!reason) return {};
    switch (*reason) {
        case stats::NoSpeedFit::NobodyRooted:
            return "none rooted";
        case stats::NoSpeedFit::OneCheckOnly:
            return "there was one check only, which says how many rooted, not how fast";
        case stats::NoSpeedFit::AllAtFirstCheck:
            return "all that rooted had done so at the first check";
        case stats::NoSpeedFit::TooFewIntervals:
            return "rooting was seen between fewer than three pairs of checks";
        case stats::NoSpeedFit::RootedOnDayZero:
            return "a root is on record for the day of sticking";
        case stats::NoSpeedFit::LikelihoodIsFlat:
            return "these records fit many curves equally well";
    }
    return {};
}

Limits limitsOfInterval(const stats::Interval& interval) {
    return {.low = interval.low, .high = interval.high};
}

double lastDayOf(std::span<const Course> courses) {
    double last = 0;
    for (const Course& course : courses)
        if (!course.looks.empty()) last = std::max(last, static_cast<double>(course.looks.back().day));
    return last;
}

// A lost cutting is one that was watched to the end and never rooted.
std::vector<std::vector<stats::Observation>> batchesOfRows(std::span<const Course> courses) {
    const double lastDay = lastDayOf(courses);
    std::vector<std::vector<stats::Observation>> batches;
    for (const Course& course : courses) {
        std::vector<stats::Observation> rows = observationsOf(course);
        for (stats::Observation& row : rows) {
            if (row.cause != 2) continue;
            row = {.after = lastDay, .by = std::numeric_limits<double>::infinity(), .cause = 0, .weight = row.weight};
        }
        if (!rows.empty()) batches.push_back(merged(std::move(rows)));
    }
    return batches;
}

FittedSpeed fittedSpeed(const stats::CureMixtureEstimate& estimate) {
    const bool isByBatch = estimate.speedByBatch.has_value();
    const auto& share = estimate.shareByBatch ? *estimate.shareByBatch : estimate.share;
    FittedSpeed fitted{.shape = nameOfShape(estimate.shape),
                       .rootingShare = estimate.rootingShare,
                       .rootingShareLimits = {},
                       .medianDay = estimate.medianDay,
                       .medianDayLimits = limitsOfInterval(isByBatch ? estimate.speedByBatch->medianLimits
                                                                     : estimate.speed.medianLimits),
                       .isByBatch = isByBatch,
                       .akaike = estimate.akaike};
    if (share.limits) fitted.rootingShareLimits = limitsOfInterval(*share.limits);
    return fitted;
}

const FittedSpeed* fitOfShape(const RootingSpeed& speed, const std::string& shape) {
    for (const FittedSpeed& fit : speed.fits)
        if (fit.shape == shape) return &fit;
    return nullptr;
}

}  // namespace

RootingSpeed rootingSpeed(std::span<const Course> courses, double level, const std::stop_token& stop) {
    const auto batches = batchesOfRows(courses);
    RootingSpeed speed;
    const double lastDay = lastDayOf(courses);
    for (const stats::SpeedShape shape : shapes) {
        if (stop.stop_requested()) break;
        const stats::CureMixtureFit fit = stats::fitCureMixture(batches, shape, level);
        if (!fit.estimate)
            speed.whyNot = reasonInWords(fit.whyNot);
        else if (fit.estimate->isOnBoundary)
            speed.whyNot = "these records set no bound to how many will root in the end";
        else if (fit.estimate->medianDay > lastDay)
            speed.whyNot = "half of those that will root would do so only after the last check";
        else
            speed.fits.push_back(fittedSpeed(*fit.estimate));
    }
    if (!speed.fits.empty()) speed.whyNot.clear();
    std::stable_sort(speed.fits.begin(), speed.fits.end(),
                     [](const FittedSpeed& a, const FittedSpeed& b) { return a.akaike < b.akaike; });
    return speed;
}

SpeedDifference compareSpeeds(std::span<const Course> first, std::span<const Course> second,
                              const RootingSpeed& ofFirst, const RootingSpeed& ofSecond, double level) {
    SpeedDifference difference;
    std::optional<stats::SpeedShape> best;
    double lowest = std::numeric_limits<double>::infinity();
    for (const stats::SpeedShape shape : shapes) {
        const FittedSpeed* one = fitOfShape(ofFirst, nameOfShape(shape));
        const FittedSpeed* other = fitOfShape(ofSecond, nameOfShape(shape));
        if (one == nullptr || other == nullptr || one->akaike + other->akaike >= lowest) continue;
        lowest = one->akaike + other->akaike;
        best = shape;
    }
    if (!best) {
        difference.whyNot = !ofFirst.whyNot.empty() ? ofFirst.whyNot : ofSecond.whyNot;
        if (difference.whyNot.empty()) difference.whyNot = "no one shape of curve fits both";
        return difference;
    }
    const stats::SpeedComparison compared =
        stats::compareSpeed(batchesOfRows(first), batchesOfRows(second), *best, level);
    if (!compared.estimate) {
        difference.whyNot = reasonInWords(compared.whyNot);
        return difference;
    }
    const stats::SpeedComparisonEstimate& estimate = *compared.estimate;
    difference.shape = nameOfShape(*best);
    difference.ratio = estimate.ratio;
    difference.asCounted = limitsOfInterval(estimate.ratioLimits);
    difference.asCountedP = estimate.p;
    if (estimate.byBatch) {
        difference.byBatch = limitsOfInterval(estimate.byBatch->limits);
        difference.byBatchP = estimate.byBatch->p;
    }
    return difference;
}

}  // namespace core
