// SPDX-License-Identifier: MIT
// Records what an action does to the tables, and does it again or takes it back. Wraps SQLite's session extension.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "db/connection.h"
#include "db/history/changeset_check.h"
#include "db/logbook.h"

struct sqlite3_session;

namespace db {

using Changeset = std::vector<std::uint8_t>;

/// The tables that actions change: all but history.
[[nodiscard]] std::vector<TableShape> tablesOf(Connection& connection);

/// Records from when it is made until changeset() is asked for, which must be before COMMIT.
class ChangeRecorder {
  public:
    explicit ChangeRecorder(Connection& connection);
    /// Empty when nothing really changed.
    [[nodiscard]] Changeset changeset();

  private:
    struct Ending {
        void operator()(sqlite3_session* session) const;
    };
    std::unique_ptr<sqlite3_session, Ending> session_;
};

/// Does a changeset again (Forward) or takes it back (Back), within the transaction that is open. LogbookError when it is damaged or when
/// any row has been changed since: the caller then rolls back.
enum class Direction { Forward, Back };
void applyChangeset(Connection& connection, const Changeset& changeset, Direction direction);

/// Which tables and batches a changeset touches. Asked while the rows are as the changeset left them or found them.
[[nodiscard]] Changes changesIn(Connection& connection, const Changeset& changeset);

}  // namespace db
