// SPDX-License-Identifier: MIT
#include "app/logger/column_guess.h"

#include <QRegularExpression>
#include <QString>
#include <QStringList>
#include <algorithm>

#include "app/logger/cell_number.h"
#include "app/logger/time_text.h"

namespace logger {

namespace {

/// The words of a name: letters and digits, a micro sign as "u", a percent sign by itself.
class NameWords {
  public:
    explicit NameWords(const std::string& name) {
        QString text = QString::fromStdString(name).toLower();
        text.replace(QChar(0x00B5), u'u')
            .replace(QChar(0x03BC), u'u')
            .replace(QStringLiteral("%"), QStringLiteral(" % "));
        static const QRegularExpression between(QStringLiteral("[^\\p{L}\\p{N}%]+"));
        words_ = text.split(between, Qt::SkipEmptyParts);
    }
    [[nodiscard]] bool has(std::initializer_list<const char*> any) const {
        return std::ranges::any_of(any, [&](const char* word) { return words_.contains(QLatin1String(word)); });
    }
    [[nodiscard]] bool begins(const char* start) const {
        return std::ranges::any_of(words_, [&](const QString& word) { return word.startsWith(QLatin1String(start)); });
    }

  private:
    QStringList words_;
};

std::optional<core::LoggerUnit> ecUnitOf(const NameWords& words, core::EcUnit shown) {
    if (words.has({"us"})) return core::LoggerUnit::MicroSiemens;
    if (words.has({"ms"})) return core::LoggerUnit::MilliSiemens;
    const auto unit = core::loggerUnitFrom(core::wordFor(shown));
    const bool isPpm = shown != core::EcUnit::MilliSiemens && shown != core::EcUnit::MicroSiemens;
    return words.has({"ppm"}) && !isPpm ? std::nullopt : unit;
}

core::Quantity temperatureOf(const NameWords& words) {
    if (words.has({"leaf", "canopy"})) return core::Quantity::LeafTemperature;
    if (words.has({"water", "solution", "tub", "tank", "reservoir", "nutrient"}))
        return core::Quantity::SolutionTemperature;
    if (words.has({"medium", "soil", "substrate", "root", "tray", "mat", "bottom"}))
        return core::Quantity::MediumTemperature;
    return core::Quantity::AirTemperature;
}

core::LoggerColumn valuesOf(core::Quantity quantity, core::LoggerUnit unit) {
    return {.role = core::ColumnRole::Values, .station = {}, .quantity = quantity, .unit = unit};
}

core::StationId stationNamedIn(const std::string& text, const core::Shelves& shelves) {
    const QString where = QString::fromStdString(text);
    core::StationId named;
    qsizetype longest = 0;
    for (const core::Station& station : shelves.stations) {
        const QString name = QString::fromStdString(station.name);
        if (name.size() <= longest || !where.contains(name, Qt::CaseInsensitive)) continue;
        named = station.id;
        longest = name.size();
    }
    return named;
}

core::StationId onlyStation(const core::Shelves& shelves) {
    core::StationId only;
    for (const core::Station& station : shelves.stations) {
        if (station.isRetired) continue;
        if (only.isSet()) return {};
        only = station.id;
    }
    return only;
}

/// What every cell of the column is that has something in it.
template <class Claim>
bool isThroughout(const FileTop& top, std::size_t column, Claim claim) {
    bool isAny = false;
    for (const db::CsvRow& row : top.rows) {
        if (column >= row.cells.size() || withoutBlanks(row.cells[column]).empty()) continue;
        if (!claim(row.cells[column])) return false;
        isAny = true;
    }
    return isAny;
}

bool isDayCell(const std::string& cell) {
    std::string_view rest = withoutBlanks(cell);
    return takeDay(rest) && rest.empty();
}

bool isTimeOfDayCell(const std::string& cell) {
    std::string_view rest = withoutBlanks(cell);
    return takeTimeOfDay(rest) && rest.empty();
}

/// One column with both, or one of each; with neither, seconds since 1970. Columns with a sort of time that is not needed are left out.
void findTime(const FileTop& top, core::LoggerMapping& mapping) {
    const std::size_t none = mapping.columns.size();
    std::size_t both = none, day = none, ofDay = none, seconds = none;
    for (std::size_t column = none; column-- > 0;) {
        if (!isThroughout(top, column, isTimeCell)) continue;
        if (isThroughout(top, column, isDayCell))
            day = column;
        else if (isThroughout(top, column, isTimeOfDayCell))
            ofDay = column;
        else if (isThroughout(top, column, [](const std::string& cell) {
                     return writtenTime(cell, core::TimeForm::UnixSeconds).has_value();
                 }))
            seconds = column;
        else
            both = column;
    }
    if (both != none) {
        mapping.columns[both].role = core::ColumnRole::DayAndTime;
    } else if (day != none && ofDay != none) {
        mapping.columns[day].role = core::ColumnRole::Day;
        mapping.columns[ofDay].role = core::ColumnRole::TimeOfDay;
    } else if (day != none) {
        mapping.columns[day].role = core::ColumnRole::DayAndTime;
    } else if (seconds != none) {
        mapping.columns[seconds].role = core::ColumnRole::DayAndTime;
        mapping.timeForm = core::TimeForm::UnixSeconds;
    }
}

/// A comma is the decimal sign where no column with values has a point.
core::DecimalSign decimalSignOf(const FileTop& top, const core::LoggerMapping& mapping) {
    bool hasComma = false;
    for (const db::CsvRow& row : top.rows)
        for (std::size_t column = 0; column < std::min(row.cells.size(), mapping.columns.size()); ++column) {
            if (mapping.columns[column].role != core::ColumnRole::Values) continue;
            if (row.cells[column].find('.') != std::string::npos) return core::DecimalSign::Point;
            hasComma = hasComma || row.cells[column].find(',') != std::string::npos;
        }
    return hasComma ? core::DecimalSign::Comma : core::DecimalSign::Point;
}

}  // namespace

core::LoggerColumn columnFromName(const std::string& name, const core::DisplayUnits& units) {
    using core::LoggerUnit;
    using core::Quantity;
    const NameWords words(name);
    if (words.has({"dew", "dewpoint", "vpd", "battery", "bat", "batt", "pressure", "signal", "heat", "wet"})) return {};
    if (words.has({"ph"})) return valuesOf(Quantity::SolutionPh, LoggerUnit::Ph);
    if (words.has({"ec", "conductivity", "cond"}) || (words.has({"us", "ms"}) && words.has({"cm"}))) {
        const auto unit = ecUnitOf(words, units.ec);
        return unit ? valuesOf(Quantity::SolutionEc, *unit) : core::LoggerColumn();
    }
    if (words.has({"do", "oxygen", "o2"}))
        return words.has({"%"}) ? core::LoggerColumn()
                                : valuesOf(Quantity::DissolvedOxygen, LoggerUnit::MilligramsPerLitre);
    if (words.has({"lux", "lx", "illuminance"})) return valuesOf(Quantity::Light, LoggerUnit::Lux);
    if (words.has({"par", "ppfd", "light"}) || words.begins("umol"))
        return valuesOf(Quantity::Light, LoggerUnit::Micromoles);
    if (words.has({"rh", "hum"}) || words.begins("humid"))
        return valuesOf(Quantity::RelativeHumidity, LoggerUnit::Percent);
    const bool isShownInF = units.temperature == core::TemperatureUnit::Fahrenheit;
    const bool isF = words.has({"f", "fahrenheit"}), isC = words.has({"c", "celsius"});
    if (!words.begins("temp") && !isF && !isC) return {};
    return valuesOf(temperatureOf(words), isF || (isShownInF && !isC) ? LoggerUnit::Fahrenheit : LoggerUnit::Celsius);
}

core::LoggerMapping guessedMapping(const FileTop& top, const std::string& fileName, const core::Shelves& shelves) {
    core::LoggerMapping mapping;
    mapping.columns.resize(top.form.names.size());
    findTime(top, mapping);
    core::StationId ofAll = stationNamedIn(top.above + ' ' + fileName, shelves);
    if (!ofAll.isSet()) ofAll = onlyStation(shelves);
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        if (mapping.columns[i].role != core::ColumnRole::LeftOut || isThroughout(top, i, isTimeCell)) continue;
        core::LoggerColumn column = columnFromName(top.form.names[i], shelves.facts.units);
        if (column.role != core::ColumnRole::Values) continue;
        const core::StationId own = stationNamedIn(top.form.names[i], shelves);
        column.station = own.isSet() ? own : ofAll;
        const bool isTaken = std::ranges::any_of(mapping.columns, [&](const core::LoggerColumn& other) {
            return other.role == core::ColumnRole::Values && other.station == column.station &&
                   other.quantity == column.quantity;
        });
        if (!isTaken) mapping.columns[i] = column;
    }
    mapping.decimalSign = decimalSignOf(top, mapping);
    return mapping;
}

}  // namespace logger
