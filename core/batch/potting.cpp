// SPDX-License-Identifier: MIT
#include "core/batch/potting.h"

namespace core {

PottedTally pottedTallyOf(std::span<const Potting> pottings) {
    PottedTally tally;
    for (const Potting& potting : pottings) {
        tally.potted += potting.potted;
        tally.lost += potting.lost;
    }
    return tally;
}

}  // namespace core
