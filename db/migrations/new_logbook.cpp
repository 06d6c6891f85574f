// SPDX-License-Identifier: MIT
#include "db/migrations/new_logbook.h"

#include "db/migrations/migration_runner.h"
#include "db/new_id.h"
#include "db/tables/cutting_kind_table.h"
#include "db/tables/facts_table.h"
#include "db/tables/loss_cause_table.h"
#include "db/tables/method_table.h"
#include "db/transaction.h"

namespace db {

void fillNewLogbook(Connection& connection, const core::LogbookFacts& facts) {
    migrate(connection, releasedMigrations());
    WriteTransaction transaction(connection);
    insertRow(connection, facts);
    core::Shelves shelves = core::startingShelves();
    const auto insertAll = [&](auto& things) {
        for (auto& thing : things) {
            thing.id.value = drawId();
            insertRow(connection, thing);
        }
    };
    insertAll(shelves.methods);
    insertAll(shelves.cuttingKinds);
    insertAll(shelves.lossCauses);
    transaction.commit();
}

}  // namespace db
