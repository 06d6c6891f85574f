// SPDX-License-Identifier: MIT
// A number as a logger writes it: one decimal sign, that of the file; no signs between thousands. Unlike core/units/number_entry.h, which
// takes what a person types in either way: in a file the wrong sign is a fault, and figures may have an exponent.
#pragma once

#include <optional>
#include <string_view>

#include "core/climate/logger_mapping.h"

namespace logger {

[[nodiscard]] std::optional<double> cellNumber(std::string_view cell, core::DecimalSign sign);
/// Blank, or words without a single figure: "OFL", "---", "NaN".
[[nodiscard]] bool isWithoutNumber(std::string_view cell);

}  // namespace logger
