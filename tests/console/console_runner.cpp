// SPDX-License-Identifier: MIT
#include "tests/console/console_runner.h"

#include <sstream>

#include "app/console/console.h"
#include "tests/db/exchange/exchange_folder.h"

namespace support {

Ran run(const std::vector<std::string>& words) {
    const console::Surroundings surroundings{
        .today = lateDay,
        .clock = [] { return std::chrono::sys_days{lateDay} + std::chrono::hours{12}; },
        .author = "R.O."};
    std::ostringstream out, err;
    const int status = console::runConsole(words, surroundings, out, err);
    return {.status = status, .out = out.str(), .err = err.str()};
}

}  // namespace support
