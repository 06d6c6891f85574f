// SPDX-License-Identifier: MIT
// When a logger logged: from when to when, how often, and where it stopped for longer than three times its usual step.
#pragma once

#include <cstdint>
#include <vector>

#include "core/units/moment.h"

namespace logger {

struct LogGap {
    core::Moment from{};  // the last row before
    core::Moment to{};    // the first row after

    bool operator==(const LogGap&) const = default;
};

struct LogSummary {
    std::int64_t rows{};  // with at least one value
    core::Moment first{};
    core::Moment last{};
    std::chrono::seconds step{};  // the usual one, half of the steps being no longer; 0: there is one row, or none
    std::vector<LogGap> gaps{};
    std::int64_t blanks{};    // cells without a reading, where that is allowed
    std::int64_t repeated{};  // values that stand there once more, the same at the same moment

    bool operator==(const LogSummary&) const = default;
};

/// `seconds` since 1970-01-01 UTC of the rows, in any order. Rows, moments, step and gaps of the summary.
[[nodiscard]] LogSummary summaryOf(std::vector<std::int64_t> seconds);

}  // namespace logger
