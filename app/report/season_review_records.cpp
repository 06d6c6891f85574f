// SPDX-License-Identifier: MIT
#include "app/report/season_review_records.h"

#include "app/plot/station_charts.h"
#include "db/logbook.h"

namespace report {

core::ReviewRecords SeasonRecords::view() const {
    return {.shelves = shelves,
            .batches = batches,
            .sessions = sessions,
            .care = care,
            .expenses = expenses,
            .pottings = pottings,
            .today = today,
            .dayStart = plot::dayStart};
}

SeasonRecords seasonRecordsOf(const db::Logbook& logbook, core::Date today) {
    return {.shelves = logbook.shelves(),
            .batches = logbook.batchRecords(),
            .sessions = logbook.sessions(),
            .care = logbook.allCare(),
            .expenses = logbook.allExpenses(),
            .pottings = logbook.allPottings(),
            .today = today};
}

}  // namespace report
