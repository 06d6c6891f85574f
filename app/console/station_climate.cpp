// SPDX-License-Identifier: MIT
#include "app/console/station_climate.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/command.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/climate_text.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/station_charts.h"

namespace console {

namespace {

Json bandJson(const plot::BandStretch& stretch) {
    return {{"from", core::isoText(stretch.from)},        {"to", core::isoText(stretch.to)},
            {"stage", core::wordFor(stretch.band.stage)}, {"low", figure(stretch.band.band.low)},
            {"high", figure(stretch.band.band.high)},     {"whose", plot::ownerText(stretch.band.owner).toStdString()},
            {"source", stretch.band.band.source}};
}

Json figuresJson(const plot::ClimateChart& chart) {
    const core::QuantityFacts& facts = core::factsOf(chart.quantity);
    const core::LivedFigures& figures = *chart.figures;
    Json bands = Json::array();
    for (const plot::BandStretch& stretch : chart.bands) bands.push_back(bandJson(stretch));
    Json json = {{"quantity", facts.word},
                 {"unit", facts.unit},
                 {"readings", figures.readings},
                 {"mean", figure(figures.mean)},
                 {"mean_is_of_single_readings", figures.isMeanOfReadings},
                 {"lowest", figure(figures.lowest)},
                 {"highest", figure(figures.highest)},
                 {"hours", figure(figures.hours)},
                 {"hours_covered", figure(figures.hoursCovered)},
                 {"hours_with_band", figure(figures.hoursWithBand)},
                 {"hours_below", figure(figures.hoursBelow)},
                 {"hours_above", figure(figures.hoursAbove)},
                 {"degree_days", figures.degreeDays ? figure(*figures.degreeDays) : Json()},
                 {"bands", std::move(bands)}};
    if (chart.quantity != core::ClimateQuantity::DailyLight) return json;
    Json days = Json::array();
    for (const core::LightOfDay& day : chart.days)
        days.push_back(
            {{"day", core::isoText(day.day)}, {"mol_per_m2", figure(day.moles)}, {"covered", figure(day.covered)}});
    json["days"] = std::move(days);
    return json;
}

void printFigures(const std::vector<plot::ClimateChart>& charts, const std::string& station, std::ostream& out) {
    using Align = TextTable::Align;
    if (charts.empty()) {
        out << filled(tr("Nothing was read at %1 in this time."), {station}) << '\n';
        return;
    }
    out << filled(tr("Climate of %1, %2 to %3"), {station, plot::momentText(charts.front().from).toStdString(),
                                                  plot::momentText(charts.front().to).toStdString()})
        << '\n';
    TextTable table({{tr("quantity"), Align::Left},
                     {tr("mean"), Align::Right},
                     {tr("lowest"), Align::Right},
                     {tr("highest"), Align::Right},
                     {tr("outside its band"), Align::Left},
                     {tr("covered"), Align::Right},
                     {tr("readings"), Align::Right}});
    for (const plot::ClimateChart& chart : charts) {
        const core::LivedFigures& figures = *chart.figures;
        const auto number = [&](double stored) {
            return plot::climateNumber(stored, chart.quantity, chart.units).toStdString();
        };
        const std::string unit = plot::climateUnit(chart.quantity, chart.units).toStdString();
        const std::string name = plot::climateName(chart.quantity).toStdString();
        table.addRow({unit.empty() ? name : name + ", " + unit, number(figures.mean), number(figures.lowest),
                      number(figures.highest), plot::outsideText(chart).toStdString(),
                      plot::shareText(figures.covered()).toStdString(), std::to_string(figures.readings)});
    }
    table.printTo(out);
    for (const plot::ClimateChart& chart : charts)
        if (const QString bands = plot::chartBandsText(chart); !bands.isEmpty())
            out << plot::climateName(chart.quantity).toStdString() << ": " << bands.toStdString() << '\n';
    out << tr("Nothing is filled in for gaps; what a gap held is in no figure.") << '\n';
}

/// From the beginning of one day to the end of another.
void putDays(const QuestionOptions& options, plot::ChartsQuestion& question) {
    if (const auto& from = options.given("--from")) question.from = plot::dayStart(dateFrom("--from", *from));
    if (const auto& to = options.given("--to"))
        question.to = std::min(question.to, plot::dayStart(core::addDays(dateFrom("--to", *to), 1)));
    if (question.from && *question.from >= question.to)
        throw WrongArgument(tr("--from is later than --to or today; a day no later than both is allowed."));
}

}  // namespace

int answerStationClimate(const std::string& file, const QuestionOptions& options, bool isJson,
                         const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const db::Logbook logbook = openToRead(file, surroundings);
    const core::Shelves shelves = logbook.shelves();
    const std::string& name = options.needed("--station");
    const auto station = std::ranges::find(shelves.stations, name, &core::Station::name);
    if (station == shelves.stations.end()) {
        err << filled(tr("There is no station %1 in %2."), {shown(name), file}) << '\n';
        return Refused;
    }
    plot::ChartsQuestion question{.station = station->id,
                                  .from = {},
                                  .to = surroundings.clock() + std::chrono::seconds{1},
                                  .batch = {},
                                  .stage = {}};
    if (const auto& code = options.given("--batch")) {
        question.batch = logbook.batchWithCode(*code);
        const auto record = question.batch.isSet() ? logbook.batch(question.batch) : std::nullopt;
        if (!record) {
            err << filled(tr("There is no batch %1 in %2."), {shown(*code), file}) << '\n';
            return Refused;
        }
        question.from = plot::dayStart(record->batch.stuckOn);
    }
    putDays(options, question);
    const std::vector<plot::ClimateChart> charts = plot::stationCharts(logbook, shelves, question);
    if (!isJson) {
        printFigures(charts, name, out);
        return Done;
    }
    Json figures = Json::array();
    for (const plot::ClimateChart& chart : charts) figures.push_back(figuresJson(chart));
    print({{"station", name},
           {"from", charts.empty() ? Json() : Json(core::isoText(charts.front().from))},
           {"to", core::isoText(question.to)},
           {"figures", std::move(figures)}},
          out);
    return Done;
}

}  // namespace console
