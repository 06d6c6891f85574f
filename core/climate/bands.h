// SPDX-License-Identifier: MIT
// Between which values of a quantity cuttings do well. A value outside is worth a look, not an alarm. Which band holds when, and whose it is:
// stage_bands.h.
#pragma once

#include <string_view>

namespace core {

struct Band {
    double low{};  // in the unit that the quantity is stored in; an end that no meter shows: there is none
    double high{};
    std::string_view source{};  // "common practice, no source" where there is none

    bool operator==(const Band&) const = default;
};

[[nodiscard]] bool isOutside(const Band& band, double stored);

}  // namespace core
