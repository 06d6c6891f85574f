// SPDX-License-Identifier: MIT
#include "stats/planning/thinning.h"

#include <algorithm>
#include <utility>

namespace stats {
namespace {

constexpr double tooRareToThin = 1e-20;

}  // namespace

Thinning::Thinning(double livesOn, int wanted, int most)
    : isNeeded_(livesOn < 1), wanted_(static_cast<std::size_t>(wanted)) {
    if (!isNeeded_) return;
    Row row{.first = 0, .chances = {1.0}};
    while (row.first < wanted_ && rows_.size() <= static_cast<std::size_t>(most)) {
        Row next{.first = row.first, .chances = std::vector<double>(row.chances.size() + 1)};
        for (std::size_t i = 0; i < row.chances.size(); ++i) {
            next.chances[i] += row.chances[i] * (1 - livesOn);
            next.chances[i + 1] += row.chances[i] * livesOn;
        }
        while (next.chances.back() < tooRareToThin) next.chances.pop_back();
        const auto kept = std::ranges::find_if(next.chances, [](double chance) { return chance >= tooRareToThin; });
        next.first += static_cast<std::size_t>(kept - next.chances.begin());
        next.chances.erase(next.chances.begin(), kept);
        rows_.push_back(std::exchange(row, std::move(next)));
    }
}

std::vector<double> Thinning::of(std::vector<double> law) const {
    if (!isNeeded_) return law;
    std::vector<double> thinned(std::min(law.size(), wanted_));
    for (std::size_t x = 0; x < std::min(law.size(), rows_.size()); ++x) {
        const Row& row = rows_[x];
        const std::size_t end = std::min(row.first + row.chances.size(), thinned.size());
        for (std::size_t y = row.first; y < end; ++y) thinned[y] += law[x] * row.chances[y - row.first];
    }
    return thinned;
}

}  // namespace stats
