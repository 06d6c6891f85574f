// SPDX-License-Identifier: MIT
// Several plans against the free positions of the stations: which fit, which do not, and what to stick first.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/records.h"

namespace core {

struct FreeStation {
    StationId station{};
    std::string name;
    MethodId method{};
    int free{};
};

/// Stations in use whose layout is described, in walking order. An open batch holds as many positions as it has cuttings undecided, or rooted
/// and not taken away.
[[nodiscard]] std::vector<FreeStation> freeStations(const Shelves& shelves, std::span<const BatchLine> lines);

struct PlanToFit {
    std::string name;             // of the plant
    MethodId method{};            // unset: any station will do
    int cuttings{};               // >= 1
    std::optional<Date> stickBy;  // none: after all that have one
};

struct Placement {
    StationId station{};
    std::string name;
    int cuttings{};
};

struct PlanFit {
    std::size_t plan{};  // place among the plans given
    bool fits{};
    std::vector<Placement> places;  // empty where it doesn't fit
    int free{};                     // positions that were left for it
    std::string inWords;
};

struct WhatFits {
    std::vector<PlanFit> inOrder;  // what to stick first comes first
    std::string inWords;
};

/// In order of the latest day to stick; of the same day the larger first. A plan goes whole into the smallest gap that holds it, else over as
/// few stations as hold it; one that doesn't fit takes nothing from those behind it.
[[nodiscard]] WhatFits whatFits(std::span<const PlanToFit> plans, std::span<const FreeStation> stations);

}  // namespace core
