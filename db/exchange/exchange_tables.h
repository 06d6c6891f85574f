// SPDX-License-Identifier: MIT
// The tables of an exchange folder and their columns: the one list that the export writes by, the import reads by and datapackage.json
// is made from. docs/exchange_folder.md says the same for people.
#pragma once

#include <span>
#include <string_view>

namespace db {

enum class CellKind { Text, Date, Moment, Count, Figure, Truth };

struct ExchangeColumn {
    std::string_view name;
    CellKind kind{CellKind::Text};
    bool isRequired{};
    std::string_view meaning;
};

struct ExchangeReference {
    std::string_view columns;  // with blanks between
    std::string_view table;
    std::string_view theirColumns;
};

struct ExchangeTable {
    std::string_view name;  // of the file, without .csv
    std::string_view meaning;
    bool isRequired{};
    std::string_view
        key;  // its columns with blanks between; empty where one could not be, since a part of it may be empty
    std::span<const ExchangeColumn> columns;
    std::span<const ExchangeReference> references;
};

/// In the order in which they are read: what others refer to comes first.
[[nodiscard]] std::span<const ExchangeTable> exchangeTables();
[[nodiscard]] const ExchangeTable& exchangeTable(std::string_view name);

/// Written into datapackage.json; a folder with a higher one is refused.
inline constexpr int exchangeVersion = 5;

}  // namespace db
