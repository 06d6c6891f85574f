// SPDX-License-Identifier: MIT
#include "app/logger/file_form.h"

#include <QString>
#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "app/logger/cell_number.h"
#include "app/logger/logger_words.h"
#include "app/logger/time_text.h"

namespace logger {

namespace {

using Rows = std::vector<db::CsvRow>;

constexpr std::array separators{'\t', ';', ','};

bool isNumberCell(const std::string& cell) {
    return cellNumber(cell, core::DecimalSign::Point) || cellNumber(cell, core::DecimalSign::Comma);
}

/// A time, and beside it a number.
bool holdsValues(const db::CsvRow& row) {
    const auto isTime = [](const std::string& cell) { return isTimeCell(cell); };
    const auto time = std::ranges::find_if(row.cells, isTime);
    return time != row.cells.end() && std::ranges::any_of(row.cells, [&](const std::string& cell) {
               return &cell != &*time && !isTimeCell(cell) && isNumberCell(cell);
           });
}

Rows rowsAtTop(const std::filesystem::path& file, Encoding encoding, char separator) {
    TextFile text(file, encoding);
    db::CsvReader reader(text.text(), separator);
    Rows rows;
    while (rows.size() < rowsLookedAt) {
        auto row = reader.next();
        if (!row) break;
        rows.push_back(std::move(*row));
    }
    return rows;
}

/// Those of the rows that hold values in as many cells as most do: how many there are, and the first. Lines of the logger's own may look like one.
struct RowsAlike {
    std::size_t count{};
    std::size_t first{};
};

RowsAlike rowsAlike(const Rows& rows) {
    std::map<std::size_t, RowsAlike> byCells;
    for (std::size_t at = 0; at < rows.size(); ++at)
        if (holdsValues(rows[at])) {
            RowsAlike& alike = byCells.try_emplace(rows[at].cells.size(), RowsAlike{0, at}).first->second;
            ++alike.count;
        }
    RowsAlike most;
    for (const auto& [cells, alike] : byCells)
        if (alike.count > most.count) most = alike;
    return most;
}

/// Without line breaks and control characters, which some loggers' own letters look like.
std::string plainCell(const std::string& cell) {
    QString text = QString::fromStdString(cell).simplified();
    text.removeIf([](QChar letter) { return letter.category() == QChar::Other_Control; });
    return text.toStdString();
}

/// Below the names some loggers write the units, and what sort of figure it is.
bool isRowOfUnits(const db::CsvRow& row) {
    static const std::set<std::string> words{
        "",  "ts",  "rn",  "c",     "f",     "deg c",      "deg f", "\u00b0c",   "\u00b0f",
        "%", "%rh", "rh",  "ms/cm", "us/cm", "\u00b5s/cm", "ppm",   "ph",        "mg/l",
        "v", "lux", "smp", "avg",   "min",   "max",        "tot",   "umol/m2/s", "\u00b5mol/m\u00b2/s",
    };
    return std::ranges::all_of(row.cells, [](const std::string& cell) {
        return words.contains(QString::fromStdString(cell).simplified().toLower().toStdString());
    });
}

/// The rows from the names down to the values, as far as they have as many cells.
std::vector<const db::CsvRow*> headingRows(const Rows& rows, std::size_t first) {
    std::vector<const db::CsvRow*> heading;
    const std::size_t cells = rows[first].cells.size();
    for (std::size_t at = first; at-- > 0;) {
        const db::CsvRow& row = rows[at];
        const bool fits = row.cells.size() <= cells && row.cells.size() + 1 >= cells && row.cells.size() > 1;
        if (!fits || std::ranges::any_of(row.cells, isTimeCell)) break;
        heading.insert(heading.begin(), &row);
        if (!isRowOfUnits(row)) break;
    }
    return heading;
}

std::string nameFrom(const std::vector<const db::CsvRow*>& heading, std::size_t column) {
    std::string name;
    for (const db::CsvRow* row : heading)
        if (column < row->cells.size())
            if (const std::string cell = plainCell(row->cells[column]); !cell.empty())
                name += (name.empty() ? "" : ", ") + cell;
    return name;
}

void nameColumns(FileForm& form, const std::vector<const db::CsvRow*>& heading, std::size_t columns) {
    std::set<std::string> taken;
    for (std::size_t column = 0; column < columns; ++column) {
        const std::string written = nameFrom(heading, column);
        if (!heading.empty()) form.heading += (column == 0 ? "" : " | ") + written;
        const std::string base = written.empty() ? LoggerWords::tr("Column %1").arg(column + 1).toStdString() : written;
        std::string name = base;
        for (int count = 2; !taken.insert(name).second; ++count) name = base + " (" + std::to_string(count) + ")";
        form.names.push_back(name);
    }
}

}  // namespace

bool isTimeCell(const std::string& cell) {
    constexpr std::size_t digitsOfNow = 10;
    for (const auto form : {core::TimeForm::DayMonthYear, core::TimeForm::MonthDayYear, core::TimeForm::YearMonthDay})
        if (writtenTime(cell, form)) return true;
    std::string_view rest = withoutBlanks(cell);
    if (rest.size() >= digitsOfNow && rest.find_first_of("+-eE,") == std::string_view::npos &&
        rest.substr(0, digitsOfNow).find_first_not_of("0123456789") == std::string_view::npos)
        return writtenTime(rest, core::TimeForm::UnixSeconds).has_value();
    return takeTimeOfDay(rest) && rest.empty();
}

FileTop topOf(const std::filesystem::path& file) {
    FileTop top;
    top.form.encoding = encodingOf(file);
    Rows rows;
    RowsAlike most;
    for (const char separator : separators) {
        Rows tried = rowsAtTop(file, top.form.encoding, separator);
        const RowsAlike alike = rowsAlike(tried);
        if (alike.count <= most.count) continue;
        most = alike;
        top.form.separator = separator;
        rows = std::move(tried);
    }
    if (most.count == 0) return top;
    const std::size_t first = most.first;
    const auto heading = headingRows(rows, first);
    top.form.firstRow = rows[first].number;
    nameColumns(top.form, heading, rows[first].cells.size());
    for (std::size_t at = 0; at + heading.size() < first; ++at)
        for (const std::string& cell : rows[at].cells) top.above += plainCell(cell) + ' ';
    top.rows.assign(std::make_move_iterator(rows.begin() + static_cast<std::ptrdiff_t>(first)),
                    std::make_move_iterator(rows.end()));
    return top;
}

}  // namespace logger
