// SPDX-License-Identifier: MIT
// Which of the batches that are going on do worse than the grower's own earlier ones would lead to expect: what the bench points out.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/comparison/unusual.h"
#include "core/records.h"

namespace core {

struct BehindThePast {
    BatchId batch{};
    std::string code;
    AgainstThePast against;
};

/// Open batches among `all`, which is every batch of one plant; the rarest first. A batch is judged on the day of its last look by earlier
/// batches of the plant by the same method: so few or fewer must be rarer than the logbook's rate of false alarms for the bench to speak up.
[[nodiscard]] std::vector<BehindThePast> batchesBehind(std::span<const BatchRecord> all, const Shelves& shelves,
                                                       Date today);

}  // namespace core
