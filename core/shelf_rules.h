// SPDX-License-Identifier: MIT
// What the things on the shelves and the logbook's own facts must obey. Each takes the shelves as they are (the thing
// itself may be on them already, under its id): names are unique, and what is named must exist.
#pragma once

#include "core/records.h"
#include "core/result.h"

namespace core {

[[nodiscard]] Refusals faultsIn(const LogbookFacts& facts);
[[nodiscard]] Refusals faultsIn(const Plant& plant, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const StockPlant& stockPlant, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const Method& method, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const Station& station, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const Medium& medium, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const Treatment& treatment, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const CuttingKind& kind, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const LossCause& cause, const Shelves& shelves);
[[nodiscard]] Refusals faultsIn(const Trial& trial, const Shelves& shelves);  // in trial/trial_faults.cpp
[[nodiscard]] Refusals faultsIn(const CheckSchedule& schedule, const Shelves& shelves);

}  // namespace core
