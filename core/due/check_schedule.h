// SPDX-License-Identifier: MIT
// How often batches want a look. A plant's own goes before its method's, and that before the logbook's.
#pragma once

#include <string>

#include "core/id.h"

namespace core {

struct CheckSchedule {
    CheckScheduleId id{};
    std::string name{};  // unique
    int firstAfterDays{7};
    int everyDays{7};
    bool isRetired{};

    bool operator==(const CheckSchedule&) const = default;
};

}  // namespace core
