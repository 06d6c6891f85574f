// SPDX-License-Identifier: MIT
// Reads values separated by commas, or by another character, as RFC 4180 has them, row by row, from a file that may hold anything: a row too
// long to be one, broken UTF-8, quotes that are never closed. It knows where it is, says what is wrong with each row, and goes on behind it,
// so that one reading finds as many faults as possible in bounded memory.
#pragma once

#include <cstdint>
#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace db {

struct CsvFault {
    std::size_t cell{};  // counted from 0; npos: the row as a whole
    std::string reason;  // a sentence

    static constexpr std::size_t wholeRow = static_cast<std::size_t>(-1);
};

struct CsvRow {
    int number{};  // as a spreadsheet counts: the first row is 1, empty rows count, a quoted line break starts no row
    std::vector<std::string> cells;  // what could be read of them where there are faults
    std::vector<CsvFault> faults;
};

class CsvReader {
  public:
    static constexpr std::size_t longestRow = 1'000'000;  // bytes
    static constexpr std::size_t mostCells = 256;         // in a row
    /// How far a row without an end is followed in search of one before the rest of the file is given up.
    static constexpr std::uint64_t farthestSkip = std::uint64_t{64} << 20;

    /// `in` must outlive the reader. A byte order mark at the start is passed over.
    explicit CsvReader(std::istream& in, char separator = ',') : in_(in), separator_(separator) {}

    /// The next row that isn't empty; nothing at the end of the file, or where nothing more can be made of it (the row before says why).
    [[nodiscard]] std::optional<CsvRow> next();

  private:
    enum class Place { CellStart, Plain, Quoted, AfterQuote };

    bool refill();
    int take();
    int peek();
    void readRow();
    void readFirstBytes();
    bool digest(char c);
    bool digestPlain(char c);
    bool digestAfterQuote(char c);
    void endCell();
    void endAtEndOfFile();
    void giveUpLongRow();
    void goBackToSecondLine();
    void skipLine();
    void fault(std::string reason);
    void faultOfRow(std::string reason);

    std::istream& in_;
    char separator_;
    std::string buffer_;
    std::size_t at_{};
    bool hasStopped_{};

    // The row that is being read.
    CsvRow row_;
    std::string cell_;
    Place place_{Place::CellStart};
    std::string raw_;           // its bytes so far
    std::size_t secondLine_{};  // where in them its second line begins; 0: there is none yet
};

}  // namespace db
