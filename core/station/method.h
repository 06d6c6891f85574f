// SPDX-License-Identifier: MIT
// A way to root. A new logbook knows "aerated water" and "media tray"; the grower may add others.
#pragma once

#include <string>

#include "core/id.h"

namespace core {

struct Method {
    MethodId id{};
    std::string name;                 // unique
    CheckScheduleId checkSchedule{};  // unset: the logbook's
    bool isRetired{};

    bool operator==(const Method&) const = default;
};

}  // namespace core
