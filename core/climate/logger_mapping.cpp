// SPDX-License-Identifier: MIT
#include "core/climate/logger_mapping.h"

#include <algorithm>
#include <array>

#include "core/records.h"
#include "core/units/display_units.h"
#include "core/units/entered_text.h"
#include "core/units/figure_text.h"

namespace core {

namespace {

constexpr std::array loggerUnitWords = std::to_array<std::string_view>(
    {"C", "F", "mS/cm", "uS/cm", "ppm500", "ppm640", "ppm700", "pH", "mg/L", "%", "umol/m2/s", "lux"});

DisplayUnits unitsOfLogger(LoggerUnit unit) {
    switch (unit) {
        case LoggerUnit::Fahrenheit:
            return {.temperature = TemperatureUnit::Fahrenheit};
        case LoggerUnit::MicroSiemens:
            return {.ec = EcUnit::MicroSiemens};
        case LoggerUnit::Ppm500:
            return {.ec = EcUnit::Ppm500};
        case LoggerUnit::Ppm640:
            return {.ec = EcUnit::Ppm640};
        case LoggerUnit::Ppm700:
            return {.ec = EcUnit::Ppm700};
        default:
            return {};
    }
}

Refusal mappingRefusal(std::string field, std::string value, std::string allowed, std::string sentence) {
    return {std::move(field), std::move(value), std::move(allowed), std::move(sentence)};
}

void judgeTime(const LoggerMapping& mapping, Refusals& faults) {
    const auto count = [&](ColumnRole role) { return std::ranges::count(mapping.columns, role, &LoggerColumn::role); };
    const auto both = count(ColumnRole::DayAndTime), days = count(ColumnRole::Day),
               times = count(ColumnRole::TimeOfDay);
    const bool isOne = (both == 1 && days == 0 && times == 0) || (both == 0 && days == 1 && times == 1);
    if (!isOne)
        faults.push_back(mappingRefusal(
            "Time", std::to_string(both + days + times) + " columns", "one column with day and time, or one of each",
            both + days + times == 0 ? "Time is in no column; one column with day and time, or one with the day "
                                       "and one with the time, is needed."
                                     : "Time is in columns that do not go together; one column with day and time, "
                                       "or one with the day and one with the time, is needed."));
    if (mapping.timeForm == TimeForm::NotSettled)
        faults.push_back(
            mappingRefusal("Day and month", "", "day first, month first or year first",
                           "Day and month can be read in more than one way in this file; say which of them "
                           "stands first."));
    if (mapping.timeForm != TimeForm::UnixSeconds && isBlank(mapping.zone))
        faults.push_back(mappingRefusal("Zone", "", "a time zone",
                                        "Zone is not named; the time zone that the logger's clock ran in is needed."));
}

void judgeValues(const LoggerColumn& column, const std::string& name, const Shelves& shelves, Refusals& faults) {
    const std::string field = "Column " + quotable(name);
    if (find(shelves.stations, column.station) == nullptr)
        faults.push_back(mappingRefusal(field, "", "a station of this logbook",
                                        field + " has no station; one of this logbook's is needed."));
    if (const auto units = loggerUnitsOf(column.quantity); std::ranges::find(units, column.unit) == units.end())
        faults.push_back(mappingRefusal(field, std::string(wordFor(column.unit)), "a unit of this quantity",
                                        field + " is in " + std::string(wordFor(column.unit)) + ", in which " +
                                            std::string(factsOf(column.quantity).name) + " is not measured."));
    if (column.unit == LoggerUnit::Lux &&
        !(column.luxPerMicromole >= leastLuxPerMicromole && column.luxPerMicromole <= mostLuxPerMicromole))
        faults.push_back(mappingRefusal(
            field, figureText(column.luxPerMicromole), "1 to 500 lux",
            field + " is in lux, which is no measure of light for plants; say how many lux are 1 umol/(m2 s) "
                    "under this lamp, 1 to 500."));
}

}  // namespace

std::string_view wordFor(LoggerUnit unit) {
    return loggerUnitWords[static_cast<std::size_t>(unit)];
}

std::optional<LoggerUnit> loggerUnitFrom(std::string_view word) {
    const auto found = std::ranges::find(loggerUnitWords, word);
    if (found == loggerUnitWords.end()) return {};
    return static_cast<LoggerUnit>(found - loggerUnitWords.begin());
}

std::vector<LoggerUnit> loggerUnitsOf(Quantity quantity) {
    switch (quantity) {
        case Quantity::SolutionEc:
            return {LoggerUnit::MilliSiemens, LoggerUnit::MicroSiemens, LoggerUnit::Ppm500, LoggerUnit::Ppm640,
                    LoggerUnit::Ppm700};
        case Quantity::SolutionPh:
            return {LoggerUnit::Ph};
        case Quantity::DissolvedOxygen:
            return {LoggerUnit::MilligramsPerLitre};
        case Quantity::RelativeHumidity:
            return {LoggerUnit::Percent};
        case Quantity::Light:
            return {LoggerUnit::Micromoles, LoggerUnit::Lux};
        default:
            return {LoggerUnit::Celsius, LoggerUnit::Fahrenheit};
    }
}

double storedValue(double logged, const LoggerColumn& column) {
    if (column.unit == LoggerUnit::Lux) return logged / column.luxPerMicromole;
    return storedValue(logged, column.quantity, unitsOfLogger(column.unit));
}

double loggedValue(double stored, const LoggerColumn& column) {
    if (column.unit == LoggerUnit::Lux) return stored * column.luxPerMicromole;
    return shownValue(stored, column.quantity, unitsOfLogger(column.unit));
}

Refusals faultsIn(const LoggerMapping& mapping, const std::vector<std::string>& names, const Shelves& shelves) {
    Refusals faults;
    judgeTime(mapping, faults);
    std::vector<std::pair<StationId, Quantity>> taken;
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        const LoggerColumn& column = mapping.columns[i];
        if (column.role != ColumnRole::Values) continue;
        judgeValues(column, names[i], shelves, faults);
        const std::pair what(column.station, column.quantity);
        if (std::ranges::find(taken, what) != taken.end())
            faults.push_back(
                mappingRefusal("Column " + quotable(names[i]), std::string(factsOf(column.quantity).name),
                               "each quantity of a station once",
                               "Column " + quotable(names[i]) + " is " + std::string(factsOf(column.quantity).name) +
                                   " of a station that has it in a column before; leave one of them out."));
        taken.push_back(what);
    }
    if (taken.empty())
        faults.push_back(mappingRefusal("Values", "0 columns", "at least one",
                                        "Values are in no column; say of at least one column what it measures."));
    return faults;
}

}  // namespace core
