// SPDX-License-Identifier: MIT
#include "stats/surveillance/predictive_tail.h"

#include <algorithm>
#include <cstddef>
#include <vector>

#include "stats/numeric/require.h"

namespace stats {

PredictiveTail predictiveTail(int successes, int trials, const PastBatches& past) {
    requireCounts("predictiveTail", successes, trials);
    constexpr double usualTail = 0.05;
    const std::vector<double> law = predictiveProbabilities(past, trials);
    PredictiveTail tail;
    for (const Tray& batch : past.batches) tail.pastBatches += batch.trials > 0 ? 1 : 0;
    tail.usualMost = trials;
    double below = 0;
    for (int count = 0; count <= trials; ++count) {
        const double each = law[static_cast<std::size_t>(count)];
        if (count == successes) {
            tail.fewer = std::min(1.0, below);
            tail.asFewOrFewer = count == trials ? 1 : std::min(1.0, below + each);
        }
        // Counts below usualFewest have at most a twentieth together, and so have those above usualMost.
        if (below <= usualTail) tail.usualFewest = count;
        below += each;
        if (1 - below <= usualTail) tail.usualMost = std::min(tail.usualMost, count);
        tail.expected += count * each;
    }
    tail.middle = (tail.fewer + tail.asFewOrFewer) / 2;
    return tail;
}

}  // namespace stats
