// SPDX-License-Identifier: MIT
#include "tests/calibration/studies.h"

#include "tests/calibration/horizon_rules.h"
#include "tests/calibration/judged_comparison.h"
#include "tests/calibration/judged_plants.h"
#include "tests/calibration/judged_rates.h"
#include "tests/calibration/judged_tests.h"
#include "tests/calibration/season.h"

namespace calibration {
namespace {

constexpr double apart = 0.25;
constexpr double openShare = 1.0 / 7;

SeasonPlan planOf(double correlation, int trays, stats::SeededRandom& random) {
    const int every = drawDaysBetweenLooks(random);
    const double rate = drawRate(random);
    return {.correlation = correlation,
            .trays = {trays, trays},
            .size = {},
            .rate = {rate, rate},
            .lookEvery = {every, every}};
}

// Rates 0.25 apart, the lower one from 0.1 to 0.6; either arm may be the better one.
void setApart(SeasonPlan& plan, stats::SeededRandom& random) {
    const double low = 0.1 + 0.5 * random.uniform();
    plan.rate = random.uniform() < 0.5 ? std::array{low, low + apart} : std::array{low + apart, low};
}

// Quick seasons: intervals of one arm and tests between two, arms equal in two of three, 0.25 apart in the third.
void judgeQuick(double correlation, int trays, int season, stats::SeededRandom& random, Tally& tally) {
    SeasonPlan plan = planOf(correlation, trays, random);
    const Truth truth = season % 3 == 2 ? Truth::Apart : Truth::Equal;
    if (truth == Truth::Apart) setApart(plan, random);
    const Season simulated = seasonOf(plan, random);
    if (truth == Truth::Equal) {
        judgeRatesAsCounted(simulated, tally);
        judgeRatesWithSpread(simulated, tally);
    }
    judgeTests(simulated, {.correlation = correlation, .trays = trays}, truth, random, tally);
}

void judgeLogitNormal(double correlation, int trays, stats::SeededRandom& random, Tally& tally) {
    SeasonPlan plan = planOf(correlation, trays, random);
    plan.spread = Spread::LogitNormal;
    const Season simulated = seasonOf(plan, random);
    Tally own;
    judgeRatesWithSpread(simulated, own);
    judgeTests(simulated, {.correlation = correlation, .trays = trays}, Truth::Equal, random, own);
    tally.mergeRenamed(own, logitNormal);
}

void judgeLopsided(const Lopsided& kind, double correlation, stats::SeededRandom& random, Tally& tally) {
    SeasonPlan plan = planOf(correlation, 0, random);
    plan.trays = kind.trays;
    for (std::size_t arm = 0; arm < 2; ++arm)
        plan.size[arm] = {.fewest = kind.sizes[arm][0], .most = kind.sizes[arm][1]};
    judgeTests(seasonOf(plan, random), {.correlation = correlation, .trays = kind.asTrays}, Truth::Equal, random,
               tally);
}

// Whole seasons: arms equal or of any two rates, looked at on the horizon or as it comes, in turn.
void judgeWhole(double correlation, int trays, int season, stats::SeededRandom& random, Tally& tally) {
    SeasonPlan plan = planOf(correlation, trays, random);
    if (season % 2 == 1) plan.rate[1] = drawRate(random);
    const bool isAsItComes = season % 4 >= 2;
    plan.looks = isAsItComes ? Looks::AsItComes : Looks::OnTheHorizon;
    if (isAsItComes) plan.openShare = openShare;
    const Season simulated = seasonOf(plan, random);
    const core::Comparison comparison = comparisonOf(simulated);
    const Truth truth = plan.rate[0] == plan.rate[1] ? Truth::Equal : Truth::Apart;
    if (!comparison.pairs.empty()) judgeComparison(simulated, comparison, truth, isAsItComes ? asItComes : "", tally);
}

void judgeScene(double correlation, int scene, stats::SeededRandom& random, Tally& tally) {
    const HorizonScene& kind = horizonScenes()[static_cast<std::size_t>(scene)];
    SeasonPlan plan = planOf(correlation, 4, random);
    plan.looks = Looks::AsItComes;
    plan.lookEvery = kind.lookEvery;
    plan.openShare = kind.openShare;
    judgeHorizonRules(seasonOf(plan, random), {.correlation = correlation, .trays = scene}, tally);
}

void addStudiesOf(double correlation, std::vector<Study>& studies) {
    const auto add = [&studies](int seasonsForOne, double cost, auto judge) {
        studies.push_back({.seasonsForOne = seasonsForOne, .cost = cost, .judge = std::move(judge)});
    };
    for (int trays = 1; trays <= mostTrays; ++trays) {
        add(1, 15 + 5 * trays, [=](int season, stats::SeededRandom& random, Tally& tally) {
            judgeWhole(correlation, trays, season, random, tally);
        });
        add(seasonsOfFiguresForOne, 0.6, [=](int season, stats::SeededRandom& random, Tally& tally) {
            judgeQuick(correlation, trays, season, random, tally);
        });
        if (correlation > 0 && trays >= 3)
            add(seasonsAsideForOne, 0.6, [=](int, stats::SeededRandom& random, Tally& tally) {
                judgeLogitNormal(correlation, trays, random, tally);
            });
    }
    add(1, 10, [=](int, stats::SeededRandom& random, Tally& tally) {
        judgeOneStationAnArm(seasonOf(planOf(correlation, 3, random), random), tally);
    });
    for (const Lopsided& kind : lopsided)
        add(seasonsAsideForOne, 0.6,
            [=](int, stats::SeededRandom& random, Tally& tally) { judgeLopsided(kind, correlation, random, tally); });
    for (int trays = 1; trays <= 2; ++trays)
        add(seasonsAsideForOne, 0.1, [=](int, stats::SeededRandom& random, Tally& tally) {
            judgePooledOverPlants(correlation, trays, random, tally);
        });
    for (int scene = 0; scene < static_cast<int>(horizonScenes().size()); ++scene)
        add(seasonsAsideForOne, 0.3,
            [=](int, stats::SeededRandom& random, Tally& tally) { judgeScene(correlation, scene, random, tally); });
}

}  // namespace

std::vector<Study> allStudies() {
    std::vector<Study> studies;
    for (const double correlation : correlations) addStudiesOf(correlation, studies);
    return studies;
}

}  // namespace calibration
