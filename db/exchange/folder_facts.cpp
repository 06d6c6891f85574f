// SPDX-License-Identifier: MIT
#include "db/exchange/folder_facts.h"

#include "core/units/entered_text.h"

namespace db {

namespace {

/// The unit that a word of the cell stands for; the usual one for an empty cell.
template <class Unit>
Unit unitOf(TableRow& row, std::string_view column, Unit usual, std::optional<Unit> (*read)(std::string_view)) {
    const std::string word = row.text(column);
    const std::optional<Unit> unit = read(word);
    if (!unit && !word.empty())
        row.fault(column, core::quotable(word) + " is no unit that is known here; leave the cell empty for " +
                              std::string(core::wordFor(usual)) + ".");
    return unit.value_or(usual);
}

core::DisplayUnits unitsOf(TableRow& row) {
    const core::DisplayUnits usual;
    return {.temperature = unitOf(row, "temperature_unit", usual.temperature, core::temperatureUnitFrom),
            .ec = unitOf(row, "ec_unit", usual.ec, core::ecUnitFrom),
            .volume = unitOf(row, "volume_unit", usual.volume, core::volumeUnitFrom),
            .length = unitOf(row, "length_unit", usual.length, core::lengthUnitFrom)};
}

}  // namespace

core::LogbookFacts factsIn(TableRow& row) {
    const core::LogbookFacts usual;
    const auto textOr = [&row](std::string_view column, const std::string& whenEmpty) {
        const std::string text = row.text(column);
        return text.empty() ? whenEmpty : text;
    };
    return {.name = row.text("name"),
            .grower = row.text("grower"),
            .rootLengthMillimetres = row.countOr("root_length_mm", usual.rootLengthMillimetres),
            .checkEveryDays = row.countOr("check_every_days", usual.checkEveryDays),
            .firstCheckAfterDays = row.countOr("first_check_after_days", usual.firstCheckAfterDays),
            .horizonDay = row.countOr("horizon_day", usual.horizonDay),
            .level = row.figure("level").value_or(usual.level),
            .paper = textOr("paper", usual.paper),
            .isInvented = row.truth("is_invented"),
            .interval = textOr("interval", usual.interval),
            .units = unitsOf(row),
            .currency = textOr("currency", usual.currency),
            .citation = row.text("citation"),
            .altitudeMetres = row.signedFigure("altitude_m").value_or(usual.altitudeMetres),
            .degreeDayBase = row.signedFigure("degree_day_base").value_or(usual.degreeDayBase),
            .falseAlarmRate = row.figure("false_alarm_rate").value_or(usual.falseAlarmRate)};
}

}  // namespace db
