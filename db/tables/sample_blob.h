// SPDX-License-Identifier: MIT
// The samples of a logger's day as they stand in the file: 12 bytes each, little-endian: the second of the day, then the value.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/climate/logger_day.h"

namespace db {

inline constexpr std::size_t bytesOfSample = 12;

[[nodiscard]] std::vector<std::uint8_t> blobOf(std::span<const core::Sample> samples);
/// Nothing where the length is not that of whole samples. What they say is core::faultInSamples()'s to judge.
[[nodiscard]] std::optional<std::vector<core::Sample>> samplesFrom(std::span<const std::uint8_t> blob);

}  // namespace db
