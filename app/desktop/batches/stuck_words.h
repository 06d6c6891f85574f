// SPDX-License-Identifier: MIT
// How a batch was stuck, in a few words: its treatment and its medium, each with the lot that was in use on its day.
#pragma once

#include <QString>

#include "core/records.h"

namespace desktop {

/// "IBA 3000 ppm (IBA 3000 mg/L, gel); lot 12, made 43 days before"; empty where the batch has none.
[[nodiscard]] QString treatmentText(const core::Batch& batch, const core::Shelves& shelves);
[[nodiscard]] QString mediumText(const core::Batch& batch, const core::Shelves& shelves);

}  // namespace desktop
