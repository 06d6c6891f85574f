// SPDX-License-Identifier: MIT
// One hole of a lid or one cell of a tray. Rows have letters and columns have numbers, counted from the marked corner: A1.
#pragma once

#include <compare>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core {

inline constexpr int mostRows = 26;  // rows have one letter
inline constexpr int mostColumns = 1000;

struct Position {
    int row{};     // from 0, which is A
    int column{};  // from 0, which is 1

    auto operator<=>(const Position&) const = default;  // row by row
};

/// "A1". Domain: row 0 to 25, column 0 to 999.
[[nodiscard]] std::string nameOf(Position position);
/// Reads "A1" or "a1"; anything else gives nothing.
[[nodiscard]] std::optional<Position> positionNamed(std::string_view text);

/// The short form in which positions are stored and typed: runs of one row, row by row: "A1-A6, B2". Repeated ones count once.
[[nodiscard]] std::string textOf(std::vector<Position> positions);
/// Reads positions and ranges with commas or blanks between; "A1-B6" is the block between those corners. Sorted, each once.
/// Nothing when it can't be read; an empty text is no positions.
[[nodiscard]] std::optional<std::vector<Position>> positionsFrom(std::string_view text);
/// What was typed, as textOf() writes it; what can't be read stays as it is.
[[nodiscard]] std::string tidyPositions(std::string_view text);

}  // namespace core
