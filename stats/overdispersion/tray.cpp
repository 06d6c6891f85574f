// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray.h"

#include "stats/numeric/require.h"

namespace stats {

std::vector<Tray> traysWithTrials(std::span<const Tray> trays) {
    std::vector<Tray> result;
    for (const Tray& tray : trays) {
        if (tray.trials > 0) result.push_back(tray);
    }
    return result;
}

void requireTrays(std::string_view function, std::span<const Tray> trays) {
    for (const Tray& tray : trays) requireCounts(function, tray.successes, tray.trials);
}

}  // namespace stats
