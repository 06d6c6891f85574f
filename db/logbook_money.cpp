// SPDX-License-Identifier: MIT
// The part of Logbook that reads what was spent and what became of the rooted.
#include "db/inside.h"
#include "db/tables/care_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/potting_table.h"

namespace db {

std::vector<core::Expense> Logbook::expenses(core::BatchId batch) const {
    return inside_->with([&](Connection& connection) { return expensesOf(connection, batch); });
}

std::vector<core::Expense> Logbook::expenses(core::SessionId session) const {
    return inside_->with([&](Connection& connection) { return expensesOf(connection, session); });
}

std::vector<core::Potting> Logbook::pottings(core::BatchId batch) const {
    return inside_->with([&](Connection& connection) { return pottingsOf(connection, batch); });
}

std::vector<core::Expense> Logbook::allExpenses() const {
    return inside_->with(db::allExpenses);
}

std::vector<core::Care> Logbook::allCare() const {
    return inside_->with(db::allCare);
}

std::vector<core::Potting> Logbook::allPottings() const {
    return inside_->with(db::allPottings);
}

}  // namespace db
