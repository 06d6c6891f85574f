// SPDX-License-Identifier: MIT
#include "app/plot/thinned_line.h"

#include "core/climate/station_climate.h"

namespace plot {

namespace {

/// What one column of one line holds so far.
class ColumnOfPixels {
  public:
    void add(const core::TimedValue& value) {
        if (isEmpty_) {
            first_ = lowest_ = highest_ = last_ = value;
            isEmpty_ = false;
            return;
        }
        if (value.value < lowest_.value) lowest_ = value;
        if (value.value > highest_.value) highest_ = value;
        last_ = value;
    }

    void moveTo(Line& line) {
        if (isEmpty_) return;
        const auto put = [&](const core::TimedValue& value) {
            if (line.empty() || line.back() != value) line.push_back(value);
        };
        put(first_);
        const bool isLowestFirst = lowest_.at <= highest_.at;
        put(isLowestFirst ? lowest_ : highest_);
        put(isLowestFirst ? highest_ : lowest_);
        put(last_);
        isEmpty_ = true;
    }

  private:
    bool isEmpty_{true};
    core::TimedValue first_, lowest_, highest_, last_;
};

}  // namespace

std::vector<Line> thinnedLines(std::span<const core::TimedValue> all, core::Moment from, core::Moment to,
                               std::chrono::seconds longestGap, int columns) {
    std::vector<Line> lines;
    const auto values = core::valuesAround(all, from, to);
    const double width = static_cast<double>((to - from).count()) / columns;
    ColumnOfPixels column;
    std::ptrdiff_t at = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const bool isAfterGap = i == 0 || values[i].at - values[i - 1].at > longestGap;
        const auto here = static_cast<std::ptrdiff_t>(static_cast<double>((values[i].at - from).count()) / width);
        if (!lines.empty() && (isAfterGap || here != at)) column.moveTo(lines.back());
        if (isAfterGap) lines.emplace_back();
        at = here;
        column.add(values[i]);
    }
    if (!lines.empty()) column.moveTo(lines.back());
    return lines;
}

}  // namespace plot
