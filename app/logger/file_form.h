// SPDX-License-Identifier: MIT
// How a logger's file is laid out: what it is written in, what stands between two cells, where the line with the names of the columns is and
// where the rows begin. Loggers write a few lines of their own above both.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "app/logger/text_source.h"
#include "db/exchange/csv_reader.h"

namespace logger {

inline constexpr std::size_t rowsLookedAt = 200;  // from the top of the file

struct FileForm {
    Encoding encoding{Encoding::Utf8};
    char separator{','};
    int firstRow{};  // that holds values, as a spreadsheet counts; 0: there is none, and it is no table
    std::vector<std::string> names{};  // of the columns, none twice; "Column 3" where the file has no name for it
    std::string heading{};             // the line of names in the one form that it is compared in; empty: there is none

    bool operator==(const FileForm&) const = default;
};

struct FileTop {
    FileForm form{};
    std::vector<db::CsvRow> rows{};  // that hold values, the first of them
    std::string above{};             // what stands above the names, in one text
};

/// Throws db::LogbookError where the file can't be read.
[[nodiscard]] FileTop topOf(const std::filesystem::path& file);

/// A day, a time of day, or both, in whatever order; or seconds since 1970.
[[nodiscard]] bool isTimeCell(const std::string& cell);

}  // namespace logger
