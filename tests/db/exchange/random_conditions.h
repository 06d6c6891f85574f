// SPDX-License-Identifier: MIT
// Mixes, bands and what loggers recorded, for random_records.h.
#pragma once

#include <cstdint>
#include <random>

#include "core/records.h"

namespace support {

class RandomConditions {
  public:
    /// Draws from `engine` and goes on counting ids at `id`.
    RandomConditions(std::mt19937& engine, std::int64_t& id) : engine_(engine), id_(id) {}

    void write(core::Records& records);

  private:
    int below(int count) { return static_cast<int>(engine_() % static_cast<std::uint32_t>(count)); }
    std::string text();
    core::KeptMix mix();
    void writeBands(core::Shelves& shelves);
    void writeLogger(core::Records& records);

    std::mt19937& engine_;
    std::int64_t& id_;
};

}  // namespace support
