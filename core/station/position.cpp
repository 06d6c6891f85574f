// SPDX-License-Identifier: MIT
#include "core/station/position.h"

#include <algorithm>
#include <charconv>

namespace core {

namespace {

bool isBetween(char sign) {
    return sign == ' ' || sign == ',' || sign == ';' || sign == '\t';
}

std::optional<int> rowOf(char letter) {
    if (letter >= 'A' && letter <= 'Z') return letter - 'A';
    if (letter >= 'a' && letter <= 'z') return letter - 'a';
    return {};
}

/// Adds the position, or the block between two corners, that `word` names; false when it names none.
bool addNamed(std::string_view word, std::vector<Position>& positions) {
    const std::size_t dash = word.find('-');
    const auto first = positionNamed(word.substr(0, dash));
    const auto last = dash == std::string_view::npos ? first : positionNamed(word.substr(dash + 1));
    if (!first || !last) return false;
    const auto [top, bottom] = std::minmax(first->row, last->row);
    const auto [left, right] = std::minmax(first->column, last->column);
    for (int row = top; row <= bottom; ++row)
        for (int column = left; column <= right; ++column) positions.push_back({row, column});
    return true;
}

void sortOnce(std::vector<Position>& positions) {
    std::ranges::sort(positions);
    const auto repeated = std::ranges::unique(positions);
    positions.erase(repeated.begin(), repeated.end());
}

}  // namespace

std::string nameOf(Position position) {
    return static_cast<char>('A' + position.row) + std::to_string(position.column + 1);
}

std::optional<Position> positionNamed(std::string_view text) {
    if (text.size() < 2 || text.size() > 5 || text[1] == '0') return {};
    const auto row = rowOf(text[0]);
    int number = 0;
    const auto [end, error] = std::from_chars(text.data() + 1, text.data() + text.size(), number);
    if (!row || error != std::errc() || end != text.data() + text.size() || number < 1 || number > mostColumns)
        return {};
    return Position{*row, number - 1};
}

std::string textOf(std::vector<Position> positions) {
    sortOnce(positions);
    std::string text;
    for (auto first = positions.begin(); first != positions.end();) {
        auto last = first;
        while (last + 1 != positions.end() && (last + 1)->row == last->row && (last + 1)->column == last->column + 1)
            ++last;
        if (!text.empty()) text += ", ";
        text += nameOf(*first);
        if (last != first) text += '-' + nameOf(*last);
        first = last + 1;
    }
    return text;
}

std::optional<std::vector<Position>> positionsFrom(std::string_view text) {
    std::vector<Position> positions;
    for (std::size_t at = 0; at < text.size();) {
        if (isBetween(text[at])) {
            ++at;
            continue;
        }
        const std::size_t start = at;
        while (at < text.size() && !isBetween(text[at])) ++at;
        if (!addNamed(text.substr(start, at - start), positions)) return {};
    }
    sortOnce(positions);
    return positions;
}

std::string tidyPositions(std::string_view text) {
    auto positions = positionsFrom(text);
    return positions ? textOf(std::move(*positions)) : std::string(text);
}

}  // namespace core
