// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_stations.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

struct StationWords {
    Q_DECLARE_TR_FUNCTIONS(SessionStations)
};

int sticksAt(core::StationId station, const SessionReading& reading) {
    int sticks = 0;
    for (const core::Batch& batch : reading.draft.batches)
        if (batch.station == station) sticks += batch.stuck;
    return sticks;
}

void hold(std::vector<core::HeldPosition>& held, const std::vector<core::Position>& positions, int row) {
    for (const core::Position position : positions)
        held.push_back({.position = position,
                        .code = StationWords::tr("row %1", "of the session's grid").arg(row + 1).toStdString()});
}

}  // namespace

SessionStations::SessionStations(Workspace& workspace) : workspace_(workspace) {
    const core::Shelves& shelves = workspace.shelves();
    for (const core::BatchLine& line : workspace.batchLines()) {
        if (!line.batch.station.isSet()) continue;
        Use& use = stations_[line.batch.station];
        if (!core::isClosed(line.batch, line.tally)) use.undecided += line.tally.undecided();
        if (!line.batch.closedOn) use.open.push_back(line.batch.id);
        const core::Medium* medium = core::find(shelves.media, line.batch.medium);
        use.medium = medium == nullptr ? QString() : QString::fromStdString(medium->name);  // batches come by date
    }
}

QString SessionStations::usualMediumOf(core::StationId station) const {
    const auto use = stations_.find(station);
    return use == stations_.end() ? QString() : use->second.medium;
}

SessionStations::Use& SessionStations::useOf(core::StationId station) {
    Use& use = stations_[station];
    if (use.isRead) return use;
    use.isRead = true;
    workspace_.attempt([&](db::Logbook& logbook) {
        for (const core::BatchId id : use.open) {
            const auto record = logbook.batch(id);
            if (!record) continue;
            const bool isWaiting = core::tallyOf(record->batch, record->checks).undecided() > 0;
            if (isWaiting && record->batch.positions.empty()) use.isKnown = false;
            for (core::HeldPosition& held : core::heldPositions(*record)) use.held.push_back(std::move(held));
        }
    });
    return use;
}

void SessionStations::placeTyped(const QString& typed, const core::Shelves& shelves, core::Batch& batch, int row,
                                 SessionReading& reading, std::vector<core::HeldPosition>& held) const {
    batch.positions = typed.toStdString();
    const auto positions = core::positionsFrom(batch.positions);
    if (positions) batch.positions = core::textOf(*positions);
    const core::Refusals faults = core::faultsInPositions(batch, {}, shelves, held);
    if (!faults.empty())
        reading.faults.push_back({.row = row,
                                  .column = SessionColumn::Positions,
                                  .sentence = QString::fromStdString(faults.front().sentence)});
    if (positions) hold(held, *positions, row);
}

std::vector<QString> SessionStations::place(const SessionSheet& sheet, const core::Shelves& shelves,
                                            SessionReading& reading) {
    std::vector<QString> filled(sheet.rows.size());
    std::unordered_map<core::StationId, std::vector<core::HeldPosition>> held;
    const auto forEach = [&](bool isTyped, const auto& act) {
        for (std::size_t i = 0; i < reading.draft.batches.size(); ++i) {
            core::Batch& batch = reading.draft.batches[i];
            const core::Station* station = core::find(shelves.stations, batch.station);
            const int row = reading.rows[i];
            const QString typed = sheet.rows[static_cast<std::size_t>(row)].at(SessionColumn::Positions).trimmed();
            if (!batch.station.isSet() || station == nullptr || typed.isEmpty() == isTyped) continue;
            act(batch, *station, typed, row, held.try_emplace(station->id, useOf(station->id).held).first->second);
        }
    };
    // What was typed is taken first, so that no other row fills itself with it.
    forEach(true, [&](core::Batch& batch, const core::Station&, const QString& typed, int row, auto& taken) {
        placeTyped(typed, shelves, batch, row, reading, taken);
    });
    forEach(false, [&](core::Batch& batch, const core::Station& station, const QString&, int row, auto& taken) {
        if (!station.hasLayout() || batch.stuck < 1 || !useOf(station.id).isKnown) return;
        const std::vector<core::Position> free = core::freePositions(station, taken, batch.stuck);
        if (std::ssize(free) < batch.stuck) return;
        batch.positions = core::textOf(free);
        filled[static_cast<std::size_t>(row)] = QString::fromStdString(batch.positions);
        hold(taken, free, row);
    });
    return filled;
}

QString SessionStations::roomText(const SessionReading& reading, const core::Shelves& shelves) const {
    QStringList rooms;
    for (const core::Station& station : shelves.stations) {
        const int sticks = sticksAt(station.id, reading);
        if (sticks == 0 || station.positions() == 0) continue;
        const auto use = stations_.find(station.id);
        const int taken = use == stations_.end() ? 0 : use->second.undecided;
        rooms.append(StationWords::tr("%1 %2 of %3", "station, positions free, positions")
                         .arg(QString::fromStdString(station.name),
                              plot::countText(std::max(0, station.positions() - taken - sticks)),
                              plot::countText(station.positions())));
    }
    return rooms.isEmpty() ? QString()
                           : StationWords::tr("Free after this session: %1.")
                                 .arg(rooms.join(StationWords::tr(" · ", "between stations")));
}

QStringList SessionStations::fullStations(const SessionReading& reading, const core::Shelves& shelves) const {
    QStringList sentences;
    for (const core::Station& station : shelves.stations) {
        const int sticks = sticksAt(station.id, reading);
        const auto use = stations_.find(station.id);
        const int taken = use == stations_.end() ? 0 : use->second.undecided;
        const int free = std::max(0, station.positions() - taken);
        if (sticks == 0 || station.positions() == 0 || sticks <= free) continue;
        sentences.append(
            StationWords::tr(
                "%1 has %2 of its %3 positions free, and this session sticks %4 there. It can be saved all the same.")
                .arg(QString::fromStdString(station.name))
                .arg(free)
                .arg(station.positions())
                .arg(sticks));
    }
    return sentences;
}

}  // namespace desktop
