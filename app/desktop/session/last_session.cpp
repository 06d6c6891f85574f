// SPDX-License-Identifier: MIT
#include "app/desktop/session/last_session.h"

#include "app/desktop/workspace.h"

namespace desktop {

namespace {

template <class Thing, class ThingId>
QString lastName(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = id.isSet() ? core::find(things, id) : nullptr;
    return thing == nullptr ? QString() : QString::fromStdString(thing->name);
}

SessionRow rowOf(const core::Batch& batch, const core::Shelves& shelves) {
    SessionRow row;
    const core::Plant* plant = core::find(shelves.plants, batch.plant);
    const core::StockPlant* mother = core::find(shelves.stockPlants, batch.stockPlant);
    if (plant != nullptr) row.at(SessionColumn::Plant) = QString::fromStdString(core::fullName(*plant));
    if (mother != nullptr) row.at(SessionColumn::StockPlant) = QString::fromStdString(mother->label);
    row.at(SessionColumn::CuttingKind) = lastName(shelves.cuttingKinds, batch.cuttingKind);
    row.at(SessionColumn::Treatment) = lastName(shelves.treatments, batch.treatment);
    row.at(SessionColumn::Station) = lastName(shelves.stations, batch.station);
    row.at(SessionColumn::Medium) = lastName(shelves.media, batch.medium);
    row.at(SessionColumn::Count) = QString::number(batch.stuck);
    row.isOffered = true;
    return row;
}

}  // namespace

std::vector<SessionRow> rowsOfLastSession(const Workspace& workspace) {
    const std::vector<core::BatchLine>& lines = workspace.batchLines();  // by date
    std::vector<SessionRow> rows;
    if (lines.empty()) return rows;
    const core::SessionId last = lines.back().batch.session;
    for (const core::BatchLine& line : lines)
        if (line.batch.session == last) rows.push_back(rowOf(line.batch, workspace.shelves()));
    return rows;
}

}  // namespace desktop
