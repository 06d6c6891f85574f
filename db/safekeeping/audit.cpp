// SPDX-License-Identifier: MIT
#include "db/safekeeping/audit.h"

#include <SQLiteCpp/Backup.h>

#include "db/history/changeset.h"
#include "db/history/history.h"
#include "db/tables/batch_table.h"
#include "db/tables/session_table.h"
#include "db/transaction.h"

namespace db {

std::vector<std::string> auditFaults(Connection& connection, int schemaVersion) {
    Connection copy(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0);
    {
        SQLite::Backup backup(copy.database(), connection.database());
        constexpr int allPages = -1;
        backup.executeStep(allPages);
    }
    const StandingActions standing = standingActions(copy, schemaVersion);
    const WriteTransaction neverCommitted(copy);
    for (const HistoryRow& action : standing.newestFirst) {
        try {
            applyChangeset(copy, changesetOf(copy, actionOf(action)), Direction::Back);
        } catch (const LogbookError&) {
            return {"What step " + std::to_string(actionOf(action)) + " of the history (" + action.words +
                    ") wrote has been changed by something that is not in the history."};
        }
    }
    if (standing.reachToTheStart && (!allSessions(copy).empty() || !allBatchLines(copy).empty()))
        return {"Some sessions or batches were written by something that is not in the history."};
    return {};
}

}  // namespace db
