// SPDX-License-Identifier: MIT
// The part of Writer that has to do with money, lots and counts after potting.
#include "db/tables/expense_table.h"
#include "db/tables/lot_table.h"
#include "db/tables/potting_table.h"
#include "db/tables/price_table.h"
#include "db/writer_rows.h"

namespace db {

core::ExpenseId Writer::add(core::Expense expense) {
    return addThing(*inside_.connection, expense);
}

core::PriceId Writer::add(core::Price price) {
    return addThing(*inside_.connection, price);
}

core::LotId Writer::add(core::Lot lot) {
    return addThing(*inside_.connection, lot);
}

core::PottingId Writer::add(core::Potting potting) {
    return addThing(*inside_.connection, potting);
}

void Writer::change(const core::Expense& expense) {
    requireFound(updateRow(*inside_.connection, expense));
}

void Writer::change(const core::Price& price) {
    requireFound(updateRow(*inside_.connection, price));
}

void Writer::change(const core::Lot& lot) {
    requireFound(updateRow(*inside_.connection, lot));
}

void Writer::change(const core::Potting& potting) {
    requireFound(updateRow(*inside_.connection, potting));
}

void Writer::remove(core::ExpenseId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::PriceId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::LotId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::PottingId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

}  // namespace db
