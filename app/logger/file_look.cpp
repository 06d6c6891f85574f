// SPDX-License-Identifier: MIT
#include "app/logger/file_look.h"

#include <algorithm>

#include "app/logger/column_guess.h"
#include "app/logger/logger_words.h"
#include "app/logger/logger_zone.h"
#include "app/logger/time_order.h"

namespace logger {

FileLook lookAt(const std::filesystem::path& file, const core::Shelves& shelves, const db::Waiting& waiting) {
    FileLook look{.top = topOf(file)};
    if (look.top.form.firstRow == 0) {
        look.fault =
            LoggerWords::tr(
                "In %1 no row was found that has a time and a number in cells of their own; a table of a logger "
                "with commas, semicolons or tabs between its cells is allowed.")
                .arg(QString::fromStdString(file.filename().string()))
                .toStdString();
        return look;
    }
    look.guess = guessedMapping(look.top, file.stem().string(), shelves);
    look.guess.zone = LoggerZone::here();
    if (look.guess.timeForm == core::TimeForm::NotSettled)
        look.guess.timeForm = timeFormIn(file, look.top.form, look.guess, waiting);
    return look;
}

core::TimeForm timeFormIn(const std::filesystem::path& file, const FileForm& form, const core::LoggerMapping& mapping,
                          const db::Waiting& waiting) {
    const auto holdsDay = [](const core::LoggerColumn& column) {
        return column.role == core::ColumnRole::DayAndTime || column.role == core::ColumnRole::Day;
    };
    const auto found = std::ranges::find_if(mapping.columns, holdsDay);
    if (found == mapping.columns.end()) return core::TimeForm::NotSettled;
    const auto column = static_cast<std::size_t>(found - mapping.columns.begin());
    TextFile text(file, form.encoding);
    db::CsvReader reader(text.text(), form.separator);
    TimeOrder order;
    std::int64_t unixSeconds = 0, others = 0;
    while (const auto row = reader.next()) {
        if (row->number < form.firstRow || column >= row->cells.size()) continue;
        const std::string& cell = row->cells[column];
        order.see(cell);
        ++(writtenTime(cell, core::TimeForm::UnixSeconds) ? unixSeconds : others);
        if (order.isCertain() || waiting.isCalledOff()) break;
        constexpr int rowsBetweenTellings = 4096;
        if (row->number % rowsBetweenTellings == 0) waiting.tellShare(text.shareRead());
    }
    return unixSeconds > others ? core::TimeForm::UnixSeconds : order.settled();
}

}  // namespace logger
