// SPDX-License-Identifier: MIT
#include "app/desktop/climate/climate_choices.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/plot/climate_text.h"
#include "app/plot/number_text.h"
#include "core/climate/batch_stage.h"

namespace desktop {

namespace {

constexpr std::size_t mostOffered = 30;
constexpr std::size_t mostOfThePast = 5;

struct ClimateChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(ClimateChoices)
};

QString batchName(const core::BatchLine& line, const core::Shelves& shelves) {
    const core::Plant* plant = core::find(shelves.plants, line.batch.plant);
    return ClimateChoiceWords::tr("%1 %2, stuck %3", "code, plant, day")
        .arg(QString::fromStdString(line.batch.code),
             plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
             plot::shortDateText(line.batch.stuckOn));
}

QString newestText(const plot::ClimateChart& chart, core::Moment now) {
    if (chart.quantity == core::ClimateQuantity::DailyLight) {
        if (chart.days.empty()) return {};
        const core::LightOfDay& last = chart.days.back();
        return ClimateChoiceWords::tr("newest %1 on %2, %3 of that day covered")
            .arg(plot::climateText(last.moles, chart.quantity, chart.units), plot::dateText(last.day),
                 plot::shareText(last.covered));
    }
    const auto within = core::valuesWithin(*chart.values, chart.from, chart.to + std::chrono::seconds{1});
    if (within.empty()) return {};
    return ClimateChoiceWords::tr("newest %1, %2", "figure, how long ago")
        .arg(plot::climateText(within.back().value, chart.quantity, chart.units), plot::agoText(within.back().at, now));
}

}  // namespace

std::vector<StationChoice> stationChoices(const core::Shelves& shelves) {
    std::vector<const core::Station*> stations;
    for (const core::Station& station : shelves.stations)
        if (!station.isRetired) stations.push_back(&station);
    std::ranges::stable_sort(stations, {}, &core::Station::walkingOrder);
    std::vector<StationChoice> choices;
    for (const core::Station* station : stations)
        choices.push_back({station->id, QString::fromStdString(station->name)});
    return choices;
}

std::vector<const core::BatchLine*> batchesAt(core::StationId station, std::span<const core::BatchLine> lines) {
    std::vector<const core::BatchLine*> open, past;
    for (auto line = lines.rbegin(); line != lines.rend() && open.size() < mostOffered; ++line) {
        if (line->batch.station != station) continue;
        if (!core::isClosed(line->batch, line->tally))
            open.push_back(&*line);
        else if (past.size() < mostOfThePast)
            past.push_back(&*line);
    }
    return open.empty() ? past : open;
}

std::vector<SpanChoice> spanChoices(std::span<const core::BatchLine* const> batches, const core::Shelves& shelves) {
    std::vector<SpanChoice> choices{{ClimateSpan::LastDay, {}, ClimateChoiceWords::tr("last day")},
                                    {ClimateSpan::LastWeek, {}, ClimateChoiceWords::tr("last 7 days")},
                                    {ClimateSpan::LastMonth, {}, ClimateChoiceWords::tr("last 30 days")},
                                    {ClimateSpan::All, {}, ClimateChoiceWords::tr("all")}};
    for (const core::BatchLine* line : batches)
        choices.push_back({ClimateSpan::SinceSticking, line->batch.id,
                           ClimateChoiceWords::tr("since sticking of %1").arg(batchName(*line, shelves))});
    return choices;
}

std::vector<BandsChoice> bandsChoices(std::span<const core::BatchLine* const> batches, const core::Shelves& shelves) {
    std::vector<BandsChoice> choices;
    for (const core::BatchLine* line : batches)
        choices.push_back({line->batch.id, core::stageOf(line->batch, line->tally), batchName(*line, shelves)});
    for (const core::Stage stage : core::allStages)
        choices.push_back(
            {{}, stage, ClimateChoiceWords::tr("%1, plants in general", "a stage").arg(plot::stageName(stage))});
    return choices;
}

QString wordsOn(const plot::ClimateChart& chart, core::Moment now) {
    QStringList parts;
    QString name = plot::climateName(chart.quantity);
    name[0] = name[0].toUpper();
    if (const QString newest = newestText(chart, now); !newest.isEmpty()) parts << newest;
    if (chart.figures && chart.figures->readings > 0) {
        parts << plot::outsideText(chart);
        if (chart.quantity != core::ClimateQuantity::DailyLight) parts << plot::coveredText(*chart.figures);
        if (chart.figures->degreeDays)
            parts << ClimateChoiceWords::tr("%1 degree-days").arg(plot::decimalText(*chart.figures->degreeDays, 1));
    }
    parts << plot::countedText(chart);
    QString words = ClimateChoiceWords::tr("%1: %2", "a quantity, what is known of it")
                        .arg(name, parts.join(ClimateChoiceWords::tr("; ")));
    if (const QString bands = plot::chartBandsText(chart); !bands.isEmpty()) words += u'\n' + bands;
    return words;
}

}  // namespace desktop
