// SPDX-License-Identifier: MIT
// Rows of an exported table in an order that a copy of the logbook shares.
#pragma once

#include <algorithm>
#include <vector>

namespace db {

/// In an order that comes from what is in them, not from ids, so that a copy of the logbook gives the same file.
template <class Thing, class Key>
std::vector<const Thing*> inOrderOf(const std::vector<Thing>& things, const Key& key) {
    std::vector<const Thing*> sorted;
    for (const Thing& thing : things) sorted.push_back(&thing);
    std::ranges::stable_sort(sorted, [&](const Thing* a, const Thing* b) { return key(*a) < key(*b); });
    return sorted;
}

}  // namespace db
