// SPDX-License-Identifier: MIT
// How many collar holes a lid holds in square and in staggered rows, with the sums that lead there. Where each hole lies:
// core/station/lid_layout.h.
#pragma once

#include "core/mixing/mix_notes.h"
#include "core/station/lid_layout.h"

namespace core {

struct LidHoles {
    Lid lid{};
    LengthUnit unit{LengthUnit::Millimetres};
    LidLayout square{};
    LidLayout staggered{};
    MixNotes notes{};

    /// Square where both hold as many.
    [[nodiscard]] const LidLayout& better() const { return staggered.count() > square.count() ? staggered : square; }
};

/// Domain    faultsIn(lid, unit) finds nothing.
/// Returns   both layouts of layoutOf(); workings in the grower's unit.
/// Source    geometry.
[[nodiscard]] Result<LidHoles> lidHoles(const Lid& lid, LengthUnit unit = LengthUnit::Millimetres);

}  // namespace core
