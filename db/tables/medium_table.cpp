// SPDX-License-Identifier: MIT
#include "db/tables/medium_table.h"

namespace db {

namespace {

constexpr const char* insertMedium = R"(
    INSERT INTO media (id, name, note, is_retired)
    VALUES (?1, ?2, ?3, ?4))";
constexpr const char* updateMedium = R"(
    UPDATE media SET name = ?2, note = ?3, is_retired = ?4
    WHERE id = ?1)";
constexpr const char* deleteMedium = "DELETE FROM media WHERE id = ?1";
constexpr const char* selectMedia = R"(
    SELECT id, name, note, is_retired
    FROM media ORDER BY name COLLATE NOCASE, id)";
constexpr const char* insertComponent = R"(
    INSERT INTO media_components (medium_id, position, name, parts_by_volume)
    VALUES (?1, ?2, ?3, ?4))";
constexpr const char* deleteComponents = "DELETE FROM media_components WHERE medium_id = ?1";
constexpr const char* selectComponents = R"(
    SELECT name, parts_by_volume
    FROM media_components WHERE medium_id = ?1 ORDER BY position)";

int runMedium(Connection& connection, const char* sql, const core::Medium& medium) {
    return connection.run(sql, medium.id, medium.name, medium.note, medium.isRetired);
}

void insertComponents(Connection& connection, const core::Medium& medium) {
    int position = 0;
    for (const core::MediumComponent& component : medium.components)
        connection.run(insertComponent, medium.id, position++, component.name, component.parts);
}

}  // namespace

void insertRow(Connection& connection, const core::Medium& medium) {
    runMedium(connection, insertMedium, medium);
    insertComponents(connection, medium);
}

bool updateRow(Connection& connection, const core::Medium& medium) {
    if (runMedium(connection, updateMedium, medium) != 1) return false;
    connection.run(deleteComponents, medium.id);
    insertComponents(connection, medium);
    return true;
}

bool deleteRow(Connection& connection, core::MediumId id) {
    connection.run(deleteComponents, id);
    return connection.run(deleteMedium, id) == 1;
}

std::vector<core::Medium> allMedia(Connection& connection) {
    std::vector<core::Medium> all;
    for (Query row = connection.query(selectMedia); row.step();) {
        all.push_back({.id = row.id<core::MediumId>(0),
                       .name = row.text(1),
                       .components = {},
                       .note = row.text(2),
                       .isRetired = row.truth(3)});
        for (Query part = connection.query(selectComponents, all.back().id); part.step();)
            all.back().components.push_back({.name = part.text(0), .parts = part.real(1)});
    }
    return all;
}

}  // namespace db
