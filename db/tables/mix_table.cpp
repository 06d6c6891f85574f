// SPDX-License-Identifier: MIT
#include "db/tables/mix_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertMix = R"(
    INSERT INTO mixes (id, made_at, kind, title, amounts, workings, cautions, session_id, care_id)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9))";
constexpr const char* updateMix = R"(
    UPDATE mixes SET made_at = ?2, kind = ?3, title = ?4, amounts = ?5, workings = ?6, cautions = ?7, session_id = ?8,
                     care_id = ?9
    WHERE id = ?1)";
constexpr const char* deleteMixRow = "DELETE FROM mixes WHERE id = ?1";
constexpr const char* deleteMixesOfSession = "DELETE FROM mixes WHERE session_id = ?1";
constexpr const char* deleteMixesOfCare = "DELETE FROM mixes WHERE care_id = ?1";
constexpr char mixColumns[] = R"(
    SELECT m.id, m.made_at, m.kind, m.title, m.amounts, m.workings, m.cautions, m.session_id, m.care_id FROM mixes m)";
constexpr char mixesByTime[] = " ORDER BY m.made_at, m.id";
constexpr auto selectMix = joined(mixColumns, " WHERE m.id = ?1");
constexpr auto selectMixes = joined(mixColumns, mixesByTime);
constexpr auto selectMixesOfSession = joined(mixColumns, " WHERE m.session_id = ?1", mixesByTime);
constexpr auto selectMixesOfCare = joined(mixColumns, " WHERE m.care_id = ?1", mixesByTime);
constexpr auto selectMixesAt = joined(mixColumns, R"(
    JOIN care c ON c.id = m.care_id
    WHERE c.station_id = ?1 AND c.done_at BETWEEN ?2 AND ?3 ORDER BY c.done_at, m.made_at, m.id)");

core::KeptMix mixFrom(const Query& row) {
    // The table's CHECKs let no other words in.
    return {.id = row.id<core::KeptMixId>(0),
            .madeAt = core::momentFromIso(row.text(1)).value_or(core::Moment{}),
            .kind = core::mixKindFrom(row.text(2)).value_or(core::MixKind::Nutrient),
            .title = row.text(3),
            .amounts = row.text(4),
            .workings = row.text(5),
            .cautions = row.text(6),
            .session = row.id<core::SessionId>(7),
            .care = row.id<core::CareId>(8)};
}

template <class... Values>
std::vector<core::KeptMix> mixesBy(Connection& connection, const char* sql, const Values&... values) {
    std::vector<core::KeptMix> all;
    for (Query row = connection.query(sql, values...); row.step();) all.push_back(mixFrom(row));
    return all;
}

int runMix(Connection& connection, const char* sql, const core::KeptMix& mix) {
    return connection.run(sql, mix.id, core::isoText(mix.madeAt), core::wordFor(mix.kind), mix.title, mix.amounts,
                          mix.workings, mix.cautions, mix.session, mix.care);
}

}  // namespace

void insertRow(Connection& connection, const core::KeptMix& mix) {
    runMix(connection, insertMix, mix);
}

bool updateRow(Connection& connection, const core::KeptMix& mix) {
    return runMix(connection, updateMix, mix) == 1;
}

bool deleteRow(Connection& connection, core::KeptMixId id) {
    return connection.run(deleteMixRow, id) == 1;
}

void deleteMixesOf(Connection& connection, core::SessionId session) {
    connection.run(deleteMixesOfSession, session);
}

void deleteMixesOf(Connection& connection, core::CareId care) {
    connection.run(deleteMixesOfCare, care);
}

std::optional<core::KeptMix> mixIn(Connection& connection, core::KeptMixId id) {
    Query row = connection.query(selectMix.data(), id);
    if (!row.step()) return std::nullopt;
    return mixFrom(row);
}

std::vector<core::KeptMix> mixesOf(Connection& connection, core::SessionId session) {
    return mixesBy(connection, selectMixesOfSession.data(), session);
}

std::vector<core::KeptMix> mixesOf(Connection& connection, core::CareId care) {
    return mixesBy(connection, selectMixesOfCare.data(), care);
}

std::vector<core::KeptMix> mixesAtStation(Connection& connection, core::StationId station, core::Moment from,
                                          core::Moment until) {
    return mixesBy(connection, selectMixesAt.data(), station, core::isoText(from), core::isoText(until));
}

std::vector<core::KeptMix> allMixes(Connection& connection) {
    return mixesBy(connection, selectMixes.data());
}

}  // namespace db
