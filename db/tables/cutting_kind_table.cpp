// SPDX-License-Identifier: MIT
#include "db/tables/cutting_kind_table.h"

namespace db {

namespace {

constexpr const char* insertCuttingKind = R"(
    INSERT INTO cutting_kinds (id, name, is_retired)
    VALUES (?1, ?2, ?3))";
constexpr const char* updateCuttingKind = R"(
    UPDATE cutting_kinds SET name = ?2, is_retired = ?3
    WHERE id = ?1)";
constexpr const char* deleteCuttingKind = "DELETE FROM cutting_kinds WHERE id = ?1";
constexpr const char* selectCuttingKinds = R"(
    SELECT id, name, is_retired
    FROM cutting_kinds ORDER BY name COLLATE NOCASE, id)";

core::CuttingKind cuttingKindFrom(const Query& row) {
    return {.id = row.id<core::CuttingKindId>(0), .name = row.text(1), .isRetired = row.truth(2)};
}

int runCuttingKind(Connection& connection, const char* sql, const core::CuttingKind& cuttingKind) {
    return connection.run(sql, cuttingKind.id, cuttingKind.name, cuttingKind.isRetired);
}

}  // namespace

void insertRow(Connection& connection, const core::CuttingKind& cuttingKind) {
    runCuttingKind(connection, insertCuttingKind, cuttingKind);
}

bool updateRow(Connection& connection, const core::CuttingKind& cuttingKind) {
    return runCuttingKind(connection, updateCuttingKind, cuttingKind) == 1;
}

bool deleteRow(Connection& connection, core::CuttingKindId id) {
    return connection.run(deleteCuttingKind, id) == 1;
}

std::vector<core::CuttingKind> allCuttingKinds(Connection& connection) {
    std::vector<core::CuttingKind> all;
    for (Query row = connection.query(selectCuttingKinds); row.step();) all.push_back(cuttingKindFrom(row));
    return all;
}

}  // namespace db
