// SPDX-License-Identifier: MIT
// The marks and their letters are the map's (app/plot/mark_keys.h), on the screen and on paper.
#pragma once

#include "app/plot/mark_keys.h"

namespace desktop {

using plot::letterFor;
using plot::Mark;
using plot::markFor;
using plot::MarkKey;
using plot::markKeysFor;

}  // namespace desktop
