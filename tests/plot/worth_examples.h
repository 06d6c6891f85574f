// SPDX-License-Identifier: MIT
// What methods cost and whether the dearer is worth it, made by hand for figures and print-outs: each shows one case. All figures are invented.
#pragma once

#include <vector>

#include "core/money/pay_off.h"
#include "core/money/worth_it.h"

namespace examples {

/// Aerated water, 0.72 for a cutting, and a media tray, 0.40; both with all parts of the cost.
[[nodiscard]] core::Worth worthOfTwoMethods();
/// The same with a plant each: `plants` times two rows.
[[nodiscard]] std::vector<core::WorthOfMethod> worthByPlant(int plants);
/// Four batches, none rooted.
[[nodiscard]] core::WorthOfMethod noneRooted();
/// In the mix, but nothing of any price fell on it.
[[nodiscard]] core::WorthOfMethod notPriced();
/// For the pair of worthOfTwoMethods().
[[nodiscard]] std::vector<core::ChanceAfter> payOff();

}  // namespace examples
