// SPDX-License-Identifier: MIT
#include "core/climate/bands.h"

namespace core {

bool isOutside(const Band& band, double stored) {
    return stored < band.low || stored > band.high;
}

}  // namespace core
