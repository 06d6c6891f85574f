// SPDX-License-Identifier: MIT
// Which band of a quantity holds for a plant at a stage, and whose it is: the grower's own before the trade's, one for the plant before the
// general one. The one place where bands come from.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/climate/bands.h"
#include "core/climate/batch_stage.h"
#include "core/climate/climate_quantity.h"
#include "core/records.h"

namespace core {

/// What the trade or the literature says. Source: the reference's sections on climate, light, oxygen, EC and pH; each band has its own.
struct TradeBand {
    Stage stage{};
    BandQuantity quantity{};
    std::string_view botanicalName{};  // empty: plants in general
    Band band{};
};
[[nodiscard]] std::span<const TradeBand> tradeBands();

enum class BandOwner { Trade, TradeForPlant, Grower, GrowerForPlant };

struct StageBand {
    Stage stage{};
    ClimateQuantity quantity{};
    BandOwner owner{BandOwner::Trade};
    Band band{};
    std::string note{};  // of the grower's own

    bool operator==(const StageBand&) const = default;
};

/// Absent where nothing is said. Plant unset: in general. Of oxygen in % of saturation 80 and more at every stage.
[[nodiscard]] std::optional<StageBand> bandFor(const Shelves& shelves, PlantId plant, Stage stage,
                                               ClimateQuantity quantity);
/// The same without what the grower keeps: what an own band stands in place of.
[[nodiscard]] std::optional<StageBand> tradeBandFor(const Shelves& shelves, PlantId plant, Stage stage,
                                                    ClimateQuantity quantity);
/// From the lowest low to the highest high of all stages until roots fill, for plants in general: for what is typed where nobody knows yet
/// what it is of. Only a slip or something grave lies outside.
[[nodiscard]] std::optional<Band> bandWhileRooting(const Shelves& shelves, Quantity quantity);

/// A piece of a batch's life with the band that holds in it.
struct BandFrom {
    Date from{};
    std::optional<StageBand> band{};

    bool operator==(const BandFrom&) const = default;
};
/// From sticking on, a new one where another band begins to hold.
[[nodiscard]] std::vector<BandFrom> bandsOver(const Shelves& shelves, const BatchRecord& record,
                                              ClimateQuantity quantity);
[[nodiscard]] const StageBand* bandOn(const std::vector<BandFrom>& bands, Date day);

}  // namespace core
