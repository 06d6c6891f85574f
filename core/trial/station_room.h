// SPDX-License-Identifier: MIT
// Where a trial's cuttings can go at a station, and the dealing of those places.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "core/records.h"
#include "core/result.h"

namespace core {

struct StationRoom {
    StationId station{};
    std::string name{};
    MethodId method{};
    int columns{};                 // of its layout; 0: not described
    std::vector<Position> free{};  // row by row; none where the layout is not described
    int places{};                  // how many cuttings it can take: as many as are free, or what the grower says
};

/// What is free at a station, given the batches recorded there. Where its layout is not described, places are mostStuck: no limit known.
[[nodiscard]] StationRoom roomAt(const Station& station, std::span<const BatchRecord> there);

/// The name of a block of one side of a station: "Bench west, left". The left side has the lower columns, and the middle one.
[[nodiscard]] std::string sideName(const std::string& station, bool isLeft);
[[nodiscard]] bool isOnLeft(const StationRoom& room, Position position);

/// Gives the trial's batches of one session their places, block by block in the order of the free ones; where arms stand side by side,
/// chance says which place is whose. The same seed, session and room give the same places. What it uses is taken off the rooms.
/// Domain    the rooms have enough places.
void placeSession(std::span<TrialBatch> batches, BlockedBy blocks, std::uint32_t seed, std::vector<StationRoom>& rooms);

/// The trial's batches with new places for those of one session, none of which is stuck: where places were given away meanwhile. Refused
/// when there isn't enough room at a station.
[[nodiscard]] Result<std::vector<TrialBatch>> placedAgain(const Trial& trial, int session,
                                                          std::vector<StationRoom> rooms);

}  // namespace core
