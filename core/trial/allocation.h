// SPDX-License-Identifier: MIT
// A batch split over arms by chance: which cutting, in the order in which they were cut, goes to which arm.
#pragma once

#include <cstdint>
#include <vector>

namespace core {

struct Allocation {
    std::vector<int> armOfCutting;  // 0-based arm for each cutting, in the order of cutting
    std::vector<int> perArm;        // how many each arm gets
};

/// Arms get equal numbers; what is left over after dividing goes to arms that chance picks. The same seed gives the same answer on
/// every machine. Domain: cuttings >= 1, arms >= 2.
[[nodiscard]] Allocation allocateByChance(int cuttings, int arms, std::uint32_t seed);

}  // namespace core
