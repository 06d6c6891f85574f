// SPDX-License-Identifier: MIT
// A planned comparison. Schema 1 keeps its name, its horizon and the seed that its chance allocation was drawn from.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/id.h"

namespace core {

struct Trial {
    TrialId id{};
    std::string name;                             // unique
    std::optional<int> horizonDay;                // set before looking
    std::optional<std::uint32_t> allocationSeed;  // present when chance decided
    std::string note;

    bool operator==(const Trial&) const = default;
};

}  // namespace core
