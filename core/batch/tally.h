// SPDX-License-Identifier: MIT
// Where every cutting of a batch is at the end of a day: stuck = rooted + lost + withdrawn + undecided, always.
#pragma once

#include <optional>
#include <span>

#include "core/batch/batch.h"
#include "core/batch/check.h"

namespace core {

struct Tally {
    int stuck{};
    int rooted{};
    int lost{};
    int withdrawn{};
    std::optional<Date> lastCheckedOn;

    [[nodiscard]] int undecided() const { return stuck - rooted - lost - withdrawn; }
    bool operator==(const Tally&) const = default;
};

/// Counts up to and including `untilDay`; all checks when it isn't given. `checks` are the batch's own, in any order.
[[nodiscard]] Tally tallyOf(const Batch& batch, std::span<const Check> checks, std::optional<Date> untilDay = {});
/// Nothing undecided, or closed by hand.
[[nodiscard]] bool isClosed(const Batch& batch, const Tally& tally);

}  // namespace core
