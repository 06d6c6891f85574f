// SPDX-License-Identifier: MIT
#include "core/trial/allocation.h"

#include <array>
#include <cassert>

#include "stats/numeric/seeded_random.h"
#include "stats/planning/random_allocation.h"

namespace core {

Allocation allocateByChance(int cuttings, int arms, std::uint32_t seed) {
    assert(cuttings >= 1 && arms >= 2);
    stats::SeededRandom random(seed);
    const std::array<int, 1> oneBlock{cuttings};
    Allocation allocation{.armOfCutting = stats::allocateWithinBlocks(oneBlock, arms, random),
                          .perArm = std::vector<int>(static_cast<std::size_t>(arms))};
    for (const int arm : allocation.armOfCutting) ++allocation.perArm[static_cast<std::size_t>(arm)];
    return allocation;
}

}  // namespace core
