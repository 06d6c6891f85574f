// SPDX-License-Identifier: MIT
#include "db/tables/logger_format_table.h"

namespace db {

namespace {

constexpr const char* insertLoggerFormat =
    "INSERT INTO logger_formats (id, name, header, mapping) VALUES (?1, ?2, ?3, ?4)";
constexpr const char* updateLoggerFormat =
    "UPDATE logger_formats SET name = ?2, header = ?3, mapping = ?4 WHERE id = ?1";
constexpr const char* deleteLoggerFormat = "DELETE FROM logger_formats WHERE id = ?1";
constexpr const char* selectLoggerFormats =
    "SELECT id, name, header, mapping FROM logger_formats ORDER BY name COLLATE NOCASE, id";

int runLoggerFormat(Connection& connection, const char* sql, const core::LoggerFormat& format) {
    return connection.run(sql, format.id, format.name, format.header, format.mapping);
}

}  // namespace

void insertRow(Connection& connection, const core::LoggerFormat& format) {
    runLoggerFormat(connection, insertLoggerFormat, format);
}

bool updateRow(Connection& connection, const core::LoggerFormat& format) {
    return runLoggerFormat(connection, updateLoggerFormat, format) == 1;
}

bool deleteRow(Connection& connection, core::LoggerFormatId id) {
    return connection.run(deleteLoggerFormat, id) == 1;
}

std::vector<core::LoggerFormat> allLoggerFormats(Connection& connection) {
    std::vector<core::LoggerFormat> all;
    for (Query row = connection.query(selectLoggerFormats); row.step();)
        all.push_back({.id = row.id<core::LoggerFormatId>(0),
                       .name = row.text(1),
                       .header = row.text(2),
                       .mapping = row.text(3)});
    return all;
}

}  // namespace db
