// SPDX-License-Identifier: MIT
// The batches of one arm, with the arm's figures at the horizon. Built once, then compared in pairs.
#pragma once

#include <string>
#include <unordered_map>
#include <vector>

#include "core/comparison/comparison.h"
#include "core/comparison/course.h"
#include "stats/overdispersion/tray.h"

namespace core {

struct ArmRecords {
    Arm arm;
    std::vector<Course> courses;

    /// One for each batch in which the fate of any cutting at the horizon is known.
    [[nodiscard]] std::vector<stats::Tray> trays() const;
    /// Different stations of those batches, in order of id; an unset id where a batch names none.
    [[nodiscard]] std::vector<StationId> stations() const;
    /// Different plants of all batches, in order of id.
    [[nodiscard]] std::vector<PlantId> plants() const;
};

/// Batches that the question is about: its plant, its trial.
[[nodiscard]] std::vector<const BatchRecord*> batchesOf(const ComparisonQuestion& question,
                                                        std::span<const BatchRecord> batches);

/// Most stuck first, then by name. Everything of an arm but its curves is filled in.
[[nodiscard]] std::vector<ArmRecords> armsOf(Factor factor, const Shelves& shelves,
                                             std::span<const BatchRecord* const> batches, int horizonDay,
                                             RateInterval interval, double level);

/// Losses by cause up to the horizon, most first, then by name.
[[nodiscard]] std::vector<LossByCause> lossesOf(std::span<const Course> courses, const Shelves& shelves,
                                                int horizonDay);

}  // namespace core
