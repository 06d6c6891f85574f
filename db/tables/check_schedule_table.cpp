// SPDX-License-Identifier: MIT
#include "db/tables/check_schedule_table.h"

namespace db {

namespace {

constexpr const char* insertSchedule = R"(
    INSERT INTO check_schedules (id, name, first_after_days, every_days, is_retired)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* updateSchedule = R"(
    UPDATE check_schedules SET name = ?2, first_after_days = ?3, every_days = ?4, is_retired = ?5
    WHERE id = ?1)";
constexpr const char* deleteSchedule = "DELETE FROM check_schedules WHERE id = ?1";
constexpr const char* selectSchedules = R"(
    SELECT id, name, first_after_days, every_days, is_retired
    FROM check_schedules ORDER BY name COLLATE NOCASE, id)";

int runSchedule(Connection& connection, const char* sql, const core::CheckSchedule& schedule) {
    return connection.run(sql, schedule.id, schedule.name, schedule.firstAfterDays, schedule.everyDays,
                          schedule.isRetired);
}

}  // namespace

void insertRow(Connection& connection, const core::CheckSchedule& schedule) {
    runSchedule(connection, insertSchedule, schedule);
}

bool updateRow(Connection& connection, const core::CheckSchedule& schedule) {
    return runSchedule(connection, updateSchedule, schedule) == 1;
}

bool deleteRow(Connection& connection, core::CheckScheduleId id) {
    return connection.run(deleteSchedule, id) == 1;
}

std::vector<core::CheckSchedule> allCheckSchedules(Connection& connection) {
    std::vector<core::CheckSchedule> all;
    for (Query row = connection.query(selectSchedules); row.step();)
        all.push_back({.id = row.id<core::CheckScheduleId>(0),
                       .name = row.text(1),
                       .firstAfterDays = row.number(2),
                       .everyDays = row.number(3),
                       .isRetired = row.truth(4)});
    return all;
}

}  // namespace db
