// SPDX-License-Identifier: MIT
#include "app/logger/log_values.h"

#include <algorithm>

namespace logger {

namespace {

std::int64_t dayOfMoment(std::int64_t moment) {
    const std::int64_t day = moment / core::secondsInADay;
    return moment % core::secondsInADay < 0 ? day - 1 : day;
}

}  // namespace

void LogValues::add(std::int64_t moment, int row, double value) {
    const std::int64_t day = dayOfMoment(moment);
    if (last_ == nullptr || day != lastDay_) {
        last_ = &days_[day];
        lastDay_ = day;
    }
    last_->push_back({.second = static_cast<int>(moment - day * core::secondsInADay), .row = row, .value = value});
}

void LogValues::moveInto(std::vector<core::LoggerDay>& days, const core::LoggerColumn& column, std::int64_t& repeated,
                         const TellTwo& tell) {
    last_ = nullptr;
    while (!days_.empty()) {
        const auto node = days_.extract(days_.begin());
        std::vector<Entry> entries = std::move(node.mapped());
        const auto isEarlier = [](const Entry& a, const Entry& b) { return a.second < b.second; };
        if (!std::ranges::is_sorted(entries, isEarlier)) std::ranges::stable_sort(entries, isEarlier);
        core::LoggerDay day{.station = column.station,
                            .quantity = column.quantity,
                            .day = std::chrono::sys_days{std::chrono::days{node.key()}}};
        day.samples.reserve(entries.size());
        const Entry* before = nullptr;
        for (const Entry& entry : entries) {
            if (before == nullptr || before->second != entry.second) {
                day.samples.push_back({.second = entry.second, .value = entry.value});
                before = &entry;
            } else if (before->value == entry.value) {
                ++repeated;
            } else {
                tell(*before, entry);
            }
        }
        days.push_back(std::move(day));
    }
}

}  // namespace logger
