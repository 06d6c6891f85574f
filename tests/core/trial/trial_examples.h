// SPDX-License-Identifier: MIT
// Designs and layouts of trials for tests, on support::someShelves().
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "core/trial/allocate_trial.h"

namespace examples {

/// With two arms those of someShelves(), further ones made up. Set and sound.
[[nodiscard]] core::Trial trialOf(core::Factor factor, int arms, int perArm);
/// A station of someShelves() with all its places free; 0 columns: layout not described, no place.
[[nodiscard]] core::StationRoom roomOf(core::StationId station, int rows, int columns);
/// Its two tubs and two benches, 6 rows of 10 each.
[[nodiscard]] std::vector<core::StationRoom> fourRooms();
[[nodiscard]] core::TrialLayout layoutOf(std::vector<core::StationRoom> stations);
/// Methods in turn over twice as many stations, ten cuttings each in every session.
[[nodiscard]] std::pair<core::Trial, core::TrialLayout> crossedOver(int arms, int sessions);
/// By chance: any factor, blocks, sessions and rooms; sound, but perhaps with too little room.
[[nodiscard]] std::pair<core::Trial, core::TrialLayout> anyDesign(std::uint32_t seed);

}  // namespace examples
