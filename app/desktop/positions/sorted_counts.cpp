// SPDX-License-Identifier: MIT
#include "app/desktop/positions/sorted_counts.h"

#include <algorithm>

namespace desktop {

namespace {

std::map<Sort, int> countsIn(const core::Check& check) {
    std::map<Sort, int> counts;
    if (check.rooted > 0) counts[{core::Outcome::Rooted, {}}] = check.rooted;
    if (check.withdrawn > 0) counts[{core::Outcome::Withdrawn, {}}] = check.withdrawn;
    for (const core::Loss& loss : check.losses) counts[{core::Outcome::Lost, loss.cause}] += loss.count;
    return counts;
}

}  // namespace

Sort sortOf(const core::Finding& finding) {
    return {finding.outcome, finding.cause};
}

std::map<Sort, int> unplacedIn(const core::Check& check) {
    std::map<Sort, int> unplaced = countsIn(check);
    for (const core::Finding& finding : check.findings) --unplaced[sortOf(finding)];
    std::erase_if(unplaced, [](const auto& each) { return each.second <= 0; });
    return unplaced;
}

void setCounts(core::Check& check, const std::map<Sort, int>& counts) {
    check.rooted = check.withdrawn = 0;
    std::vector<core::Loss> losses;
    const auto keep = [&](core::LossCauseId cause, int count) {
        if (count > 0) losses.push_back({.cause = cause, .count = count});
    };
    for (const core::Loss& loss : check.losses)
        if (const auto at = counts.find({core::Outcome::Lost, loss.cause}); at != counts.end())
            keep(loss.cause, at->second);
    for (const auto& [sort, count] : counts) {
        if (sort.first == core::Outcome::Rooted) check.rooted = count;
        if (sort.first == core::Outcome::Withdrawn) check.withdrawn = count;
        if (sort.first == core::Outcome::Lost &&
            std::ranges::find(losses, sort.second, &core::Loss::cause) == losses.end())
            keep(sort.second, count);
    }
    check.losses = std::move(losses);
}

std::map<Sort, int> countsWith(std::map<Sort, int> kept, const std::map<Sort, int>& fresh,
                               std::map<Sort, int> unplaced) {
    const Sort unknown{core::Outcome::Lost, {}};
    std::map<Sort, int> beyond;
    for (const auto& [sort, count] : fresh) {
        const int filled = std::min(count, unplaced[sort]);
        unplaced[sort] -= filled;
        beyond[sort] = count - filled;
        kept[sort] += count;
    }
    for (const auto& [sort, count] : beyond)
        if (sort.first == core::Outcome::Lost) unplaced[unknown] -= std::min(count, unplaced[unknown]);
    for (const auto& [sort, count] : unplaced) kept[sort] += count;
    return kept;
}

}  // namespace desktop
