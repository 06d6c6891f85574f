// SPDX-License-Identifier: MIT
#include "app/plot/station_map.h"

#include "app/plot/number_text.h"
#include "core/plants/plant.h"

namespace plot {
namespace {

enum class Whose { OfFocus, Standing, Gone };

/// Cuttings in a medium stand in cells, those in water hang in holes. Only the picture depends on it.
bool hangsInHoles(const core::Station& station, const std::vector<core::BatchRecord>& records,
                  const core::Shelves& shelves) {
    for (const core::BatchRecord& record : records)
        if (const core::Medium* medium = core::find(shelves.media, record.batch.medium))
            if (!medium->components.empty()) return false;
    const core::Method* method = core::find(shelves.methods, station.method);
    return method == nullptr || !QString::fromStdString(method->name).contains(QStringLiteral("tray"));
}

PlaceContent* contentAt(StationMap& map, core::Position position) {
    const core::Station& station = map.station;
    if (position.row < 0 || position.row >= station.rows || position.column < 0 || position.column >= station.columns)
        return nullptr;
    return &map.contents[static_cast<std::size_t>(position.row * station.columns + position.column)];
}

void placeBatch(StationMap& map, const core::BatchRecord& record, core::BatchId focus, Whose whose,
                const core::Shelves& shelves, const std::set<core::Position>& marked) {
    const bool isOfFocus = record.batch.id == focus, isOther = focus.isSet() && !isOfFocus;
    if (isOfFocus != (whose == Whose::OfFocus) || (!isOfFocus && record.batch.station != map.station.id)) return;
    if (isOther && whose == Whose::Gone) return;
    const bool isClosed = core::isClosed(record.batch, core::tallyOf(record.batch, record.checks));
    const core::Plant* plant = core::find(shelves.plants, record.batch.plant);
    for (const core::PositionState& state : core::positionStates(record)) {
        PlaceContent* content = contentAt(map, state.position);
        if (content == nullptr || content->batch.isSet()) continue;
        // What was lost or taken away stands there no more; neither does a batch that was potted on.
        const bool isGone = isClosed || (state.finding && state.finding->outcome != core::Outcome::Rooted);
        if (whose == Whose::Standing && isGone) continue;
        *content = {.isBlocked = content->isBlocked,
                    .batch = record.batch.id,
                    .code = QString::fromStdString(record.batch.code),
                    .plant = plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                    .stuckOn = record.batch.stuckOn,
                    .finding = state.finding,
                    .foundOn = state.foundOn,
                    .isOther = isOther,
                    .isMarked = marked.contains(state.position)};
    }
}

PlaceState stateFor(core::Outcome outcome) {
    switch (outcome) {
        case core::Outcome::Rooted:
            return PlaceState::Rooted;
        case core::Outcome::Lost:
            return PlaceState::Lost;
        case core::Outcome::Withdrawn:
            break;
    }
    return PlaceState::Withdrawn;
}

}  // namespace

StationMap stationMap(const core::Station& station, const std::vector<core::BatchRecord>& records, core::BatchId focus,
                      const core::Shelves& shelves, const std::set<core::Position>& marked) {
    StationMap map{.station = station,
                   .isRound = hangsInHoles(station, records, shelves),
                   .keys = markKeysFor(shelves.lossCauses)};
    map.contents.assign(static_cast<std::size_t>(station.rows * station.columns), {});
    for (const core::Position position : core::positionsFrom(station.blocked).value_or(std::vector<core::Position>()))
        if (PlaceContent* content = contentAt(map, position)) content->isBlocked = true;
    for (const Whose whose : {Whose::OfFocus, Whose::Standing, Whose::Gone})
        for (const core::BatchRecord& record : records) placeBatch(map, record, focus, whose, shelves, marked);
    return map;
}

const PlaceContent& StationMap::at(core::Position position) const {
    return contents[static_cast<std::size_t>(position.row * station.columns + position.column)];
}

MapPlace StationMap::placeAt(core::Position position) const {
    const PlaceContent& content = at(position);
    MapPlace place{.isDimmed = content.isOther};
    if (!content.batch.isSet()) {
        place.state = content.isBlocked ? PlaceState::Blocked : PlaceState::Free;
        return place;
    }
    place.state = PlaceState::Undecided;
    if (!content.finding) return place;
    place.state = stateFor(content.finding->outcome);
    place.letter = letterFor(keys, {.outcome = content.finding->outcome, .cause = content.finding->cause});
    if (!content.isMarked) place.day = countText(core::daysBetween(content.stuckOn, content.foundOn));
    return place;
}

PositionMap StationMap::picture() const {
    PositionMap map{.rows = station.rows,
                    .columns = station.columns,
                    .isStaggered = station.isStaggered,
                    .isRound = isRound,
                    .places = {}};
    for (int row = 0; row < station.rows; ++row)
        for (int column = 0; column < station.columns; ++column) map.places.push_back(placeAt({row, column}));
    return map;
}

}  // namespace plot
