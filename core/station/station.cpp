// SPDX-License-Identifier: MIT
#include "core/station/station.h"

#include <algorithm>

namespace core {

std::vector<Position> usablePositions(const Station& station) {
    const auto blocked = positionsFrom(station.blocked).value_or(std::vector<Position>());
    std::vector<Position> usable;
    for (int row = 0; row < station.rows; ++row)
        for (int column = 0; column < station.columns; ++column)
            if (!std::ranges::binary_search(blocked, Position{row, column})) usable.push_back({row, column});
    return usable;
}

int Station::positions() const {
    if (blocked.empty()) return rows * columns;
    return static_cast<int>(usablePositions(*this).size());
}

}  // namespace core
