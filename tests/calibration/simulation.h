// SPDX-License-Identifier: MIT
// Runs studies, on as many threads as are wanted, to the same figures.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>

#include "tests/calibration/studies.h"
#include "tests/calibration/tally.h"

namespace calibration {

struct SimulationOptions {
    int seasons{300};  // of each kind, through the whole program; more where figures alone are judged, see studies.h
    std::uint64_t seed{20260101};
    int threads{1};
};

/// Gets the share done, from 0 to 1, from any thread, one at a time; false ends the simulation.
using Progress = std::function<bool(double)>;

/// Every study as many seasons as it wants for one of the options'. Nothing when `progress` ended it.
[[nodiscard]] std::optional<Tally> simulate(std::span<const Study> studies, const SimulationOptions& options,
                                            const Progress& progress = {});

}  // namespace calibration
