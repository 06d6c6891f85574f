// SPDX-License-Identifier: MIT
#include "db/connection.h"

#include <sqlite3.h>

#include "db/logbook_error.h"

namespace db {

namespace {

/// A changeset of the largest import fits; a length that a damaged file claims does not.
constexpr int longestValue = 512 * 1024 * 1024;

void setLimits(sqlite3* handle) {
    sqlite3_limit(handle, SQLITE_LIMIT_LENGTH, longestValue);
    sqlite3_limit(handle, SQLITE_LIMIT_SQL_LENGTH, 1000000);
    sqlite3_limit(handle, SQLITE_LIMIT_COLUMN, 100);
    sqlite3_limit(handle, SQLITE_LIMIT_EXPR_DEPTH, 100);
    sqlite3_limit(handle, SQLITE_LIMIT_COMPOUND_SELECT, 10);
    sqlite3_limit(handle, SQLITE_LIMIT_VDBE_OP, 100000);
    sqlite3_limit(handle, SQLITE_LIMIT_FUNCTION_ARG, 20);
    sqlite3_limit(handle, SQLITE_LIMIT_ATTACHED, 0);
    sqlite3_limit(handle, SQLITE_LIMIT_TRIGGER_DEPTH, 1);
    sqlite3_limit(handle, SQLITE_LIMIT_WORKER_THREADS, 0);
}

/// A logbook may come from anywhere: nothing that its schema says is run, and it can't be damaged by SQL.
void setDistrust(sqlite3* handle) {
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DML, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DDL, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_FKEY, 1, nullptr);
}

}  // namespace

Query::~Query() {
    statement_.tryReset();
}

std::vector<std::uint8_t> Query::blob(int column) const {
    const SQLite::Column value = statement_.getColumn(column);
    const auto* bytes = static_cast<const std::uint8_t*>(value.getBlob());
    return {bytes, bytes + value.getBytes()};
}

std::optional<int> Query::optionalNumber(int column) const {
    if (isNull(column)) return std::nullopt;
    return number(column);
}

core::Date Query::date(int column) const {
    const auto date = core::dateFromIso(text(column));
    if (!date) throw LogbookError("The logbook holds a date that no calendar has. Restore a backup.");
    return *date;
}

std::optional<core::Date> Query::optionalDate(int column) const {
    if (isNull(column)) return std::nullopt;
    return date(column);
}

Connection::Connection(const std::string& file, int flags, int patienceMilliseconds)
    // One thread at a time has it: SQLite needn't lock at every column that is read.
    : database_(file, flags | SQLite::OPEN_NOMUTEX, patienceMilliseconds) {
    setLimits(handle());
    setDistrust(handle());
    // EXTRA also syncs the folder after the journal is deleted: a commit survives power loss. cell_size_check: damaged pages are found
    // before they are used. The cache, in KiB, holds a large logbook whole.
    runScript(
        "PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0; PRAGMA synchronous = EXTRA; PRAGMA cache_size = -65536;"
        "PRAGMA temp_store = MEMORY;");
}

SQLite::Statement& Connection::prepared(const char* sql) {
    const auto found = statements_.find(sql);
    if (found != statements_.end()) return found->second;
    return statements_.try_emplace(sql, database_, sql).first->second;
}

int Connection::changedRows() {
    return sqlite3_changes(handle());
}

}  // namespace db
