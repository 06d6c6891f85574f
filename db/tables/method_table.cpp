// SPDX-License-Identifier: MIT
#include "db/tables/method_table.h"

namespace db {

namespace {

constexpr const char* insertMethod = R"(
    INSERT INTO methods (id, name, is_retired, check_schedule_id)
    VALUES (?1, ?2, ?3, ?4))";
constexpr const char* updateMethod = R"(
    UPDATE methods SET name = ?2, is_retired = ?3, check_schedule_id = ?4
    WHERE id = ?1)";
constexpr const char* deleteMethod = "DELETE FROM methods WHERE id = ?1";
constexpr const char* selectMethods = R"(
    SELECT id, name, is_retired, check_schedule_id
    FROM methods ORDER BY name COLLATE NOCASE, id)";

constexpr const char* findMethodWithSchedule = "SELECT id FROM methods WHERE check_schedule_id = ?1 LIMIT 1";

core::Method methodFrom(const Query& row) {
    return {.id = row.id<core::MethodId>(0),
            .name = row.text(1),
            .checkSchedule = row.id<core::CheckScheduleId>(3),
            .isRetired = row.truth(2)};
}

int runMethod(Connection& connection, const char* sql, const core::Method& method) {
    return connection.run(sql, method.id, method.name, method.isRetired, method.checkSchedule);
}

}  // namespace

void insertRow(Connection& connection, const core::Method& method) {
    runMethod(connection, insertMethod, method);
}

bool updateRow(Connection& connection, const core::Method& method) {
    return runMethod(connection, updateMethod, method) == 1;
}

bool deleteRow(Connection& connection, core::MethodId id) {
    return connection.run(deleteMethod, id) == 1;
}

std::vector<core::Method> allMethods(Connection& connection) {
    std::vector<core::Method> all;
    for (Query row = connection.query(selectMethods); row.step();) all.push_back(methodFrom(row));
    return all;
}

bool hasMethods(Connection& connection, core::CheckScheduleId schedule) {
    return connection.query(findMethodWithSchedule, schedule).step();
}

}  // namespace db
