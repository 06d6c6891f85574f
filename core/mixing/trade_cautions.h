// SPDX-License-Identifier: MIT
// What to mind where the hand is: at the mix, the auxin, the station's electricity, the lamp, the plants that leave. Each is a guide and
// stands behind the label of the product, the local rules and licensed people.
#pragma once

#include <array>
#include <string_view>

namespace core {

enum class CautionTopic {
    GrowthRegulators,
    EdibleCrops,
    HormoneHygiene,
    Acids,
    ChlorineGas,
    Alkalis,
    Oxidisers,
    Concentrates,
    ElectricityNearWater,
    BackSiphon,
    DrillingAndHotGlue,
    Lamps,
    HeatUnderADome,
    MouldAndDust,
    FungicidesAndPesticides,
    ProtectedVarieties,
    PlantHealth,
    WildPlants,
    InvasivePlants,
    IrritantPlants,
    Advice
};

inline constexpr std::size_t cautionTopics = 21;

struct TradeCaution {
    CautionTopic topic{};
    std::string_view name{};  // for people and in files: "growth regulators"
    std::string_view text{};
    std::string_view source{};  // "common practice, no source" where there is none
};

[[nodiscard]] const TradeCaution& tradeCaution(CautionTopic topic);
[[nodiscard]] const std::array<TradeCaution, cautionTopics>& allTradeCautions();

}  // namespace core
