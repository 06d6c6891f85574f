// SPDX-License-Identifier: MIT
// Makes a Shelf from one of the lists of core::Shelves and its columns: what is the same for every kind of thing stands here once. Inside
// shelves only.
#pragma once

#include "app/desktop/shelves/shelf.h"
#include "db/actions/ask_first.h"
#include "db/actions/price_actions.h"
#include "db/actions/shelf_actions.h"

namespace desktop {

template <class Thing>
struct ColumnOf {
    QString title;
    ShelfLook look{ShelfLook::Words};
    std::function<ShelfCell(const Thing&, const core::Shelves&)> cell;
};

[[nodiscard]] inline QString shelfNameOf(const core::Plant& plant) {
    return QString::fromStdString(core::fullName(plant));
}
[[nodiscard]] inline QString shelfNameOf(const core::StockPlant& stockPlant) {
    return QString::fromStdString(stockPlant.label);
}
[[nodiscard]] inline QString shelfNameOf(const core::Price& price) {
    return QString::fromStdString(price.what);
}
template <class Thing>
[[nodiscard]] QString shelfNameOf(const Thing& thing) {
    return QString::fromStdString(thing.name);
}

template <class Thing>
concept Retirable = requires(Thing thing) {
    thing.isRetired = true;
};

template <Retirable Thing>
[[nodiscard]] core::Result<db::Changes> setRetired(db::Logbook& logbook, std::vector<Thing> core::Shelves::*list,
                                                   std::int64_t id, bool isRetired) {
    const core::Shelves shelves = logbook.shelves();
    const Thing* found = core::find(shelves.*list, decltype(Thing::id){id});
    if (found == nullptr) return core::refused({db::notThere("Name", "thing on this shelf")});
    Thing changed = *found;
    changed.isRetired = isRetired;
    return db::keep(logbook, changed);
}

template <class Thing>
[[nodiscard]] Shelf describedShelf(ShelfKind kind, const QString& word, std::vector<Thing> core::Shelves::*list,
                                   std::vector<ColumnOf<Thing>> columns) {
    Shelf shelf;
    shelf.kind = kind;
    shelf.word = word;
    for (const ColumnOf<Thing>& column : columns) shelf.columns.push_back({column.title, column.look});
    shelf.items = [list, columns = std::move(columns)](const core::Shelves& shelves, core::Date) {
        std::vector<ShelfItem> items;
        for (const Thing& thing : shelves.*list) {
            ShelfItem item{.id = thing.id.value, .name = shelfNameOf(thing), .cells = {}, .isRetired = false};
            for (const ColumnOf<Thing>& column : columns) item.cells.push_back(column.cell(thing, shelves));
            if constexpr (Retirable<Thing>) item.isRetired = thing.isRetired;
            items.push_back(std::move(item));
        }
        return items;
    };
    if constexpr (Retirable<Thing>) {
        shelf.retire = [list](db::Logbook& logbook, std::int64_t id) { return setRetired(logbook, list, id, true); };
        shelf.takeBack = [list](db::Logbook& logbook, std::int64_t id) { return setRetired(logbook, list, id, false); };
    }
    shelf.remove = [](db::Logbook& logbook, std::int64_t id) { return db::remove(logbook, decltype(Thing::id){id}); };
    return shelf;
}

/// `verb` of db/actions/merge_actions.h.
template <class ThingId>
[[nodiscard]] Shelf::Merge mergeBy(core::Result<db::Changes> (*verb)(db::Logbook&, ThingId, ThingId)) {
    return [verb](db::Logbook& logbook, std::int64_t goes, std::int64_t stays) {
        return verb(logbook, ThingId{goes}, ThingId{stays});
    };
}

}  // namespace desktop
