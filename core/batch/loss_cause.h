// SPDX-License-Identifier: MIT
// Why a cutting was lost. `key` is the letter that picks the cause in a round of checks; '\0' when it has none.
#pragma once

#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct LossCause {
    LossCauseId id{};
    std::string name;  // unique
    char key{};        // a to z but w (withdrawn), unique among causes that have one
    bool isRetired{};

    bool operator==(const LossCause&) const = default;
};

/// How often a cause stands in the records.
struct LossCauseUse {
    LossCauseId cause{};
    int batches{};
    Date lastDay{};  // of a check

    bool operator==(const LossCauseUse&) const = default;
};

}  // namespace core
