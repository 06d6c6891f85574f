// SPDX-License-Identifier: MIT
// Random ids: two copies of a logbook that were both written to can be merged, since they never give the same id to two things.
#pragma once

#include <cstdint>

namespace db {

/// From 1 to 2^63 - 1, from the system's own source of randomness.
[[nodiscard]] std::int64_t drawId();

}  // namespace db
