// SPDX-License-Identifier: MIT
#include "db/actions/priced_things.h"

#include <algorithm>
#include <functional>

#include "core/units/entered_text.h"

namespace db {

namespace {

template <class Thing, class ThingId>
std::string firstOf(const std::vector<Thing>& things, ThingId Thing::*owner, ThingId id,
                    const std::function<std::string(const Thing&)>& called) {
    const auto found = std::ranges::find(things, id, owner);
    return id.isSet() && found != things.end() ? called(*found) : std::string();
}

template <class ThingId>
std::string firstPriceOf(const core::Shelves& shelves, ThingId core::Price::*owner, ThingId id) {
    return firstOf<core::Price, ThingId>(shelves.prices, owner, id, calledPrice);
}

template <class ThingId>
std::string firstNamed(const core::Shelves& shelves, ThingId core::Price::*ofPrice, ThingId core::Lot::*ofLot,
                       ThingId id) {
    const std::string price = firstPriceOf(shelves, ofPrice, id);
    if (!price.empty()) return price;
    return firstOf<core::Lot, ThingId>(shelves.lots, ofLot, id,
                                       [&](const core::Lot& lot) { return calledLot(lot, shelves); });
}

/// Those of the thing that goes become those of the one that stays, but for what that has already.
template <class Thing, class ThingId, class IsSame>
void moveOwned(Writer& writer, const std::vector<Thing>& things, ThingId Thing::*owner, ThingId goes, ThingId stays,
               const IsSame& isSame) {
    for (Thing moved : things) {
        if (moved.*owner != goes) continue;
        moved.*owner = stays;
        const auto isThere = [&](const Thing& other) { return other.*owner == stays && isSame(other, moved); };
        if (std::ranges::any_of(things, isThere))
            writer.remove(moved.id);
        else
            writer.change(moved);
    }
}

template <class ThingId>
void moveOwnPrices(Writer& writer, const core::Shelves& shelves, ThingId core::Price::*owner, ThingId goes,
                   ThingId stays) {
    moveOwned(writer, shelves.prices, owner, goes, stays, [](const core::Price& one, const core::Price& other) {
        return one.from == other.from && core::isSamePriced(one, other);
    });
}

template <class ThingId>
void moveOwnLots(Writer& writer, const core::Shelves& shelves, ThingId core::Lot::*owner, ThingId goes, ThingId stays) {
    moveOwned(writer, shelves.lots, owner, goes, stays, [](const core::Lot& one, const core::Lot& other) {
        return one.name == other.name || one.usedFrom == other.usedFrom;
    });
}

}  // namespace

std::string calledPrice(const core::Price& price) {
    return core::isBlank(price.what) ? "price" : "price of " + price.what;
}

std::string calledLot(const core::Lot& lot, const core::Shelves& shelves) {
    std::string words = core::isBlank(lot.name) ? "lot" : "lot " + lot.name;
    if (const core::Treatment* treatment = core::find(shelves.treatments, lot.treatment))
        words += " of " + treatment->name;
    if (const core::Medium* medium = core::find(shelves.media, lot.medium)) words += " of " + medium->name;
    return words;
}

std::string namedByPrice(const core::Shelves& shelves, core::MethodId id) {
    return firstPriceOf(shelves, &core::Price::method, id);
}

std::string namedByPrice(const core::Shelves& shelves, core::StationId id) {
    return firstPriceOf(shelves, &core::Price::station, id);
}

std::string namedByPrice(const core::Shelves& shelves, core::MediumId id) {
    return firstNamed(shelves, &core::Price::medium, &core::Lot::medium, id);
}

std::string namedByPrice(const core::Shelves& shelves, core::TreatmentId id) {
    return firstNamed(shelves, &core::Price::treatment, &core::Lot::treatment, id);
}

void movePrices(Writer& writer, const core::Shelves& shelves, core::StationId goes, core::StationId stays) {
    moveOwnPrices(writer, shelves, &core::Price::station, goes, stays);
}

void movePrices(Writer& writer, const core::Shelves& shelves, core::MediumId goes, core::MediumId stays) {
    moveOwnPrices(writer, shelves, &core::Price::medium, goes, stays);
    moveOwnLots(writer, shelves, &core::Lot::medium, goes, stays);
}

void movePrices(Writer& writer, const core::Shelves& shelves, core::TreatmentId goes, core::TreatmentId stays) {
    moveOwnPrices(writer, shelves, &core::Price::treatment, goes, stays);
    moveOwnLots(writer, shelves, &core::Lot::treatment, goes, stays);
}

}  // namespace db
