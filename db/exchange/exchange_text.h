// SPDX-License-Identifier: MIT
// Text in cells: blanks at the ends, and how several auxins stand in one cell of batches.csv ("IBA + NAA" beside "1000 + 500").
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/treatment/treatment.h"
#include "core/units/figure_text.h"

namespace db {

inline constexpr std::string_view betweenAuxins = " + ";

[[nodiscard]] inline std::string withoutBlanks(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

/// Nothing for an empty cell.
[[nodiscard]] inline std::vector<std::string> partsOf(std::string_view cell) {
    std::vector<std::string> parts;
    while (!cell.empty()) {
        const std::size_t end = cell.find(betweenAuxins);
        parts.emplace_back(cell.substr(0, end));
        cell = end == std::string_view::npos ? std::string_view() : cell.substr(end + betweenAuxins.size());
    }
    return parts;
}

[[nodiscard]] inline std::string auxinNames(const core::Treatment& treatment) {
    std::string names;
    for (const core::Auxin& auxin : treatment.auxins)
        names += (names.empty() ? "" : std::string(betweenAuxins)) + auxin.name;
    return names;
}

[[nodiscard]] inline std::string auxinDoses(const core::Treatment& treatment) {
    std::string doses;
    for (const core::Auxin& auxin : treatment.auxins)
        doses += (doses.empty() ? "" : std::string(betweenAuxins)) + core::figureText(auxin.milligramsPerLitre);
    return doses;
}

}  // namespace db
