// SPDX-License-Identifier: MIT
// The chances of worthIt() against a million draws from the same counts, and its number of further cuttings against simulated seasons that have
// them. All figures are invented.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <limits>

#include "core/comparison/spread.h"
#include "core/money/worth_of_pair.h"
#include "stats/numeric/seeded_random.h"
#include "tests/core/money_examples.h"

namespace {

using examples::ownedBy;

struct Trays {
    core::MethodId method{};
    std::vector<stats::Tray> counts{};
};

core::Records recordsOfTrays(const std::vector<Trays>& methods, std::vector<core::Price> prices) {
    std::vector<core::BatchRecord> batches;
    for (const Trays& trays : methods) {
        const bool isTub = trays.method == support::aeratedWater;
        for (std::size_t i = 0; i < trays.counts.size(); ++i) {
            const stats::Tray& count = trays.counts[i];
            batches.push_back(support::aBatch()
                                  .at(i % 2 == 0 ? (isTub ? support::tubNorth : support::benchWest)
                                                 : (isTub ? support::tubSouth : support::benchEast))
                                  .stuck(count.trials)
                                  .looked(isTub ? 14 : 20, {.rooted = count.successes})
                                  .looked(28, {.lost = count.trials - count.successes}));
        }
    }
    core::Records records = support::recordsOf(std::move(batches));
    records.shelves.prices = std::move(prices);
    return records;
}

core::Price ofEachCutting(double amount, core::MethodId method) {
    return ownedBy(examples::usedUp("all of it", amount, 1, core::PriceBasis::Cutting), method);
}

/// The posterior of a rate from its definition: Jeffreys's prior times beta-binomial probabilities on a fine grid, for one correlation after
/// another; drawn from by the inverse of its sum.
class RateByChance {
  public:
    RateByChance(const std::vector<stats::Tray>& trays, const std::vector<stats::WeightedCorrelation>& spread) {
        for (const stats::WeightedCorrelation& each : spread) sums_.push_back(sumOver(trays, each.correlation));
    }

    [[nodiscard]] double draw(stats::SeededRandom& random) const {
        const std::vector<double>& sum = sums_[random.below(sums_.size())];  // all are equally likely
        const auto above = std::upper_bound(sum.begin(), sum.end(), random.uniform() * sum.back());
        const double place = static_cast<double>(above - sum.begin()) + random.uniform();
        const double sine = std::sin(place / cells * std::acos(0.0));
        return sine * sine;
    }

  private:
    static constexpr int cells = 4000;

    static std::vector<double> sumOver(const std::vector<stats::Tray>& trays, double correlation) {
        std::vector<double> sum;
        double before = 0;
        for (int i = 0; i < cells; ++i) {
            const double sine = std::sin((i + 0.5) / cells * std::acos(0.0)), rate = sine * sine;
            const double size = (1 - correlation) / std::max(correlation, 1e-9), a = rate * size, b = size - a;
            double logarithm = 0;
            for (const stats::Tray& tray : trays)
                logarithm += std::lgamma(tray.successes + a) - std::lgamma(a) +
                             std::lgamma(tray.trials - tray.successes + b) - std::lgamma(b) -
                             std::lgamma(tray.trials + size) + std::lgamma(size);
            before += std::exp(logarithm + 60);
            sum.push_back(before);
        }
        return sum;
    }

