// SPDX-License-Identifier: MIT
#include "tests/calibration/judged_plans.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <iomanip>
#include <ostream>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "stats/planning/predictive_count.h"
#include "tests/calibration/season.h"
#include "tests/calibration/share_distribution.h"
#include "tests/calibration/studies.h"

namespace calibration {
namespace {

constexpr std::array<double, 7> trueRates{0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};
constexpr double bandLow = 0.6, bandHigh = 0.9;
constexpr int otherPlants = 6, batchesOfOthers = 3;
constexpr int mostAdvised = 2000;  // a chance is not followed further

std::vector<stats::Tray> batchesOf(double rate, double correlation, int batches, stats::SeededRandom& random) {
    const ShareDistribution shares(rate, correlation, Spread::Beta);
    std::vector<stats::Tray> trays;
    for (int batch = 0; batch < batches; ++batch)
        trays.push_back({random.binomial(plannedTray, shares.draw(random)), plannedTray});
    return trays;
}

/// Of `wanted` or more, where rate and correlation are known: trays by plain convolution.
double trueChance(int wanted, int stuck, double rate, double correlation) {
    std::vector<double> law{1};
    for (int left = stuck; left > 0; left -= plannedTray) {
        const auto tray = stats::betaBinomialProbabilities(std::min(left, plannedTray), rate, correlation);
        std::vector<double> next(law.size() + tray.size() - 1);
        for (std::size_t s = 0; s < law.size(); ++s)
            for (std::size_t x = 0; x < tray.size(); ++x) next[s + x] += law[s] * tray[x];
        law = std::move(next);
    }
    double enough = 0;
    for (std::size_t s = static_cast<std::size_t>(wanted); s < law.size(); ++s) enough += law[s];
    return enough;
}

int numberOfSeer(int wanted, double rate, double correlation) {
    int stuck = wanted;
    while (trueChance(wanted, stuck, rate, correlation) < plannedAssurance) ++stuck;
    return stuck;
}

int numberAdvised(const PlanScene& scene, double rate, stats::SeededRandom& random) {
    std::vector<std::vector<stats::Tray>> logbook{batchesOf(rate, scene.correlation, scene.pastBatches, random)};
    for (int plant = 0; plant < otherPlants; ++plant)
        logbook.push_back(batchesOf(0.2 + 0.7 * random.uniform(), scene.correlation, batchesOfOthers, random));
    stats::PastBatches past{.batches = logbook.front(), .spread = stats::pooledSpread(logbook).law, .prior = {}};
    if (scene.pastBatches == 0) past.prior = stats::ratePriorOfBand(bandLow, bandHigh);
    const auto count = stats::countForPastBatches(scene.wanted, past, plannedTray, plannedAssurance).count;
    return std::min(mostAdvised, count.value_or(mostAdvised));
}

}  // namespace

PlanFigures judgePlans(const PlanScene& scene, int seasonsOfEachRate, std::uint64_t seed) {
    stats::SeededRandom random(seed);
    PlanFigures figures{.scene = scene};
    double sum = 0, squares = 0, above = 0;
    for (const double listed : trueRates) {
        const int seerOfListed = numberOfSeer(scene.wanted, listed, scene.correlation);
        double aboveHere = 0;
        for (int season = 0; season < seasonsOfEachRate; ++season) {
            const bool isInBand = scene.pastBatches == 0;
            const double rate = isInBand ? bandLow + (bandHigh - bandLow) * random.uniform() : listed;
            const int seer = isInBand ? numberOfSeer(scene.wanted, rate, scene.correlation) : seerOfListed;
            const int advised = numberAdvised(scene, rate, random);
            const double enough = trueChance(scene.wanted, advised, rate, scene.correlation);
            sum += enough;
            squares += enough * enough;
            aboveHere += static_cast<double>(advised) / seer;
        }
        above += aboveHere;
        figures.mostAbove = std::max(figures.mostAbove, aboveHere / seasonsOfEachRate);
    }
    figures.seasons = seasonsOfEachRate * static_cast<int>(trueRates.size());
    figures.enough = sum / figures.seasons;
    figures.enoughError =
        1.96 * std::sqrt((squares / figures.seasons - figures.enough * figures.enough) / figures.seasons);
    figures.aboveSeer = above / figures.seasons;
    return figures;
}

std::vector<PlanScene> allPlanScenes() {
    std::vector<PlanScene> scenes;
    for (const int wanted : {10, 24})
        for (const double correlation : correlations)
            for (const int batches : {0, 1, 3, 10, 20})
                scenes.push_back({.wanted = wanted, .correlation = correlation, .pastBatches = batches});
    return scenes;
}

void writePlansPage(int seasonsOfEachRate, std::uint64_t seed, std::ostream& out) {
    out << "# How often a plan gives enough\n\n"
        << "Made by `strikebook-plan-calibration --seasons " << seasonsOfEachRate << " --seed " << seed << "`.\n\n"
        << "Seasons are invented: a plant with a true rate (0.3 to 0.9) and cuttings that share a tray's luck, past "
           "batches of "
        << plannedTray
        << " of it, six other plants of three batches in the logbook. The program advises a number for so many plants "
           "with\n"
        << "an assurance of " << plannedAssurance
        << "; then the chance that this number really gives enough is worked out from the truth. The seer knows the "
        << "true rate and the true correlation and sticks the smallest number that has the assurance.\n"
        << "Without past batches the plan rests on a reference band of 60 to 90 of 100, and the true rate lies "
           "anywhere in it.\n\n"
        << "| wanted | correlation | past cuttings | enough in | ± | advised over the seer's | at the rate where it is "
           "most |\n"
        << "| --- | --- | --- | --- | --- | --- | --- |\n";
    for (const PlanScene& scene : allPlanScenes()) {
        const PlanFigures figures = judgePlans(scene, seasonsOfEachRate, seed);
        out << "| " << scene.wanted << " | " << scene.correlation << " | "
            << (scene.pastBatches == 0 ? "none, band" : std::to_string(scene.pastBatches * plannedTray)) << " | "
            << std::fixed << std::setprecision(3) << figures.enough << " | " << figures.enoughError << " | "
            << std::setprecision(2) << figures.aboveSeer << " | " << figures.mostAbove << " |\n"
            << std::defaultfloat << std::setprecision(6);
    }
}

}  // namespace calibration
