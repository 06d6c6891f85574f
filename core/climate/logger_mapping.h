// SPDX-License-Identifier: MIT
// What the columns of a logger's file mean: which holds the time and in what form, and which holds what quantity of which station in which
// unit. The program's import reads files by it and remembers it in a LoggerFormat.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/climate/quantity.h"
#include "core/id.h"
#include "core/result.h"

namespace core {

struct Shelves;

/// Lux weighs light as eyes do, not as leaves do: it needs a figure that the grower states for the lamp.
enum class LoggerUnit {
    Celsius,
    Fahrenheit,
    MilliSiemens,
    MicroSiemens,
    Ppm500,
    Ppm640,
    Ppm700,
    Ph,
    MilligramsPerLitre,
    Percent,
    Micromoles,  // photosynthetic photon flux density, umol/(m2 s)
    Lux
};

/// The words of files and of the command line: "C", "F", "mS/cm", "uS/cm", "ppm500", "ppm640", "ppm700", "pH", "mg/L", "%", "umol/m2/s", "lux".
[[nodiscard]] std::string_view wordFor(LoggerUnit unit);
[[nodiscard]] std::optional<LoggerUnit> loggerUnitFrom(std::string_view word);
/// Those that a quantity is logged in, the one that it is stored in first.
[[nodiscard]] std::vector<LoggerUnit> loggerUnitsOf(Quantity quantity);

enum class ColumnRole { LeftOut, DayAndTime, Day, TimeOfDay, Values };
/// Not settled: the file can be read in more than one way, and nobody has said which.
enum class TimeForm { NotSettled, DayMonthYear, MonthDayYear, YearMonthDay, UnixSeconds };
enum class DecimalSign { Point, Comma };
/// Which of the two is meant where the rows go only once through the hour that comes twice when summer time ends.
enum class TwiceHour { NotSettled, Summer, Winter };

inline constexpr double leastLuxPerMicromole = 1, mostLuxPerMicromole = 500;

struct LoggerColumn {
    ColumnRole role{ColumnRole::LeftOut};
    StationId station{};  // this and what follows of values only
    Quantity quantity{Quantity::AirTemperature};
    LoggerUnit unit{LoggerUnit::Celsius};
    double luxPerMicromole{};  // of lux only

    bool operator==(const LoggerColumn&) const = default;
};

struct LoggerMapping {
    std::vector<LoggerColumn> columns{};
    TimeForm timeForm{TimeForm::NotSettled};
    DecimalSign decimalSign{DecimalSign::Point};
    std::string zone{};  // that the logger's clock ran in: "UTC", "Europe/Berlin", "+02:00"
    TwiceHour twiceHour{TwiceHour::NotSettled};
    bool wordsMeanNoReading{};  // blank cells, and words such as "OFL" and "---"; else they are faults

    bool operator==(const LoggerMapping&) const = default;
};

/// As it is stored: in the unit of factsOf(column.quantity).
[[nodiscard]] double storedValue(double logged, const LoggerColumn& column);
/// The reverse, for messages.
[[nodiscard]] double loggedValue(double stored, const LoggerColumn& column);

/// `names` are those of the file's columns, as many as the mapping has. Whether there is such a zone is not asked here.
[[nodiscard]] Refusals faultsIn(const LoggerMapping& mapping, const std::vector<std::string>& names,
                                const Shelves& shelves);

}  // namespace core
