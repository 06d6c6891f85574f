// SPDX-License-Identifier: MIT
#include "db/safekeeping/audit.h"

#include <SQLiteCpp/Backup.h>

#include "db/history/changeset.h"
#include "db/history/history.h"
#include "db/tables/batch_table.h"
#include "db/tables/care_table.h"
#include "db/tables/check_schedule_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/logger_day_table.h"
#include "db/tables/logger_format_table.h"
#include "db/tables/lot_table.h"
#include "db/tables/medium_table.h"
#include "db/tables/mix_table.h"
#include "db/tables/own_band_table.h"
#include "db/tables/photo_table.h"
#include "db/tables/plan_table.h"
#include "db/tables/plant_table.h"
#include "db/tables/potting_table.h"
#include "db/tables/price_table.h"
#include "db/tables/reading_table.h"
#include "db/tables/session_table.h"
#include "db/tables/station_table.h"
#include "db/tables/stock_plant_table.h"
#include "db/tables/treatment_table.h"
#include "db/tables/trial_table.h"
#include "db/transaction.h"

namespace db {

namespace {

/// Of what a new logbook has none of, the tables that have rows.
std::vector<std::string> writtenFromNowhere(Connection& connection) {
    std::vector<std::string> sentences;
    const auto require = [&](const auto& rows, const std::string& kind) {
        if (!rows.empty())
            sentences.push_back("Some " + kind + " were written by something that is not in the history.");
    };
    require(allSessions(connection), "sessions");
    require(allBatchLines(connection), "batches");
    require(allPlants(connection), "plants");
    require(allStockPlants(connection), "stock plants");
    require(allStations(connection), "stations");
    require(allMedia(connection), "media");
    require(allTreatments(connection), "treatments");
    require(allTrials(connection), "trials");
    require(allCheckSchedules(connection), "check schedules");
    require(allPlans(connection), "plans");
    require(allReadings(connection), "readings");
    require(allCare(connection), "entries of care");
    require(allPhotos(connection), "photos");
    require(allExpenses(connection), "expenses");
    require(allPottings(connection), "counts after potting");
    require(allPrices(connection), "prices");
    require(allLots(connection), "lots");
    require(allMixes(connection), "mixes");
    require(allOwnBands(connection), "bands");
    require(allLoggerSpans(connection), "values of loggers");
    require(allLoggerFormats(connection), "formats of loggers");
    return sentences;
}

}  // namespace

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
    if (standing.reachToTheStart) return writtenFromNowhere(copy);
    return {};
}

}  // namespace db
