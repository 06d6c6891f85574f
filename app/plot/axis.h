// SPDX-License-Identifier: MIT
// Where a value lies on paper, and which values deserve a tick. Inside plot only.
#pragma once

#include <vector>

namespace plot {

/// Values from `low` to `high` laid on the stretch from `start` to `end` (which may run backwards, as heights do).
struct Scale {
    double low{};
    double high{1};
    double start{};
    double end{1};

    [[nodiscard]] double at(double value) const { return start + (value - low) / (high - low) * (end - start); }
};

/// Whole weeks from 0 to `last`, as close as `most` ticks allow: every 7, 14, 28, 56, ... days.
[[nodiscard]] std::vector<int> weekTicks(int last, int most);
/// The first whole tick step at or after `day`: the axis ends on a tick.
[[nodiscard]] int lastTickFor(int day);
/// Shares: 0, 0.25, 0.5, 0.75, 1, or fewer.
[[nodiscard]] std::vector<double> shareTicks(double high, int most);
/// Differences around zero, in steps of 0.05, 0.1, 0.2, 0.25 or 0.5.
[[nodiscard]] std::vector<double> differenceTicks(double low, double high, int most);
/// Whole numbers from `low` to `high`, in steps of 1, 2, 5, 10, 20, ..., as close as `most` ticks allow. Domain: low <= high.
[[nodiscard]] std::vector<int> countTicks(int low, int high, int most);
/// Amounts from 0 to `high` in steps of 1, 2 or 5 times a power of ten, at most `most` of them beside 0. Domain: high > 0.
[[nodiscard]] std::vector<double> amountTicks(double high, int most);
/// Ratios and doses on a log axis: 1, 2, 5, 10, ... or 1, 3, 10, ... or powers of ten, as close as `most` ticks allow. Domain: 0 < low <= high.
[[nodiscard]] std::vector<double> ratioTicks(double low, double high, int most);

}  // namespace plot
