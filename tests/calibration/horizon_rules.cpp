// SPDX-License-Identifier: MIT
#include "tests/calibration/horizon_rules.h"

#include <cmath>
#include <limits>
#include <string>

#include "stats/overdispersion/tray_interval.h"
#include "stats/overdispersion/tray_weighted_t_test.h"
#include "stats/time_to_event/competing_risks_npmle.h"
#include "stats/time_to_event/curve_quantiles.h"

namespace calibration {
namespace {

/// A batch around the horizon.
struct Around {
    int rooted{};  // at looks up to the horizon
    int lost{};
    int undecided{};
    int lastLook{};  // up to the horizon; 0 without any
    const core::Look* next{};
};

Around around(int stuck, std::span<const core::Look> looks) {
    Around at{.undecided = stuck};
    for (const core::Look& look : looks) {
        if (look.day > horizonDay) {
            at.next = &look;
            break;
        }
        at.rooted += look.rooted;
        at.lost += look.lost;
        at.undecided -= look.rooted + look.lost;
        at.lastLook = look.day;
    }
    return at;
}

bool isWatchedToHorizon(const Around& at) {
    return at.undecided == 0 || at.next != nullptr || at.lastLook == horizonDay;
}

std::optional<stats::Tray> countedTray(int rooted, int assessed) {
    if (assessed <= 0) return {};
    return stats::Tray{.successes = rooted, .trials = assessed};
}

std::optional<stats::Tray> asTheProgram(int stuck, std::span<const core::Look> looks) {
    const core::HorizonFate fate = core::fateAt(horizonDay, stuck, looks);
    return countedTray(fate.rooted, fate.assessed);
}

std::optional<stats::Tray> asTheProgramWatchedOnly(int stuck, std::span<const core::Look> looks) {
    return isWatchedToHorizon(around(stuck, looks)) ? asTheProgram(stuck, looks) : std::nullopt;
}

std::optional<stats::Tray> withoutAllUndecided(int stuck, std::span<const core::Look> looks) {
    const Around at = around(stuck, looks);
    return at.lastLook == horizonDay ? countedTray(at.rooted, stuck) : countedTray(at.rooted, at.rooted + at.lost);
}

std::optional<stats::Tray> asOfTheLastLook(int stuck, std::span<const core::Look> looks) {
    return countedTray(around(stuck, looks).rooted, stuck);
}

std::optional<stats::Tray> asOfTheLastLookWatchedOnly(int stuck, std::span<const core::Look> looks) {
    const Around at = around(stuck, looks);
    return isWatchedToHorizon(at) ? countedTray(at.rooted, stuck) : std::nullopt;
}

std::optional<stats::Tray> asOfTheNearestLook(int stuck, std::span<const core::Look> looks) {
    const Around at = around(stuck, looks);
    if (!isWatchedToHorizon(at)) return {};
    const bool isNextNearer = at.next != nullptr && at.next->day - horizonDay < horizonDay - at.lastLook;
    return countedTray(at.rooted + (isNextNearer ? at.next->rooted : 0), stuck);
}

// Roots found at the first look after the horizon are shared out by days: so many of them as there are days before the horizon in
// the interval, to the nearest whole cutting.
std::optional<stats::Tray> sharedByDays(int stuck, std::span<const core::Look> looks) {
    const Around at = around(stuck, looks);
    if (!isWatchedToHorizon(at)) return {};
    int before = 0;
    if (at.next != nullptr && at.lastLook < horizonDay) {
        const double share = static_cast<double>(horizonDay - at.lastLook) / (at.next->day - at.lastLook);
        before = static_cast<int>(std::lround(share * at.next->rooted));
    }
    return countedTray(at.rooted + before, stuck);
}

constexpr NamedRule rules[] = {
    {"as the program counts", asTheProgram},
    {"as the program counts, batches watched to the horizon only", asTheProgramWatchedOnly},
    {"without all that were undecided at the last look", withoutAllUndecided},
    {"as of the last look by the horizon", asOfTheLastLook},
    {"as of the last look by the horizon, watched only", asOfTheLastLookWatchedOnly},
    {"as of the look nearest the horizon, watched only", asOfTheNearestLook},
    {"roots across the horizon shared out by days, watched only", sharedByDays},
};

constexpr HorizonScene scenes[] = {
    {"both arms every 4 days", {4, 4}, 0},
    {"both arms every 7 days", {7, 7}, 0},
    {"first every 2 days, second every 7", {2, 7}, 0},
    {"both every 4 days, one batch in seven open", {4, 4}, 1.0 / 7},
};

struct Estimates {
    std::array<double, 2> rate{};
    std::array<std::vector<stats::Tray>, 2> trays;
};

std::optional<Estimates> estimatesBy(const NamedRule& rule, const Season& season) {
    Estimates estimates;
    for (std::size_t arm = 0; arm < 2; ++arm) {
        double rooted = 0, assessed = 0;
        for (const SimulatedTray& tray : season.arms[arm]) {
            const auto counted = rule.count(tray.stuck, tray.looks);
            if (!counted) continue;
            estimates.trays[arm].push_back(*counted);
            rooted += counted->successes;
            assessed += counted->trials;
        }
        if (assessed == 0) return {};
        estimates.rate[arm] = rooted / assessed;
    }
    return estimates;
}

double curveOf(const std::vector<SimulatedTray>& trays) {
    std::vector<stats::Observation> rows;
    for (const SimulatedTray& tray : trays) {
        int undecided = tray.stuck;
        double before = 0;
        const auto add = [&rows](double after, double by, int cause, int count) {
            if (count > 0)
                rows.push_back({.after = after, .by = by, .cause = cause, .weight = static_cast<double>(count)});
        };
        for (const core::Look& look : tray.looks) {
            add(before, look.day, 1, look.rooted);
            add(before, look.day, 2, look.lost);
            undecided -= look.rooted + look.lost;
            before = look.day;
        }
        add(before, std::numeric_limits<double>::infinity(), 0, undecided);
    }
    return stats::interpolatedShare(stats::competingRisksNpmle(rows).cause1, horizonDay);
}

void addErrors(const std::string& rule, const std::array<double, 2>& rate, const Season& season, const Cell& cell,
               Tally& tally) {
    // Errors of opposite sign at low and high rates would cancel in a mean over both.
    const double truth = season.plan.rate[1], middle = 0.5;
    if (truth < middle) tally.add(rule + ": low rate", cell, true, rate[1] - truth);
    if (truth > middle) tally.add(rule + ": high rate", cell, true, rate[1] - truth);
    tally.add(rule + ": difference", cell, true, rate[0] - rate[1] - (season.plan.rate[0] - season.plan.rate[1]));
}

}  // namespace

std::span<const NamedRule> horizonRules() {
    return rules;
}

std::span<const HorizonScene> horizonScenes() {
    return scenes;
}

void judgeHorizonRules(const Season& season, const Cell& cell, Tally& tally) {
    addErrors(curveAtHorizon, {curveOf(season.arms[0]), curveOf(season.arms[1])}, season, cell, tally);
    for (const NamedRule& rule : rules) {
        const auto estimates = estimatesBy(rule, season);
        if (!estimates) continue;
        addErrors(rule.name, estimates->rate, season, cell, tally);
        const stats::TrayInterval interval = stats::trayInterval(estimates->trays[1], nominalLevel);
        const double truth = season.plan.rate[1];
        if (interval.includesTrayVariation)
            tally.add(std::string(rule.name) + ": covers", cell,
                      interval.limits.low <= truth && truth <= interval.limits.high);
        if (estimates->trays[0].size() < 3 || estimates->trays[1].size() < 3) continue;
        const auto p = stats::trayGuardedTTest(estimates->trays[0], estimates->trays[1]).p;
        tally.add(std::string(rule.name) + ": differ", cell, p && *p < 0.05);
    }
}

}  // namespace calibration
