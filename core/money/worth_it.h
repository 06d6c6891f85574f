// SPDX-License-Identifier: MIT
// Is the dearer method worth it? Cost of each rooted plant by method and plant, and each two methods against each other. Costs come from
// costsOfBatches(), rates from the records at a horizon, as in comparisons.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/money/worth.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

struct WorthQuestion {
    PlantId plant{};                  // unset: all
    std::vector<MethodId> methods{};  // empty: all that have batches
    std::optional<int> horizonDay{};  // unset: as horizonFor()
    std::optional<double> level{};    // unset: the logbook's
    std::optional<Date> from{};       // first and last day of sticking
    std::optional<Date> to{};
    std::optional<double> worthOfADay{};  // unset: the price of a day sooner that holds today
    int bootstrapReplicates{400};         // at most, for the intervals of the median day; 0: without
    std::uint32_t seed{20260101};
};

struct WorthRecords {
    const Shelves& shelves;
    std::span<const BatchRecord> batches;  // of the whole logbook: how much batches differ is judged by all
    std::span<const Potting> pottings;
    const CostsOfBatches& costs;  // of the same batches
    Date today{};
};

struct Worth {
    WorthQuestion question{};
    int horizonDay{};
    std::string horizonReason{};
    double level{};
    double correlation{};                  // between cuttings of one batch
    std::vector<double> correlations{};    // equally likely: what the laws of the rates allow for
    bool isSpreadFromRecords{};            // else it is what is usual
    std::vector<WorthOfMethod> methods{};  // most stuck first, then by name; all plants asked for together
    std::vector<WorthOfMethod> byPlant{};  // by plant, then as `methods`; empty where one plant is asked for
    std::vector<WorthOfPair> pairs{};      // each two of `methods` that both have a batch
    std::vector<StoodEmpty> stoodEmpty{};  // of the methods' own things and of the whole bench's
    std::vector<std::string> missing{};    // from the costs, those that concern these batches
    std::vector<std::string> cautions{};
    std::string inWords{};
};

/// Refuses a horizon below 1 day, a level outside (0, 1), a first day after the last, and a worth of a day that is no amount of money.
///
/// Rates: the posterior of the mean rate under the logbook's spread with Jeffreys's prior, equal tails. Over several plants it is that of the
/// mix, rateOfMix(). Costs: of batches that are closed or have reached the horizon, and that some price fell on.
/// Two methods are compared within the plants that both have, in the mix of both together, so that neither gains by having had the easy plants.
/// What a cutting costs and how many days are saved are taken as they are; only rates have a law.
/// A verdict needs a chance of (1 + level) / 2 on its side, three batches of each, and a method that can be told from its station.
/// A stop request ends it early; the caller throws the answer away.
[[nodiscard]] Result<Worth> worthIt(const WorthQuestion& question, const WorthRecords& records,
                                    const std::stop_token& stop = {});

}  // namespace core
