// SPDX-License-Identifier: MIT
#include "app/plot/station_charts.h"

#include <algorithm>

#include "app/plot/batch_life.h"
#include "app/plot/local_time.h"
#include "db/logbook.h"

namespace plot {

namespace {

constexpr std::chrono::days longestSpan{3650};
const core::Moment longAgo{std::chrono::sys_days{std::chrono::year{1900} / 1 / 1}};

core::Moment firstKnown(const db::Logbook& logbook, core::StationId station, core::Moment to) {
    core::Moment first = to - std::chrono::days{1};
    const auto readings = logbook.readings(station, longAgo, to);
    if (!readings.empty()) first = std::min(first, readings.front().readAt);
    for (const core::LoggerSpan& span : logbook.loggerSpans())
        if (span.station == station) first = std::min(first, core::Moment{std::chrono::sys_days{span.firstDay}});
    return std::max(first, to - longestSpan);
}

class ChartMaker {
  public:
    ChartMaker(const db::Logbook& logbook, const core::Shelves& shelves, const ChartsQuestion& question)
        : logbook_(logbook), shelves_(shelves), question_(question) {
        from_ = question.from ? *question.from : firstKnown(logbook, question.station, question.to);
        from_ = std::max(from_, question.to - longestSpan);
        if (question.batch.isSet()) record_ = logbook.batch(question.batch);
        if (const core::Station* station = core::find(shelves.stations, question.station))
            name_ = QString::fromStdString(station->name);
    }

    std::vector<ClimateChart> make() {
        std::vector<ClimateChart> charts;
        if (from_ >= question_.to) return charts;
        const core::Date firstDay = localDay(from_);
        const core::Moment begin = dayStart(firstDay);
        core::StationClimate climate =
            core::climateFrom(measuredAt(logbook_, question_.station, begin, question_.to), shelves_.facts);
        const std::vector<core::Reading> byHand = logbook_.readings(question_.station, from_, question_.to);
        const std::vector<core::Care> care = logbook_.care(question_.station, from_, question_.to);
        std::vector<core::LightOfDay> days;
        if (const auto light = climate.find(core::ClimateQuantity::Light); light != climate.end())
            days = core::dailyLights(core::valuesAround(light->second, begin, question_.to), firstDay, dayStart);
        for (const core::ClimateQuantity quantity : core::allClimateQuantities()) {
            ClimateChart chart = emptyChart(quantity);
            if (quantity == core::ClimateQuantity::DailyLight)
                putDays(chart, days);
            else if (const auto values = climate.find(quantity); values != climate.end())
                putValues(chart, std::move(values->second), byHand);
            if (!chart.figures) continue;
            chart.care = care;
            charts.push_back(std::move(chart));
        }
        return charts;
    }

  private:
    ClimateChart emptyChart(core::ClimateQuantity quantity) const {
        ClimateChart chart;
        chart.quantity = quantity;
        chart.station = name_;
        chart.from = from_;
        chart.to = question_.to;
        chart.units = shelves_.facts.units;
        chart.bands = bandsOf(quantity);
        return chart;
    }

    std::vector<BandStretch> bandsOf(core::ClimateQuantity quantity) const {
        std::vector<BandStretch> stretches;
        if (!record_) {
            if (auto band = core::bandFor(shelves_, {}, question_.stage, quantity))
                stretches.push_back({from_, question_.to, std::move(*band)});
            return stretches;
        }
        const auto bands = core::bandsOver(shelves_, *record_, quantity);
        for (std::size_t i = 0; i < bands.size(); ++i) {
            const core::Moment from = std::max(from_, dayStart(bands[i].from));
            const core::Moment to =
                i + 1 < bands.size() ? std::min(question_.to, dayStart(bands[i + 1].from)) : question_.to;
            if (bands[i].band && from < to) stretches.push_back({from, to, *bands[i].band});
        }
        return stretches;
    }

    void putValues(ClimateChart& chart, std::vector<core::TimedValue> values,
                   const std::vector<core::Reading>& byHand) const {
        chart.figures = core::figuresOver(values, chart.quantity, bandsInTime(chart), chart.from, chart.to,
                                          shelves_.facts.degreeDayBase);
        chart.values = std::make_shared<const std::vector<core::TimedValue>>(std::move(values));
        for (const core::Reading& reading : byHand)
            if (core::climateQuantityOf(reading.quantity) == chart.quantity)
                chart.byHand.push_back({.at = reading.readAt, .value = reading.value});
    }

    void putDays(ClimateChart& chart, const std::vector<core::LightOfDay>& days) const {
        if (days.empty()) return;
        chart.days = days;
        chart.figures = core::figuresOverDays(days, bandsInTime(chart), dayStart(localDay(chart.from)),
                                              dayStart(core::addDays(localDay(chart.to), 1)));
        if (!chart.figures) chart.figures = core::LivedFigures{};
    }

    const db::Logbook& logbook_;
    const core::Shelves& shelves_;
    const ChartsQuestion& question_;
    core::Moment from_{};
    QString name_;
    std::optional<core::BatchRecord> record_;
};

}  // namespace

core::Moment dayStart(core::Date day) {
    return momentOf(day, 0);
}

core::MeasuredValues measuredAt(const db::Logbook& logbook, core::StationId station, core::Moment from,
                                core::Moment to) {
    core::MeasuredValues measured;
    for (const core::Quantity quantity : core::allQuantities) {
        const std::chrono::seconds reach = core::longestGapOf(core::climateQuantityOf(quantity));
        auto values = logbook.valuesOverTime(station, quantity, from - reach, to + reach);
        if (!values.empty()) measured[quantity] = std::move(values);
    }
    return measured;
}

core::ConditionsOnRecord conditionsOnRecord(const db::Logbook& logbook, const core::Shelves& shelves) {
    const core::Moment farAhead{std::chrono::sys_days{std::chrono::year{2200} / 1 / 1}};
    core::ConditionsOnRecord conditions{.climates = {}, .dayStart = dayStart};
    for (const core::Station& station : shelves.stations) {
        core::MeasuredValues measured = measuredAt(logbook, station.id, longAgo, farAhead);
        if (!measured.empty())
            conditions.climates.emplace(station.id, core::climateFrom(std::move(measured), shelves.facts));
    }
    return conditions;
}

std::vector<core::LivedQuantity> livedThroughOf(const db::Logbook& logbook, const core::BatchRecord& record,
                                                const core::Shelves& shelves, core::Date today, core::Moment now) {
    if (!record.batch.station.isSet()) return {};
    const core::Moment from = dayStart(record.batch.stuckOn);
    const core::Moment until =
        std::min(now + std::chrono::seconds{1}, dayStart(core::addDays(lastDayOf(record, today), 1)));
    if (until <= from) return {};
    const core::StationClimate climate =
        core::climateFrom(measuredAt(logbook, record.batch.station, from, until), shelves.facts);
    return core::livedThrough(record, shelves, climate, until, dayStart);
}

std::vector<ClimateChart> stationCharts(const db::Logbook& logbook, const core::Shelves& shelves,
                                        const ChartsQuestion& question) {
    return ChartMaker(logbook, shelves, question).make();
}

}  // namespace plot
