// SPDX-License-Identifier: MIT
// The grower's own band of a quantity at a stage, in general or for one plant, in place of what the trade and the literature say.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/climate/quantity.h"
#include "core/id.h"

namespace core {

enum class Stage { BeforeRoots, FirstRoots, FillingRoots, Hardening };

inline constexpr std::array allStages{Stage::BeforeRoots, Stage::FirstRoots, Stage::FillingRoots, Stage::Hardening};

/// In files and for people: "before roots", "first roots", "filling roots", "hardening".
[[nodiscard]] std::string_view wordFor(Stage stage);
[[nodiscard]] std::optional<Stage> stageFrom(std::string_view word);

/// What a band can be of: whatever is measured, in the order of Quantity, and what is worked out from that.
enum class BandQuantity {
    SolutionEc,
    SolutionPh,
    SolutionTemperature,
    DissolvedOxygen,
    MediumTemperature,
    AirTemperature,
    RelativeHumidity,
    Light,
    LeafTemperature,
    VapourDeficit,  // kPa
    DailyLight      // mol/m2 a day
};

inline constexpr std::size_t bandQuantities = allQuantities.size() + 2;
/// All of them, in order.
[[nodiscard]] const std::array<BandQuantity, bandQuantities>& allBandQuantities();

[[nodiscard]] BandQuantity bandQuantityOf(Quantity quantity);
/// Nothing for what is worked out.
[[nodiscard]] std::optional<Quantity> measuredQuantityOf(BandQuantity quantity);
/// "vapour_deficit" in kPa and "daily_light" in mol/m2; else as factsOf(Quantity).
[[nodiscard]] const QuantityFacts& factsOf(BandQuantity quantity);
[[nodiscard]] std::optional<BandQuantity> bandQuantityFrom(std::string_view word);

struct OwnBand {
    OwnBandId id{};
    Stage stage{Stage::BeforeRoots};
    BandQuantity quantity{BandQuantity::AirTemperature};
    PlantId plant{};               // unset: of every plant that has none of its own
    std::optional<double> low{};   // in the unit of factsOf(quantity); no low: there is none too low
    std::optional<double> high{};  // at least one of the two
    std::string note{};

    bool operator==(const OwnBand&) const = default;
};

}  // namespace core
