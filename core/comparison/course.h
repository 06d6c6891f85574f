// SPDX-License-Identifier: MIT
// What became of one batch, in days after sticking: its looks, the fate of its cuttings at a horizon, and what is known of when
// they rooted or were lost. What comparisons and summaries are computed from.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/records.h"
#include "stats/time_to_event/observation.h"

namespace core {

/// What one look found that was new.
struct Look {
    int day{};  // after sticking
    int rooted{};
    int lost{};
    int withdrawn{};
};

struct HorizonFate {
    int stuck{};
    int rooted{};  // these four add up to stuck
    int lost{};
    int withdrawn{};
    int undecided{};
    int assessed{};  // known whether rooted by the horizon
};

struct Course {
    const BatchRecord* record{};
    std::vector<Look> looks;  // in order of day
    HorizonFate fate;         // at the horizon

    [[nodiscard]] int stuck() const { return record->batch.stuck; }
};

/// Looks in order of day; those after `until` are left out.
[[nodiscard]] std::vector<Look> looksOf(const BatchRecord& record, std::optional<Date> until = {});

/// Counts of the looks up to and including `horizonDay`. A cutting is assessed when it was found rooted or lost by then, or was seen
/// unrooted on that day or later: at a look on that day, or at the first look after it, whatever was found then but a root. One
/// found rooted at that first look may have rooted before or after the horizon; one withdrawn before the horizon may have
/// rooted by then. Neither is known.
[[nodiscard]] HorizonFate fateAt(int horizonDay, int stuck, std::span<const Look> looks);

[[nodiscard]] Course courseOf(const BatchRecord& record, int horizonDay, std::optional<Date> until = {});

/// One row for each thing that a look found (cause 1 rooted, 2 lost, 0 withdrawn), and one for those still undecided after the
/// last look. What a look finds came after the look before it; what the first look finds, after sticking.
[[nodiscard]] std::vector<stats::Observation> observationsOf(const Course& course);

/// Rows about the same days and cause put together.
[[nodiscard]] std::vector<stats::Observation> merged(std::vector<stats::Observation> rows);

}  // namespace core
