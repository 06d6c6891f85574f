// SPDX-License-Identifier: MIT
// The two sums that all of the pH arithmetic is made of. For core/mixing only.
#pragma once

namespace core {

/// Negative charges on a carbonate on average: 0 as CO2, 1 as HCO3, 2 as CO3.
[[nodiscard]] double carbonateCharge(double ph);
/// What water itself adds to the alkalinity, meq/L.
[[nodiscard]] double hydroxideLessHydrogen(double ph);

}  // namespace core
