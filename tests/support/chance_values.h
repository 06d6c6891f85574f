// SPDX-License-Identifier: MIT
// Likely and foolish values for the generators of every_action.h.
#pragma once

#include <string>
#include <vector>

#include "tests/support/every_action.h"

namespace support {

using Done = core::Result<db::Changes>;

/// A name that is new most of the time.
[[nodiscard]] std::string someName(Chance& chance);

/// One of the shelf; a new thing when it is empty or, with `orNew`, half of the time.
template <class Thing>
[[nodiscard]] Thing some(const std::vector<Thing>& shelf, Chance& chance, bool orNew = false) {
    if (shelf.empty() || (orNew && pick(chance, 2) == 0)) return {};
    return shelf[static_cast<std::size_t>(pick(chance, static_cast<int>(shelf.size())))];
}

/// Of the last 300; a few are in the future.
[[nodiscard]] core::Date someDay(Chance& chance, core::Date today);
[[nodiscard]] core::BatchId someBatch(const db::Logbook& logbook, Chance& chance);

}  // namespace support
