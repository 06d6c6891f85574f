// SPDX-License-Identifier: MIT
#include "db/tables/session_table.h"

namespace db {

namespace {

constexpr const char* insertSession = R"(
    INSERT INTO sessions (id, held_on, worker, note)
    VALUES (?1, ?2, ?3, ?4))";
constexpr const char* updateSession = R"(
    UPDATE sessions SET held_on = ?2, worker = ?3, note = ?4
    WHERE id = ?1)";
constexpr const char* deleteSession = "DELETE FROM sessions WHERE id = ?1";
constexpr const char* selectSessions = R"(
    SELECT id, held_on, worker, note
    FROM sessions ORDER BY held_on, id)";

core::Session sessionFrom(const Query& row) {
    return {.id = row.id<core::SessionId>(0), .date = row.date(1), .worker = row.text(2), .note = row.text(3)};
}

int runSession(Connection& connection, const char* sql, const core::Session& session) {
    return connection.run(sql, session.id, session.date, session.worker, session.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Session& session) {
    runSession(connection, insertSession, session);
}

bool updateRow(Connection& connection, const core::Session& session) {
    return runSession(connection, updateSession, session) == 1;
}

bool deleteRow(Connection& connection, core::SessionId id) {
    return connection.run(deleteSession, id) == 1;
}

std::vector<core::Session> allSessions(Connection& connection) {
    std::vector<core::Session> all;
    for (Query row = connection.query(selectSessions); row.step();) all.push_back(sessionFrom(row));
    return all;
}

}  // namespace db
