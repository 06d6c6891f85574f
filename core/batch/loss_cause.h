// SPDX-License-Identifier: MIT
// Why a cutting was lost. `key` is the letter that picks the cause in a round of checks; '\0' when it has none.
#pragma once

#include <string>

#include "core/id.h"

namespace core {

struct LossCause {
    LossCauseId id{};
    std::string name;  // unique
    char key{};        // a to z but w (withdrawn), unique among causes that have one
    bool isRetired{};

    bool operator==(const LossCause&) const = default;
};

}  // namespace core
