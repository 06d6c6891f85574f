// SPDX-License-Identifier: MIT
#include "db/tables/trial_batch_table.h"

namespace db {

namespace {

constexpr const char* insertDealt = R"(
    INSERT INTO trial_batches (trial_id, number, session_number, station_id, block, plant_id, stock_plant_id, arm, stuck,
                               positions, batch_id)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11))";
constexpr const char* deleteDealtOfTrial = "DELETE FROM trial_batches WHERE trial_id = ?1";
constexpr const char* selectDealt = R"(
    SELECT number, session_number, station_id, block, plant_id, stock_plant_id, arm, stuck, positions, batch_id
    FROM trial_batches WHERE trial_id = ?1 ORDER BY number)";
constexpr const char* releaseDealtOfBatch = "UPDATE trial_batches SET batch_id = NULL WHERE batch_id = ?1";
constexpr const char* findDealtAtStation = "SELECT number FROM trial_batches WHERE station_id = ?1 LIMIT 1";
constexpr const char* findDealtOfPlant = "SELECT number FROM trial_batches WHERE plant_id = ?1 LIMIT 1";
constexpr const char* findDealtOfStockPlant = "SELECT number FROM trial_batches WHERE stock_plant_id = ?1 LIMIT 1";

}  // namespace

void replaceDealt(Connection& connection, const core::Trial& trial) {
    deleteDealt(connection, trial.id);
    for (const core::TrialBatch& dealt : trial.batches)
        connection.run(insertDealt, trial.id, dealt.number, dealt.session, dealt.station, dealt.block, dealt.plant,
                       dealt.stockPlant, dealt.arm, dealt.stuck, dealt.positions, dealt.batch);
}

void deleteDealt(Connection& connection, core::TrialId trial) {
    connection.run(deleteDealtOfTrial, trial);
}

std::vector<core::TrialBatch> dealtOf(Connection& connection, core::TrialId trial) {
    std::vector<core::TrialBatch> all;
    for (Query row = connection.query(selectDealt, trial); row.step();)
        all.push_back({.number = row.number(0),
                       .session = row.number(1),
                       .station = row.id<core::StationId>(2),
                       .block = row.text(3),
                       .plant = row.id<core::PlantId>(4),
                       .stockPlant = row.id<core::StockPlantId>(5),
                       .arm = row.number(6),
                       .stuck = row.number(7),
                       .positions = row.text(8),
                       .batch = row.id<core::BatchId>(9)});
    return all;
}

void releaseDealt(Connection& connection, core::BatchId batch) {
    connection.run(releaseDealtOfBatch, batch);
}

bool hasDealt(Connection& connection, core::StationId id) {
    return connection.query(findDealtAtStation, id).step();
}

bool hasDealt(Connection& connection, core::PlantId id) {
    return connection.query(findDealtOfPlant, id).step();
}

bool hasDealt(Connection& connection, core::StockPlantId id) {
    return connection.query(findDealtOfStockPlant, id).step();
}

}  // namespace db
