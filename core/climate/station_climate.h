// SPDX-License-Identifier: MIT
// The climate of one station over a time: what was measured, and what is worked out from pairs of it. Linear in the number of values, so that
// a logger's million is a matter of a blink.
#pragma once

#include <functional>
#include <map>
#include <vector>

#include "core/climate/climate_quantity.h"
#include "core/climate/over_time.h"
#include "core/records.h"

namespace core {

/// In order of time.
using MeasuredValues = std::map<Quantity, std::vector<TimedValue>>;
using StationClimate = std::map<ClimateQuantity, std::vector<TimedValue>>;

/// What a reading still says of the time around it: between two that are no farther apart a straight line holds. What stands in much water
/// or in the water's chemistry changes slowly (EC, pH: 5 days; oxygen and temperature of the solution and of the medium: 36 hours, so that a
/// look a day is enough); air and light change within hours (3 hours). Common practice, no source.
[[nodiscard]] std::chrono::seconds longestGapOf(ClimateQuantity quantity);

/// What is measured, as it is, and, where both of a pair are known at one moment, on a line between readings where need be: vapour pressure
/// deficit of the air and dew point from air temperature and humidity, that at the leaf with the leaf's temperature, oxygen in % of
/// saturation from oxygen, temperature of the solution and the bench's altitude. Without light of a day: see dailyLights().
[[nodiscard]] StationClimate climateFrom(MeasuredValues measured, const LogbookFacts& facts);

/// When a day begins where the bench stands. Nothing in core knows time zones.
using DayStart = std::function<Moment(Date)>;

struct LightOfDay {
    Date day{};
    Moment from{};
    Moment to{};
    double moles{};    // mol/m2, of the time covered only
    double covered{};  // its share of the day, 0 to 1

    /// Nine tenths and more of the day: enough to set beside a band.
    [[nodiscard]] bool isWellCovered() const { return covered >= 0.9; }
    bool operator==(const LightOfDay&) const = default;
};
/// Each local day from `firstDay` on of which something is covered.
[[nodiscard]] std::vector<LightOfDay> dailyLights(std::span<const TimedValue> light, Date firstDay,
                                                  const DayStart& dayStart);

/// Those that say something of the time from `from` to `to`: the ones in it and a neighbour at each side.
[[nodiscard]] std::span<const TimedValue> valuesAround(std::span<const TimedValue> values, Moment from, Moment to);
/// Those in it; `to` itself not.
[[nodiscard]] std::span<const TimedValue> valuesWithin(std::span<const TimedValue> values, Moment from, Moment to);

}  // namespace core
