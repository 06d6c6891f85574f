// SPDX-License-Identifier: MIT
#include "db/actions/band_actions.h"

#include "core/climate/own_band_rules.h"
#include "db/actions/ask_first.h"

namespace db {

namespace {

/// "own band of air temperature, first roots, for Hebe albicans"
std::string calledBand(const core::OwnBand& band, const core::Shelves& shelves) {
    std::string words =
        "own band of " + std::string(core::factsOf(band.quantity).name) + ", " + std::string(core::wordFor(band.stage));
    if (const core::Plant* plant = core::find(shelves.plants, band.plant)) words += ", for " + core::fullName(*plant);
    return words;
}

}  // namespace

core::Result<Changes> setOwnBand(Logbook& logbook, core::OwnBand band) {
    return actUnlessRefused(logbook, calledBand(band, logbook.shelves()), [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        const core::OwnBand* there = core::ownBandOf(shelves, band.stage, band.quantity, band.plant);
        band.id = there == nullptr ? core::OwnBandId{} : there->id;
        core::Refusals faults = core::faultsIn(band, shelves);
        if (!faults.empty()) return faults;
        if (band.id.isSet()) {
            writer.change(band);
        } else {
            writer.add(band);
        }
        return faults;
    });
}

core::Result<Changes> removeOwnBand(Logbook& logbook, core::OwnBandId id) {
    const core::Shelves shelves = logbook.shelves();
    const core::OwnBand* band = core::find(shelves.ownBands, id);
    if (band == nullptr) return core::refused({notThere("Band", "band")});
    return actUnlessRefused(logbook, "removal of the " + calledBand(*band, shelves), [&](Writer& writer) {
        writer.remove(id);
        return core::Refusals{};
    });
}

}  // namespace db
