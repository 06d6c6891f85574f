// SPDX-License-Identifier: MIT
// What the pages about two arms have in common, and those of the figures as counted: parts of notes.h. Inside report only.
#pragma once

#include <vector>

#include "app/report/methods/method_note.h"
#include "core/comparison/comparison.h"

namespace report {

struct ComparedPair {
    const core::Arm& first;
    const core::Arm& second;
    const core::Pair& pair;
    double level{};
};

/// Domain: 0 <= pair < pairs.
[[nodiscard]] ComparedPair comparedPair(const core::Comparison& comparison, int pair);

/// With the arms' names, counts, rates, their difference and the level: first, x1, n1, u1, rate1, ... Both arms are assessed.
[[nodiscard]] MethodNote pairNote(const QString& page, const ComparedPair& compared);
/// And with their batches: batches1, batches2, degrees, y_r, n_r, sizes_r.
[[nodiscard]] MethodNote batchesNote(const QString& page, const ComparedPair& compared);

/// Ratio, odds ratio, exact tests, chance that the first is better.
[[nodiscard]] std::vector<MethodNote> notesOnCountedPair(const ComparedPair& compared);
/// Where a margin was set.
[[nodiscard]] std::vector<MethodNote> notesOnAsGoodAs(const ComparedPair& compared);

}  // namespace report
