// SPDX-License-Identifier: MIT
#include "core/climate/over_time.h"

#include <algorithm>
#include <cmath>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

using Seconds = std::chrono::seconds;

constexpr double strongestLight = 3000;
constexpr double hoursOfDay = 24, secondsOfHour = 3600, microPerMole = 1e6;

/// A piece of line within the span.
struct Stretch {
    double seconds{};
    double first{};
    double last{};
};

double valueOnLine(const TimedValue& before, const TimedValue& after, Moment at) {
    const double share =
        static_cast<double>((at - before.at).count()) / static_cast<double>((after.at - before.at).count());
    return before.value + share * (after.value - before.value);
}

/// Integral of what a line is above 0.
double areaAboveNothing(double seconds, double first, double last) {
    if (first <= 0 && last <= 0) return 0;
    if (first >= 0 && last >= 0) return seconds * (first + last) / 2;
    const double above = std::max(first, last);
    return seconds * above / std::abs(last - first) * above / 2;
}

/// Seconds of a line above a height.
double secondsAbove(const Stretch& stretch, double height) {
    const double first = stretch.first - height, last = stretch.last - height;
    if (first <= 0 && last <= 0) return 0;
    if (first >= 0 && last >= 0) return stretch.seconds;
    return stretch.seconds * std::max(first, last) / std::abs(last - first);
}

Refusals faultsInSpan(const TimeSpan& span) {
    constexpr Seconds longest = std::chrono::hours{24 * 3660}, longestGapOfAll = std::chrono::hours{24 * 7};
    Refusals faults;
    if (span.to <= span.from || span.to - span.from > longest)
        faults.push_back(
            outOfRange("End", isoText(span.to), "later than " + isoText(span.from) + " by ten years at most"));
    if (span.longestGap < Seconds{1} || span.longestGap > longestGapOfAll)
        faults.push_back(
            outOfRange("Longest gap", std::to_string(span.longestGap.count()) + " s", "1 s to 604800 s (7 days)"));
    return faults;
}

Refusals faultsInReadings(std::span<const TimedValue> readings, const std::string& what, double low, double high,
                          const std::string& unit) {
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (i > 0 && readings[i].at < readings[i - 1].at)
            return {outOfRange(what + " at " + isoText(readings[i].at), "out of order",
                               "a moment no earlier than " + isoText(readings[i - 1].at))};
        if (readings[i].value >= low && readings[i].value <= high) continue;
        return {*faultBetween(what + " at " + isoText(readings[i].at), readings[i].value, low, high, unit)};
    }
    return {};
}

void addGap(std::vector<TimeGap>& gaps, Moment from, Moment to) {
    if (to <= from) return;
    if (!gaps.empty() && gaps.back().to == from)
        gaps.back().to = to;
    else
        gaps.push_back({.from = from, .to = to});
}

/// Calls `add` with every stretch of the span that readings cover; the rest are gaps.
template <class Add>
std::vector<TimeGap> walkStretches(std::span<const TimedValue> readings, const TimeSpan& span, const Add& add) {
    std::vector<TimeGap> gaps;
    Moment done = span.from;
    const auto firstBehind = std::ranges::upper_bound(readings, span.from, {}, &TimedValue::at);
    std::size_t i = firstBehind == readings.begin() ? 1 : static_cast<std::size_t>(firstBehind - readings.begin());
    for (; i < readings.size() && readings[i - 1].at < span.to; ++i) {
        const TimedValue &before = readings[i - 1], &after = readings[i];
        const Moment from = std::max(before.at, span.from), to = std::min(after.at, span.to);
        if (to <= from) continue;
        if (after.at - before.at > span.longestGap) continue;  // addGap() below sees it by `done`
        addGap(gaps, done, from);
        add(Stretch{.seconds = static_cast<double>((to - from).count()),
                    .first = valueOnLine(before, after, from),
                    .last = valueOnLine(before, after, to)});
        done = to;
    }
    addGap(gaps, done, span.to);
    return gaps;
}

Seconds coveredIn(const TimeSpan& span, const std::vector<TimeGap>& gaps) {
    Seconds covered = span.to - span.from;
    for (const TimeGap& gap : gaps) covered -= gap.to - gap.from;
    return covered;
}

SumOverTime summedOver(std::span<const TimedValue> readings, double base, const TimeSpan& span) {
    SumOverTime all;
    all.gaps = walkStretches(readings, span, [&](const Stretch& stretch) {
        all.sum += areaAboveNothing(stretch.seconds, stretch.first - base, stretch.last - base);
    });
    all.covered = coveredIn(span, all.gaps);
    return all;
}

