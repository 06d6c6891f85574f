// SPDX-License-Identifier: MIT
// Where prices are written down.
#pragma once

#include "app/desktop/place.h"

namespace desktop {

[[nodiscard]] Place pricesPlace();

}  // namespace desktop
