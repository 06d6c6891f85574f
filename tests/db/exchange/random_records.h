// SPDX-License-Identifier: MIT
// Whole logbooks drawn by chance, within core's rules but with every text that is awkward in a table.
#pragma once

#include <cstdint>

#include "core/records.h"

namespace support {

/// The same seed gives the same records. Nothing is after 2026-06-30.
[[nodiscard]] core::Records randomRecords(std::uint32_t seed);

}  // namespace support
