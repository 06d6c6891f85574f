// SPDX-License-Identifier: MIT
#include "core/climate/own_band_rules.h"

#include "core/field_faults.h"

namespace core {

namespace {

void judgeEnd(const std::string& field, const std::optional<double>& end, const QuantityFacts& facts,
              Refusals& faults) {
    if (!end) return;
    const std::string unit = facts.unit.empty() ? "" : ' ' + std::string(facts.unit);
    collect(faults, faultInFigure(field, *end, facts.low, facts.high,
                                  figureText(facts.low) + " to " + figureText(facts.high) + unit));
}

}  // namespace

Refusals faultsIn(const OwnBand& band, const Shelves& shelves) {
    const QuantityFacts& facts = factsOf(band.quantity);
    Refusals faults;
    if (band.plant.isSet() && find(shelves.plants, band.plant) == nullptr)
        faults.push_back(missingRefusal("Plant", band.plant.value));
    if (!band.low && !band.high)
        faults.push_back({"Band", "without ends", "a low, a high or both",
                          "Band has neither a low nor a high end; a low, a high or both are allowed."});
    judgeEnd("Low", band.low, facts, faults);
    judgeEnd("High", band.high, facts, faults);
    if (faults.empty() && band.low && band.high && *band.low > *band.high)
        faults.push_back({"Low", figureText(*band.low), "no more than " + figureText(*band.high),
                          "Low is " + figureText(*band.low) + ", which is above the high of " + figureText(*band.high) +
                              "; no more than that is allowed."});
    collect(faults, faultInNote("Note", band.note));
    const OwnBand* other = ownBandOf(shelves, band.stage, band.quantity, band.plant);
    if (other != nullptr && other->id != band.id)
        faults.push_back({"Band", std::string(facts.name) + ", " + std::string(wordFor(band.stage)), "one of each",
                          "Band of " + std::string(facts.name) + ", " + std::string(wordFor(band.stage)) +
                              ", is there already; one of each stage, quantity and plant is allowed."});
    return faults;
}

const OwnBand* ownBandOf(const Shelves& shelves, Stage stage, BandQuantity quantity, PlantId plant) {
    for (const OwnBand& band : shelves.ownBands)
        if (band.stage == stage && band.quantity == quantity && band.plant == plant) return &band;
    return nullptr;
}

}  // namespace core
