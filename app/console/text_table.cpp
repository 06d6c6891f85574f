// SPDX-License-Identifier: MIT
#include "app/console/text_table.h"

#include <algorithm>

#include "core/units/entered_text.h"

namespace console {

namespace {

std::size_t widthOf(const std::string& cell) {
    return static_cast<std::size_t>(core::charactersIn(cell));
}

}  // namespace

void TextTable::printTo(std::ostream& out) const {
    std::vector<std::string> headings;
    for (const Column& column : columns_) headings.push_back(column.heading);
    std::vector<std::size_t> widths;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        widths.push_back(widthOf(headings[i]));
        for (const auto& row : rows_) widths[i] = std::max(widths[i], widthOf(row[i]));
    }
    const auto print = [&](const std::vector<std::string>& row) {
        std::string line;
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            const std::string room(widths[i] - widthOf(row[i]), ' ');
            line += (i == 0 ? "" : "  ") + (columns_[i].align == Align::Left ? row[i] + room : room + row[i]);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out << line << '\n';
    };
    print(headings);
    for (const auto& row : rows_) print(row);
}

}  // namespace console
