// SPDX-License-Identifier: MIT
#include "db/actions/price_actions.h"

#include "core/money/price_rules.h"
#include "core/treatment/lot_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/priced_things.h"

namespace db {

namespace {

template <class Thing>
core::Result<Changes> keepDated(Logbook& logbook, const Thing& thing, const std::string& called,
                                const core::Refusal& ifGone, std::vector<Thing> core::Shelves::*shelf,
                                core::Date today) {
    const std::string words = (thing.id.isSet() ? "change of the " : "new ") + called;
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        core::Refusals faults = core::faultsIn(thing, shelves, today);
        if (thing.id.isSet() && core::find(shelves.*shelf, thing.id) == nullptr) faults.push_back(ifGone);
        if (!faults.empty()) return faults;
        if (thing.id.isSet()) {
            writer.change(thing);
        } else {
            writer.add(thing);
        }
        return faults;
    });
}

template <class ThingId>
core::Result<Changes> removeCalled(Logbook& logbook, ThingId id, const std::string& called) {
    return actUnlessRefused(logbook, "removal of the " + called, [&](Writer& writer) {
        writer.remove(id);
        return core::Refusals{};
    });
}

}  // namespace

core::Result<Changes> keep(Logbook& logbook, const core::Price& price, core::Date today) {
    return keepDated(logbook, core::tidied(price), calledPrice(price), notThere("Price", "price"),
                     &core::Shelves::prices, today);
}

core::Result<Changes> keep(Logbook& logbook, const core::Lot& lot, core::Date today) {
    return keepDated(logbook, lot, calledLot(lot, logbook.shelves()), notThere("Lot", "lot"), &core::Shelves::lots,
                     today);
}

core::Result<Changes> addPrices(Logbook& logbook, const std::vector<core::Price>& prices, core::Date today) {
    const std::string words = std::to_string(prices.size()) + (prices.size() == 1 ? " new price" : " new prices");
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Shelves shelves = logbook.shelves();
        core::Refusals faults;
        for (const core::Price& price : prices) {
            core::Price added = core::tidied(price);
            core::Refusals found = core::faultsIn(added, shelves, today);
            prefix(found, added.what);
            append(faults, std::move(found));
            if (faults.empty()) added.id = writer.add(added);
            shelves.prices.push_back(std::move(added));  // two of one name and day refuse each other
        }
        return faults;
    });
}

core::Result<Changes> remove(Logbook& logbook, core::PriceId id) {
    const core::Shelves shelves = logbook.shelves();
    const core::Price* price = core::find(shelves.prices, id);
    if (price == nullptr) return core::refused({notThere("Price", "price")});
    return removeCalled(logbook, id, calledPrice(*price));
}

core::Result<Changes> remove(Logbook& logbook, core::LotId id) {
    const core::Shelves shelves = logbook.shelves();
    const core::Lot* lot = core::find(shelves.lots, id);
    if (lot == nullptr) return core::refused({notThere("Lot", "lot")});
    return removeCalled(logbook, id, calledLot(*lot, shelves));
}

}  // namespace db
