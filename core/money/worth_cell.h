// SPDX-License-Identifier: MIT
// What is known of one method with one plant, and of a mix of several. For core/money/worth_it.h only.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "core/comparison/course.h"
#include "core/money/worth_it.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

struct WorthCell {
    MethodId method{};
    PlantId plant{};
    int batches{};
    int stuck{};
    int running{};
    int unwatched{};
    int unpriced{};
    std::vector<Course> courses{};     // watched to the end
    std::vector<stats::Tray> trays{};  // of them
    std::vector<StationId> stations{};
    int pricedBatches{};
    int pricedStuck{};
    CostParts costs{};
    double ofOwnThings{};
    std::vector<stats::Tray> usable{};  // usable of stuck, in batches counted after potting
    int usablePricedStuck{};            // of those, where priced
    double usableCosts{};
    std::optional<DayRange> medianDays{};
    std::optional<Limits> medianDaysLimits{};

    /// Costs and a rate, so that it can be compared.
    [[nodiscard]] bool isComparable() const { return pricedStuck > 0 && !trays.empty(); }
};

struct WorthSettings {
    const WorthRecords& records;
    int horizonDay{};
    double level{};
    stats::PooledSpread spread{};
};

/// Of the batches that the question is about, by plant's and method's id.
[[nodiscard]] std::vector<WorthCell> worthCells(const WorthQuestion& question, const WorthSettings& settings);
/// Median days to root of each.
void fillDays(const WorthQuestion& question, double level, const std::stop_token& stop, std::vector<WorthCell>& cells);

/// One method over its plants. `shares` of the mix, for each cell; none: the mix in which they were stuck.
[[nodiscard]] WorthOfMethod worthOfMix(std::span<const WorthCell* const> cells, std::span<const double> shares,
                                       const WorthSettings& settings);

/// The difference of the middles of two medians, with the limits that theirs give by squaring and adding.
///
/// Source    Zou and Donner (2008), Stat. Med. 27, 1693-1702 (from memory); independent estimates.
struct DaysSaved {
    std::optional<double> days{};
    std::optional<Limits> limits{};
};
/// By the first; mean over plants by `shares`, of those where both are known.
[[nodiscard]] DaysSaved daysSaved(std::span<const WorthCell* const> first, std::span<const WorthCell* const> second,
                                  std::span<const double> shares);

}  // namespace core
