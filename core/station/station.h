// SPDX-License-Identifier: MIT
// One physical tub, tray or bench section, with numbered positions: rows have letters, columns have numbers.
#pragma once

#include <string>

#include "core/id.h"

namespace core {

struct Station {
    StationId id{};
    std::string name;  // unique
    MethodId method{};
    int rows{};  // 0 rows: positions not described
    int columns{};
    int walkingOrder{};  // the order in which a round of checks goes
    std::string note;
    bool isRetired{};

    [[nodiscard]] int positions() const { return rows * columns; }
    bool operator==(const Station&) const = default;
};

}  // namespace core
