// SPDX-License-Identifier: MIT
#include "core/climate/lived_through.h"

#include <algorithm>

namespace core {

namespace {

constexpr double secondsAnHour = 3600;

double hoursOf(std::chrono::seconds time) {
    return static_cast<double>(time.count()) / secondsAnHour;
}

/// Calls `look` with each piece of the bands that lies in the stretch: band, from, to.
template <class Look>
void overPieces(const BandsInTime& bands, Moment from, Moment to, const Look& look) {
    for (std::size_t i = 0; i < bands.pieces.size(); ++i) {
        const Moment begin = i == 0 ? from : std::max(from, bands.pieces[i].from);
        const Moment end = i + 1 < bands.pieces.size() ? std::min(to, bands.pieces[i + 1].from) : to;
        if (bands.pieces[i].band && begin < end) look(*bands.pieces[i].band, begin, end);
    }
}

void addOutside(std::span<const TimedValue> values, const BandsInTime& bands, const TimeSpan& span,
                LivedFigures& figures) {
    overPieces(bands, span.from, span.to, [&](const Band& band, Moment from, Moment to) {
        const auto outside =
            timeOutside(valuesAround(values, from, to), band, {.from = from, .to = to, .longestGap = span.longestGap});
        if (!outside) return;
        figures.hoursWithBand += outside->hoursCovered;
        figures.hoursBelow += outside->hoursBelow;
        figures.hoursAbove += outside->hoursAbove;
    });
}

double meanOf(std::span<const TimedValue> values) {
    double sum = 0;
    for (const TimedValue& value : values) sum += value.value;
    return sum / static_cast<double>(values.size());
}

/// Of the readings within; where only a line passes through, of its two ends.
void addExtremes(std::span<const TimedValue> values, LivedFigures& figures) {
    const auto [lowest, highest] = std::ranges::minmax_element(values, {}, &TimedValue::value);
    figures.lowest = lowest->value;
    figures.highest = highest->value;
}

}  // namespace

std::optional<LivedFigures> figuresOver(std::span<const TimedValue> all, ClimateQuantity quantity,
                                        const BandsInTime& bands, Moment from, Moment to, double degreeDayBase) {
    const TimeSpan span{.from = from, .to = to, .longestGap = longestGapOf(quantity)};
    const auto values = valuesAround(all, from, to), within = valuesWithin(all, from, to);
    if (values.empty()) return {};
    // Above the lowest of them, so that nothing is cut off: the mean is that and what lies above it.
    const double floor = std::ranges::min(values, {}, &TimedValue::value).value;
    const auto sum = sumAbove(values, floor, span);
    if (!sum || (within.empty() && sum->covered.count() == 0)) return {};
    LivedFigures figures{.hours = hoursOf(to - from), .hoursCovered = hoursOf(sum->covered)};
    figures.readings = static_cast<int>(within.size());
    figures.isMeanOfReadings = sum->covered.count() == 0;
    figures.mean =
        figures.isMeanOfReadings ? meanOf(within) : floor + sum->sum / static_cast<double>(sum->covered.count());
    addExtremes(within.empty() ? values : within, figures);
    addOutside(values, bands, span, figures);
    if (isTemperature(quantity) && !figures.isMeanOfReadings)
        if (const auto days = degreeDays(values, degreeDayBase, span)) figures.degreeDays = days->sum;
    return figures;
}

std::optional<LivedFigures> figuresOverDays(std::span<const LightOfDay> days, const BandsInTime& bands, Moment from,
                                            Moment to) {
    LivedFigures figures{.hours = hoursOf(to - from)};
    double sum = 0;
    for (const LightOfDay& day : days) {
        if (day.from < from || day.to > to || !day.isWellCovered()) continue;
        const double hours = hoursOf(day.to - day.from);
        figures.lowest = figures.readings == 0 ? day.moles : std::min(figures.lowest, day.moles);
        figures.highest = figures.readings == 0 ? day.moles : std::max(figures.highest, day.moles);
        figures.hoursCovered += hours;
        sum += day.moles;
        ++figures.readings;
        overPieces(bands, day.from, day.from + std::chrono::seconds{1}, [&](const Band& band, Moment, Moment) {
            figures.hoursWithBand += hours;
            if (day.moles < band.low) figures.hoursBelow += hours;
            if (day.moles > band.high) figures.hoursAbove += hours;
        });
    }
    if (figures.readings == 0) return {};
    figures.mean = sum / figures.readings;
    return figures;
}

BandsInTime bandsInTime(const Shelves& shelves, const BatchRecord& record, ClimateQuantity quantity,
                        const DayStart& dayStart) {
    BandsInTime bands;
    for (const BandFrom& piece : bandsOver(shelves, record, quantity))
        bands.pieces.push_back(
            {.from = dayStart(piece.from), .band = piece.band ? std::optional(piece.band->band) : std::nullopt});
    return bands;
}

std::vector<LivedQuantity> livedThrough(const BatchRecord& record, const Shelves& shelves,
                                        const StationClimate& climate, Moment until, const DayStart& dayStart) {
    constexpr int longestLife = 3650;
    const Date stuckOn = record.batch.stuckOn;
    const Moment from = dayStart(stuckOn);
    until = std::min(until, dayStart(addDays(stuckOn, longestLife)));
    std::vector<LivedQuantity> lived;
    if (until <= from) return lived;
    std::vector<LightOfDay> lights;
    if (const auto light = climate.find(ClimateQuantity::Light); light != climate.end())
        lights = dailyLights(valuesAround(light->second, from, until), stuckOn, dayStart);
    for (const ClimateQuantity quantity : allClimateQuantities()) {
        const bool isOfDays = quantity == ClimateQuantity::DailyLight;
        const auto found = climate.find(quantity);
        if (isOfDays ? lights.empty() : found == climate.end()) continue;
        const BandsInTime bands = bandsInTime(shelves, record, quantity, dayStart);
        const auto figures = [&](Moment to) {
            return isOfDays ? figuresOverDays(lights, bands, from, to)
                            : figuresOver(found->second, quantity, bands, from, to, shelves.facts.degreeDayBase);
        };
        const auto all = figures(until);
        if (!all) continue;
        LivedQuantity one{.quantity = quantity, .first = {}, .all = *all};
        for (std::size_t i = 0; i < firstDays.size(); ++i)
            if (const Moment end = dayStart(addDays(stuckOn, firstDays[i])); end <= until) one.first[i] = figures(end);
        lived.push_back(std::move(one));
    }
    return lived;
}

}  // namespace core
