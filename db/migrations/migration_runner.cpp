// SPDX-License-Identifier: MIT
#include "db/migrations/migration_runner.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <array>

#include "db/transaction.h"

namespace db {

namespace {

constexpr std::array releasedList = std::to_array<Migration>({
#include "released_migrations.inc"  // made by CMake from the .sql files of this folder
});

constexpr const char* selectVersion = "PRAGMA user_version";
constexpr const char* selectSchema =
    "SELECT type, name, tbl_name, COALESCE(sql, '') FROM sqlite_schema ORDER BY type, name";

}  // namespace

std::span<const Migration> releasedMigrations() {
    return releasedList;
}

int newestVersion(std::span<const Migration> migrations) {
    return migrations.empty() ? 0 : migrations.back().version;
}

int schemaVersionOf(Connection& connection) {
    Query row = connection.query(selectVersion);
    row.step();
    return row.number(0);
}

void migrate(Connection& connection, std::span<const Migration> migrations) {
    for (const Migration& migration : migrations) {
        WriteTransaction transaction(connection);
        if (migration.version <= schemaVersionOf(connection))
            continue;  // asked within: another process may have been here
        connection.runScript(migration.sql);
        connection.runScript(("PRAGMA application_id = " + std::to_string(applicationId)).c_str());
        connection.runScript(("PRAGMA user_version = " + std::to_string(migration.version)).c_str());
        transaction.commit();
    }
}

std::vector<std::string> schemaOf(Connection& connection) {
    std::vector<std::string> schema;
    for (Query row = connection.query(selectSchema); row.step();)
        schema.push_back(row.text(0) + '\n' + row.text(1) + '\n' + row.text(2) + '\n' + row.text(3));
    return schema;
}

namespace {

/// Runs the migrations on nothing and looks what came of it.
std::vector<std::string> builtSchema(std::span<const Migration> migrations, int version) {
    Connection blank(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0);
    std::size_t count = 0;
    while (count < migrations.size() && migrations[count].version <= version) ++count;
    migrate(blank, migrations.first(count));
    return schemaOf(blank);
}

}  // namespace

std::vector<std::string> expectedSchema(std::span<const Migration> migrations, int version) {
    // Asked at every opening; the answer can't change while the program runs.
    static const std::vector<std::string> newestReleased = builtSchema(releasedList, newestVersion(releasedList));
    const bool isNewestReleased = migrations.data() == releasedList.data() && version == newestVersion(releasedList);
    return isNewestReleased ? newestReleased : builtSchema(migrations, version);
}

}  // namespace db
