// SPDX-License-Identifier: MIT
// Between which readings cuttings root best, as far as the trade and the literature say. A reading outside is worth a look, not an alarm.
#pragma once

#include <optional>
#include <string_view>

#include "core/climate/quantity.h"

namespace core {

struct Band {
    double low{};  // in the unit of factsOf(quantity)
    double high{};
    std::string_view source{};  // "common practice, no source" where there is none
};

/// While cuttings root. Absent where nothing is said that holds for plants in general.
[[nodiscard]] std::optional<Band> rootingBand(Quantity quantity);
[[nodiscard]] bool isOutside(const Band& band, double stored);

}  // namespace core
