// SPDX-License-Identifier: MIT
// What can be undone and redone, worked out from the rows of history alone. Rows are only ever added: an undo or a redo is a row that
// names its action, so the whole audit trail stays, and undo works after a restart.
#pragma once

#include <optional>
#include <vector>

#include "db/tables/history_table.h"

namespace db {

/// The row that says what undo (redo) would take back (put back); its action is actionOf(row). Nothing when there is none, or when it was
/// made under another schema than `schemaVersion`: a migration seals what is older.
[[nodiscard]] std::optional<HistoryRow> nextToUndo(Connection& connection, int schemaVersion);
[[nodiscard]] std::optional<HistoryRow> nextToRedo(Connection& connection, int schemaVersion);
[[nodiscard]] std::int64_t actionOf(const HistoryRow& row);

/// The actions that stand, each told by the row that says so, as far back as this schema goes.
struct StandingActions {
    std::vector<HistoryRow> newestFirst;
    bool reachToTheStart{};  // no migration has sealed anything
};
[[nodiscard]] StandingActions standingActions(Connection& connection, int schemaVersion);

/// The newest rows, newest first.
[[nodiscard]] std::vector<HistoryEntry> historyEntries(Connection& connection, int schemaVersion, int newest);

}  // namespace db
