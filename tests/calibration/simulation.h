// SPDX-License-Identifier: MIT
// Runs studies, on as many threads as are wanted, to the same figures.
#pragma once

#include <cstdint>
#include <functional>
#include <span>

#include "tests/calibration/studies.h"
#include "tests/calibration/tally.h"

namespace calibration {

struct SimulationOptions {
    int seasons{300};  // of each kind, through the whole program; more where figures alone are judged, see studies.h
    std::uint64_t seed{20260101};
    int threads{1};
};

/// Every study as many seasons as it wants for one of the options'. `progress` gets the share done, from any thread, one at a time.
[[nodiscard]] Tally simulate(std::span<const Study> studies, const SimulationOptions& options,
                             const std::function<void(double)>& progress = {});

}  // namespace calibration
