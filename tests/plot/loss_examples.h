// SPDX-License-Identifier: MIT
// Losses made by hand for figures and print-outs. All figures are invented.
#pragma once

#include "core/causes/losses.h"

namespace examples {

/// So many causes (the last one not known), months from January 2026 on and stations; counts fall from the first to the last.
[[nodiscard]] core::Losses losses(int causes, int months, int stations);
/// Cuttings stood for three months at two stations, and nothing was lost.
[[nodiscard]] core::Losses nothingLost();

}  // namespace examples
