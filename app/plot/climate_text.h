// SPDX-License-Identifier: MIT
// What is known of the climate, for people, in the grower's units: whatever is measured, what is worked out from it, and bands with whose
// they are.
#pragma once

#include <QString>

#include "core/climate/stage_bands.h"
#include "core/units/display_units.h"

namespace plot {

/// "vapour pressure deficit", "light of a day": as it stands in the middle of a sentence.
[[nodiscard]] QString climateName(core::ClimateQuantity quantity);
[[nodiscard]] QString climateUnit(core::ClimateQuantity quantity, const core::DisplayUnits& units);
[[nodiscard]] double shownClimate(double stored, core::ClimateQuantity quantity, const core::DisplayUnits& units);
[[nodiscard]] double storedClimate(double shown, core::ClimateQuantity quantity, const core::DisplayUnits& units);
[[nodiscard]] int climateDecimals(core::ClimateQuantity quantity, const core::DisplayUnits& units);
/// The figure alone, and with its unit: "0.35", "0.35 kPa".
[[nodiscard]] QString climateNumber(double stored, core::ClimateQuantity quantity, const core::DisplayUnits& units);
[[nodiscard]] QString climateText(double stored, core::ClimateQuantity quantity, const core::DisplayUnits& units);

[[nodiscard]] QString stageName(core::Stage stage);
/// "0.50 to 1.00", "5.0 or more", "up to 0.50"; and with the unit.
[[nodiscard]] QString bandNumbers(const core::Band& band, core::ClimateQuantity quantity,
                                  const core::DisplayUnits& units);
[[nodiscard]] QString bandText(const core::Band& band, core::ClimateQuantity quantity, const core::DisplayUnits& units);
/// "the trade's", "the trade's for this plant", "your own", "your own for this plant".
[[nodiscard]] QString ownerText(core::BandOwner owner);
/// Where it comes from: the citation, or the note to the grower's own.
[[nodiscard]] QString bandSource(const core::StageBand& band);

/// How long ago: "just now", "40 minutes ago", "3 hours ago", "12 days ago".
[[nodiscard]] QString agoText(core::Moment moment, core::Moment now);

/// A band as it is drawn: an end that no meter shows lies where `widen(low, high)` says that the values end.
template <class Widen>
[[nodiscard]] core::Band drawnBand(const core::Band& band, core::ClimateQuantity quantity, const Widen& widen) {
    const core::QuantityFacts& facts = core::factsOf(quantity);
    const bool hasHigh = band.high<facts.high, hasLow = band.low> facts.low || facts.low >= 0;
    core::Band drawn = band;
    if (hasHigh && hasLow) return drawn;
    double low = hasLow ? band.low : band.high, high = hasHigh ? band.high : band.low;
    widen(low, high);
    if (!hasLow) drawn.low = low;
    if (!hasHigh) drawn.high = high;
    return drawn;
}

}  // namespace plot
