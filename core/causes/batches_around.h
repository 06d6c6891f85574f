// SPDX-License-Identifier: MIT
// The batches that can speak for or against a suspect: those nearest in time to the one asked about, each counted on the day of its plant.
#pragma once

#include <span>
#include <vector>

#include "core/comparison/course.h"
#include "core/records.h"
#include "stats/surveillance/shared_drop.h"

namespace core {

struct BatchAround {
    const Course* course{};
    int daysApart{};     // of sticking, either way
    int group{};         // same plant, same method
    HorizonFate fate{};  // on its plant's day

    [[nodiscard]] const Batch& batch() const { return course->record->batch; }
};

inline constexpr std::size_t mostOfOwnKind = 60;
inline constexpr std::size_t mostAround = 600;

struct BatchesAround {
    std::vector<BatchAround> batches;  // nearest in time first, then by id; without the one asked about
    int groups{1};                     // group 0: its own plant and method

    [[nodiscard]] std::vector<stats::GroupedTray> trays() const;
};

/// The day on which batches of a plant are counted where nobody sets another.
[[nodiscard]] int usualHorizonOf(PlantId plant, const Shelves& shelves);

/// `day`: that of its own plant. Of other plants usualHorizonOf(). Batches with cuttings still undecided when last seen before that day are
/// left out, as are those of which nothing is known.
[[nodiscard]] BatchesAround batchesAround(const Course& batch, int day, std::span<const Course> all,
                                          const Shelves& shelves);

}  // namespace core
