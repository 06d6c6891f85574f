// SPDX-License-Identifier: MIT
#include "app/desktop/bench/attention_view.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QStringList>
#include <unordered_set>

#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"
#include "core/climate/bands.h"

namespace desktop {

namespace {

/// A reading that is older says little of how things are.
constexpr int freshDays = 14;

QString onAttention(const char* text) {
    return QCoreApplication::translate("desktop::Attention", text);
}

core::Date dayOf(const core::Reading& reading) {
    const QDate day =
        QDateTime::fromSecsSinceEpoch(reading.readAt.time_since_epoch().count()).date();  // here, not in UTC
    return core::Date{std::chrono::year{day.year()}, std::chrono::month{static_cast<unsigned>(day.month())},
                      std::chrono::day{static_cast<unsigned>(day.day())}};
}

std::unordered_set<core::StationId> stationsInUse(std::span<const core::BatchLine> lines) {
    std::unordered_set<core::StationId> stations;
    for (const core::BatchLine& line : lines)
        if (!core::isClosed(line.batch, line.tally)) stations.insert(line.batch.station);
    return stations;
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

QString bandText(const core::Reading& reading, const core::Band& band, const core::DisplayUnits& units) {
    return reading.quantity == core::Quantity::DissolvedOxygen
               ? onAttention("%1 or more").arg(plot::quantityText(reading.quantity, band.low, units))
               : plot::quantityRangeText(reading.quantity, band.low, band.high, units);
}

AttentionRow rowOf(const core::Reading& reading, const core::Band& band, const core::Station& station,
                   const core::DisplayUnits& units) {
    const QString figure = plot::quantityText(reading.quantity, reading.value, units);
    const QString allowed = bandText(reading, band, units);
    // "solution pH 6.3": the unit of a pH is its name.
    const QString name =
        reading.quantity == core::Quantity::SolutionPh ? onAttention("solution") : plot::quantityName(reading.quantity);
    return {.batch = {},
            .station = station.id,
            .subject = QString::fromStdString(station.name),
            .why = onAttention("%1 %2 on %3; cuttings root best at %4")
                       .arg(name, figure, plot::shortDateText(dayOf(reading)), allowed),
            .detail = onAttention("%1 %2 on %3; cuttings root best at %4.\nSource: %5")
                          .arg(name, figure, plot::dateText(dayOf(reading)), allowed,
                               QString::fromUtf8(band.source.data(), static_cast<qsizetype>(band.source.size())))};
}

bool isOutsideItsBand(const core::Reading& reading) {
    const auto band = core::rootingBand(reading.quantity);
    return band && core::isOutside(*band, reading.value);
}

}  // namespace

std::vector<AttentionRow> attentionRows(std::span<const core::BehindThePast> behind,
                                        std::span<const core::Reading> readings, std::span<const core::BatchLine> lines,
                                        const core::Shelves& shelves, core::Date today) {
    std::vector<AttentionRow> rows;
    for (const core::BehindThePast& one : behind) rows.push_back(rowOf(one, lines, shelves));
    const auto inUse = stationsInUse(lines);
    for (const core::Reading& reading : readings) {
        const core::Station* station = core::find(shelves.stations, reading.station);
        const bool isFresh = core::daysBetween(dayOf(reading), today) <= freshDays;
        if (station == nullptr || !isFresh || !inUse.contains(reading.station) || !isOutsideItsBand(reading)) continue;
        rows.push_back(rowOf(reading, *core::rootingBand(reading.quantity), *station, shelves.facts.units));
    }
    return rows;
}

ReadingsGlance readingsGlance(const core::Station& station, std::span<const core::Reading> readings,
                              const core::Shelves& shelves) {
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
                           .arg(plot::quantityName(quantity), figure, plot::dateText(dayOf(reading)));
            if (!isOutsideItsBand(reading)) continue;
            glance.isOutside = true;
            parts.back() += onAttention(" (outside)");
        }
    glance.text = parts.join(onAttention(", "));
    glance.detail = details.join('\n');
    return glance;
}

}  // namespace desktop
