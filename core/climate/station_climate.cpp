// SPDX-License-Identifier: MIT
#include "core/climate/station_climate.h"

#include <algorithm>

#include "core/climate/dissolved_oxygen.h"
#include "core/climate/vapour.h"

namespace core {

namespace {

using Values = std::vector<TimedValue>;
using std::chrono::hours;

/// Walks a series once, in step with moments that only rise.
class AlongSeries {
  public:
    AlongSeries(std::span<const TimedValue> values, std::chrono::seconds longestGap)
        : values_(values), longestGap_(longestGap) {}

    std::optional<double> at(Moment moment) {
        while (next_ < values_.size() && values_[next_].at <= moment) ++next_;
        if (next_ == 0) return {};
        const TimedValue& before = values_[next_ - 1];
        if (before.at == moment) return before.value;
        if (next_ == values_.size() || values_[next_].at - before.at > longestGap_) return {};
        const TimedValue& after = values_[next_];
        const double share =
            static_cast<double>((moment - before.at).count()) / static_cast<double>((after.at - before.at).count());
        return before.value + share * (after.value - before.value);
    }

  private:
    std::span<const TimedValue> values_;
    std::chrono::seconds longestGap_;
    std::size_t next_{};  // the first that is later
};

std::vector<Moment> momentsOf(const Values& one, const Values& other) {
    std::vector<Moment> moments;
    moments.reserve(one.size() + other.size());
    for (const Values* values : {&one, &other})
        for (const TimedValue& value : *values) moments.push_back(value.at);
    std::ranges::inplace_merge(moments, moments.begin() + static_cast<std::ptrdiff_t>(one.size()));
    moments.erase(std::ranges::unique(moments).begin(), moments.end());
    return moments;
}

/// `of` gives a Result<double>; where it refuses there is no value.
template <class Of>
Values fromPairs(const Values& one, const Values& other, std::chrono::seconds gapOfOne, std::chrono::seconds gapOfOther,
                 const Of& of) {
    Values made;
    if (one.empty() || other.empty()) return made;
    AlongSeries first(one, gapOfOne), second(other, gapOfOther);
    for (const Moment moment : momentsOf(one, other)) {
        const auto a = first.at(moment), b = second.at(moment);
        if (!a || !b) continue;
        if (const Result<double> value = of(*a, *b, moment)) made.push_back({.at = moment, .value = *value});
    }
    return made;
}

class Derived {
  public:
    explicit Derived(const StationClimate& measured) : measured_(measured) {}

    template <class Of>
    Values of(ClimateQuantity one, ClimateQuantity other, const Of& of) const {
        const auto first = measured_.find(one), second = measured_.find(other);
        if (first == measured_.end() || second == measured_.end()) return {};
        return fromPairs(first->second, second->second, longestGapOf(one), longestGapOf(other), of);
    }

  private:
    const StationClimate& measured_;
};

/// At the leaf there are three to a value: the humidity goes along with the pair of temperatures.
Values leafDeficits(const StationClimate& measured) {
    const auto humidity = measured.find(ClimateQuantity::RelativeHumidity);
    if (humidity == measured.end()) return {};
    AlongSeries along(humidity->second, longestGapOf(ClimateQuantity::RelativeHumidity));
    return Derived(measured).of(ClimateQuantity::AirTemperature, ClimateQuantity::LeafTemperature,
                                [&](double air, double leaf, Moment moment) -> Result<double> {
                                    const auto percent = along.at(moment);
                                    if (!percent) return refused({});
                                    return leafVapourDeficit(air, *percent, leaf);
                                });
}

void put(StationClimate& climate, ClimateQuantity quantity, Values values) {
    if (!values.empty()) climate[quantity] = std::move(values);
}

}  // namespace

std::chrono::seconds longestGapOf(ClimateQuantity quantity) {
    switch (quantity) {
        case ClimateQuantity::SolutionEc:
        case ClimateQuantity::SolutionPh:
            return hours{120};
        case ClimateQuantity::SolutionTemperature:
        case ClimateQuantity::DissolvedOxygen:
        case ClimateQuantity::OxygenSaturation:
        case ClimateQuantity::MediumTemperature:
            return hours{36};
        default:
            return hours{3};
    }
}

StationClimate climateFrom(MeasuredValues measured, const LogbookFacts& facts) {
    using enum ClimateQuantity;
    StationClimate climate;
    for (auto& [quantity, values] : measured) put(climate, climateQuantityOf(quantity), std::move(values));
    const Derived derived(climate);
    Values deficit = derived.of(AirTemperature, RelativeHumidity,
                                [](double air, double percent, Moment) { return airVapourDeficit(air, percent); });
    Values dew = derived.of(AirTemperature, RelativeHumidity,
                            [](double air, double percent, Moment) { return dewPoint(air, percent); });
    const double pressure = pressureAtAltitude(facts.altitudeMetres).value_or(1);
    Values saturation =
        derived.of(DissolvedOxygen, SolutionTemperature,
                   [pressure](double oxygen, double water, Moment) { return oxygenPercent(oxygen, water, pressure); });
    put(climate, LeafDeficit, leafDeficits(climate));
    put(climate, VapourDeficit, std::move(deficit));
    put(climate, DewPoint, std::move(dew));
    put(climate, OxygenSaturation, std::move(saturation));
    return climate;
}

std::span<const TimedValue> valuesAround(std::span<const TimedValue> values, Moment from, Moment to) {
    auto first = std::ranges::upper_bound(values, from, {}, &TimedValue::at);
    if (first != values.begin()) --first;
    // One of several at the same moment belongs to the stretch as well as another: all of them go along.
    while (first != values.begin() && std::prev(first)->at == first->at) --first;
    auto last = std::ranges::lower_bound(first, values.end(), to, {}, &TimedValue::at);
    if (last != values.end()) ++last;
    return {first, last};
}

std::span<const TimedValue> valuesWithin(std::span<const TimedValue> values, Moment from, Moment to) {
    const auto first = std::ranges::lower_bound(values, from, {}, &TimedValue::at);
    return {first, std::ranges::lower_bound(first, values.end(), to, {}, &TimedValue::at)};
}

std::vector<LightOfDay> dailyLights(std::span<const TimedValue> light, Date firstDay, const DayStart& dayStart) {
    std::vector<LightOfDay> days;
    if (light.empty()) return days;
    for (Date day = firstDay; dayStart(day) <= light.back().at; day = addDays(day, 1)) {
        const Moment begin = dayStart(day), end = dayStart(addDays(day, 1));
        if (end <= light.front().at) continue;
        const TimeSpan span{.from = begin, .to = end, .longestGap = longestGapOf(ClimateQuantity::Light)};
        const auto sum = dailyLight(valuesAround(light, begin, end), span);
        if (!sum || sum->covered.count() == 0) continue;
        days.push_back({.day = day, .from = begin, .to = end, .moles = sum->sum, .covered = sum->share()});
    }
    return days;
}

}  // namespace core
