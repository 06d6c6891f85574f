// SPDX-License-Identifier: MIT
// What must hold of the figures that the program shows, and whether it does.
#pragma once

#include <string>
#include <vector>

#include "tests/calibration/tally.h"

namespace calibration {

enum class Bound { AtLeast, AtMost };

struct Claim {
    std::string words;
    Bound bound{};
    double demanded{};
    Count found;

    [[nodiscard]] bool holds() const;
    /// Not refuted beyond the simulation's own chance, widened `times`.
    [[nodiscard]] bool mayHold(double times) const;
};

/// The rate as counted with one tray, the rate with spread from three, no verdict too often, none with one station an arm.
[[nodiscard]] std::vector<Claim> claimsOn(const Tally& tally);

}  // namespace calibration
