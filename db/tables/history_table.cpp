// SPDX-License-Identifier: MIT
#include "db/tables/history_table.h"

namespace db {

namespace {

constexpr const char* insertHistory = R"(
    INSERT INTO history (number, done_at, author, words, kind, of_number, schema_version, changeset)
    VALUES ((SELECT COALESCE(MAX(number), 0) + 1 FROM history), ?1, ?2, ?3, ?4, ?5, ?6, ?7))";
constexpr const char* selectNewestNumber = "SELECT MAX(number) FROM history";
constexpr const char* selectHistory = R"(
    SELECT number, done_at, author, words, kind, of_number, schema_version
    FROM history ORDER BY number DESC)";
constexpr const char* selectChangeset = "SELECT changeset FROM history WHERE number = ?1";

std::string_view wordForKind(HistoryEntry::Kind kind) {
    switch (kind) {
        case HistoryEntry::Kind::Action:
            return "action";
        case HistoryEntry::Kind::Undo:
            return "undo";
        case HistoryEntry::Kind::Redo:
            return "redo";
    }
    return "action";
}

HistoryEntry::Kind kindFrom(const std::string& word) {
    for (const auto kind : {HistoryEntry::Kind::Undo, HistoryEntry::Kind::Redo})
        if (wordForKind(kind) == word) return kind;
    return HistoryEntry::Kind::Action;
}

}  // namespace

std::int64_t addHistoryRow(Connection& connection, const HistoryRow& row,
                           const std::optional<std::vector<std::uint8_t>>& changeset) {
    std::optional<std::int64_t> ofNumber;
    if (row.ofNumber != 0) ofNumber = row.ofNumber;
    connection.run(insertHistory, row.doneAt, row.author, row.words, wordForKind(row.kind), ofNumber, row.schemaVersion,
                   changeset);
    Query newest = connection.query(selectNewestNumber);
    newest.step();
    return newest.bigNumber(0);
}

void forEachHistoryRow(Connection& connection, const std::function<bool(const HistoryRow&)>& goesOn) {
    for (Query row = connection.query(selectHistory); row.step();) {
        const HistoryRow one{.number = row.bigNumber(0),
                             .doneAt = row.text(1),
                             .author = row.text(2),
                             .words = row.text(3),
                             .kind = kindFrom(row.text(4)),
                             .ofNumber = row.bigNumber(5),
                             .schemaVersion = row.number(6)};
        if (!goesOn(one)) return;
    }
}

std::vector<std::uint8_t> changesetOf(Connection& connection, std::int64_t number) {
    Query row = connection.query(selectChangeset, number);
    if (!row.step()) return {};
    return row.blob(0);
}

}  // namespace db
