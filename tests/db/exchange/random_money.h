// SPDX-License-Identifier: MIT
// Prices, lots, counts after potting and expenses of sessions, for random_records.h.
#pragma once

#include <cstdint>
#include <random>

#include "core/records.h"

namespace support {

class RandomMoney {
  public:
    /// Draws from `engine` and goes on counting ids at `id`.
    RandomMoney(std::mt19937& engine, std::int64_t& id) : engine_(engine), id_(id) {}

    void write(core::Records& records);

  private:
    int below(int count) { return static_cast<int>(engine_() % static_cast<std::uint32_t>(count)); }
    template <class Thing>
    auto someId(const std::vector<Thing>& things) {
        return things.empty() ? decltype(Thing::id){}
                              : things[static_cast<std::size_t>(below(static_cast<int>(things.size())))].id;
    }
    std::string text();
    void writePrices(core::Shelves& shelves);
    template <class Thing>
    void writeLotsOf(const std::vector<Thing>& things, decltype(Thing::id) core::Lot::*owner, core::Shelves& shelves);

    std::mt19937& engine_;
    std::int64_t& id_;
};

}  // namespace support
