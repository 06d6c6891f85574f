// SPDX-License-Identifier: MIT
// All shelves, in the order in which the page lists them.
#pragma once

#include "app/desktop/shelves/shelf.h"

namespace desktop {

[[nodiscard]] std::vector<Shelf> allShelves();

}  // namespace desktop
