// SPDX-License-Identifier: MIT
// Ids for invented records: random like all ids, but with a counter in their low 24 bits, so that no two of one logbook
// are ever equal.
#pragma once

#include <cstdint>

#include "stats/numeric/seeded_random.h"

namespace core {

class IdSource {
  public:
    explicit IdSource(std::uint64_t seed) : random_(seed) {}

    template <class ThingId>
    [[nodiscard]] ThingId next() {
        constexpr int counterBits = 24;
        const std::uint64_t high = random_.next() >> (counterBits + 1);
        return ThingId{static_cast<std::int64_t>((high << counterBits) | ++counter_)};
    }

  private:
    stats::SeededRandom random_;
    std::uint64_t counter_{};
};

}  // namespace core
