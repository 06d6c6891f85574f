// SPDX-License-Identifier: MIT
// Columns that stand under each other in a terminal.
#pragma once

#include <ostream>
#include <string>
#include <vector>

namespace console {

class TextTable {
  public:
    enum class Align { Left, Right };
    struct Column {
        std::string heading;
        Align align{Align::Left};
    };

    explicit TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}
    void addRow(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
    void printTo(std::ostream& out) const;

  private:
    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;  // each as long as the columns
};

}  // namespace console
