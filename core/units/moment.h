// SPDX-License-Identifier: MIT
// A moment in UTC, to the second; ISO 8601 in files. No clock in here.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace core {

using Moment = std::chrono::sys_seconds;

/// "2026-03-14T10:42:05Z"
[[nodiscard]] std::string isoText(Moment moment);
/// Reads exactly that form, years 1800 to 9999; anything else gives nothing.
[[nodiscard]] std::optional<Moment> momentFromIso(std::string_view text);

}  // namespace core
