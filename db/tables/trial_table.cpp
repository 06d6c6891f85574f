// SPDX-License-Identifier: MIT
#include "db/tables/trial_table.h"

namespace db {

namespace {

constexpr const char* insertTrial = R"(
    INSERT INTO trials (id, name, horizon_day, allocation_seed, note)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* updateTrial = R"(
    UPDATE trials SET name = ?2, horizon_day = ?3, allocation_seed = ?4, note = ?5
    WHERE id = ?1)";
constexpr const char* deleteTrial = "DELETE FROM trials WHERE id = ?1";
constexpr const char* selectTrials = R"(
    SELECT id, name, horizon_day, allocation_seed, note
    FROM trials ORDER BY name COLLATE NOCASE, id)";

core::Trial trialFrom(const Query& row) {
    return {
        .id = row.id<core::TrialId>(0),
        .name = row.text(1),
        .horizonDay = row.optionalNumber(2),
        .allocationSeed = row.isNull(3) ? std::optional<std::uint32_t>() : static_cast<std::uint32_t>(row.bigNumber(3)),
        .note = row.text(4)};
}

int runTrial(Connection& connection, const char* sql, const core::Trial& trial) {
    return connection.run(sql, trial.id, trial.name, trial.horizonDay, trial.allocationSeed, trial.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Trial& trial) {
    runTrial(connection, insertTrial, trial);
}

bool updateRow(Connection& connection, const core::Trial& trial) {
    return runTrial(connection, updateTrial, trial) == 1;
}

bool deleteRow(Connection& connection, core::TrialId id) {
    return connection.run(deleteTrial, id) == 1;
}

std::vector<core::Trial> allTrials(Connection& connection) {
    std::vector<core::Trial> all;
    for (Query row = connection.query(selectTrials); row.step();) all.push_back(trialFrom(row));
    return all;
}

}  // namespace db
