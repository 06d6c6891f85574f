// SPDX-License-Identifier: MIT
#include "app/logger/log_summary.h"

#include <algorithm>

namespace logger {

namespace {

core::Moment momentAt(std::int64_t second) {
    return core::Moment{std::chrono::seconds{second}};
}

}  // namespace

LogSummary summaryOf(std::vector<std::int64_t> seconds) {
    constexpr int stepsOfAGap = 3;
    LogSummary summary{.rows = static_cast<std::int64_t>(seconds.size())};
    if (seconds.empty()) return summary;
    if (!std::ranges::is_sorted(seconds)) std::ranges::sort(seconds);
    seconds.erase(std::ranges::unique(seconds).begin(), seconds.end());
    summary.first = momentAt(seconds.front());
    summary.last = momentAt(seconds.back());
    if (seconds.size() < 2) return summary;
    std::vector<std::int64_t> steps(seconds.size() - 1);
    for (std::size_t i = 0; i < steps.size(); ++i) steps[i] = seconds[i + 1] - seconds[i];
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>((steps.size() - 1) / 2);
    std::ranges::nth_element(steps, middle);
    const std::int64_t usual = *middle;
    summary.step = std::chrono::seconds{usual};
    for (std::size_t i = 0; i + 1 < seconds.size(); ++i)
        if (seconds[i + 1] - seconds[i] > stepsOfAGap * usual)
            summary.gaps.push_back({.from = momentAt(seconds[i]), .to = momentAt(seconds[i + 1])});
    return summary;
}

}  // namespace logger
