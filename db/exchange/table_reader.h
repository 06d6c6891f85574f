// SPDX-License-Identifier: MIT
// Reads one table of an exchange folder: heading against the known columns, then row by row with cells by the name of their column. What
// is wrong with the heading, the rows or a cell goes to the list of faults with its place.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.h"
#include "core/units/days.h"
#include "core/units/moment.h"
#include "db/exchange/csv_reader.h"
#include "db/exchange/exchange_tables.h"
#include "db/exchange/fault_list.h"

namespace db {

class TableRow {
  public:
    TableRow(const ExchangeTable& table, const std::vector<std::string>& heading, const CsvRow& row, FaultList& faults);

    [[nodiscard]] int number() const { return row_.number; }
    /// False as soon as one thing is wrong with it.
    [[nodiscard]] bool isSound() const { return faultyColumns_.empty(); }
    /// As many cells as the heading has: only then is each cell surely under its own name.
    [[nodiscard]] bool isWhole() const { return row_.cells.size() == heading_.size(); }

    /// The cell, its guard against spreadsheets taken off; empty where the table has no such column.
    [[nodiscard]] std::string text(std::string_view column) const;
    // The cell as a value. An empty or unreadable one gives `whenEmpty` or nothing; what is wrong becomes a fault.
    std::optional<core::Date> date(std::string_view column);
    std::optional<core::Moment> moment(std::string_view column);
    std::optional<std::int64_t> count(std::string_view column, std::int64_t largest = 1'000'000'000);
    int countOr(std::string_view column, int whenEmpty, std::int64_t largest = 1'000'000'000);
    /// From 0 on; a `signedFigure` may be below.
    std::optional<double> figure(std::string_view column);
    std::optional<double> signedFigure(std::string_view column);
    bool truth(std::string_view column);

    /// One fault a cell is enough: the first.
    void fault(std::string_view column, std::string reason);
    void refuse(const core::Refusals& refusals);

  private:
    std::optional<double> figureFrom(std::string_view name, double lowest, const std::string& allowed);
    [[nodiscard]] const ExchangeColumn& column(std::string_view name) const;

    const ExchangeTable& table_;
    const std::vector<std::string>& heading_;
    const CsvRow& row_;
    FaultList& faults_;
    std::vector<std::string> faultyColumns_;
};

/// The column that a rule's refusal speaks of; empty: none of this table.
[[nodiscard]] std::string columnOf(const ExchangeTable& table, const std::string& field);

enum class TableFound { Missing, Unusable, Read };

/// Hands every row to `take`, faulty ones too (isSound() tells), until the faults are too many or `stop` is requested. Missing: there is no
/// such file, which is a fault only where the table is needed.
TableFound readTable(const std::filesystem::path& folder, std::string_view table, FaultList& faults,
                     const std::stop_token& stop, const std::function<void(TableRow&)>& take);

}  // namespace db
