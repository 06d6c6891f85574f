// SPDX-License-Identifier: MIT
// What is on record of batches as columns of numbers, for a regression.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/records.h"

namespace core {

struct Feature {
    std::string name;
    bool isPlant{};
    std::vector<double> values;  // one a batch
    int batches{};               // with a value other than 0
};

/// Each kind of plant, method, medium and cutting against the commonest of its sort; auxin or none, each auxin's dose in tenfolds from the
/// middle dose, wounding. Only what differs between these batches and is on record of two batches or more.
[[nodiscard]] std::vector<Feature> featuresOf(const Shelves& shelves, std::span<const BatchRecord* const> batches);

}  // namespace core
