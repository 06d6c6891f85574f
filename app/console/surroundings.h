// SPDX-License-Identifier: MIT
// What a command takes from the world outside its arguments. main() asks the system once; tests set it as they like.
#pragma once

#include <string>

#include "core/units/days.h"
#include "db/logbook.h"

namespace console {

struct Surroundings {
    core::Date today{};
    db::Clock clock;
    std::string author;  // who is acting, for the history
};

}  // namespace console
