// SPDX-License-Identifier: MIT
// One day's cutting work; it creates batches.
#pragma once

#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Session {
    SessionId id{};
    Date date{};
    std::string worker;  // who did it; may be empty
    std::string note;

    bool operator==(const Session&) const = default;
};

}  // namespace core
