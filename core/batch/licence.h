// SPDX-License-Identifier: MIT
// Under which licence or permission a protected plant was multiplied: what is written down of it, and what is not.
#pragma once

#include <span>
#include <string>

#include "core/records.h"

namespace core {

/// Of the newest batch of the plant that has one; empty: none has.
[[nodiscard]] std::string newestLicenceOf(PlantId plant, std::span<const BatchLine> batches);
/// What batch pages, sheets and labels say: "licence: PVR 1234 of its breeder", "protected: no licence written down"; empty for a plant that
/// is not protected and has none.
[[nodiscard]] std::string licenceInWords(const Batch& batch, const Shelves& shelves);

}  // namespace core
