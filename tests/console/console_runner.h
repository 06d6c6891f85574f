// SPDX-License-Identifier: MIT
// Runs a command as strikebook-cli would, in this process, on a day of our choice.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace support {

struct Ran {
    int status{};
    std::string out;
    std::string err;

    [[nodiscard]] nlohmann::json json() const { return nlohmann::json::parse(out); }
};

/// Today is 2026-06-30, noon.
[[nodiscard]] Ran run(const std::vector<std::string>& words);

}  // namespace support
