// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/prices_place.h"

#include <algorithm>

#include "app/desktop/shelves/shelf_list.h"

namespace desktop {

Place pricesPlace() {
    const std::vector<Shelf> shelves = allShelves();
    const auto prices = std::ranges::find(shelves, QStringLiteral("prices"), &Shelf::word);
    return {.page = {}, .kind = Place::Kind::Shelf, .id = prices - shelves.begin()};
}

}  // namespace desktop
