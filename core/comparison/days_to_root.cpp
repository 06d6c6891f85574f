// SPDX-License-Identifier: MIT
#include "core/comparison/days_to_root.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "stats/proportion/wilson_interval.h"
#include "stats/time_to_event/cluster_bootstrap.h"
#include "stats/time_to_event/competing_risks_npmle.h"
#include "stats/time_to_event/curve_quantiles.h"

namespace core {
namespace {

struct DayChange {
    int rooted{};
    int lost{};
    int withdrawn{};
    int watchedNoLonger{};  // undecided after the last look at their batch
};

void countLooks(std::span<const Course> courses, RootingCurves& curves) {
    std::map<int, DayChange> changes;
    int waiting = 0, watched = 0;
    for (const Course& course : courses) {
        waiting += course.stuck();
        int undecided = course.stuck();
        for (const Look& look : course.looks) {
            DayChange& change = changes[look.day];
            change.rooted += look.rooted;
            change.lost += look.lost;
            change.withdrawn += look.withdrawn;
            undecided -= look.rooted + look.lost + look.withdrawn;
        }
        if (course.looks.empty()) continue;
        watched += course.stuck();
        changes[course.looks.back().day].watchedNoLonger += undecided;
    }
    int rooted = 0, lost = 0;
    for (const auto& [day, change] : changes) {
        const int decided = change.rooted + change.lost + change.withdrawn;
        rooted += change.rooted;
        lost += change.lost;
        waiting -= decided;
        watched -= decided;
        curves.looks.push_back({.day = day, .waiting = waiting, .rooted = rooted, .lost = lost});
        curves.stillWatched.push_back(watched);
        watched -= change.watchedNoLonger;
    }
}

std::optional<DayRange> dayRange(std::span<const stats::SupportInterval> curve, double target, stats::ShareOf of) {
    const auto day = stats::quantileDay(curve, target, of);
    if (!day) return {};
    return DayRange{.after = day->after, .by = day->by};
}

DaysToRoot quartiles(std::span<const stats::SupportInterval> curve, stats::ShareOf of) {
    return {.p25 = dayRange(curve, 0.25, of),
            .p50 = dayRange(curve, 0.50, of),
            .p75 = dayRange(curve, 0.75, of),
            .p90 = dayRange(curve, 0.90, of),
            .p50Interval = {}};
}

std::vector<DayShare> sharesOn(std::span<const LookCounts> looks, std::span<const stats::SupportInterval> curve) {
    std::vector<DayShare> shares;
    shares.reserve(looks.size());
    for (const LookCounts& look : looks) {
        const double day = look.day;
        shares.push_back({.day = day, .share = std::min(1.0, stats::cumulativeShare(curve, day).atLeast), .band = {}});
    }
    return shares;
}

// Batches that happen to be alike, or where none or all have rooted, show no spread; luck of single cuttings there is all the same, so a band
// is never narrower than their count allows. That interval holds the estimate itself, which the percentiles need not.
void setBands(std::span<DayShare> shares, std::span<const stats::Interval> bands, int stuck, double level) {
    for (std::size_t i = 0; i < std::min(shares.size(), bands.size()); ++i) {
        const stats::Interval counted = stats::wilsonIntervalOfEffective(shares[i].share, stuck, level);
        shares[i].band =
            Limits{.low = std::min(counted.low, bands[i].low), .high = std::max(counted.high, bands[i].high)};
    }
}

std::optional<Limits> finiteLimits(const stats::BootstrapQuantile& quantile) {
    if (!std::isfinite(quantile.limits.high)) return {};
    return Limits{.low = quantile.limits.low, .high = quantile.limits.high};
}

void resample(std::span<const std::vector<stats::Observation>> batches, int stuck, const Resampling& resampling,
              const std::stop_token& stop, RootingCurves& curves) {
    stats::BootstrapQuestion question;
    question.quantiles = {{.target = 0.5, .of = stats::ShareOf::Everyone},
                          {.target = 0.5, .of = stats::ShareOf::ThoseWithTheEvent}};
    for (const LookCounts& look : curves.looks) question.days.push_back(look.day);
    question.level = resampling.level;
    question.replicates = resampling.replicates;
    stats::SeededRandom random(resampling.seed);
    const auto bootstrap = stats::clusterBootstrap(batches, question, random, stop);
    if (!bootstrap || bootstrap->wasStopped) return;
    if (curves.ofStuck.p50) curves.ofStuck.p50Interval = finiteLimits(bootstrap->quantiles[0]);
    if (curves.ofRooted.p50) curves.ofRooted.p50Interval = finiteLimits(bootstrap->quantiles[1]);
    setBands(curves.rootedByDay, bootstrap->bands1, stuck, resampling.level);
    setBands(curves.lostByDay, bootstrap->bands2, stuck, resampling.level);
}

KnownDays::Fate fateOf(int cause) {
    return cause == 1 ? KnownDays::Fate::Rooted : cause == 2 ? KnownDays::Fate::Lost : KnownDays::Fate::Undecided;
}

std::vector<CurveStep> stepsOf(std::span<const stats::SupportInterval> curve) {
    std::vector<CurveStep> steps;
    for (const stats::SupportInterval& part : curve)
        steps.push_back({.after = part.left, .by = part.right, .share = part.mass});
    return steps;
}

CurveMakeup makeupOf(std::span<const stats::Observation> rows, const stats::CumulativeIncidence& incidence) {
    CurveMakeup makeup{.known = {}, .rooted = stepsOf(incidence.cause1), .lost = stepsOf(incidence.cause2)};
    for (const stats::Observation& row : rows)
        makeup.known.push_back({.after = row.after,
                                .by = row.by,
                                .fate = fateOf(row.cause),
                                .cuttings = static_cast<int>(std::lround(row.weight))});
    return makeup;
}

}  // namespace

RootingCurves rootingCurves(std::span<const Course> courses, const std::optional<Resampling>& resampling,
                            const std::stop_token& stop) {
    RootingCurves curves;
    countLooks(courses, curves);
    std::vector<std::vector<stats::Observation>> batches;
    std::vector<stats::Observation> all;
    batches.reserve(courses.size());
    for (const Course& course : courses) {
        batches.push_back(observationsOf(course));
        all.insert(all.end(), batches.back().begin(), batches.back().end());
    }
    all = merged(std::move(all));
    const auto incidence = stats::competingRisksNpmle(all, stop);
    curves.makeup = makeupOf(all, incidence);
    curves.rooting = incidence.cause1;
    curves.rootedByDay = sharesOn(curves.looks, incidence.cause1);
    curves.lostByDay = sharesOn(curves.looks, incidence.cause2);
    curves.ofStuck = quartiles(incidence.cause1, stats::ShareOf::Everyone);
    curves.ofRooted = quartiles(incidence.cause1, stats::ShareOf::ThoseWithTheEvent);
    int stuck = 0;
    for (const Course& course : courses) stuck += course.stuck();
    if (resampling && resampling->replicates > 0 && courses.size() > 1)
        resample(batches, stuck, *resampling, stop, curves);
    return curves;
}

double stepsPerEstimate(std::span<const Course> courses) {
    std::vector<stats::Observation> all;
    for (const Course& course : courses) {
        const auto rows = observationsOf(course);
        all.insert(all.end(), rows.begin(), rows.end());
    }
    const double everyRow = static_cast<double>(all.size());
    const double different = static_cast<double>(merged(std::move(all)).size());
    return different * different + everyRow;
}

int affordable(int wanted, double stepsOfOne) {
    constexpr double stepsInAll = 25'000'000;
    constexpr int fewestThatSay = 39;
    const double affordableCount = stepsInAll / std::max(1.0, stepsOfOne);
    return affordableCount >= wanted ? wanted
                                     : std::min(wanted, std::max(fewestThatSay, static_cast<int>(affordableCount)));
}

}  // namespace core
