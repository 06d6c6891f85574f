// SPDX-License-Identifier: MIT
#include "tests/calibration/season.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "stats/numeric/normal_quantile.h"

namespace calibration {
namespace {

constexpr int earliestLook = 4, lastLook = 2 * horizonDay;
constexpr double spreadOfLogDays = 0.35, spreadOfLogDaysToLoss = 0.55;
constexpr double lostOfThoseThatNeverRoot = 0.5;
constexpr double mostLatecomers = 0.9;
constexpr int never = std::numeric_limits<int>::max();

int between(int first, int last, stats::SeededRandom& random) {
    return first + static_cast<int>(random.below(static_cast<std::uint64_t>(last - first + 1)));
}

struct Fate {
    int day{never};
    bool isRooted{};
};

int wholeDay(double day) {
    return static_cast<int>(std::ceil(std::clamp(day, 1.0, 1000.0)));
}

Fate fateOf(double share, double rate, const RootingDays& days, stats::SeededRandom& random) {
    const double byHorizon = days.distribution(horizonDay), chance = random.uniform();
    const double inside = 1 - random.uniform();  // above 0, at most 1
    if (chance < share)
        return {.day = std::min(horizonDay, wholeDay(days.quantile(byHorizon * inside))), .isRooted = true};
    if (random.uniform() < days.latecomers(rate)) {
        const double late = wholeDay(days.quantile(1 - (1 - byHorizon) * inside));
        return {.day = std::max(horizonDay + 1, static_cast<int>(late)), .isRooted = true};
    }
    if (random.uniform() >= lostOfThoseThatNeverRoot) return {};
    return {.day = wholeDay(days.medianDay * stats::portableExp(random.normal(0, spreadOfLogDaysToLoss))),
            .isRooted = false};
}

std::vector<int> lookDays(const SeasonPlan& plan, int every, stats::SeededRandom& random) {
    const bool isOnHorizon = plan.looks == Looks::OnTheHorizon;
    const int first =
        isOnHorizon ? earliestLook + (horizonDay - earliestLook) % every : earliestLook + between(0, every - 1, random);
    int last = isOnHorizon ? horizonDay : lastLook;
    if (plan.openShare > 0 && random.uniform() < plan.openShare) last = between(7, horizonDay - 1, random);
    std::vector<int> result{first};
    for (int day = first + every; day <= last; day += every) result.push_back(day);
    return result;
}

SimulatedTray trayOf(const SeasonPlan& plan, std::size_t arm, double share, const RootingDays& days,
                     stats::SeededRandom& random) {
    SimulatedTray tray{
        .stuck = between(plan.size[arm].fewest, plan.size[arm].most, random), .share = share, .looks = {}};
    std::vector<core::Look> looks;
    for (const int day : lookDays(plan, plan.lookEvery[arm], random)) looks.push_back({.day = day});
    int undecided = tray.stuck;
    for (int cutting = 0; cutting < tray.stuck; ++cutting) {
        const Fate fate = fateOf(share, plan.rate[arm], days, random);
        if (fate.isRooted && fate.day <= horizonDay) ++tray.rootedByHorizon;
        const auto seen = std::ranges::lower_bound(looks, fate.day, {}, &core::Look::day);
        if (seen == looks.end()) continue;
        ++(fate.isRooted ? seen->rooted : seen->lost);
    }
    for (const core::Look& look : looks) {
        if (undecided == 0) break;  // nobody looks at an empty tray
        tray.looks.push_back(look);
        undecided -= look.rooted + look.lost;
    }
    return tray;
}

}  // namespace

double RootingDays::distribution(double day) const {
    if (day <= 0) return 0;
    return 0.5 * std::erfc(-std::log(day / medianDay) / spreadOfLogDays / std::numbers::sqrt2);
}

double RootingDays::quantile(double share) const {
    if (share <= 0) return 0;
    if (share >= 1) return std::numeric_limits<double>::infinity();
    return medianDay * stats::portableExp(spreadOfLogDays * stats::normalQuantile(share));
}

double RootingDays::latecomers(double rate) const {
    // As many as the same distribution would have beyond the horizon, where there are so many left.
    const double byHorizon = distribution(horizonDay);
    return std::min(mostLatecomers, rate / byHorizon * (1 - byHorizon) / (1 - rate));
}

double RootingDays::everRooted(double rate) const {
    return rate + (1 - rate) * latecomers(rate);
}

double RootingDays::shareRooted(double rate, double day) const {
    const double byHorizon = distribution(horizonDay), byDay = distribution(day);
    if (day <= horizonDay) return rate * byDay / byHorizon;
    return rate + (1 - rate) * latecomers(rate) * (byDay - byHorizon) / (1 - byHorizon);
}

std::array<std::vector<stats::Tray>, 2> Season::traysSeen() const {
    std::array<std::vector<stats::Tray>, 2> trays;
    for (std::size_t arm = 0; arm < 2; ++arm) {
        for (const SimulatedTray& tray : arms[arm]) {
            const core::HorizonFate fate = core::fateAt(horizonDay, tray.stuck, tray.looks);
            if (fate.assessed > 0) trays[arm].push_back({.successes = fate.rooted, .trials = fate.assessed});
        }
    }
    return trays;
}

Season seasonOf(const SeasonPlan& plan, stats::SeededRandom& random) {
    constexpr double earliestMedian = 12, latestMedian = 21;
    Season season{.plan = plan, .days = {}, .arms = {}};
    season.days.medianDay = earliestMedian + (latestMedian - earliestMedian) * random.uniform();
    const ShareDistribution shares1(plan.rate[0], plan.correlation, plan.spread);
    const ShareDistribution shares2 =
        plan.rate[1] == plan.rate[0] ? shares1 : ShareDistribution(plan.rate[1], plan.correlation, plan.spread);
    for (std::size_t arm = 0; arm < 2; ++arm) {
        const ShareDistribution& shares = arm == 0 ? shares1 : shares2;
        for (int tray = 0; tray < plan.trays[arm]; ++tray)
            season.arms[arm].push_back(trayOf(plan, arm, shares.draw(random), season.days, random));
    }
    return season;
}

double drawRate(stats::SeededRandom& random) {
    const int tenth = between(1, 10, random);
    return tenth == 10 ? 0.95 : tenth / 10.0;
}

int drawDaysBetweenLooks(stats::SeededRandom& random) {
    return between(2, 7, random);
}

}  // namespace calibration
