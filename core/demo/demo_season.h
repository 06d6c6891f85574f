// SPDX-License-Identifier: MIT
// The demo logbook's content: an invented place, two seasons, four stations, drawn from a seed. The generator is
// documented in docs/demo_logbook.md; nothing in it is a real record.
#pragma once

#include <cstdint>

#include "core/records.h"

namespace core {

struct DemoWish {
    int batches{60};
    std::uint32_t seed{1};
    Date today{};  // the newest batches are still open on this day
};

/// The same wish gives the same records on every machine. Ids are set and unique. Domain: 1 <= batches <= 100 000.
[[nodiscard]] Records demoSeason(const DemoWish& wish);

}  // namespace core
