// SPDX-License-Identifier: MIT
// Edits of sessions and batches: what a user can do, one verb each. Each asks core's rules first and refuses with every reason, writing
// nothing; or it writes everything in one step of history.
#pragma once

#include <string>
#include <vector>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// Things made on the spot while a session is written down: a batch may name a new plant, stock plant, station and so on by an id that is
/// in `made` and not in the logbook yet (any id that core::Id allows; the caller draws it with newId()).
struct SessionDraft {
    core::Session session;  // id unset: new
    core::Shelves made;     // only its lists are used
    std::vector<core::Batch>
        batches;  // ids, session and stuckOn are filled in; an empty code is given the next free one
};

struct SessionWritten {
    Changes changes;
    core::SessionId session;
    std::vector<core::Batch> batches;  // as written, with codes
};

[[nodiscard]] core::Result<SessionWritten> stickSession(Logbook& logbook, SessionDraft draft, core::Date today);
/// Changes anything of a batch but its session and day; code uniqueness included.
[[nodiscard]] core::Result<Changes> changeBatch(Logbook& logbook, const core::Batch& batch, core::Date today);
[[nodiscard]] core::Result<Changes> changeSession(Logbook& logbook, const core::Session& session,
                                                  core::Date today);  // moves its batches' day too
/// The same with the minutes that it took, in one step: `work` is an expense of the session, new without an id; without minutes it goes.
[[nodiscard]] core::Result<Changes> changeSession(Logbook& logbook, const core::Session& session,
                                                  const core::Expense& work, core::Date today);
[[nodiscard]] core::Result<Changes> deleteBatch(
    Logbook& logbook, core::BatchId batch);  // with its checks, and its session if that is then empty
[[nodiscard]] core::Result<Changes> closeBatch(Logbook& logbook, core::BatchId batch, core::Date on,
                                               const std::string& reason, core::Date today);
/// Refused when its positions have been given to others meanwhile.
[[nodiscard]] core::Result<Changes> reopenBatch(Logbook& logbook, core::BatchId batch);

/// A random id, as add() would give.
[[nodiscard]] std::int64_t newId();

}  // namespace db
