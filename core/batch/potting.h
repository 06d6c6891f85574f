// SPDX-License-Identifier: MIT
// What became of a batch's rooted cuttings after they were potted on. It never changes the strike rate.
#pragma once

#include <span>
#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

/// What is new since the count before.
struct Potting {
    PottingId id{};
    BatchId batch{};
    Date countedOn{};
    int potted{};  // newly potted on
    int lost{};    // newly lost after potting
    std::string note{};

    bool operator==(const Potting&) const = default;
};

struct PottedTally {
    int potted{};
    int lost{};

    /// Grown on and alive at the last count.
    [[nodiscard]] int usable() const { return potted - lost; }
    bool operator==(const PottedTally&) const = default;
};

/// `pottings` are the batch's own.
[[nodiscard]] PottedTally pottedTallyOf(std::span<const Potting> pottings);

}  // namespace core
