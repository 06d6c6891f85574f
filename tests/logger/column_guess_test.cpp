// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/logger/column_guess.h"
#include "app/logger/mapping_text.h"
#include "tests/logger/logger_files.h"
#include "tests/support/builders.h"

namespace {

using core::ColumnRole;
using core::LoggerUnit;
using core::Quantity;

void expectColumn(const std::string& name, Quantity quantity, LoggerUnit unit, const core::DisplayUnits& units = {}) {
    const core::LoggerColumn column = logger::columnFromName(name, units);
    EXPECT_EQ(column.role, ColumnRole::Values) << name;
    EXPECT_EQ(column.quantity, quantity) << name;
    EXPECT_EQ(column.unit, unit) << name;
}

TEST(ColumnGuess, KnowsQuantityAndUnitByTheName) {
    expectColumn("Temperature (°C)", Quantity::AirTemperature, LoggerUnit::Celsius);
    expectColumn("Temp, °F", Quantity::AirTemperature, LoggerUnit::Fahrenheit);
    expectColumn("Water temp", Quantity::SolutionTemperature, LoggerUnit::Fahrenheit,
                 {.temperature = core::TemperatureUnit::Fahrenheit});
    expectColumn("Soil Temperature [C]", Quantity::MediumTemperature, LoggerUnit::Celsius);
    expectColumn("Leaf temp °C", Quantity::LeafTemperature, LoggerUnit::Celsius);
    expectColumn("RH (%)", Quantity::RelativeHumidity, LoggerUnit::Percent);
    expectColumn("Humidity", Quantity::RelativeHumidity, LoggerUnit::Percent);
    expectColumn("EC µS/cm", Quantity::SolutionEc, LoggerUnit::MicroSiemens);
    expectColumn("Conductivity [mS/cm]", Quantity::SolutionEc, LoggerUnit::MilliSiemens);
    expectColumn("pH", Quantity::SolutionPh, LoggerUnit::Ph);
    expectColumn("DO mg/L", Quantity::DissolvedOxygen, LoggerUnit::MilligramsPerLitre);
    expectColumn("PAR (µmol/m²/s)", Quantity::Light, LoggerUnit::Micromoles);
    expectColumn("Light, lux", Quantity::Light, LoggerUnit::Lux);
}

TEST(ColumnGuess, LeavesOutWhatTheNameDoesNotSettle) {
    for (const char* name : {"Dew point (°C)", "VPD", "Battery", "#", "Serial", "EC (ppm)", "DO (%)", "", "Alarm"})
        EXPECT_EQ(logger::columnFromName(name, {}).role, ColumnRole::LeftOut) << name;
    // The grower's own scale settles it.
    expectColumn("EC (ppm)", Quantity::SolutionEc, LoggerUnit::Ppm700, {.ec = core::EcUnit::Ppm700});
}

core::LoggerMapping guessOf(const std::string& text, const std::string& name = "logger") {
    const support::LoggerFile file(text);
    return logger::guessedMapping(logger::topOf(file.path()), name, support::someShelves());
}

TEST(ColumnGuess, FindsTheStationInTheColumnTheLinesAboveOrTheFilesName) {
    const core::Shelves shelves = support::someShelves();
    const std::string north = core::find(shelves.stations, support::tubNorth)->name;
    const std::string south = core::find(shelves.stations, support::tubSouth)->name;
    const std::string row = "2026-06-01 10:00,20,21\n";
    auto mapping = guessOf("Time,Water temp " + north + ",Water temp " + south + "\n" + row);
    EXPECT_EQ(mapping.columns[1].station, support::tubNorth);
    EXPECT_EQ(mapping.columns[2].station, support::tubSouth);
    EXPECT_EQ(guessOf("Device: " + south + "\nTime,Water temp,RH\n" + row).columns[1].station, support::tubSouth);
    EXPECT_EQ(guessOf("Time,Water temp,RH\n" + row, "june " + north).columns[2].station, support::tubNorth);
    EXPECT_FALSE(guessOf("Time,Water temp,RH\n" + row).columns[1].station.isSet());  // any of four
}

TEST(ColumnGuess, PrefersOneColumnOfTimeToTwo) {
    auto mapping = guessOf("No,Date,Time,Temp\n1,01.06.2026,10:00,20\n2,01.06.2026,10:10,20\n");
    EXPECT_EQ(mapping.columns[0].role, ColumnRole::LeftOut);
    EXPECT_EQ(mapping.columns[1].role, ColumnRole::Day);
    EXPECT_EQ(mapping.columns[2].role, ColumnRole::TimeOfDay);
    mapping = guessOf("Seconds,Stamp,Temp\n1780318800,2026-06-01 13:00,20\n");
    EXPECT_EQ(mapping.columns[0].role, ColumnRole::LeftOut);
    EXPECT_EQ(mapping.columns[1].role, ColumnRole::DayAndTime);
    mapping = guessOf("Seconds,Temp\n1780318800,20\n1780319400,20\n");
    EXPECT_EQ(mapping.columns[0].role, ColumnRole::DayAndTime);
    EXPECT_EQ(mapping.timeForm, core::TimeForm::UnixSeconds);
}

core::LoggerMapping aFullMapping() {
    core::LoggerMapping mapping{.timeForm = core::TimeForm::DayMonthYear,
                                .decimalSign = core::DecimalSign::Comma,
                                .zone = "Europe/Berlin",
                                .twiceHour = core::TwiceHour::Winter,
                                .wordsMeanNoReading = true};
    mapping.columns = {{.role = ColumnRole::Day}, {.role = ColumnRole::TimeOfDay}, {}};
    for (const Quantity quantity : core::allQuantities)
        for (const LoggerUnit unit : core::loggerUnitsOf(quantity))
            mapping.columns.push_back({.role = ColumnRole::Values,
                                       .station = core::StationId{INT64_MAX},
                                       .quantity = quantity,
                                       .unit = unit,
                                       .luxPerMicromole = unit == LoggerUnit::Lux ? 54.5 : 0});
    return mapping;
}

TEST(MappingText, GivesBackEveryPartOfAMapping) {
    EXPECT_EQ(logger::mappingFrom(logger::textOf(aFullMapping())), aFullMapping());
}

TEST(MappingText, RefusesWhatIsNoMapping) {
    const std::string good = logger::textOf(aFullMapping());
    for (std::size_t cut = 0; cut < good.size(); ++cut) EXPECT_FALSE(logger::mappingFrom(good.substr(0, cut))) << cut;
    for (const char* text : {"[]", "null", "{}", "{\"columns\":{}}", "{\"columns\":[1],\"time\":\"\"}"})
        EXPECT_FALSE(logger::mappingFrom(text)) << text;
}

TEST(MappingText, FindsTheFormatByTheHeading) {
    const support::LoggerFile file("Time,Air °C\n2026-06-01 10:00,21\n");
    const logger::FileForm form = logger::topOf(file.path()).form;
    const core::LoggerMapping mapping = support::timeAndAir();
    std::vector<core::LoggerFormat> formats{logger::formatOf(form, mapping, "Tent")};
    ASSERT_EQ(logger::formatsFor(form, formats).size(), 1U);
    EXPECT_EQ(logger::formatsFor(form, formats)[0].mapping, mapping);
    EXPECT_EQ(logger::freeName("Tent", formats), "Tent (2)");
    formats[0].header = "Time | Air °F";
    EXPECT_TRUE(logger::formatsFor(form, formats).empty());
    formats[0] = logger::formatOf(form, mapping, "Tent");
    formats[0].mapping = "broken";
    EXPECT_TRUE(logger::formatsFor(form, formats).empty());
}

}  // namespace
