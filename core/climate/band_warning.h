// SPDX-License-Identifier: MIT
// Whether a reading lies outside a band of what stands at its station. Where batches of several kinds or stages stand there, each has a say:
// the strictest warns.
#pragma once

#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/climate/reading.h"
#include "core/climate/stage_bands.h"

namespace core {

/// What stands at a station, each kind once.
struct Standing {
    PlantId plant{};
    Stage stage{Stage::BeforeRoots};

    bool operator==(const Standing&) const = default;
};
using StandingByStation = std::unordered_map<StationId, std::vector<Standing>>;

/// Of open batches; a closed one has left the station or no longer waits for anything there.
[[nodiscard]] StandingByStation standingByStation(std::span<const BatchLine> lines);

struct BandWarning {
    Standing standing{};
    StageBand band{};
};
/// Of all bands that the reading lies outside of, the one from which it is farthest; nothing where it lies in all of them.
[[nodiscard]] std::optional<BandWarning> warningOf(const Reading& reading, std::span<const Standing> standing,
                                                   const Shelves& shelves);

/// Of each station and quantity the newer one, in the order of the first list, then of the second.
[[nodiscard]] std::vector<Reading> newestOf(std::vector<Reading> byHand, std::span<const Reading> byLogger);

}  // namespace core
