// SPDX-License-Identifier: MIT
// Puts a statement together from constant parts while compiling, so that a list of columns stands in one place. Never from values.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>

namespace db {

template <std::size_t... Lengths>
[[nodiscard]] constexpr auto joined(const char (&... parts)[Lengths]) {
    std::array<char, (Lengths + ...) - sizeof...(Lengths) + 1> text{};
    auto* at = text.data();
    ((at = std::copy(parts, parts + Lengths - 1, at)), ...);
    return text;
}

}  // namespace db
