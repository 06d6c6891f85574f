// SPDX-License-Identifier: MIT
#include "db/exchange/table_reader.h"

#include <algorithm>
#include <charconv>
#include <fstream>
#include <set>

#include "core/units/entered_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"
#include "db/exchange/csv_writer.h"
#include "db/exchange/exchange_text.h"

namespace db {

namespace {

std::string fileOf(const ExchangeTable& table) {
    return std::string(table.name) + ".csv";
}

std::string knownColumns(const ExchangeTable& table) {
    std::string names;
    for (const ExchangeColumn& column : table.columns) names += (names.empty() ? "" : ", ") + std::string(column.name);
    return names;
}

std::string unknownColumnReason(const ExchangeTable& table, const std::string& name) {
    if (name.empty()) return "A column of the heading has no name; known are " + knownColumns(table) + ".";
    const bool isOtherDialect = name.find_first_of(";\t") != std::string::npos;
    return "The column " + core::quotable(name) + " is unknown here; known are " + knownColumns(table) + "." +
           (isOtherDialect ? " The cells seem to be parted by semicolons or tabs; save the table with commas." : "");
}

/// False when the rows below the heading can't be understood by it.
bool headingIsSound(const ExchangeTable& table, const CsvRow& row, const std::vector<std::string>& heading,
                    FaultList& faults) {
    const std::size_t before = faults.faults().size();
    const auto fault = [&](const std::string& column, std::string reason) {
        faults.add({.file = fileOf(table), .row = row.number, .column = column, .reason = std::move(reason)});
    };
    for (const CsvFault& found : row.faults) fault("", found.reason);
    if (faults.faults().size() != before) return false;
    std::set<std::string> seen;
    for (const std::string& name : heading) {
        const bool isKnown =
            std::ranges::any_of(table.columns, [&](const ExchangeColumn& c) { return c.name == name; });
        if (!isKnown)
            fault(core::isValidUtf8(name) ? name : "", unknownColumnReason(table, name));
        else if (!seen.insert(name).second)
            fault(name, "The column \"" + name + "\" is there twice; which of the two counts can't be told.");
    }
    for (const ExchangeColumn& column : table.columns)
        if (column.isRequired && !seen.contains(std::string(column.name)))
            fault(std::string(column.name),
                  "The column \"" + std::string(column.name) + "\" is missing from the heading; it is needed.");
    return std::ranges::all_of(table.columns, [&](const ExchangeColumn& column) {
        return !column.isRequired || std::ranges::count(heading, column.name) == 1;
    });
}

/// Where the screens' word for a field isn't the column's.
struct FieldColumn {
    std::string_view field;
    std::string_view column;
};
constexpr FieldColumn fieldColumns[] = {{"botanical_name", "species"},
                                        {"plant", "species"},
                                        {"label", "stock_plant"},
                                        {"code", "batch"},
                                        {"kind_of_cutting", "cutting_kind"},
                                        {"reason_for_closing", "close_reason"},
                                        {"place_in_the_walk", "walking_order"},
                                        {"root_length_in_mm", "root_length_mm"},
                                        {"days_between_checks", "check_every_days"},
                                        {"blocked_positions", "blocked"},
                                        {"what_for", "what"},
                                        {"days_to_the_first_check", "first_check_after_days"},
                                        {"usual_days_to_root", "usual_rooting_days_high"},
                                        {"date", "held_on"},
                                        {"blocks", "blocked_by"},
                                        {"crossed_over", "is_crossed_over"},
                                        {"needed_by", "need_by"},
                                        {"of_100_potted,_live", "potted_live_percent"},
                                        {"days_of_hardening", "hardening_days"},
                                        {"days_of_growing_on", "potting_days"},
                                        {"altitude_in_m", "altitude_m"},
                                        {"base_of_degree-days_in_c", "degree_day_base"},
                                        {"rate_of_false_alarms", "false_alarm_rate"},
                                        {"band", "low"},
                                        {"kept_with", "session"},
                                        {"heading_of_the_file", "header"},
                                        {"columns_of_the_file", "mapping"},
                                        {"belongs_to", "method"},
                                        {"belongs_to", "batch"},
                                        {"lasts", "lasts_years"},
                                        {"lasts_for_years", "lasts_years"},
                                        {"lasts_for_batches", "lasts_for"},
                                        {"a_pack_does_for", "lasts_for"},
                                        {"for_each", "basis"},
                                        {"power", "watts"},
                                        {"share_of_the_time", "duty"},
                                        {"lot_of", "treatment"},
                                        {"lost_after_potting", "lost"}};

std::vector<std::string> headingOf(const CsvRow& row) {
    std::vector<std::string> heading;
    for (const std::string& cell : row.cells) heading.push_back(withoutBlanks(cell));
    return heading;
}

}  // namespace

std::string columnOf(const ExchangeTable& table, const std::string& field) {
    std::string name = field.substr(0, field.find(" ("));
    std::ranges::transform(name, name.begin(), [](char c) {
        return c == ' ' ? '_' : c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    });
    const auto has = [&](std::string_view wanted) {
        return std::ranges::any_of(table.columns, [&](const ExchangeColumn& each) { return each.name == wanted; });
    };
    for (const FieldColumn& pair : fieldColumns)
        if (pair.field == name && has(pair.column)) return std::string(pair.column);
    if (has(name)) return name;
    return field == "Name" ? std::string(table.columns.front().name) : std::string();
}

TableRow::TableRow(const ExchangeTable& table, const std::vector<std::string>& heading, const CsvRow& row,
                   FaultList& faults)
    : table_(table), heading_(heading), row_(row), faults_(faults) {
    for (const CsvFault& found : row.faults)
        fault(found.cell < heading.size() ? heading[found.cell] : "", found.reason);
    if (row.faults.empty() && !isWhole())
        fault("", "The row has " + std::to_string(row.cells.size()) + " cells where the heading has " +
                      std::to_string(heading.size()) +
                      "; a comma too many or too few, or one that needs quotes round its cell.");
}

std::string TableRow::text(std::string_view column) const {
    const auto place = static_cast<std::size_t>(std::ranges::find(heading_, column) - heading_.begin());
    return place < row_.cells.size() && place < heading_.size() ? unguarded(row_.cells[place]) : std::string();
}

std::optional<core::Date> TableRow::date(std::string_view name) {
    const std::string cell = withoutBlanks(text(name));
    if (cell.empty() && !column(name).isRequired) return {};
    const std::optional<core::Date> read = core::dateFromIso(cell);
    if (!read)
        fault(name, cell.empty() ? "The date is missing; write year-month-day, such as 2026-03-14."
                                 : core::quotable(cell) +
                                       " is no day of the calendar from 1800 to 9999; write "
                                       "year-month-day, such as 2026-03-14.");
    return read;
}

std::optional<std::int64_t> TableRow::count(std::string_view name, std::int64_t largest) {
    const std::string cell = withoutBlanks(text(name));
    if (cell.empty() && !column(name).isRequired) return {};
    std::int64_t read = 0;
    const auto [end, unreadable] = std::from_chars(cell.data(), cell.data() + cell.size(), read);
    const bool isDigits = !cell.empty() && cell.find_first_not_of("0123456789") == std::string::npos;
    if (isDigits && unreadable == std::errc{} && read <= largest) return read;
    const std::string range = "a whole number from 0 to " + std::to_string(largest);
    fault(name, cell.empty() ? "The number is missing; it must be " + range + "."
                             : core::quotable(cell) + " is not " + range + ".");
    return {};
}

int TableRow::countOr(std::string_view name, int whenEmpty, std::int64_t largest) {
    return static_cast<int>(count(name, largest).value_or(whenEmpty));
}

std::optional<core::Moment> TableRow::moment(std::string_view name) {
    const std::string cell = withoutBlanks(text(name));
    const std::optional<core::Moment> read = core::momentFromIso(cell);
    if (!read)
        fault(name, (cell.empty() ? "The moment is missing" : core::quotable(cell) + " is no moment") +
                        std::string("; write it in UTC, such as 2026-03-14T10:42:05Z."));
    return read;
}

std::optional<double> TableRow::figure(std::string_view name) {
    return figureFrom(name, 0, "0 or more");
}

std::optional<double> TableRow::signedFigure(std::string_view name) {
    return figureFrom(name, -1e12, "a number");
}

std::optional<double> TableRow::figureFrom(std::string_view name, double lowest, const std::string& allowed) {
    const std::string cell = withoutBlanks(text(name));
    if (cell.empty() && !column(name).isRequired) return {};
    // Plain first: what an export wrote may have an exponent, which nobody types.
    double read = 0;
    const auto [end, unreadable] = std::from_chars(cell.data(), cell.data() + cell.size(), read);
    std::optional<double> number = core::numberFrom(cell);
    if (!number && unreadable == std::errc{} && end == cell.data() + cell.size()) number = read;
    if (number && *number >= lowest && *number <= 1e12) return number;
    const std::string range = lowest < 0 ? "a number" : "a number from 0 on";
    fault(name, cell.empty() ? "The number is missing; it must be " + allowed + "."
                             : core::quotable(cell) + " is not " + range + ".");
    return {};
}

bool TableRow::truth(std::string_view name) {
    const std::string cell = withoutBlanks(text(name));
    // Spreadsheets turn true into TRUE when they save.
    if (cell == "true" || cell == "TRUE" || cell == "1") return true;
    if (cell.empty() || cell == "false" || cell == "FALSE" || cell == "0") return false;
    fault(name, core::quotable(cell) + " is neither true nor false.");
    return false;
}

void TableRow::fault(std::string_view column, std::string reason) {
    if (std::ranges::count(faultyColumns_, column) > 0) return;
    faultyColumns_.emplace_back(column);
    faults_.add(
        {.file = fileOf(table_), .row = row_.number, .column = std::string(column), .reason = std::move(reason)});
}

void TableRow::refuse(const core::Refusals& refusals) {
    for (const core::Refusal& refusal : refusals) fault(columnOf(table_, refusal.field), refusal.sentence);
}

const ExchangeColumn& TableRow::column(std::string_view name) const {
    return *std::ranges::find(table_.columns, name, &ExchangeColumn::name);
}

TableFound readTable(const std::filesystem::path& folder, std::string_view name, FaultList& faults,
                     const std::stop_token& stop, const std::function<void(TableRow&)>& take) {
    const ExchangeTable& table = exchangeTable(name);
    const std::filesystem::path file = folder / fileOf(table);
    const auto unusable = [&](int row, std::string reason) {
        faults.add({.file = fileOf(table), .row = row, .column = {}, .reason = std::move(reason)});
        return TableFound::Unusable;
    };
    std::error_code ignored;
    if (!std::filesystem::exists(file, ignored))
        return table.isRequired ? unusable(0, "This table is missing; batches.csv and checks.csv are needed.")
                                : TableFound::Missing;
    // Looked at before it is opened: a pipe of this name would keep us waiting for ever.
    std::ifstream in;
    if (std::filesystem::is_regular_file(file, ignored)) in.open(file, std::ios::binary);
    if (!in.is_open()) return unusable(0, "The file can't be read; see whether you may open it.");
    CsvReader reader(in);
    std::optional<CsvRow> row = reader.next();
    if (!row)
        return unusable(0, "The file is empty; its first row must name the columns: " + knownColumns(table) + ".");
    const std::vector<std::string> heading = headingOf(*row);
    if (!headingIsSound(table, *row, heading, faults)) return TableFound::Unusable;
    constexpr int mostRows = 10'000'000;
    while (!faults.isOver() && !stop.stop_requested() && (row = reader.next())) {
        if (row->number > mostRows)
            return unusable(row->number, "The table has more than " + std::to_string(mostRows) + " rows; part it.");
        TableRow tableRow(table, heading, *row, faults);
        take(tableRow);
    }
    if (in.bad()) return unusable(0, "The disk failed while the file was read; copy the folder anew.");
    return TableFound::Read;
}

}  // namespace db
