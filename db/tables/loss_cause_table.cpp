// SPDX-License-Identifier: MIT
#include "db/tables/loss_cause_table.h"

namespace db {

namespace {

constexpr const char* insertLossCause = R"(
    INSERT INTO loss_causes (id, made_as, name, entry_key, is_retired)
    VALUES (?1, (SELECT COALESCE(MAX(made_as), 0) + 1 FROM loss_causes), ?2, ?3, ?4))";
constexpr const char* updateLossCause = R"(
    UPDATE loss_causes SET name = ?2, entry_key = ?3, is_retired = ?4
    WHERE id = ?1)";
constexpr const char* deleteLossCause = "DELETE FROM loss_causes WHERE id = ?1";
constexpr const char* selectLossCauses = R"(
    SELECT id, name, entry_key, is_retired
    FROM loss_causes ORDER BY made_as, id)";

int runLossCause(Connection& connection, const char* sql, const core::LossCause& cause) {
    const std::optional<std::string> key =
        cause.key == '\0' ? std::nullopt : std::optional<std::string>(std::string(1, cause.key));
    return connection.run(sql, cause.id, cause.name, key, cause.isRetired);
}

}  // namespace

void insertRow(Connection& connection, const core::LossCause& cause) {
    runLossCause(connection, insertLossCause, cause);
}

bool updateRow(Connection& connection, const core::LossCause& cause) {
    return runLossCause(connection, updateLossCause, cause) == 1;
}

bool deleteRow(Connection& connection, core::LossCauseId id) {
    return connection.run(deleteLossCause, id) == 1;
}

std::vector<core::LossCause> allLossCauses(Connection& connection) {
    std::vector<core::LossCause> all;
    for (Query row = connection.query(selectLossCauses); row.step();) {
        const std::string key = row.text(2);
        all.push_back({.id = row.id<core::LossCauseId>(0),
                       .name = row.text(1),
                       .key = key.empty() ? '\0' : key.front(),
                       .isRetired = row.truth(3)});
    }
    return all;
}

}  // namespace db
