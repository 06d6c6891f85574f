// SPDX-License-Identifier: MIT
// Readings over time put together: the light of a day, degree-days, hours outside a band. Readings may stand as unevenly as people and
// loggers take them; between two of them a straight line holds, but not across a gap.
#pragma once

#include <chrono>
#include <span>
#include <vector>

#include "core/climate/bands.h"
#include "core/result.h"
#include "core/units/moment.h"

namespace core {

struct TimedValue {
    Moment at{};
    double value{};

    bool operator==(const TimedValue&) const = default;
};

/// What is asked: from and to which moment (to is later), and how far apart two readings may be and still say what was between.
struct TimeSpan {
    Moment from{};
    Moment to{};
    std::chrono::seconds longestGap{std::chrono::hours{3}};
};

struct TimeGap {
    Moment from{};
    Moment to{};

    bool operator==(const TimeGap&) const = default;
};

/// Nothing is made up for a gap: what it may have held is missing in the sum, and `covered` says so.
struct SumOverTime {
    double sum{};  // value x seconds
    std::chrono::seconds covered{};
    std::vector<TimeGap> gaps{};  // in order; also before the first and after the last reading

    /// 1 where every moment is covered.
    [[nodiscard]] double share() const {
        std::chrono::seconds whole = covered;
        for (const TimeGap& gap : gaps) whole += gap.to - gap.from;
        return whole.count() == 0 ? 0 : static_cast<double>(covered.count()) / static_cast<double>(whole.count());
    }
};

/// The integral over time of what the readings are above `base`, 0 where they are below it.
///
/// Domain    readings in order of time, of one moment as many as there are (the line jumps); finite values; to later than from, by 10 years
///           at most; longest gap of 1 second to 7 days.
/// Accuracy  exact for the straight lines, to 1e-12 relative: also where a line crosses the base.
/// Source    from the definition (trapezoidal rule, with crossings).
[[nodiscard]] Result<SumOverTime> sumAbove(std::span<const TimedValue> readings, double base, const TimeSpan& span);

/// mol/m2 of one day, or any span, from umol/(m2 s). Readings 0 to 3000; the same rules. sum is in mol/m2.
[[nodiscard]] Result<SumOverTime> dailyLight(std::span<const TimedValue> readings, const TimeSpan& span);
/// mol/m2 of so many hours at one strength: umol x hours x 3600 / 1e6. 0 to 3000 umol/(m2 s), 0 to 24 h.
[[nodiscard]] Result<double> dailyLightOf(double micromoles, double hours);
/// umol/(m2 s) that gives so much in so many hours. 0 to 100 mol/m2, hours above 0 to 24; what no lamp and no sun gives is refused.
[[nodiscard]] Result<double> lightForDaily(double moles, double hours);

/// Degree-days above a base, in C days: sum above it over the span. Readings -30 to 60 C, base -10 to 40 C.
[[nodiscard]] Result<SumOverTime> degreeDays(std::span<const TimedValue> readings, double baseCelsius,
                                             const TimeSpan& span);
/// Those of one day from its lowest and highest temperature alone: the mean of both above the base, 0 where below. Cruder: off by a fifth and
/// more where the base lies between the two (common practice, no source).
[[nodiscard]] Result<double> degreeDaysOf(double lowestCelsius, double highestCelsius, double baseCelsius);

struct TimeOutside {
    double hoursBelow{};
    double hoursAbove{};
    double hoursCovered{};
    std::vector<TimeGap> gaps{};
};
/// Hours that the straight lines lie below and above a band. As sumAbove(); low no higher than high.
[[nodiscard]] Result<TimeOutside> timeOutside(std::span<const TimedValue> readings, const Band& band,
                                              const TimeSpan& span);

}  // namespace core
