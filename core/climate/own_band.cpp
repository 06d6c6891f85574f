// SPDX-License-Identifier: MIT
#include "core/climate/own_band.h"

namespace core {

namespace {

constexpr QuantityFacts vapourDeficitFacts{"vapour_deficit", "vapour pressure deficit", "kPa", 0, 10};
constexpr QuantityFacts dailyLightFacts{"daily_light", "light of a day", "mol/m2", 0, 100};

constexpr auto everyBandQuantity = [] {
    std::array<BandQuantity, bandQuantities> all{};
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = static_cast<BandQuantity>(i);
    return all;
}();

static_assert(static_cast<int>(BandQuantity::LeafTemperature) == static_cast<int>(Quantity::LeafTemperature));
static_assert(everyBandQuantity.back() == BandQuantity::DailyLight);

}  // namespace

std::string_view wordFor(Stage stage) {
    constexpr std::array<std::string_view, allStages.size()> words{"before roots", "first roots", "filling roots",
                                                                   "hardening"};
    return words[static_cast<std::size_t>(stage)];
}

std::optional<Stage> stageFrom(std::string_view word) {
    for (const Stage stage : allStages)
        if (wordFor(stage) == word) return stage;
    return {};
}

const std::array<BandQuantity, bandQuantities>& allBandQuantities() {
    return everyBandQuantity;
}

BandQuantity bandQuantityOf(Quantity quantity) {
    return static_cast<BandQuantity>(quantity);
}

std::optional<Quantity> measuredQuantityOf(BandQuantity quantity) {
    if (static_cast<std::size_t>(quantity) >= allQuantities.size()) return {};
    return static_cast<Quantity>(quantity);
}

const QuantityFacts& factsOf(BandQuantity quantity) {
    if (const auto measured = measuredQuantityOf(quantity)) return factsOf(*measured);
    return quantity == BandQuantity::VapourDeficit ? vapourDeficitFacts : dailyLightFacts;
}

std::optional<BandQuantity> bandQuantityFrom(std::string_view word) {
    for (const BandQuantity quantity : everyBandQuantity)
        if (factsOf(quantity).word == word) return quantity;
    return {};
}

}  // namespace core