Refusals faultsOf(std::span<const TimedValue> readings, const TimeSpan& span, const std::string& what, double low,
                  double high, const std::string& unit) {
    Refusals faults = faultsInSpan(span);
    for (Refusal& fault : faultsInReadings(readings, what, low, high, unit)) faults.push_back(std::move(fault));
    return faults;
}

constexpr double anyValue = 1e12;

}  // namespace

Result<SumOverTime> sumAbove(std::span<const TimedValue> readings, double base, const TimeSpan& span) {
    Refusals faults = faultsOf(readings, span, "Reading", -anyValue, anyValue, "");
    collect(faults, faultBetween("Base", base, -anyValue, anyValue, ""));
    if (!faults.empty()) return refused(std::move(faults));
    return summedOver(readings, base, span);
}

Result<SumOverTime> dailyLight(std::span<const TimedValue> readings, const TimeSpan& span) {
    Refusals faults = faultsOf(readings, span, "Light", 0, strongestLight, "umol/m2/s");
    if (!faults.empty()) return refused(std::move(faults));
    SumOverTime light = summedOver(readings, 0, span);
    light.sum /= microPerMole;
    return light;
}

Result<double> dailyLightOf(double micromoles, double hours) {
    Refusals faults;
    collect(faults, faultBetween("Light", micromoles, 0, strongestLight, "umol/m2/s"));
    collect(faults, faultBetween("Hours of light", hours, 0, hoursOfDay, "h"));
    if (!faults.empty()) return refused(std::move(faults));
    return micromoles * hours * secondsOfHour / microPerMole;
}

Result<double> lightForDaily(double moles, double hours) {
    constexpr double mostMoles = 100;
    Refusals faults;
    collect(faults, faultBetween("Light of the day", moles, 0, mostMoles, "mol/m2"));
    collect(faults, faultAboveNothing("Hours of light", hours, hoursOfDay, "h"));
    if (!faults.empty()) return refused(std::move(faults));
    const double light = moles * microPerMole / (hours * secondsOfHour);
    if (const auto fault = faultBetween("Light that takes", light, 0, strongestLight, "umol/m2/s"))
        return refused({*fault});
    return light;
}

Result<SumOverTime> degreeDays(std::span<const TimedValue> readings, double baseCelsius, const TimeSpan& span) {
    constexpr double coldest = -30, lowestBase = -10, highestBase = 40;
    Refusals faults = faultsOf(readings, span, "Temperature", coldest, mostCelsius, "C");
    collect(faults, faultBetween("Base temperature", baseCelsius, lowestBase, highestBase, "C"));
    if (!faults.empty()) return refused(std::move(faults));
    SumOverTime days = summedOver(readings, baseCelsius, span);
    days.sum /= hoursOfDay * secondsOfHour;
    return days;
}

Result<double> degreeDaysOf(double lowestCelsius, double highestCelsius, double baseCelsius) {
    constexpr double coldest = -30, lowestBase = -10, highestBase = 40;
    Refusals faults;
    collect(faults, faultBetween("Lowest temperature", lowestCelsius, coldest, mostCelsius, "C"));
    if (faults.empty())
        collect(faults, faultBetween("Highest temperature", highestCelsius, lowestCelsius, mostCelsius, "C"));
    collect(faults, faultBetween("Base temperature", baseCelsius, lowestBase, highestBase, "C"));
    if (!faults.empty()) return refused(std::move(faults));
    return std::max(0.0, (lowestCelsius + highestCelsius) / 2 - baseCelsius);
}

Result<TimeOutside> timeOutside(std::span<const TimedValue> readings, const Band& band, const TimeSpan& span) {
    Refusals faults = faultsOf(readings, span, "Reading", -anyValue, anyValue, "");
    collect(faults, faultBetween("Upper end of the band", band.high, band.low, anyValue, ""));
    if (!faults.empty()) return refused(std::move(faults));
    double below = 0, above = 0;
    TimeOutside outside;
    outside.gaps = walkStretches(readings, span, [&](const Stretch& stretch) {
        above += secondsAbove(stretch, band.high);
        below += secondsAbove({.seconds = stretch.seconds, .first = -stretch.first, .last = -stretch.last}, -band.low);
    });
    outside.hoursBelow = below / secondsOfHour;
    outside.hoursAbove = above / secondsOfHour;
    outside.hoursCovered = static_cast<double>(coveredIn(span, outside.gaps).count()) / secondsOfHour;
    return outside;
}

}  // namespace core
