// SPDX-License-Identifier: MIT
#include "tests/calibration/judged_comparison.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <optional>
#include <string>

#include "stats/overdispersion/tray_weighted_t_test.h"
#include "tests/calibration/season_records.h"

namespace calibration {
namespace {

constexpr std::array<double, 6> chanceEdges{0.025, 0.1, 0.5, 0.9, 0.975, 1.0};
constexpr std::array<const char*, 6> chanceNames{"below 0.025", "0.025 to 0.1", "0.1 to 0.5",
                                                 "0.5 to 0.9",  "0.9 to 0.975", "above 0.975"};

class Judge {
  public:
    Judge(const Cell& cell, std::string_view after, Tally& tally) : cell_(cell), after_(after), tally_(tally) {}

    void covers(std::string_view thing, const core::Limits& limits, double truth) {
        constexpr double rounding = 1e-12;
        tally_.add(std::string(thing) + after_, cell_,
                   limits.low <= truth + rounding && truth <= limits.high + rounding, limits.high - limits.low);
    }
    void says(std::string_view thing, bool isSaid) { tally_.add(std::string(thing) + after_, cell_, isSaid); }

  private:
    Cell cell_;
    std::string after_;
    Tally& tally_;
};

void judgeDifference(const Season& season, const core::Comparison& comparison, Judge& judge) {
    const core::Pair& pair = comparison.pairs.front();
    const auto rateOf = [&](int arm) {
        return season.plan.rate[comparison.arms[static_cast<std::size_t>(arm)].name == firstMethod ? 0 : 1];
    };
    const double first = rateOf(pair.first), second = rateOf(pair.second);
    if (!pair.difference) return;
    judge.covers("Miettinen-Nurminen difference", pair.difference->miettinenNurminen, first - second);
    judge.covers("Newcombe difference", pair.difference->newcombe, first - second);
    if (pair.difference->withSpread)
        judge.covers("difference with spread", *pair.difference->withSpread, first - second);
    judge.covers("Koopman ratio", pair.koopman, first / second);
    judge.covers("exact odds ratio", pair.oddsRatioExact, first / (1 - first) / (second / (1 - second)));
    if (first == second) return;
    const auto range =
        std::ranges::find_if(chanceEdges, [&pair](double edge) { return pair.probabilityFirstBetter <= edge; });
    judge.says(chanceNames[static_cast<std::size_t>(range - chanceEdges.begin())], first > second);
}

// The day by which a share `target` of all stuck has rooted, by halving.
double dayBy(const RootingDays& days, double rate, double target) {
    double low = 0, high = 8 * horizonDay;
    for (int halving = 0; halving < 50; ++halving) {
        const double day = (low + high) / 2;
        (days.shareRooted(rate, day) < target ? low : high) = day;
    }
    return high;
}

void judgeFit(const Season& season, const core::FittedSpeed& fit, Judge& judge) {
    const double rate = season.plan.rate[0], ever = season.days.everRooted(rate);
    if (fit.rootingShareLimits) judge.covers("fitted curve: share that roots", *fit.rootingShareLimits, ever);
    judge.covers("fitted curve: median day of those that root", fit.medianDayLimits,
                 dayBy(season.days, rate, ever / 2));
}

void judgeDays(const Season& season, const core::Arm& arm, Judge& judge) {
    const double rate = season.plan.rate[0];
    for (const core::DayShare& share : arm.rootedByDay) {
        if (share.band && share.day >= season.days.medianDay && share.day <= horizonDay)
            judge.covers("band of the rooted-by-day curve", *share.band, season.days.shareRooted(rate, share.day));
    }
    if (arm.ofStuck.p50Interval && rate > 0.5)
        judge.covers("median day of all stuck", *arm.ofStuck.p50Interval, dayBy(season.days, rate, 0.5));
    // Of those that root while somebody watches: to the horizon, or for good.
    const bool isWatchedToTheEnd = season.plan.looks == Looks::AsItComes;
    const double watched = isWatchedToTheEnd ? season.days.everRooted(rate) : rate;
    if (arm.ofRooted.p50Interval)
        judge.covers("median day of those that root", *arm.ofRooted.p50Interval, dayBy(season.days, rate, watched / 2));
    if (isWatchedToTheEnd && !arm.speed.fits.empty()) judgeFit(season, arm.speed.fits.front(), judge);
}

// Nothing where the test has no p, no tray differing from its arm's others.
std::optional<bool> isFoundByGuardedT(const Season& season) {
    const auto arms = season.traysSeen();
    if (std::ssize(arms[0]) < fewestBatches || std::ssize(arms[1]) < fewestBatches) return false;
    const std::optional<double> p = stats::trayGuardedTTest(arms[0], arms[1]).p;
    if (!p) return {};
    return *p < 0.05;
}

bool isBetter(const core::Pair& pair) {
    return pair.verdict == core::Verdict::FirstBetter || pair.verdict == core::Verdict::SecondBetter;
}

}  // namespace

core::Comparison comparisonOf(const Season& season) {
    const core::ComparisonQuestion question{
        .horizonDay = horizonDay, .bootstrapReplicates = bootstrapDraws, .permutations = 0};
    return core::compare(question, shelvesOfSeason(), recordsOf(season)).value();
}

void judgeComparison(const Season& season, const core::Comparison& comparison, Truth truth, std::string_view after,
                     Tally& tally) {
    const Cell cell{.correlation = season.plan.correlation, .trays = season.plan.trays[0]};
    Judge judge(cell, after, tally);
    const core::Arm& arm = comparison.arms[comparison.arms.front().name == firstMethod ? 0 : 1];
    const core::Pair& pair = comparison.pairs.front();
    if (arm.asCounted) judge.covers("rate as counted", *arm.asCounted, season.plan.rate[0]);
    if (arm.withSpread) judge.covers("rate with spread", *arm.withSpread, season.plan.rate[0]);
    judgeDays(season, arm, judge);
    judgeDifference(season, comparison, judge);
    judge.says(thingOf("pooled Boschloo", truth), pair.boschloo < 0.05);
    judge.says(thingOf("what the program says", truth), isBetter(pair));
    if (const auto isFound = isFoundByGuardedT(season)) tally.add(wholeProgramAgrees, cell, *isFound == isBetter(pair));
}

void judgeOneStationAnArm(const Season& season, Tally& tally) {
    const core::ComparisonQuestion question{.horizonDay = horizonDay, .bootstrapReplicates = 0, .permutations = 0};
    const auto records = recordsOf(season, Stations::OneAnArm);
    const core::Comparison comparison = core::compare(question, shelvesOfSeason(), records).value();
    const core::Pair& pair = comparison.pairs.front();
    const bool isToldWhy = pair.verdict == core::Verdict::CannotTellMethodFromStation &&
                           pair.inWords.find("can't be told apart") != std::string::npos;
    tally.add("one station an arm: said that it can't be told",
              {.correlation = season.plan.correlation, .trays = season.plan.trays[0]},
              isToldWhy || pair.inWords.find("too early to speak of rates") != std::string::npos);
}

std::span<const char* const> chanceRanges() {
    return chanceNames;
}

}  // namespace calibration
