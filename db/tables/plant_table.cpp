// SPDX-License-Identifier: MIT
#include "db/tables/plant_table.h"

namespace db {

namespace {

constexpr const char* insertPlant = R"(
    INSERT INTO plants (id, botanical_name, cultivar, common_name, is_protected, usual_rooting_days_high, note, is_retired, check_schedule_id,
                        is_edible)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10))";
constexpr const char* updatePlant = R"(
    UPDATE plants SET botanical_name = ?2, cultivar = ?3, common_name = ?4, is_protected = ?5, usual_rooting_days_high = ?6,
                      note = ?7, is_retired = ?8, check_schedule_id = ?9, is_edible = ?10
    WHERE id = ?1)";
constexpr const char* deletePlant = "DELETE FROM plants WHERE id = ?1";
constexpr const char* selectPlants = R"(
    SELECT id, botanical_name, cultivar, common_name, is_protected, usual_rooting_days_high, note, is_retired, check_schedule_id,
           is_edible
    FROM plants ORDER BY botanical_name COLLATE NOCASE, cultivar COLLATE NOCASE, id)";

constexpr const char* findPlantWithSchedule = "SELECT id FROM plants WHERE check_schedule_id = ?1 LIMIT 1";

core::Plant plantFrom(const Query& row) {
    return {.id = row.id<core::PlantId>(0),
            .botanicalName = row.text(1),
            .cultivar = row.text(2),
            .commonName = row.text(3),
            .isProtected = row.truth(4),
            .usualRootingDaysHigh = row.optionalNumber(5),
            .checkSchedule = row.id<core::CheckScheduleId>(8),
            .note = row.text(6),
            .isRetired = row.truth(7),
            .isEdible = row.truth(9)};
}

int runPlant(Connection& connection, const char* sql, const core::Plant& plant) {
    return connection.run(sql, plant.id, plant.botanicalName, plant.cultivar, plant.commonName, plant.isProtected,
                          plant.usualRootingDaysHigh, plant.note, plant.isRetired, plant.checkSchedule, plant.isEdible);
}

}  // namespace

void insertRow(Connection& connection, const core::Plant& plant) {
    runPlant(connection, insertPlant, plant);
}

bool updateRow(Connection& connection, const core::Plant& plant) {
    return runPlant(connection, updatePlant, plant) == 1;
}

bool deleteRow(Connection& connection, core::PlantId id) {
    return connection.run(deletePlant, id) == 1;
}

std::vector<core::Plant> allPlants(Connection& connection) {
    std::vector<core::Plant> all;
    for (Query row = connection.query(selectPlants); row.step();) all.push_back(plantFrom(row));
    return all;
}

bool hasPlants(Connection& connection, core::CheckScheduleId schedule) {
    return connection.query(findPlantWithSchedule, schedule).step();
}

}  // namespace db
