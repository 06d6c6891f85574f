// SPDX-License-Identifier: MIT
// Rows of the table history: all SQL about it is here. Rows are only ever added.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "db/connection.h"
#include "db/logbook.h"

namespace db {

struct HistoryRow {
    std::int64_t number{};
    std::string doneAt;
    std::string author;
    std::string words;
    HistoryEntry::Kind kind{};
    std::int64_t ofNumber{};  // the action that an undo took back or a redo put back; 0 for an action
    int schemaVersion{};
};

/// Gives the row its number, which it returns. `changeset` only for an action.
std::int64_t addHistoryRow(Connection& connection, const HistoryRow& row,
                           const std::optional<std::vector<std::uint8_t>>& changeset);
/// Newest first, until `goesOn` says no.
void forEachHistoryRow(Connection& connection, const std::function<bool(const HistoryRow&)>& goesOn);
[[nodiscard]] std::vector<std::uint8_t> changesetOf(Connection& connection, std::int64_t number);

}  // namespace db
