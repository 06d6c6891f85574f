// SPDX-License-Identifier: MIT
// The shelves of prices and of lots. Inside shelves only.
#pragma once

#include "app/desktop/shelves/shelf.h"

namespace desktop {

[[nodiscard]] Shelf pricesShelf();
[[nodiscard]] Shelf lotsShelf();

}  // namespace desktop
