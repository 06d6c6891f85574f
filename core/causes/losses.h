// SPDX-License-Identifier: MIT
// What cuttings were lost to, over a span of days: by cause, most first (a Pareto), by month of the check, and by station. Each share says of
// what it is a share. Why one batch failed: suspects.h.
//
//   const core::Losses losses = core::lossesOver(records.batches, shelves, {.from = firstDay, .until = lastDay, .plant = hebe});
#pragma once

#include <chrono>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/records.h"
#include "stats/overdispersion/tray.h"

namespace core {

struct LossQuestion {
    std::optional<Date> from{};     // of checks; unset: from the first
    std::optional<Date> until{};    // the last day, itself included; unset: to the last
    PlantId plant{};                // unset: every plant
    MethodId method{};              // unset: every method
    std::optional<double> level{};  // of the intervals; unset: the logbook's
};

/// One bar of the Pareto.
struct LossRow {
    LossCauseId cause{};  // unset: cause not known, a row like the others
    LossByCause loss{};   // name and count of cuttings
    int batches{};        // that lost any to it
    double share{};       // of all cuttings lost in the span, n = Losses::lost
    Limits asCounted{};   // of the share, Wilson's
    /// Allowing for batches that lose together to one cause; absent where one batch alone lost any, or all were lost to this cause.
    std::optional<Limits> withSpread{};
    std::vector<stats::Tray> counted{};  // of each batch that lost any: lost to it, of all that it lost
    double runningShare{};               // of this row and those before it, of all lost
};

/// Cuttings that stood at risk of being lost, and those that were.
struct LossCount {
    int batches{};                 // that stood
    int stood{};                   // cuttings undecided when it began, or stuck in it: the denominator
    int lost{};                    // of which were found lost in it
    std::vector<int> byCause{};    // in the order of Losses::rows, adds up to `lost`
    std::optional<double> rate{};  // lost / stood; absent where none stood
    Limits asCounted{};            // of the rate, Wilson's; 0 to 1 where none stood
};

struct MonthOfLosses {
    std::chrono::year_month month{};  // of the check that found them
    LossCount count{};
};

struct StationOfLosses {
    StationId station{};  // unset: the records name none
    std::string name{};   // "station not recorded"
    LossCount count{};
};

struct Losses {
    std::optional<Date> from{};   // what is covered: as asked, or the first and the last day of a check
    std::optional<Date> until{};  // absent where there is no check
    double level{};
    int batches{};                // that stood in the span
    int stood{};                  // their cuttings, undecided when it began or stuck in it
    int lost{};                   // of these, in the span: n of every share by cause
    int batchesWithLosses{};      // where the spread between batches could be seen
    std::vector<LossRow> rows{};  // most first, then by name; none where nothing was lost
    std::vector<MonthOfLosses>
        months{};  // every month from the first to the last of the span in which any stood, in order
    std::vector<StationOfLosses> stations{};  // largest rate first, then by name; those where any stood
    /// One or two sentences: what most were lost to, of how many, and how much has no cause on record. Says so where nothing was lost.
    std::string inWords{};
};

/// By the day of the check that found a loss: of a batch stuck before the span, what was lost before it isn't counted, and what was decided
/// before it doesn't stand at risk. Linear in the number of checks. Records in any order; a check that a damaged file has before its batch
/// counts on its own day. A stop request ends it early; the caller throws that away.
[[nodiscard]] Losses lossesOver(std::span<const BatchRecord> batches, const Shelves& shelves,
                                const LossQuestion& question, const std::stop_token& stop = {});

}  // namespace core
