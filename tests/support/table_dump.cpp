// SPDX-License-Identifier: MIT
#include "tests/support/table_dump.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <vector>

namespace support {

namespace {

std::string rowText(SQLite::Statement& row) {
    std::string text;
    for (int column = 0; column < row.getColumnCount(); ++column) {
        const SQLite::Column value = row.getColumn(column);
        text += std::to_string(value.getType()) + ':' + value.getString() + '|';
    }
    return text + '\n';
}

}  // namespace

std::string tableDump(const std::filesystem::path& file) {
    const SQLite::Database database(file.string(), SQLite::OPEN_READONLY);
    std::string dump;
    SQLite::Statement table(database,
                            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'history' ORDER BY name");
    while (table.executeStep()) {
        const std::string name = table.getColumn(0).getString();
        dump += "== " + name + '\n';
        SQLite::Statement row(database, "SELECT * FROM \"" + name + "\" ORDER BY 1, 2");
        while (row.executeStep()) dump += rowText(row);
    }
    return dump;
}

void runSql(const std::filesystem::path& file, const std::string& statements) {
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec(statements);
}

std::string valueOf(const std::filesystem::path& file, const std::string& query) {
    const SQLite::Database database(file.string(), SQLite::OPEN_READONLY);
    SQLite::Statement row(database, query);
    return row.executeStep() ? row.getColumn(0).getString() : std::string();
}

}  // namespace support
