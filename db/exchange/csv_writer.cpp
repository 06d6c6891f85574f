// SPDX-License-Identifier: MIT
#include "db/exchange/csv_writer.h"

#include "core/units/figure_text.h"

namespace db {

namespace {

bool needsGuard(std::string_view text) {
    return !text.empty() && std::string_view("=+-@\t\r\n'").find(text.front()) != std::string_view::npos;
}

}  // namespace

std::string guarded(std::string_view text) {
    return (needsGuard(text) ? "'" : "") + std::string(text);
}

std::string unguarded(std::string_view cell) {
    const bool isGuarded = cell.starts_with('\'') && needsGuard(cell.substr(1));
    return std::string(isGuarded ? cell.substr(1) : cell);
}

CsvWriter& CsvWriter::text(std::string_view text) {
    cell(guarded(text));
    return *this;
}

CsvWriter& CsvWriter::number(long long number) {
    cell(std::to_string(number));
    return *this;
}

CsvWriter& CsvWriter::number(std::optional<int> number) {
    cell(number ? std::to_string(*number) : "");
    return *this;
}

CsvWriter& CsvWriter::figure(double figure) {
    cell(core::figureText(figure));
    return *this;
}

CsvWriter& CsvWriter::figure(std::optional<double> figure) {
    cell(figure ? core::figureText(*figure) : "");
    return *this;
}

CsvWriter& CsvWriter::truth(bool isTrue) {
    cell(isTrue ? "true" : "false");
    return *this;
}

void CsvWriter::endRow() {
    out_ << "\r\n";
    isFirst_ = true;
}

void CsvWriter::cell(std::string_view content) {
    if (!isFirst_) out_ << ',';
    isFirst_ = false;
    if (content.find_first_of(",\"\r\n;\t") == std::string_view::npos) {
        out_ << content;
        return;
    }
    out_ << '"';
    for (const char c : content) out_ << (c == '"' ? "\"\"" : std::string_view(&c, 1));
    out_ << '"';
}

}  // namespace db
