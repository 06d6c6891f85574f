// SPDX-License-Identifier: MIT
// What a logger recorded of one quantity at one station on one day (UTC): a million values in little room. Readings by hand are
// in reading.h; both together over time are core::TimedValue.
#pragma once

#include <vector>

#include "core/climate/quantity.h"
#include "core/id.h"
#include "core/result.h"
#include "core/units/days.h"
#include "core/units/moment.h"

namespace core {

struct Shelves;

inline constexpr int secondsInADay = 86'400;

struct Sample {
    int second{};    // of the day, 0 to 86399
    double value{};  // in the unit of factsOf(quantity)

    bool operator==(const Sample&) const = default;
};

struct LoggerDay {
    StationId station{};
    Quantity quantity{Quantity::AirTemperature};
    Date day{};
    std::vector<Sample> samples{};  // seconds rising, none twice

    bool operator==(const LoggerDay&) const = default;
};

/// What there is of one quantity at one station.
struct LoggerSpan {
    StationId station{};
    Quantity quantity{Quantity::AirTemperature};
    Date firstDay{};
    Date lastDay{};
    std::int64_t samples{};

    bool operator==(const LoggerSpan&) const = default;
};

[[nodiscard]] Moment momentOf(const LoggerDay& day, const Sample& sample);

/// Why its samples can't be those of a day: none, out of order, or a value that no meter shows. One sentence; empty: they can.
[[nodiscard]] std::string faultInSamples(const LoggerDay& day);
/// The station is there, the samples can be, and none is still to come: a clock that runs five minutes fast is let pass.
[[nodiscard]] Refusals faultsIn(const LoggerDay& day, const Shelves& shelves, Moment now);

/// Both days' samples in one. Of a moment that both have, the value of `stored` stays.
struct MergedSamples {
    std::vector<Sample> samples{};
    std::int64_t added{};
    std::int64_t known{};      // the same value of the same moment
    std::int64_t differing{};  // another value of the same moment
};
[[nodiscard]] MergedSamples mergedSamples(const std::vector<Sample>& stored, const std::vector<Sample>& more);

}  // namespace core
