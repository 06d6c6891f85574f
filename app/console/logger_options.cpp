// SPDX-License-Identifier: MIT
#include "app/console/logger_options.h"

#include <algorithm>
#include <array>

#include "app/console/arguments.h"
#include "app/console/question_options.h"
#include "app/console/words.h"
#include "app/logger/logger_zone.h"
#include "core/units/figure_text.h"

namespace console {

namespace {

struct OrderWord {
    const char* word;
    core::TimeForm form;
};
constexpr std::array orderWords = std::to_array<OrderWord>({{"d.m.y", core::TimeForm::DayMonthYear},
                                                            {"m/d/y", core::TimeForm::MonthDayYear},
                                                            {"y-m-d", core::TimeForm::YearMonthDay},
                                                            {"unix", core::TimeForm::UnixSeconds}});

/// By its name, or by its number from 1.
std::size_t columnCalled(const std::string& option, const std::string& name, const logger::FileForm& form) {
    const auto found = std::ranges::find(form.names, name);
    if (found != form.names.end()) return static_cast<std::size_t>(found - form.names.begin());
    const bool isNumber = !name.empty() && name.size() < 4 && name.find_first_not_of("0123456789") == std::string::npos;
    const std::size_t number = isNumber ? std::stoul(name) : 0;
    if (number >= 1 && number <= form.names.size()) return number - 1;
    std::string names;
    for (const std::string& each : form.names) names += (names.empty() ? "" : ", ") + shown(each);
    throw WrongArgument(filled(tr("%1 names the column %2, which the file does not have; its columns are %3."),
                               {option, shown(name), names}));
}

/// "Tub north:solution_temperature:F", "Tent:light:lux:54"; a station's name may have colons of its own.
std::vector<std::string> partsOf(const std::string& meaning, std::size_t most) {
    std::vector<std::string> parts;
    std::string rest = meaning;
    while (parts.size() + 1 < most) {
        const std::size_t colon = rest.rfind(':');
        if (colon == std::string::npos) break;
        parts.insert(parts.begin(), rest.substr(colon + 1));
        rest.resize(colon);
    }
    parts.insert(parts.begin(), rest);
    return parts;
}

core::StationId stationCalled(const std::string& name, const core::Shelves& shelves) {
    for (const core::Station& station : shelves.stations)
        if (station.name == name) return station.id;
    std::string names;
    for (const core::Station& station : shelves.stations) names += (names.empty() ? "" : ", ") + shown(station.name);
    throw WrongArgument(
        filled(tr("--column names the station %1, which the logbook does not have; its stations are %2."),
               {shown(name), names}));
}

core::LoggerColumn columnMeant(const std::string& meaning, const core::Shelves& shelves) {
    constexpr std::size_t usual = 3;  // station, quantity, unit
    core::LoggerColumn column{.role = core::ColumnRole::Values};
    std::vector<std::string> parts = partsOf(meaning, usual);
    if (const auto withLamp = partsOf(meaning, usual + 1);
        withLamp.size() > usual && withLamp[2] == core::wordFor(core::LoggerUnit::Lux)) {
        parts = {withLamp[0], withLamp[1], withLamp[2]};
        column.luxPerMicromole = numberFrom("--column", withLamp[3]);
    }
    if (parts.size() < usual)
        throw WrongArgument(filled(tr("--column is %1; NAME=STATION:QUANTITY:UNIT is allowed, such as "
                                      "\"Temp=Tub north:solution_temperature:C\"."),
                                   {shown(meaning)}));
    column.station = stationCalled(parts[0], shelves);
    const auto quantity = core::quantityFrom(parts[1]);
    if (!quantity) {
        std::string words;
        for (const core::Quantity each : core::allQuantities)
            words += (words.empty() ? "" : ", ") + std::string(core::factsOf(each).word);
        throw WrongArgument(filled(tr("--column names the quantity %1; %2 are allowed."), {shown(parts[1]), words}));
    }
    column.quantity = *quantity;
    const auto unit = core::loggerUnitFrom(parts[2]);
    const std::vector<core::LoggerUnit> units = core::loggerUnitsOf(*quantity);
    if (!unit || std::ranges::find(units, *unit) == units.end()) {
        std::string words;
        for (const core::LoggerUnit each : units)
            words += (words.empty() ? "" : ", ") + std::string(core::wordFor(each));
        throw WrongArgument(
            filled(tr("--column has %1 in %2; of units are allowed %3."), {parts[1], shown(parts[2]), words}));
    }
    column.unit = *unit;
    return column;
}

std::string quotedWord(const std::string& word) {
    return '"' + word + '"';
}

}  // namespace

void LoggerOptions::declare(Options& options) {
    options.listOption("--time", "COLUMN...", tr("the column with day and time, or the two with day and with time"),
                       time_);
    options.listOption("--column", "NAME=STATION:QUANTITY:UNIT...",
                       tr("what a column measures; of lux also how many are 1 umol/m2/s: Light=Tent:light:lux:54"),
                       columns_);
    options.option("--zone", "ZONE",
                   tr("the logger's clock: UTC, here, +02:00, or a name such as Europe/Berlin (here)"), zone_);
    options.option("--order", "d.m.y|m/d/y|y-m-d|unix", tr("of the day's figures, where the file doesn't settle it"),
                   order_);
    options.option("--decimal", ".|,", tr("the decimal sign"), decimal_);
    options.option("--twice", "summer|winter",
                   tr("which hour is meant where rows go once through the one that comes twice"), twice_);
    options.flag("--blanks-are-no-reading", tr("blank cells and words such as OFL mean that there was no reading"),
                 blanksAreNoReading_);
}

bool LoggerOptions::areGiven() const {
    return !time_.empty() || !columns_.empty() || order_ || decimal_;
}

void LoggerOptions::setTime(core::LoggerMapping& mapping, const logger::FileForm& form) const {
    if (time_.empty()) return;
    if (time_.size() > 2)
        throw WrongArgument(
            filled(tr("--time names %1 columns; one or two are allowed."), {std::to_string(time_.size())}));
    for (core::LoggerColumn& column : mapping.columns)
        if (column.role != core::ColumnRole::Values) column.role = core::ColumnRole::LeftOut;
    const bool isOne = time_.size() == 1;
    mapping.columns[columnCalled("--time", time_[0], form)].role =
        isOne ? core::ColumnRole::DayAndTime : core::ColumnRole::Day;
    if (!isOne) mapping.columns[columnCalled("--time", time_[1], form)].role = core::ColumnRole::TimeOfDay;
}

void LoggerOptions::setForms(core::LoggerMapping& mapping, const logger::FileForm& form,
                             const std::filesystem::path& file) const {
    if (!time_.empty()) mapping.timeForm = logger::timeFormIn(file, form, mapping);
    if (order_) {
        const auto found =
            std::ranges::find_if(orderWords, [&](const OrderWord& each) { return *order_ == each.word; });
        if (found == orderWords.end())
            throw WrongArgument(filled(tr("--order is %1; d.m.y, m/d/y, y-m-d or unix is allowed."), {shown(*order_)}));
        mapping.timeForm = found->form;
    }
    if (decimal_) {
        if (*decimal_ != "." && *decimal_ != ",")
            throw WrongArgument(filled(tr("--decimal is %1; a point or a comma is allowed."), {shown(*decimal_)}));
        mapping.decimalSign = *decimal_ == "," ? core::DecimalSign::Comma : core::DecimalSign::Point;
    }
}

void LoggerOptions::putOver(core::LoggerMapping& mapping) const {
    if (zone_) {
        const auto zone = logger::LoggerZone::from(*zone_);
        if (!zone)
            throw WrongArgument(
                filled(tr("--zone is %1, which is not known; UTC, here, an offset such as +02:00 or a name such as "
                          "Europe/Berlin is allowed."),
                       {shown(*zone_)}));
        mapping.zone = zone->name();
    }
    if (twice_) {
        if (*twice_ != "summer" && *twice_ != "winter")
            throw WrongArgument(filled(tr("--twice is %1; summer or winter is allowed."), {shown(*twice_)}));
        mapping.twiceHour = *twice_ == "summer" ? core::TwiceHour::Summer : core::TwiceHour::Winter;
    }
    if (blanksAreNoReading_) mapping.wordsMeanNoReading = true;
}

core::LoggerMapping LoggerOptions::mappingFor(const logger::FileLook& look, const std::filesystem::path& file,
                                              const core::Shelves& shelves) const {
    core::LoggerMapping mapping = look.guess;
    const logger::FileForm& form = look.top.form;
    if (!columns_.empty()) {
        for (core::LoggerColumn& column : mapping.columns)
            if (column.role == core::ColumnRole::Values) column = {};
        for (const std::string& text : columns_) {
            const auto [name, meaning] = pairFrom("--column", text);
            mapping.columns[columnCalled("--column", name, form)] = columnMeant(meaning, shelves);
        }
    }
    setTime(mapping, form);
    setForms(mapping, form, file);
    putOver(mapping);
    return mapping;
}

std::string optionsSaying(const core::LoggerMapping& mapping, const logger::FileForm& form,
                          const core::Shelves& shelves) {
    std::string time, columns;
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        const core::LoggerColumn& column = mapping.columns[i];
        if (column.role == core::ColumnRole::LeftOut) continue;
        if (column.role != core::ColumnRole::Values) {
            time += ' ' + quotedWord(form.names[i]);
            continue;
        }
        const core::Station* station = core::find(shelves.stations, column.station);
        std::string meaning = form.names[i] + '=' + (station == nullptr ? tr("STATION") : station->name) + ':' +
                              std::string(core::factsOf(column.quantity).word) + ':' +
                              std::string(core::wordFor(column.unit));
        if (column.unit == core::LoggerUnit::Lux)
            meaning += ':' + (column.luxPerMicromole > 0 ? core::figureText(column.luxPerMicromole) : tr("LUX"));
        columns += " --column " + quotedWord(meaning);
    }
    std::string words = (time.empty() ? std::string() : "--time" + time) + columns + " --zone " + mapping.zone;
    for (const OrderWord& each : orderWords)
        if (mapping.timeForm == each.form) words += std::string(" --order ") + each.word;
    return words;
}

}  // namespace console
