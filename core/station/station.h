// SPDX-License-Identifier: MIT
// One physical tub, tray or bench section, with numbered positions: rows have letters, columns have numbers.
#pragma once

#include <string>
#include <vector>

#include "core/id.h"
#include "core/station/position.h"

namespace core {

struct Station {
    StationId id{};
    std::string name;  // unique
    MethodId method{};
    int rows{};  // 0 rows: positions not described
    int columns{};
    bool isStaggered{};     // every second row stands half a step to the right
    std::string blocked{};  // positions that hold no cutting (an air line, a broken cell), as textOf() writes them
    int walkingOrder{};     // the order in which a round of checks goes
    std::string note;
    bool isRetired{};

    [[nodiscard]] bool hasLayout() const { return rows > 0 && columns > 0; }
    /// How many cuttings it can hold.
    [[nodiscard]] int positions() const;
    bool operator==(const Station&) const = default;
};

/// Those that can hold a cutting, row by row.
[[nodiscard]] std::vector<Position> usablePositions(const Station& station);

}  // namespace core
