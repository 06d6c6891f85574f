// SPDX-License-Identifier: MIT
#include "db/tables/facts_table.h"

#include "db/logbook_error.h"

namespace db {

namespace {

constexpr const char* insertFacts = R"(
    INSERT INTO facts (id, name, grower, root_length_mm, check_every_days, first_check_after_days, horizon_day, level, paper,
                       is_invented, citation, interval, temperature_unit, ec_unit, volume_unit, length_unit, currency,
                       altitude_m, degree_day_base, false_alarm_rate)
    VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19))";
constexpr const char* updateFacts = R"(
    UPDATE facts SET name = ?1, grower = ?2, root_length_mm = ?3, check_every_days = ?4, first_check_after_days = ?5,
                     horizon_day = ?6, level = ?7, paper = ?8, is_invented = ?9, citation = ?10,
                     interval = ?11, temperature_unit = ?12, ec_unit = ?13, volume_unit = ?14, length_unit = ?15, currency = ?16,
                     altitude_m = ?17, degree_day_base = ?18, false_alarm_rate = ?19
    WHERE id = 1)";
constexpr const char* selectFacts = R"(
    SELECT name, grower, root_length_mm, check_every_days, first_check_after_days, horizon_day, level, paper, is_invented, citation,
           interval, temperature_unit, ec_unit, volume_unit, length_unit, currency, altitude_m, degree_day_base,
           false_alarm_rate
    FROM facts WHERE id = 1)";

int runFacts(Connection& connection, const char* sql, const core::LogbookFacts& facts) {
    return connection.run(sql, facts.name, facts.grower, facts.rootLengthMillimetres, facts.checkEveryDays,
                          facts.firstCheckAfterDays, facts.horizonDay, facts.level, facts.paper, facts.isInvented,
                          facts.citation, facts.interval, core::wordFor(facts.units.temperature),
                          core::wordFor(facts.units.ec), core::wordFor(facts.units.volume),
                          core::wordFor(facts.units.length), facts.currency, facts.altitudeMetres, facts.degreeDayBase,
                          facts.falseAlarmRate);
}

/// The table's CHECKs let no other words in.
core::DisplayUnits unitsFrom(const Query& row) {
    return {.temperature = core::temperatureUnitFrom(row.text(11)).value_or(core::TemperatureUnit::Celsius),
            .ec = core::ecUnitFrom(row.text(12)).value_or(core::EcUnit::MilliSiemens),
            .volume = core::volumeUnitFrom(row.text(13)).value_or(core::VolumeUnit::Litres),
            .length = core::lengthUnitFrom(row.text(14)).value_or(core::LengthUnit::Millimetres)};
}

}  // namespace

void insertRow(Connection& connection, const core::LogbookFacts& facts) {
    runFacts(connection, insertFacts, facts);
}

bool updateRow(Connection& connection, const core::LogbookFacts& facts) {
    return runFacts(connection, updateFacts, facts) == 1;
}

core::LogbookFacts factsOf(Connection& connection) {
    Query row = connection.query(selectFacts);
    if (!row.step())
        throw LogbookError("The logbook has lost the page with its own name and settings. Restore a backup.");
    return {.name = row.text(0),
            .grower = row.text(1),
            .rootLengthMillimetres = row.number(2),
            .checkEveryDays = row.number(3),
            .firstCheckAfterDays = row.number(4),
            .horizonDay = row.number(5),
            .level = row.real(6),
            .paper = row.text(7),
            .isInvented = row.truth(8),
            .interval = row.text(10),
            .units = unitsFrom(row),
            .currency = row.text(15),
            .citation = row.text(9),
            .altitudeMetres = row.real(16),
            .degreeDayBase = row.real(17),
            .falseAlarmRate = row.real(18)};
}

}  // namespace db
