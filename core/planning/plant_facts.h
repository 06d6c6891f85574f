// SPDX-License-Identifier: MIT
// What print has of a plant beside what the grower's own batches show, and which of the two plans go by. All methods together; the same figures
// that how_many.h and when.h plan with.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "core/planning/past_records.h"
#include "core/planning/when.h"

namespace core {

struct PlantFacts {
    const PlantReference* reference{};  // nullptr: the table doesn't have it
    PastRecords records;
    RootingDays rooting;
    int batches{}, cuttings{};  // ever stuck
    int rooted{};               // of them by the horizon, as far as is known
    double level{};             // of the intervals
    std::optional<Limits>
        asCounted{};  // of the strike rate, by the logbook's interval; absent: nothing watched to the end
    std::optional<Limits> withSpread{};  // allowing for the spread between batches, where it can be seen
    double ownCounts{};                  // own records count like so many cuttings, each in a tray of its own
    double bandCounts{};                 // the printed band like so many; 0: there is none
    std::string rateInWords;             // by what the strike rate is planned
    std::string daysInWords;             // by what the days to root are
};

/// `spread` is the whole logbook's: pooledSpreadOf(). Contract: shelves has the plant.
[[nodiscard]] PlantFacts plantFactsOf(PlantId plant, const Shelves& shelves, std::span<const BatchRecord> batches,
                                      const stats::PooledSpread& spread);

}  // namespace core
