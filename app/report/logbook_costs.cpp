// SPDX-License-Identifier: MIT
#include "app/report/logbook_costs.h"

#include "app/plot/local_time.h"

namespace report {

core::CostsOfBatches costsOfLogbook(const db::Logbook& logbook, const std::vector<core::BatchRecord>& batches,
                                    core::Date today, const std::stop_token& stop) {
    const core::Shelves shelves = logbook.shelves();
    const std::vector<core::Session> sessions = logbook.sessions();
    const std::vector<core::Care> care = logbook.allCare();
    const std::vector<core::Expense> expenses = logbook.allExpenses();
    return core::costsOfBatches({.shelves = shelves,
                                 .batches = batches,
                                 .sessions = sessions,
                                 .care = care,
                                 .expenses = expenses,
                                 .today = today,
                                 .dayStart = [](core::Date day) { return plot::momentOf(day, 0); }},
                                stop);
}

}  // namespace report
