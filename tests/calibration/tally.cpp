// SPDX-License-Identifier: MIT
#include "tests/calibration/tally.h"

#include <cmath>

namespace calibration {

void Count::operator+=(const Count& other) {
    asked += other.asked;
    yes += other.yes;
    sum += other.sum;
    squares += other.squares;
}

double Count::rootMeanSquare() const {
    return asked == 0 ? 0 : std::sqrt(squares / static_cast<double>(asked));
}

double Count::simulationError() const {
    constexpr double z = 1.96;
    return asked == 0 ? 1 : z * std::sqrt(share() * (1 - share()) / static_cast<double>(asked));
}

void Tally::add(std::string_view thing, const Cell& cell, bool yes, double measure) {
    auto found = counts_.find(thing);
    if (found == counts_.end()) found = counts_.emplace(std::string(thing), std::map<Cell, Count>{}).first;
    found->second[cell] += {.asked = 1, .yes = yes ? 1 : 0, .sum = measure, .squares = measure * measure};
}

void Tally::merge(const Tally& other) {
    mergeRenamed(other, "");
}

void Tally::mergeRenamed(const Tally& other, std::string_view after) {
    for (const auto& [thing, cells] : other.counts_) {
        auto& mine = counts_[thing + std::string(after)];
        for (const auto& [cell, count] : cells) mine[cell] += count;
    }
}

Count Tally::of(std::string_view thing, const Cell& cell) const {
    const auto found = counts_.find(thing);
    if (found == counts_.end()) return {};
    const auto count = found->second.find(cell);
    return count == found->second.end() ? Count{} : count->second;
}

Count Tally::over(std::string_view thing, double correlation, int fewest, int most) const {
    Count all;
    for (int trays = fewest; trays <= most; ++trays) all += of(thing, {.correlation = correlation, .trays = trays});
    return all;
}

bool Tally::operator==(const Tally& other) const {
    const auto isSame = [](const Count& a, const Count& b) {
        return a.asked == b.asked && a.yes == b.yes && a.sum == b.sum && a.squares == b.squares;
    };
    if (counts_.size() != other.counts_.size()) return false;
    for (const auto& [thing, cells] : counts_)
        for (const auto& [cell, count] : cells)
            if (!isSame(count, other.of(thing, cell))) return false;
    return true;
}

}  // namespace calibration
