// SPDX-License-Identifier: MIT
#include "db/exchange/csv_reader.h"

#include <algorithm>
#include <utility>

#include "core/units/entered_text.h"

namespace db {

namespace {

constexpr std::size_t blockSize = 1 << 16;
constexpr int endOfFile = -1;

bool isEmptyRow(const CsvRow& row) {
    return row.faults.empty() && std::ranges::all_of(row.cells, [](const std::string& cell) { return cell.empty(); });
}

}  // namespace

std::optional<CsvRow> CsvReader::next() {
    while (!hasStopped_) {
        row_ = {.number = row_.number + 1, .cells = {}, .faults = {}};
        readRow();
        if (raw_.empty() && row_.faults.empty()) return {};
        if (!isEmptyRow(row_)) return std::move(row_);
    }
    return {};
}

void CsvReader::readRow() {
    raw_.clear();
    cell_.clear();
    place_ = Place::CellStart;
    secondLine_ = 0;
    if (row_.number == 1) readFirstBytes();
    while (!hasStopped_) {
        const int byte = take();
        if (byte == endOfFile) return endAtEndOfFile();
        if (raw_.size() > longestRow) return giveUpLongRow();
        if (!digest(static_cast<char>(byte))) return;
    }
}

/// Spreadsheets write a byte order mark before UTF-8, and another before UTF-16, in which no comma would be found.
void CsvReader::readFirstBytes() {
    refill();
    const std::string_view start(buffer_);
    if (start.starts_with("\xEF\xBB\xBF")) at_ = 3;
    if (start.starts_with("\xFF\xFE") || start.starts_with("\xFE\xFF")) {
        faultOfRow("The file is written in UTF-16; save it as CSV in UTF-8.");
        hasStopped_ = true;
    }
}

bool CsvReader::refill() {
    buffer_.resize(blockSize);
    in_.read(buffer_.data(), static_cast<std::streamsize>(blockSize));
    buffer_.resize(static_cast<std::size_t>(in_.gcount()));
    at_ = 0;
    return !buffer_.empty();
}

int CsvReader::take() {
    if (at_ == buffer_.size() && !refill()) return endOfFile;
    raw_ += buffer_[at_];
    return static_cast<unsigned char>(buffer_[at_++]);
}

int CsvReader::peek() {
    if (at_ == buffer_.size() && !refill()) return endOfFile;
    return static_cast<unsigned char>(buffer_[at_]);
}

/// False when the row has ended.
bool CsvReader::digest(char c) {
    switch (place_) {
        case Place::CellStart:
            if (c == '"') {
                place_ = Place::Quoted;
                return true;
            }
            place_ = Place::Plain;
            return digestPlain(c);
        case Place::Plain:
            return digestPlain(c);
        case Place::Quoted:
            if (c == '\n' && secondLine_ == 0) secondLine_ = raw_.size();
            if (c == '"')
                place_ = Place::AfterQuote;
            else
                cell_ += c;
            return true;
        case Place::AfterQuote:
            return digestAfterQuote(c);
    }
    return false;
}

/// Behind a quote within a quoted cell stands another (the two mean one), or the cell is over.
bool CsvReader::digestAfterQuote(char c) {
    if (c == '"') {
        cell_ += c;
        place_ = Place::Quoted;
        return true;
    }
    place_ = Place::Plain;
    if (c == separator_ || c == '\n' || c == '\r') return digestPlain(c);
    fault("There is text behind the closing quote of this cell; a quote within a cell is written twice.");
    if (secondLine_ == 0) return digestPlain(c);
    goBackToSecondLine();
    return false;
}

bool CsvReader::digestPlain(char c) {
    if (c == separator_) {
        endCell();
        return true;
    }
    if (c == '\n') {
        endCell();
        return false;
    }
    if (c == '\r') {
        const int following = peek();
        if (following == '\n') return true;  // the line feed ends the row
        if (following != endOfFile)
            fault("A carriage return stands alone in this cell; quote cells that have line breaks.");
        return true;
    }
    if (c == '"') fault("A quote stands in the middle of this cell; quote the whole cell and write the quote twice.");
    cell_ += c;
    return true;
}

void CsvReader::endCell() {
    if (!core::isValidUtf8(cell_))
        fault("This cell is not UTF-8, so its letters can't be told; save the file as CSV in UTF-8.");
    if (cell_.find('\0') != std::string::npos) fault("There is a NUL byte in this cell, which no text has.");
    if (row_.cells.size() < mostCells)
        row_.cells.push_back(cell_);
    else if (row_.faults.empty() || row_.faults.back().cell != CsvFault::wholeRow)
        faultOfRow("The row has more than " + std::to_string(mostCells) + " cells.");
    cell_.clear();
    place_ = Place::CellStart;
}

void CsvReader::endAtEndOfFile() {
    const bool isUnclosed = place_ == Place::Quoted;
    if (isUnclosed) fault("The quote that opens this cell is never closed.");
    if (isUnclosed && secondLine_ != 0) return goBackToSecondLine();
    if (!raw_.empty()) endCell();
    hasStopped_ = true;
}

void CsvReader::giveUpLongRow() {
    if (secondLine_ != 0) {
        fault("The quote that opens this cell is not closed within " + std::to_string(longestRow) + " bytes.");
        return goBackToSecondLine();
    }
    faultOfRow("The row is longer than " + std::to_string(longestRow) + " bytes, so it can't be one.");
    skipLine();
}

/// The fault is most likely a quote too many or too few in the row's first line: what follows is read as rows of their own.
void CsvReader::goBackToSecondLine() {
    buffer_ = raw_.substr(secondLine_) + buffer_.substr(at_);
    at_ = 0;
}

void CsvReader::skipLine() {
    for (std::uint64_t skipped = 0; skipped < farthestSkip; skipped += buffer_.size()) {
        const std::size_t lineEnd = buffer_.find('\n', at_);
        if (lineEnd != std::string::npos) {
            at_ = lineEnd + 1;
            return;
        }
        if (!refill()) {
            hasStopped_ = true;
            return;
        }
    }
    row_.faults.back().reason += " The rest of the file was not read.";
    hasStopped_ = true;
}

void CsvReader::fault(std::string reason) {
    const std::size_t cell = row_.cells.size();
    for (const CsvFault& before : row_.faults)
        if (before.cell == cell) return;  // one reason a cell is enough
    row_.faults.push_back({.cell = cell, .reason = std::move(reason)});
}

void CsvReader::faultOfRow(std::string reason) {
    row_.faults.push_back({.cell = CsvFault::wholeRow, .reason = std::move(reason)});
}

}  // namespace db
