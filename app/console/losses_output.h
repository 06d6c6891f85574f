// SPDX-License-Identifier: MIT
// Losses, and suspects of one batch, as JSON and as text.
#pragma once

#include <ostream>

#include "app/console/json_text.h"
#include "app/report/losses_records.h"

namespace console {

[[nodiscard]] Json lossesJson(const report::LossesAnswer& answer, const core::Shelves& shelves);
void printLosses(const report::LossesAnswer& answer, const core::Shelves& shelves, std::ostream& out);

[[nodiscard]] Json suspectsJson(const core::Suspects& suspects);
void printSuspects(const core::Suspects& suspects, std::ostream& out);

}  // namespace console
