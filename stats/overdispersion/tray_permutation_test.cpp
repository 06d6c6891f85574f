// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_permutation_test.h"

#include <cmath>
#include <vector>

#include "stats/numeric/label_arrangements.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

constexpr double kTie = 1e-10;

class PooledRates {
  public:
    explicit PooledRates(std::vector<Tray> trays) : trays_(std::move(trays)) {
        for (const Tray& tray : trays_) {
            successes_ += tray.successes;
            trials_ += tray.trials;
        }
    }

    // |rate of the trays with the label - rate of those without|
    [[nodiscard]] double distance(const std::vector<char>& isFirst) const {
        double successes = 0, trials = 0;
        for (std::size_t i = 0; i < trays_.size(); ++i) {
            if (isFirst[i] == 0) continue;
            successes += trays_[i].successes;
            trials += trays_[i].trials;
        }
        return std::abs(successes * trials_ - successes_ * trials) / (trials * (trials_ - trials));
    }

  private:
    std::vector<Tray> trays_;
    double successes_{}, trials_{};
};

double countAllAsLarge(const PooledRates& rates, LabelArrangements& arrangements, double least,
                       const std::stop_token& stop) {
    double asLarge = 0;
    do {
        if (rates.distance(arrangements.labels()) >= least) ++asLarge;
    } while (!stop.stop_requested() && arrangements.advance());
    return asLarge;
}

double countDrawnAsLarge(const PooledRates& rates, LabelArrangements& arrangements, double least, int draws,
                         SeededRandom& random, const std::stop_token& stop) {
    double asLarge = 0;
    for (int i = 0; i < draws && !stop.stop_requested(); ++i) {
        arrangements.draw(random);
        if (rates.distance(arrangements.labels()) >= least) ++asLarge;
    }
    return asLarge;
}

}  // namespace

TrayPermutationTest trayPermutationTest(std::span<const Tray> first, std::span<const Tray> second, SeededRandom& random,
                                        double enumerateUpTo, int draws, std::stop_token stop) {
    requireTrays("trayPermutationTest", first);
    requireTrays("trayPermutationTest", second);
    if (draws < 1) throwDomainError("trayPermutationTest", "draws", draws, "1 or more");
    std::vector<Tray> trays = traysWithTrials(first);
    const std::size_t inFirst = trays.size();
    const std::vector<Tray> others = traysWithTrials(second);
    if (trays.empty() || others.empty()) return {};
    trays.insert(trays.end(), others.begin(), others.end());

    std::vector<char> isFirst(trays.size(), 0);
    for (std::size_t i = 0; i < inFirst; ++i) isFirst[i] = 1;
    LabelArrangements arrangements(isFirst, std::vector<int>(trays.size(), 0));
    const PooledRates rates(std::move(trays));
    TrayPermutationTest test;
    test.statistic = rates.distance(isFirst);
    test.allocations = arrangements.count();
    test.isExact = test.allocations <= enumerateUpTo;
    const double least = *test.statistic * (1 - kTie);
    if (test.isExact) {
        test.p = countAllAsLarge(rates, arrangements, least, stop) / test.allocations;
    } else {
        test.drawn = draws;
        test.p = (countDrawnAsLarge(rates, arrangements, least, draws, random, stop) + 1) / (draws + 1.0);
    }
    test.wasStopped = stop.stop_requested();
    return test;
}

}  // namespace stats
