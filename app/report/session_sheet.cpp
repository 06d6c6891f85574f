// SPDX-License-Identifier: MIT
#include "app/report/session_sheet.h"

#include <QCoreApplication>
#include <QStringList>
#include <limits>
#include <map>
#include <set>

#include "app/plot/number_text.h"
#include "app/report/caution_words.h"
#include "app/report/sheet_words.h"
#include "core/mixing/cautions_in_place.h"

namespace report {
namespace {

struct SessionWords {
    Q_DECLARE_TR_FUNCTIONS(SessionSheet)
};

constexpr int noteLines = 3;

template <class Thing, class ThingId>
QString sessionName(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = id.isSet() ? core::find(things, id) : nullptr;
    return thing == nullptr ? QString() : QString::fromStdString(thing->name);
}

/// "old plant, pot yard · semi-ripe · IBA gel 1000 · tap water"
QString howStuck(const core::Batch& batch, const core::Shelves& shelves) {
    const core::StockPlant* mother = core::find(shelves.stockPlants, batch.stockPlant);
    QStringList parts{mother == nullptr ? QString() : QString::fromStdString(mother->label),
                      sessionName(shelves.cuttingKinds, batch.cuttingKind),
                      sessionName(shelves.treatments, batch.treatment), sessionName(shelves.media, batch.medium)};
    parts.removeAll(QString());
    return parts.join(SessionWords::tr(" · ", "between stock plant, kind, treatment, medium"));
}

Table stuckTable(const std::vector<const core::Batch*>& batches, const core::Shelves& shelves) {
    Table table;
    table.headings = {SessionWords::tr("Batch"), SessionWords::tr("Plant"), SessionWords::tr("how"),
                      SessionWords::tr("stuck"), SessionWords::tr("positions")};
    table.aligned = {Align::Left, Align::Left, Align::Left, Align::Right, Align::Left};
    table.plantColumn = 1;
    table.breaksPlantNames = true;
    table.wholeColumns = {0};
    table.restColumn = 4;
    table.mostCellLines = 8;  // positions are to be found, however many there are
    for (const core::Batch* batch : batches) {
        const core::Plant* plant = core::find(shelves.plants, batch->plant);
        table.rows.push_back({QString::fromStdString(batch->code),
                              plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                              howStuck(*batch, shelves), plot::countText(batch->stuck),
                              QString::fromStdString(batch->positions)});
    }
    return table;
}

/// In walking order, batches without a station last.
std::vector<std::vector<const core::Batch*>> byStation(std::span<const core::Batch> batches,
                                                       const core::Shelves& shelves) {
    std::map<std::pair<int, std::string>, std::vector<const core::Batch*>> groups;
    for (const core::Batch& batch : batches) {
        const core::Station* station = core::find(shelves.stations, batch.station);
        const int place = station == nullptr ? std::numeric_limits<int>::max() : station->walkingOrder;
        groups[{place, station == nullptr ? std::string() : station->name}].push_back(&batch);
    }
    std::vector<std::vector<const core::Batch*>> stations;
    for (auto& [place, group] : groups) stations.push_back(std::move(group));
    return stations;
}

QString stationHeading(const core::Batch& batch, const core::Shelves& shelves) {
    const QString station = sessionName(shelves.stations, batch.station);
    if (station.isEmpty()) return SessionWords::tr("Without a station");
    return SessionWords::tr("%1 (%2)", "station, method").arg(station, sessionName(shelves.methods, batch.method));
}

QString sumText(std::span<const core::Batch> batches, std::size_t stations) {
    int cuttings = 0;
    std::set<core::PlantId> plants;
    for (const core::Batch& batch : batches) cuttings += batch.stuck, plants.insert(batch.plant);
    return SessionWords::tr("%1 of %2 in %3 at %4.", "288 cuttings, 3 plants, 12 batches, 4 stations")
        .arg(plot::cuttingsText(cuttings), plot::plantsText(static_cast<int>(plants.size())),
             plot::batchesText(static_cast<int>(batches.size())), plot::stationsText(static_cast<int>(stations)));
}

void addMixes(Sheet& sheet, std::span<const core::KeptMix> mixes) {
    if (mixes.empty()) return;
    sheet.blocks.emplace_back(Heading{SessionWords::tr("Mixed for it")});
    for (const core::KeptMix& mix : mixes) {
        const QString amounts = QString::fromStdString(mix.amounts).replace(u'\n', SessionWords::tr("; "));
        sheet.blocks.emplace_back(Paragraph{
            SessionWords::tr("%1: %2", "title of a mix, its amounts").arg(QString::fromStdString(mix.title), amounts),
            Tone::Plain});
    }
}

}  // namespace

Sheet sessionSheet(const core::Session& session, std::span<const core::Batch> batches, const core::Shelves& shelves,
                   const QDateTime& printedAt, std::span<const core::KeptMix> mixes) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    const auto stations = byStation(batches, shelves);
    sheet.title = SessionWords::tr("Session of %1", "date").arg(plot::dateText(session.date));
    sheet.subtitle = session.worker.empty()
                         ? QString()
                         : SessionWords::tr("stuck by %1").arg(QString::fromStdString(session.worker));
    sheet.blocks.emplace_back(Paragraph{sumText(batches, stations.size()), Tone::Answer});
    if (!session.note.empty()) sheet.blocks.emplace_back(Paragraph{QString::fromStdString(session.note), Tone::Plain});
    for (const auto& group : stations) {
        sheet.blocks.emplace_back(Heading{stationHeading(*group.front(), shelves)});
        sheet.blocks.emplace_back(stuckTable(group, shelves));
        addLicences(sheet, group, shelves);
        for (const core::Batch* batch : group)
            if (!batch->note.empty())
                sheet.blocks.emplace_back(
                    Paragraph{SessionWords::tr("%1: %2", "batch, its note")
                                  .arg(QString::fromStdString(batch->code), QString::fromStdString(batch->note)),
                              Tone::Plain});
    }
    addMixes(sheet, mixes);
    addCautions(sheet, core::cautionsOnSticking(batches, shelves));
    for (int line = 0; line < noteLines; ++line) sheet.blocks.emplace_back(SignatureLine{{SessionWords::tr("Notes")}});
    return sheet;
}

}  // namespace report
