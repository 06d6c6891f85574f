// SPDX-License-Identifier: MIT
// How often the interval of what a rooted plant costs holds the truth, in simulated seasons that go the whole way from prices and counts to
// the answer. The figures stand in docs/costs.md; STRIKEBOOK_SEASONS=1000 before the program's name makes so many of each kind.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdlib>
#include <iomanip>
#include <iostream>
#include <map>
#include <sstream>
#include <string>

#include "stats/numeric/seeded_random.h"
#include "tests/core/money_examples.h"

namespace {

using examples::ownedBy;

constexpr std::uint64_t seed = 20260103;
constexpr std::array trueRates{0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};
constexpr std::array correlations{0.0, 0.05, 0.1, 0.2};
constexpr std::array batchNumbers{4, 6, 8, 12};

int seasonsOfEachKind() {
    constexpr int usual = 48;
    const char* asked = std::getenv("STRIKEBOOK_SEASONS");
    return asked == nullptr ? usual : std::max(usual, std::atoi(asked));
}

/// "0.05": streams keep what the last figure was set to.
std::string twoDecimals(double value) {
    std::ostringstream text;
    text << std::fixed << std::setprecision(2) << value;
    return text.str();
}

struct TrueSeason {
    std::vector<core::PlantId> plants{support::hebe};
    std::map<std::pair<core::MethodId, core::PlantId>, double> rates{};
    double correlation{};
    int batches{};  // of each plant by each method
};

double ofOneTray(double rate, double correlation, stats::SeededRandom& random) {
    if (correlation == 0) return rate;
    const double size = (1 - correlation) / correlation;
    return random.beta(rate * size, (1 - rate) * size);
}

/// Batches of 10 to 30 in tubs that cost a day and in trays that cost a pack, looked at on days 14 and 28.
core::Records simulated(const TrueSeason& season, stats::SeededRandom& random) {
    std::vector<core::BatchRecord> batches;
    for (const auto& [cell, rate] : season.rates) {
        for (int i = 0; i < season.batches; ++i) {
            const bool isTub = cell.first == support::aeratedWater, isFirst = i % 2 == 0;
            const core::StationId station = isTub ? (isFirst ? support::tubNorth : support::tubSouth)
                                                  : (isFirst ? support::benchWest : support::benchEast);
            const int stuck = 10 + static_cast<int>(random.below(21));
            const int rooted = random.binomial(stuck, ofOneTray(rate, season.correlation, random));
            batches.push_back(support::aBatch()
                                  .of(cell.second)
                                  .at(station)
                                  .stuck(stuck)
                                  .stuckOn(examples::dayAfterSticking(7 * i))
                                  .looked(14, {.rooted = rooted / 2})
                                  .looked(28, {.rooted = rooted - rooted / 2, .lost = stuck - rooted}));
        }
    }
    core::Records records = support::recordsOf(std::move(batches));
    records.shelves.prices = {ownedBy(examples::lasting("pump", 73, 2), support::aeratedWater),
                              ownedBy(examples::usedUp("mix", 9, 60, core::PriceBasis::Cutting), support::mediaTray),
                              examples::workTime("a look", 3, core::PriceBasis::Check), examples::hourOfWork(12)};
    return records;
}

struct Coverage {
    int asked{};
    int held{};
    int tooDear{};  // the truth lies below the interval

