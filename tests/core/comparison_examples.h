// SPDX-License-Identifier: MIT
// Records that several tests of comparisons share.
#pragma once

#include <vector>

#include "core/comparison/comparison.h"
#include "core/records.h"
#include "tests/support/builders.h"

namespace examples {

/// Three batches in tubs, three in trays, at two stations each; looked at on different days, with losses, withdrawals and undecided
/// cuttings.
[[nodiscard]] std::vector<core::BatchRecord> tubsAndTrays();

/// Bartlett's (1935) counts: 240 root cuttings each, long and short, planted at once (no treatment) and in spring (weak gel stands for
/// it). Length is the block.
[[nodiscard]] std::vector<core::BatchRecord> rootCuttingsOf1935();

/// `batches` of a station, `rooted` of 20 in each by day 28.
[[nodiscard]] std::vector<core::BatchRecord> batchesAt(core::StationId station, std::vector<int> rooted);

[[nodiscard]] std::vector<core::BatchRecord> together(std::vector<std::vector<core::BatchRecord>> lists);

/// compare() at day 28 that must not refuse, quick.
[[nodiscard]] core::Comparison compared(const std::vector<core::BatchRecord>& batches,
                                        core::ComparisonQuestion question = {},
                                        const core::Shelves& shelves = support::someShelves());

}  // namespace examples
