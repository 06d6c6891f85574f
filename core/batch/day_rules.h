// SPDX-License-Identifier: MIT
// What every day that is written down must obey: a day of the calendar, from 1800 on, not in the future.
#pragma once

#include <optional>
#include <string_view>

#include "core/refusal.h"
#include "core/units/days.h"

namespace core {

[[nodiscard]] std::optional<Refusal> faultInDay(std::string_view field, Date day, Date today);

}  // namespace core
