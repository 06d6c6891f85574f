// SPDX-License-Identifier: MIT
// What is known of a plant before it is stuck again: its own batches, its band in the reference table, and how much batches of this logbook
// differ. Formed once, asked as often as a page likes.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/plants/plant_reference.h"
#include "core/records.h"
#include "stats/overdispersion/beta_binomial_posterior.h"

namespace core {

/// The most that a reference band counts for: as if so many cuttings of one's own had been stuck, none of them in a tray with another.
inline constexpr double mostBandCounts = 10;

/// The share of a batch's cuttings that may be undecided when nobody looked at it any more; more of them would make the quick count for all.
inline constexpr double mostUndecided = 0.1;

struct Course;

/// Known to the horizon, or hardly anything undecided: of a batch that was left earlier only the quick and the lost are known.
[[nodiscard]] bool isWatchedToTheEnd(const Course& course, int horizonDay);

struct PastRecords {
    PlantId plant{};
    MethodId method{};  // unset: all methods
    std::string plantName;
    std::string methodName;  // empty: all methods
    int horizonDay{};
    std::string horizonReason;
    std::vector<BatchCount> batches;  // watched to the horizon or to the end, in order of sticking
    int rooted{}, assessed{};         // over them
    double level{0.95};               // of ownLimits
    std::optional<Limits>
        ownLimits;  // of the mean strike rate by own records alone, with the spread between batches; absent: none
    int leftOut{};  // cuttings whose fate at the horizon is not known
    const PlantReference* reference{};
    std::optional<Limits> band;  // of the strike rate, from the reference table; absent: unknown
    double ownWeight{};    // 0 to 1: the part of the expected rate that own records decide; the rest is the band's
    double meanRate{};     // expected of the next batch
    double correlation{};  // between cuttings of one batch
    bool isSpreadFromRecords{};  // else it is what is usual
    bool haveOwnLuck{};          // cuttings counted each for itself: plainRecordsOf()
    stats::PastBatches past;     // the same for the mathematics
};

/// Batches of the plant are picked out of `batches`; `spread` is the whole logbook's, pooledSpreadOf().
///
/// The horizon is the plant's own limit; else the reference table's upper end of days to root or the logbook's horizon, whichever is later. A
/// batch counts when it was watched to the horizon, or until hardly any cutting was undecided: of a young one only the quick would be known. The band
/// becomes a beta distribution by ratePriorOfBand() and counts for mostBandCounts at most; without a band it is Jeffreys's.
[[nodiscard]] PastRecords pastRecordsOf(PlantId plant, MethodId method, const Shelves& shelves,
                                        std::span<const BatchRecord> batches, const stats::PooledSpread& spread);

/// The same with the spread pooled over `batches`, which is the whole logbook, at the plant's horizon.
[[nodiscard]] PastRecords pastRecordsOf(PlantId plant, MethodId method, const Shelves& shelves,
                                        std::span<const BatchRecord> batches);

/// Without a logbook: each count is one batch. Their spread is judged from themselves and what is usual.
/// Domain: 0 <= rooted <= assessed.
[[nodiscard]] PastRecords pastRecordsOf(std::span<const BatchCount> counts);

/// The same with trays left out of account, as if each cutting had luck of its own: the counts are summed.
[[nodiscard]] PastRecords plainRecordsOf(std::span<const BatchCount> counts);

/// The tray size to plan with where nobody says: the mean size of the plant's own batches, else the room of a usual station of the method,
/// else 20.
[[nodiscard]] int usualTraySize(const PastRecords& records, const Shelves& shelves);

/// What the figures rest on, in one to three sentences.
[[nodiscard]] std::string restsOnInWords(const PastRecords& records);

}  // namespace core
