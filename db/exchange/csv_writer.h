// SPDX-License-Identifier: MIT
// Writes comma-separated values as RFC 4180 has them (CRLF, quotes where needed), and sees to it that no spreadsheet runs a cell as a
// formula: text that begins with = + - @ tab, CR, LF or an apostrophe gets an apostrophe before it, which the import takes off again.
#pragma once

#include <optional>
#include <ostream>
#include <string>
#include <string_view>

namespace db {

/// The text as it stands in a file: harmless in a spreadsheet.
[[nodiscard]] std::string guarded(std::string_view text);
/// The other way round; text that was never guarded stays as it is, unless it begins with an apostrophe and one of those characters.
[[nodiscard]] std::string unguarded(std::string_view cell);

class CsvWriter {
  public:
    explicit CsvWriter(std::ostream& out) : out_(out) {}

    // One cell each; the row goes on until endRow().
    CsvWriter& text(std::string_view text);
    CsvWriter& number(long long number);
    CsvWriter& number(std::optional<int> number);
    CsvWriter& figure(double figure);
    CsvWriter& figure(std::optional<double> figure);
    CsvWriter& truth(bool isTrue);
    void endRow();

  private:
    void cell(std::string_view content);

    std::ostream& out_;
    bool isFirst_{true};
};

}  // namespace db
