// SPDX-License-Identifier: MIT
#include "app/desktop/bench/attention_view.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/plot/climate_text.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"

namespace desktop {

namespace {

/// A reading that is older says little of how things are.
constexpr std::chrono::days freshTime{14};

QString onAttention(const char* text) {
    return QCoreApplication::translate("desktop::Attention", text);
}

AttentionRow rowOf(const core::BehindThePast& behind, std::span<const core::BatchLine> lines,
                   const core::Shelves& shelves) {
    const core::AgainstThePast& against = behind.against;
    QString plantName;
    for (const core::BatchLine& line : lines)
        if (line.batch.id == behind.batch)
            if (const core::Plant* plant = core::find(shelves.plants, line.batch.plant))
                plantName = QString::fromStdString(core::fullName(*plant));
    return {.batch = behind.batch,
            .station = {},
            .subject = QString::fromStdString(behind.code),
            .why = onAttention("%1 of %2 rooted by %3; %4 before it: %5 to %6, nine times in ten")
                       .arg(plot::countText(against.rooted), plot::countText(against.of), plot::dayText(against.day),
                            plot::batchesText(against.pastBatches), plot::countText(against.usualFewest),
                            plot::countText(against.usualMost)),
            .detail = plantName + '\n' + QString::fromStdString(against.inWords)};
}

/// "solution pH 6.3": the unit of a pH is its name.
QString namedFigure(const core::Reading& reading, const core::DisplayUnits& units) {
    const QString name =
        reading.quantity == core::Quantity::SolutionPh ? onAttention("solution") : plot::quantityName(reading.quantity);
    return onAttention("%1 %2").arg(name, plot::quantityText(reading.quantity, reading.value, units));
}

/// "before roots good at pH 5.6 to 6.2 (the trade's)"
QString bandWords(const core::BandWarning& warning, const core::DisplayUnits& units) {
    return onAttention("%1: good at %2 (%3)")
        .arg(plot::stageName(warning.standing.stage), plot::bandText(warning.band.band, warning.band.quantity, units),
             plot::ownerText(warning.band.owner));
}

AttentionRow rowOf(const core::Reading& reading, const core::BandWarning& warning, const core::Station& station,
                   const core::Shelves& shelves, core::Moment now) {
    const core::DisplayUnits& units = shelves.facts.units;
    const QString figure = namedFigure(reading, units), band = bandWords(warning, units);
    const core::Plant* plant = core::find(shelves.plants, warning.standing.plant);
    return {.batch = {},
            .station = station.id,
            .subject = QString::fromStdString(station.name),
            .why = onAttention("%1, %2; %3").arg(figure, plot::agoText(reading.readAt, now), band),
            .detail = onAttention("%1 on %2; %3.\n%4 stands there.\nSource: %5")
                          .arg(figure, plot::momentText(reading.readAt), band,
                               plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                               plot::bandSource(warning.band))};
}

}  // namespace

std::vector<AttentionRow> attentionRows(std::span<const core::BehindThePast> behind,
                                        std::span<const core::Reading> readings, std::span<const core::BatchLine> lines,
                                        const core::Shelves& shelves, core::Moment now) {
    std::vector<AttentionRow> rows;
    for (const core::BehindThePast& one : behind) rows.push_back(rowOf(one, lines, shelves));
    const core::StandingByStation standing = core::standingByStation(lines);
    for (const core::Reading& reading : readings) {
        const core::Station* station = core::find(shelves.stations, reading.station);
        const auto here = standing.find(reading.station);
        if (station == nullptr || here == standing.end() || now - reading.readAt > freshTime) continue;
        if (const auto warning = core::warningOf(reading, here->second, shelves))
            rows.push_back(rowOf(reading, *warning, *station, shelves, now));
    }
    return rows;
}

ReadingsGlance readingsGlance(const core::Station& station, std::span<const core::Reading> readings,
                              std::span<const core::Standing> standing, const core::Shelves& shelves) {
    const core::DisplayUnits& units = shelves.facts.units;
    ReadingsGlance glance;
    QStringList parts, details;
    for (const core::Quantity quantity : core::allQuantities)
        for (const core::Reading& reading : readings) {
            if (reading.station != station.id || reading.quantity != quantity) continue;
            const QString figure = plot::quantityText(quantity, reading.value, units);
            const bool isPh = quantity == core::Quantity::SolutionPh;
            parts << (isPh ? figure : onAttention("%1 %2").arg(plot::quantityShortName(quantity), figure));
            details << onAttention("%1: %2 on %3")
                           .arg(plot::quantityName(quantity), figure, plot::dateText(plot::localDay(reading.readAt)));
            const auto warning = core::warningOf(reading, standing, shelves);
            if (!warning) continue;
            glance.isOutside = true;
            parts.back() += onAttention(" (outside)");
            details.back() += onAttention("; %1").arg(bandWords(*warning, units));
        }
    glance.text = parts.join(onAttention(", "));
    glance.detail = details.join('\n');
    return glance;
}

}  // namespace desktop