    void take(const core::CostOfEach& each, double truth) {
        ++asked;
        held += each.limits.low <= truth && truth <= each.limits.high ? 1 : 0;
        tooDear += truth < each.limits.low ? 1 : 0;
    }
    void take(const Coverage& other) {
        asked += other.asked;
        held += other.held;
        tooDear += other.tooDear;
    }
    [[nodiscard]] double share() const { return static_cast<double>(held) / asked; }
    /// Two standard errors of a share of 0.95.
    [[nodiscard]] double error() const { return 2 * std::sqrt(0.95 * 0.05 / asked); }
};

std::ostream& operator<<(std::ostream& out, const Coverage& coverage) {
    return out << twoDecimals(100 * coverage.share()) << " % of " << coverage.asked << " (too dear in "
               << twoDecimals(100.0 * coverage.tooDear / coverage.asked) << " %)";
}

/// Both methods of one season after another, at rates that go through all pairs.
Coverage coverageOf(double correlation, int batches, int seasons, stats::SeededRandom& random,
                    std::map<double, Coverage>& byRate) {
    Coverage sum;
    for (int i = 0; i < seasons; ++i) {
        const double tub = trueRates[static_cast<std::size_t>(i) % trueRates.size()],
                     tray = trueRates[static_cast<std::size_t>(random.below(trueRates.size()))];
        const TrueSeason season{
            .rates = {{{support::aeratedWater, support::hebe}, tub}, {{support::mediaTray, support::hebe}, tray}},
            .correlation = correlation,
            .batches = batches};
        const core::Worth worth =
            examples::worthOf(simulated(season, random), {.bootstrapReplicates = 0}, examples::dayAfterSticking(400));
        for (const core::WorthOfMethod& method : worth.methods) {
            const double rate = method.method == support::aeratedWater ? tub : tray;
            Coverage one;
            one.take(method.perRooted, method.perCutting.total() / rate);
            byRate[rate].take(one);
            sum.take(one);
        }
    }
    return sum;
}

TEST(WorthCoverage, TheCostOfARootedPlantLiesInItsIntervalInNinetyThreeSeasonsOfAHundred) {
    const int seasons = seasonsOfEachKind();
    stats::SeededRandom random(seed);
    std::cout << "seed " << seed << '\n';
    std::map<double, Coverage> byRate;
    std::map<int, Coverage> byBatches;
    Coverage all;
    for (const double correlation : correlations) {
        Coverage here;
        for (const int batches : batchNumbers) {
            const Coverage one = coverageOf(correlation, batches, seasons, random, byRate);
            std::cout << "correlation " << twoDecimals(correlation) << ", " << batches << " batches: " << one << '\n';
            EXPECT_GE(one.share() + one.error(), 0.93) << correlation << ", " << batches << " batches";
            byBatches[batches].take(one);
            here.take(one);
        }
        EXPECT_GE(here.share(), 0.93) << "correlation " << correlation;
        all.take(here);
    }
    for (const auto& [batches, coverage] : byBatches) {
        std::cout << batches << " batches: " << coverage << '\n';
        EXPECT_GE(coverage.share(), 0.93) << batches << " batches";
    }
    for (const auto& [rate, coverage] : byRate) {
        std::cout << "true rate " << rate << ": " << coverage << '\n';
        EXPECT_GE(coverage.share() + coverage.error(), 0.93) << "true rate " << rate;
    }
    std::cout << "in all " << all << '\n';
    EXPECT_GE(all.share(), 0.93);
}

TEST(WorthCoverage, HoldsOverAMixOfPlantsToo) {
    const int seasons = seasonsOfEachKind();
    stats::SeededRandom random(seed + 1);
    const std::vector<core::PlantId> plants{support::hebe, support::deutzia, core::PlantId{103}, core::PlantId{104}};
    Coverage all;
    for (const double correlation : correlations) {
        Coverage here;
        for (int i = 0; i < seasons; ++i) {
            TrueSeason season{.plants = plants, .correlation = correlation, .batches = 1 + i % 3};
            for (const core::PlantId plant : plants)
                for (const core::MethodId method : {support::aeratedWater, support::mediaTray})
                    season.rates[{method, plant}] = trueRates[random.below(trueRates.size())];
            const core::Records records = simulated(season, random);
            const core::Worth worth =
                examples::worthOf(records, {.bootstrapReplicates = 0}, examples::dayAfterSticking(400));
            std::map<core::PlantId, double> stuckOf;
            for (const core::BatchRecord& record : records.batches) stuckOf[record.batch.plant] += record.batch.stuck;
            for (const core::WorthOfMethod* method : {&worth.pairs.front().dear, &worth.pairs.front().cheap}) {
                double rate = 0, stuck = 0;
                for (const auto& [plant, count] : stuckOf) {
                    rate += count * season.rates[{method->method, plant}];
                    stuck += count;
                }
                here.take(method->perRooted, method->perCutting.total() * stuck / rate);
            }
        }
        std::cout << "four plants, correlation " << twoDecimals(correlation) << ": " << here << '\n';
        EXPECT_GE(here.share() + here.error(), 0.93) << "correlation " << correlation;
        all.take(here);
    }
    std::cout << "four plants, in all " << all << '\n';
    EXPECT_GE(all.share(), 0.93);
}

}  // namespace
