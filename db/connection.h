// SPDX-License-Identifier: MIT
// One open SQLite connection with its prepared statements. Inside db only; everybody else goes through Logbook.
//
//   for (Query query = connection.query(sql, plant.value); query.step();) use(query.text(0));
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/id.h"
#include "core/units/days.h"

struct sqlite3;

namespace db {

/// One run of a statement: binds, steps, reads; ready for the next run when it goes.
class Query {
  public:
    template <class... Values>
    explicit Query(SQLite::Statement& statement, const Values&... values) : statement_(statement) {
        (bind(values), ...);
    }
    ~Query();
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    /// Binds the next parameter. An id that isn't set and an empty optional become NULL.
    template <class Thing>
    void bind(core::Id<Thing> id) {
        if (id.isSet()) {
            statement_.bind(++bound_, id.value);
        } else {
            statement_.bind(++bound_);
        }
    }
    template <class Value>
    void bind(const std::optional<Value>& value) {
        if (value) {
            bind(*value);
        } else {
            statement_.bind(++bound_);
        }
    }
    void bind(int value) { statement_.bind(++bound_, value); }
    void bind(bool value) { statement_.bind(++bound_, value ? 1 : 0); }
    void bind(std::int64_t value) { statement_.bind(++bound_, value); }
    void bind(std::uint32_t value) { statement_.bind(++bound_, value); }
    void bind(double value) { statement_.bind(++bound_, value); }
    void bind(const std::string& value) { statement_.bind(++bound_, value); }
    void bind(std::string_view value) { statement_.bind(++bound_, std::string(value)); }
    void bind(const std::vector<std::uint8_t>& value) {
        statement_.bind(++bound_, value.data(), static_cast<int>(value.size()));
    }
    void bind(core::Date value) { statement_.bind(++bound_, core::isoText(value)); }

    /// True while there is a row.
    bool step() { return statement_.executeStep(); }

    [[nodiscard]] bool isNull(int column) const { return statement_.isColumnNull(column); }
    [[nodiscard]] std::int64_t bigNumber(int column) const { return statement_.getColumn(column).getInt64(); }
    [[nodiscard]] int number(int column) const { return statement_.getColumn(column).getInt(); }
    [[nodiscard]] double real(int column) const { return statement_.getColumn(column).getDouble(); }
    [[nodiscard]] bool truth(int column) const { return number(column) != 0; }
    [[nodiscard]] std::string text(int column) const { return statement_.getColumn(column).getString(); }
    [[nodiscard]] std::vector<std::uint8_t> blob(int column) const;
    [[nodiscard]] std::optional<int> optionalNumber(int column) const;
    [[nodiscard]] core::Date date(int column) const;
    [[nodiscard]] std::optional<core::Date> optionalDate(int column) const;
    template <class IdType>
    [[nodiscard]] IdType id(int column) const {
        return IdType{bigNumber(column)};  // NULL reads as 0: not set
    }

  private:
    SQLite::Statement& statement_;
    int bound_ = 0;
};

class Connection {
  public:
    /// `flags` are SQLite's. Sets the limits and the distrust that every logbook is opened with, and nothing that writes.
    Connection(const std::string& file, int flags, int patienceMilliseconds);

    /// `sql` must be one of the constants of db/tables: it is prepared once and found again by its address.
    template <class... Values>
    [[nodiscard]] Query query(const char* sql, const Values&... values) {
        return Query(prepared(sql), values...);
    }
    /// Runs a statement that gives no rows; returns how many rows it changed.
    template <class... Values>
    int run(const char* sql, const Values&... values) {
        Query one = query(sql, values...);
        one.step();
        return changedRows();
    }
    /// Runs text of several statements (a schema, BEGIN, PRAGMA): not kept prepared.
    void runScript(const char* sql) { database_.exec(sql); }

    [[nodiscard]] SQLite::Database& database() { return database_; }
    [[nodiscard]] sqlite3* handle() { return database_.getHandle(); }

  private:
    SQLite::Statement& prepared(const char* sql);
    [[nodiscard]] int changedRows();

    SQLite::Database database_;
    std::map<const char*, SQLite::Statement> statements_;  // after database_: gone before it closes
};

}  // namespace db
