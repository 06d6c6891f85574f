// SPDX-License-Identifier: MIT
#include "db/actions/held_positions.h"

#include "db/inside.h"
#include "db/tables/batch_table.h"
#include "db/tables/check_table.h"

namespace db {

core::Refusals HeldPositions::faultsIn(const core::BatchRecord& record, const core::Shelves& shelves) {
    const core::Batch& batch = record.batch;
    std::vector<core::HeldPosition> held;
    if (!batch.positions.empty() && batch.station.isSet())
        for (const auto& [id, positions] : at(batch.station))
            if (id != batch.id) held.insert(held.end(), positions.begin(), positions.end());
    return core::faultsInPositions(batch, record.checks, shelves, held);
}

void HeldPositions::add(const core::BatchRecord& record) {
    if (!record.batch.positions.empty() && record.batch.station.isSet())
        at(record.batch.station)[record.batch.id] = core::heldPositions(record);
}

HeldPositions::AtStation& HeldPositions::at(core::StationId station) {
    const auto [found, isNew] = stations_.try_emplace(station);
    if (!isNew) return found->second;
    logbook_.inside().with([&](Connection& connection) {
        for (core::Batch& batch : batchesStandingAt(connection, station)) {
            core::BatchRecord record{.batch = std::move(batch), .checks = {}};
            record.checks = checksOf(connection, record.batch.id);
            found->second.emplace(record.batch.id, core::heldPositions(record));
        }
    });
    return found->second;
}

}  // namespace db
