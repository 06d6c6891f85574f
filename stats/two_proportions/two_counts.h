// SPDX-License-Identifier: MIT
// Two arms of independent trials: what every function of this folder takes.
#pragma once

#include <optional>
#include <string_view>

#include "stats/interval.h"

namespace stats {

struct TwoCounts {
    int successes1{};
    int trials1{};
    int successes2{};
    int trials2{};
};

/// A ratio of rates or of odds. The estimate is absent where the data don't define one, and may be infinite, as may the
/// upper limit.
struct RatioEstimate {
    std::optional<double> estimate;
    Interval limits;
};

/// Domain: 0 <= successes <= trials <= 1 000 000 000 in both arms, so that totals fit an int; else std::domain_error that
/// names `function`.
void requireTwoCounts(std::string_view function, const TwoCounts& counts);

/// Successes and failures swapped in both arms: turns "less" into "greater".
[[nodiscard]] constexpr TwoCounts failuresOf(const TwoCounts& counts) {
    return {.successes1 = counts.trials1 - counts.successes1,
            .trials1 = counts.trials1,
            .successes2 = counts.trials2 - counts.successes2,
            .trials2 = counts.trials2};
}

}  // namespace stats
