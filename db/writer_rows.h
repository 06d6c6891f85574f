// SPDX-License-Identifier: MIT
// What every add, change and remove of Writer does. For the files of writer only.
#pragma once

#include "db/inside.h"
#include "db/new_id.h"
#include "db/writer.h"

namespace db {

template <class Thing>
auto addThing(Connection& connection, Thing& thing) {
    if (!thing.id.isSet()) thing.id.value = drawId();
    insertRow(connection, thing);
    return thing.id;
}

inline void requireFound(bool isFound) {
    if (!isFound)
        throw LogbookError(
            "What was to be changed is no longer in the logbook; it may have been deleted in another window. Nothing "
            "was changed.");
}

}  // namespace db
