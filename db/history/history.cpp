// SPDX-License-Identifier: MIT
#include "db/history/history.h"

#include <algorithm>
#include <functional>
#include <set>

namespace db {

using Kind = HistoryEntry::Kind;

std::int64_t actionOf(const HistoryRow& row) {
    return row.kind == Kind::Action ? row.number : row.ofNumber;
}

// Read from the newest row back, the first row that speaks of an action says how it stands. Undo and redo go last in, first out, so the
// first standing action met is the one to undo.
std::optional<HistoryRow> nextToUndo(Connection& connection, int schemaVersion) {
    std::optional<HistoryRow> found;
    std::set<std::int64_t> undone;
    forEachHistoryRow(connection, [&](const HistoryRow& row) {
        if (undone.contains(actionOf(row))) return true;
        if (row.kind == Kind::Undo) {
            undone.insert(actionOf(row));
            return true;
        }
        found = row;
        return false;
    });
    if (found && found->schemaVersion != schemaVersion) found.reset();
    return found;
}

// The first undo met that hasn't been redone since; a new action ends the search, for what was undone before it can't come back.
std::optional<HistoryRow> nextToRedo(Connection& connection, int schemaVersion) {
    std::optional<HistoryRow> found;
    std::set<std::int64_t> redone;
    forEachHistoryRow(connection, [&](const HistoryRow& row) {
        if (row.kind == Kind::Action) return false;
        if (redone.contains(actionOf(row))) return true;
        if (row.kind == Kind::Redo) {
            redone.insert(actionOf(row));
            return true;
        }
        found = row;
        return false;
    });
    if (found && found->schemaVersion != schemaVersion) found.reset();
    return found;
}

// By the number of the action: the rows of redone ones come in another order.
StandingActions standingActions(Connection& connection, int schemaVersion) {
    StandingActions standing{.newestFirst = {}, .reachToTheStart = true};
    std::set<std::int64_t> seen;
    forEachHistoryRow(connection, [&](const HistoryRow& row) {
        standing.reachToTheStart = row.schemaVersion == schemaVersion;
        if (!standing.reachToTheStart) return false;
        if (seen.insert(actionOf(row)).second && row.kind != Kind::Undo) standing.newestFirst.push_back(row);
        return true;
    });
    std::ranges::sort(standing.newestFirst, std::ranges::greater(), actionOf);
    return standing;
}

std::vector<HistoryEntry> historyEntries(Connection& connection, int schemaVersion, int newest) {
    const auto toUndo = nextToUndo(connection, schemaVersion);
    const auto toRedo = nextToRedo(connection, schemaVersion);
    std::vector<HistoryEntry> entries;
    std::set<std::int64_t> seen, undone;
    if (newest <= 0) return entries;
    forEachHistoryRow(connection, [&](const HistoryRow& row) {
        const std::int64_t action = actionOf(row);
        if (seen.insert(action).second && row.kind == Kind::Undo) undone.insert(action);
        const bool isAction = row.kind == Kind::Action;
        entries.push_back({.number = row.number,
                           .at = row.doneAt,
                           .author = row.author,
                           .words = row.words,
                           .kind = row.kind,
                           .isUndone = isAction && undone.contains(action),
                           .canBeUndone = isAction && toUndo && actionOf(*toUndo) == action,
                           .canBeRedone = isAction && toRedo && actionOf(*toRedo) == action});
        return static_cast<int>(entries.size()) < newest;
    });
    return entries;
}

}  // namespace db
