// SPDX-License-Identifier: MIT
// Walks a changeset strictly before SQLite is given it. SQLite 3.40's sqlite3changeset_apply() may hang or crash on a damaged one, and a
// logbook may come from anywhere: so its opcodes, tables, columns and lengths are checked here first. Knows no SQLite.
//
// The format is that of SQLite's session extension: for each table 'T', the number of columns, a key byte for each, the name and a zero;
// then its changes: opcode, indirect flag, and one record (insert, delete) or two (update: old, new), each a value for each column.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace db {

/// A table that a changeset may speak of. `key` has a byte for each column: its place in the primary key from 1, or 0.
struct TableShape {
    std::string name;
    std::vector<std::uint8_t> key;
};

enum class RowChange : std::uint8_t { Insert = 18, Update = 23, Delete = 9 };

/// One changed row. Of its values only the whole numbers are kept, which is what ids are.
struct ChangedRow {
    const TableShape* table{};
    RowChange change{};
    std::vector<std::optional<std::int64_t>> before;  // empty for an insert
    std::vector<std::optional<std::int64_t>> after;   // empty for a delete; for an update only what changed
};

/// Visits every row of a changeset as far as it is sound. Returns what is wrong with it in a sentence, or nothing. An empty changeset is a
/// fault: none is ever stored.
[[nodiscard]] std::optional<std::string> walkChangeset(std::span<const std::uint8_t> changeset,
                                                       std::span<const TableShape> tables,
                                                       const std::function<void(const ChangedRow&)>& visit = {});

}  // namespace db
