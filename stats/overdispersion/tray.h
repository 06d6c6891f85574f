// SPDX-License-Identifier: MIT
// What one container says: the unit whose members share their fate, so that counts from several spread more than the
// binomial says.
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace stats {

struct Tray {
    int successes{};
    int trials{};
};

/// Those with trials. An empty tray says nothing about spread and is never counted as a tray.
[[nodiscard]] std::vector<Tray> traysWithTrials(std::span<const Tray> trays);

/// std::domain_error that names the function and the tray unless 0 <= successes <= trials in each.
void requireTrays(std::string_view function, std::span<const Tray> trays);

}  // namespace stats