    std::vector<std::vector<double>> sums_;
};

/// The first number of batches from which on the tub has cost less than as many plants by tray; infinite: none.
double paidAfter(const core::WorthOfPair& pair, double dearRate, double cheapRate) {
    const double dear = pair.dear.cuttingsPerBatch * dearRate, cheap = pair.cheap.cuttingsPerBatch * cheapRate;
    const double once = pair.dear.upFront - pair.cheap.upFront,
                 saved = pair.cheap.perBatch * dear / cheap - pair.dear.perBatch;
    return saved > 0 ? std::max(1.0, std::floor(once / saved) + 1) : std::numeric_limits<double>::infinity();
}

TEST(WorthByChance, AgreesWithAMillionDrawsFromTheSameCounts) {
    constexpr int draws = 1'000'000;
    constexpr std::uint64_t seedOfDraws = 20260105;
    const Trays tubs{support::aeratedWater, {{17, 20}, {15, 20}, {18, 24}, {13, 18}}},
        trays{support::mediaTray, {{11, 20}, {8, 20}, {12, 24}, {10, 20}}};
    const core::Records records = recordsOfTrays(
        {tubs, trays}, {ownedBy(examples::lasting("tubs", 60, 2), support::aeratedWater),
                        ofEachCutting(0.16, support::aeratedWater), ofEachCutting(0.15, support::mediaTray)});
    const core::WorthOfPair pair = examples::worthOf(records, {.worthOfADay = 0.01}).pairs.front();
    ASSERT_EQ(pair.dear.method, support::aeratedWater);
    ASSERT_TRUE(pair.breakEven && pair.breakEven->low && pair.breakEven->middle);
    const auto spread = core::pooledSpreadOf(records.batches, 28, 0.95).law;
    const RateByChance tubRate(tubs.counts, spread), trayRate(trays.counts, spread);
    stats::SeededRandom random(seedOfDraws);
    double pays = 0, paysWithDays = 0, byLow = 0, byMiddle = 0, ever = 0;
    for (int i = 0; i < draws; ++i) {
        const double tub = tubRate.draw(random), tray = trayRate.draw(random);
        const double after = paidAfter(pair, tub, tray);
        pays += pair.line.dear / tub < pair.line.cheap / tray ? 1.0 / draws : 0;
        paysWithDays += pair.line.dear / tub - pair.line.shift < pair.line.cheap / tray ? 1.0 / draws : 0;
        byLow += after <= *pair.breakEven->low ? 1.0 / draws : 0;
        byMiddle += after <= *pair.breakEven->middle ? 1.0 / draws : 0;
        ever += std::isfinite(after) ? 1.0 / draws : 0;
    }
    constexpr double fourErrors = 4 * 0.5 / 1000;
    std::cout << "seed " << seedOfDraws << ", pays " << pair.chanceDearPaysWithoutDays << " drawn " << pays
              << ", with days " << pair.chanceDearPays << " drawn " << paysWithDays << ", ever "
              << pair.breakEven->chanceEver << " drawn " << ever << '\n';
    EXPECT_NEAR(pair.chanceDearPaysWithoutDays, pays, fourErrors);
    EXPECT_NEAR(pair.chanceDearPays, paysWithDays, fourErrors);
    EXPECT_NEAR(pair.breakEven->chanceEver, ever, fourErrors);
    EXPECT_GE(byLow, 0.025 - fourErrors);  // the first whole number with that chance
    EXPECT_LE(byLow, 0.025 + 0.02);
    EXPECT_GE(byMiddle, 0.5 - fourErrors);
    EXPECT_LE(byMiddle, 0.5 + 0.02);
}

std::vector<stats::Tray> traysByChance(double rate, double correlation, int cuttings, stats::SeededRandom& random) {
    constexpr int size = 20;
    const double scale = (1 - correlation) / correlation;
    std::vector<stats::Tray> trays;
    for (int left = cuttings; left > 0; left -= size)
        trays.push_back(
            {.successes = random.binomial(size, random.beta(rate * scale, (1 - rate) * scale)), .trials = size});
    return trays;
}

struct NotYet {
    const char* what;
    std::vector<int> tubs, trays;  // rooted of 20 in each batch
    double tub, tray;              // costs of a cutting
};

std::vector<stats::Tray> ofTwenty(const std::vector<int>& rooted) {
    std::vector<stats::Tray> trays;
    for (const int each : rooted) trays.push_back({.successes = each, .trials = 20});
    return trays;
}

TEST(WorthByChance, SoManyMoreCuttingsWouldTellAboutFourTimesInFive) {
    constexpr int seasons = 250;
    stats::SeededRandom random(20260106);
    for (const NotYet& season : {NotYet{"dearer ahead", {16, 13, 15, 14}, {9, 12, 10, 10}, 0.30, 0.26},
                                 NotYet{"cheaper ahead", {13, 12, 14, 11}, {12, 13, 10, 12}, 0.30, 0.24},
                                 NotYet{"few rooted", {5, 7, 4, 6, 6}, {3, 2, 5, 3, 4}, 0.20, 0.17}}) {
        const std::vector<core::Price> prices{ofEachCutting(season.tub, support::aeratedWater),
                                              ofEachCutting(season.tray, support::mediaTray)};
        const core::Worth now = examples::worthOf(
            recordsOfTrays(
                {{support::aeratedWater, ofTwenty(season.tubs)}, {support::mediaTray, ofTwenty(season.trays)}}, prices),
            {.bootstrapReplicates = 0});
        const core::WorthOfPair& pair = now.pairs.front();
        ASSERT_EQ(pair.verdict, core::WorthVerdict::CannotTellYet) << season.what;
        ASSERT_TRUE(pair.moreCuttings) << season.what;
        int told = 0;
        for (int i = 0; i < seasons; ++i) {
            const core::WorthOfPair then =
                examples::worthOf(
                    recordsOfTrays(
                        {{support::aeratedWater, traysByChance(pair.dear.strike.rate, now.correlation,
                                                               pair.dear.strike.of + *pair.moreCuttings, random)},
                         {support::mediaTray, traysByChance(pair.cheap.strike.rate, now.correlation,
                                                            pair.cheap.strike.of + *pair.moreCuttings, random)}},
                        prices),
                    {.bootstrapReplicates = 0})
                    .pairs.front();
            told += then.verdict == core::WorthVerdict::CannotTellYet ? 0 : 1;
        }
        const double share = static_cast<double>(told) / seasons;
        std::cout << season.what << ": " << *pair.moreCuttings << " more of each, correlation " << now.correlation
                  << ", told in " << 100 * share << " %\n";
        EXPECT_GE(share, 0.7) << season.what;
        EXPECT_LE(share, 0.92) << season.what;
    }
}

}  // namespace
