// SPDX-License-Identifier: MIT
#include "tests/support/money_by_chance.h"

#include <stdexcept>

#include "db/actions/event_actions.h"
#include "db/actions/price_actions.h"
#include "tests/support/chance_values.h"

namespace support {

namespace {

/// Of what batches use: other things stay free to be removed.
void setOwner(core::Price& price, const core::Batch& batch, Chance& chance) {
    price.method = {};
    price.station = {};
    price.medium = {};
    price.treatment = {};
    const int owner = pick(chance, 9);
    if (owner == 0 || owner == 8) price.method = batch.method;
    if (owner == 1 || owner == 8) price.station = batch.station;  // with 8 there are two, which is refused
    if (owner == 2) price.medium = batch.medium;
    if (owner == 3) price.treatment = batch.treatment;
}

Done doKeepPrice(db::Logbook& logbook, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    core::Price price = some(shelves.prices, chance, true);
    price.kind = some(std::vector(core::allPriceKinds.begin(), core::allPriceKinds.end()), chance);
    price.what = someName(chance);
    setOwner(price, some(logbook.batchLines(), chance).batch, chance);
    price.from = core::addDays(someDay(chance, today), pick(chance, 4) * 100);
    price.until.reset();
    if (pick(chance, 4) == 0) price.until = core::addDays(price.from, pick(chance, 60) - 5);
    price.tenThousandths = 100 * pick(chance, 10'000) - 2000;
    price.lastsYears.reset();
    price.lastsFor.reset();
    if (price.kind == core::PriceKind::Lasting && pick(chance, 2) == 0)
        price.lastsYears = 0.5 * pick(chance, 20);
    else
        price.lastsFor = pick(chance, 200);
    price.basis = some(std::vector(core::allPriceBases.begin(), core::allPriceBases.end()), chance);
    price.watts = pick(chance, 60);
    price.hoursADay = pick(chance, 26);
    price.duty = 0.1 * pick(chance, 11);
    price.minutes = 0.5 * pick(chance, 100);
    return db::keep(logbook, price, today);
}

Done doKeepLot(db::Logbook& logbook, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    const core::Batch batch = some(logbook.batchLines(), chance).batch;
    core::Lot lot = some(shelves.lots, chance, true);
    lot.name = "lot " + std::to_string(pick(chance, 30));
    lot.treatment = {};
    lot.medium = {};
    if (batch.treatment.isSet() && pick(chance, 2) == 0)
        lot.treatment = batch.treatment;
    else
        lot.medium = batch.medium;  // none is refused
    lot.usedFrom = someDay(chance, today);
    lot.madeOn.reset();
    if (pick(chance, 2) == 0) lot.madeOn = core::addDays(lot.usedFrom, 3 - pick(chance, 100));
    lot.note = someName(chance);
    return db::keep(logbook, lot, today);
}

core::Expense recordedExpense(const db::Logbook& logbook, Chance& chance) {
    return some(logbook.allExpenses(), chance);
}

Done doKeepExpense(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Expense expense = pick(chance, 2) == 0 ? recordedExpense(logbook, chance) : core::Expense{};
    expense.batch = {};
    expense.session = {};
    const int owner = pick(chance, 10);
    if (owner < 6) expense.batch = someBatch(logbook, chance);
    if (owner > 4) expense.session = some(logbook.sessions(), chance).id;  // 5: both, which is refused
    expense.spentOn = someDay(chance, today);
    expense.what = someName(chance);
    expense.hundredths = pick(chance, 10'000) - 200;
    expense.minutes.reset();
    if (pick(chance, 3) == 0) expense.minutes = pick(chance, 90);  // none of them is refused
    return db::keepExpense(logbook, expense, today);
}

core::Potting recordedPotting(const db::Logbook& logbook, Chance& chance) {
    return some(logbook.allPottings(), chance);
}

/// Of a batch with something rooted; more than that once in a while.
Done doKeepPotting(db::Logbook& logbook, Chance& chance, core::Date today) {
    std::vector<core::BatchLine> rooted;
    for (core::BatchLine& line : logbook.batchLines())
        if (line.tally.rooted > 0) rooted.push_back(std::move(line));
    const core::BatchLine line = some(rooted, chance);
    core::Potting potting = pick(chance, 3) == 0 ? recordedPotting(logbook, chance) : core::Potting{};
    potting.batch = line.batch.id;
    potting.countedOn = core::addDays(line.tally.lastCheckedOn.value_or(today), pick(chance, 3) - pick(chance, 8) / 7);
    potting.potted = pick(chance, 4);
    potting.lost = pick(chance, 3) / 2;
    potting.note = someName(chance);
    return db::keepPotting(logbook, potting, today);
}

}  // namespace

Done performMoney(db::Logbook& logbook, Action action, Chance& chance, core::Date today) {
    switch (action) {
        case Action::KeepPrice:
            return doKeepPrice(logbook, chance, today);
        case Action::RemovePrice:
            return db::remove(logbook, some(logbook.shelves().prices, chance).id);
        case Action::KeepLot:
            return doKeepLot(logbook, chance, today);
        case Action::RemoveLot:
            return db::remove(logbook, some(logbook.shelves().lots, chance).id);
        case Action::KeepExpense:
            return doKeepExpense(logbook, chance, today);
        case Action::DeleteExpense:
            return db::deleteExpense(logbook, recordedExpense(logbook, chance));
        case Action::KeepPotting:
            return doKeepPotting(logbook, chance, today);
        case Action::DeletePotting:
            return db::deletePotting(logbook, recordedPotting(logbook, chance));
        default:
            throw std::logic_error("nothing of money");
    }
}

}  // namespace support
