// SPDX-License-Identifier: MIT
// Batches, open or closed, that did so much worse than the grower's own earlier ones of their plant and method that luck alone would seldom do
// it: those to look at first. Why one of them failed: suspects.h. Only the open ones, for the bench: core/comparison/behind.h.
#pragma once

#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/causes/losses.h"
#include "core/comparison/unusual.h"
#include "core/records.h"

namespace core {

struct UnusualBatch {
    BatchId batch{};
    std::string code{};
    PlantId plant{};
    MethodId method{};
    Date stuckOn{};
    bool isOpen{};
    AgainstThePast against{};
};

/// Of the question's plant and method, those whose last look lies in its span, where so few or fewer are rarer than the logbook's rate of false
/// alarms; the rarest first. Each is judged on the day of its last look, or its plant's horizon if that was earlier, by up to 200 batches of
/// the same plant and method that were stuck before it, nearest in time, by what had been seen until the span's last day. `batches` are those of
/// the whole logbook, in any order. A stop request ends it early; the caller throws that away.
[[nodiscard]] std::vector<UnusualBatch> outOfTheOrdinary(std::span<const BatchRecord> batches, const Shelves& shelves,
                                                         const LossQuestion& question,
                                                         const std::stop_token& stop = {});

}  // namespace core
