// SPDX-License-Identifier: MIT
// The textbook interval for a ratio of rates, to set beside other people's figures. The ratio that is shown is
// koopmanRatio()'s, which answers at every table.
#pragma once

#include <optional>

#include "stats/two_proportions/two_counts.h"

namespace stats {

struct KatzRatio {
    std::optional<double> estimate;            // infinite where only the second arm has no success
    Interval limits;                           // high may be infinite
    std::optional<double> standardErrorOfLog;  // infinite where one arm has no success; absent where the estimate is
};

/// Ratio of two rates, first over second, with the logarithmic interval of Katz and others.
///
/// log ratio +- z sqrt(1/x1 - 1/n1 + 1/x2 - 1/n2).
///
/// Domain    0 <= successes <= trials in both arms, 0 < level < 1; else std::domain_error.
/// Returns   no success in either arm, or an empty arm: no estimate, [0, infinity]. No success in one: 0 or infinite,
///           [0, infinity], standard error infinite. All succeeded in both: [1, 1], which is no proof of equality.
/// Assumes   two independent binomial counts, none of them small.
/// Accuracy  within 1e-14 relative.
/// Source    Katz, Baptista, Azen and Pike (1978), Biometrics 34, 469-474.
[[nodiscard]] KatzRatio katzRatio(const TwoCounts& counts, double level);

}  // namespace stats
