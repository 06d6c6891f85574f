// SPDX-License-Identifier: MIT
#include "app/report/trial_map.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "app/plot/number_text.h"
#include "app/plot/position_map.h"
#include "app/report/sheet_words.h"
#include "app/report/trial_words.h"
#include "core/trial/trial_rules.h"

namespace report {

namespace {

struct TrialMapWords {
    Q_DECLARE_TR_FUNCTIONS(TrialMap)
};

QString armNameIn(const core::Trial& trial, int arm, const core::Shelves& shelves) {
    const auto place = static_cast<std::size_t>(arm);
    return trial.factor && place < trial.arms.size()
               ? QString::fromStdString(core::nameOf(trial.arms[place], *trial.factor, shelves))
               : QString();
}

std::vector<const core::TrialBatch*> dealtAt(const core::Trial& trial, int session, core::StationId station) {
    std::vector<const core::TrialBatch*> dealt;
    for (const core::TrialBatch& batch : trial.batches)
        if (batch.session == session && batch.station == station) dealt.push_back(&batch);
    return dealt;
}

QString sessionWords(int session) {
    return TrialMapWords::tr("Session %1").arg(plot::countText(session));
}

QString cuttingOf(const core::TrialBatch& dealt, const core::Shelves& shelves) {
    const core::Plant* plant = core::find(shelves.plants, dealt.plant);
    const core::StockPlant* mother = core::find(shelves.stockPlants, dealt.stockPlant);
    QStringList parts;
    if (plant != nullptr) parts << QString::fromStdString(core::fullName(*plant));
    if (mother != nullptr) parts << QString::fromStdString(mother->label);
    return parts.join(QStringLiteral(", "));
}

plot::FigureTable placesTable(const core::Trial& trial, const std::vector<const core::TrialBatch*>& dealt,
                              const core::Shelves& shelves, const QString& title) {
    plot::FigureTable table{.title = title,
                            .headings = {TrialMapWords::tr("No."), TrialMapWords::tr("Arm"), TrialMapWords::tr("Block"),
                                         TrialMapWords::tr("cuttings"), TrialMapWords::tr("positions")},
                            .rows = {}};
    for (const core::TrialBatch* batch : dealt)
        table.rows.push_back({plot::countText(batch->number), armNameIn(trial, batch->arm, shelves),
                              QString::fromStdString(batch->block), plot::countText(batch->stuck),
                              QString::fromStdString(batch->positions)});
    return table;
}

plot::PositionMap pictureOf(const std::vector<const core::TrialBatch*>& dealt, const core::Station& station) {
    plot::PositionMap map{.rows = station.rows, .columns = station.columns, .isStaggered = station.isStaggered};
    map.places.resize(static_cast<std::size_t>(station.rows * station.columns));
    const auto mark = [&](const std::string& positions, const plot::MapPlace& place) {
        for (const core::Position position : core::positionsFrom(positions).value_or(std::vector<core::Position>()))
            if (position.row < station.rows && position.column < station.columns)
                map.places[static_cast<std::size_t>(position.row * station.columns + position.column)] = place;
    };
    mark(station.blocked, {.state = plot::PlaceState::Blocked});
    for (const core::TrialBatch* batch : dealt)
        mark(batch->positions, {.state = plot::PlaceState::Undecided, .letter = armNumber(batch->arm)});
    return map;
}

bool isToBeShown(const core::Trial& trial, int session, bool isTold) {
    return isTold || std::ranges::any_of(trial.batches, [session](const core::TrialBatch& dealt) {
               return dealt.session == session && !dealt.batch.isSet();
           });
}

void addSession(const core::Trial& trial, int session, const core::Shelves& shelves, Sheet& sheet) {
    constexpr double perRow = 11, around = 24, most = 200;  // millimetres
    for (const core::Station& station : stationsOf(trial, session, shelves)) {
        sheet.blocks.emplace_back(Heading{TrialMapWords::tr("%1: %2", "session, station")
                                              .arg(sessionWords(session), QString::fromStdString(station.name))});
        const auto figure = trialMapFigure(trial, session, station, shelves);
        if (station.hasLayout())
            sheet.blocks.emplace_back(Picture{figure, std::min(most, around + perRow * station.rows)});
        const plot::FigureTable places = figure->table();
        Table table{.title = {},
                    .headings = places.headings,
                    .aligned = {Align::Right, Align::Left, Align::Left, Align::Right, Align::Left},
                    .rows = places.rows};
        table.restColumn = 4;
        table.mostCellLines = 8;  // positions are to be found, however many there are
        sheet.blocks.emplace_back(std::move(table));
    }
}

}  // namespace

std::vector<core::Station> stationsOf(const core::Trial& trial, int session, const core::Shelves& shelves) {
    std::set<core::StationId> ids;
    for (const core::TrialBatch& dealt : trial.batches)
        if (dealt.session == session) ids.insert(dealt.station);
    std::vector<core::Station> stations;
    for (const core::Station& station : shelves.stations)
        if (ids.contains(station.id)) stations.push_back(station);
    std::ranges::stable_sort(stations, {}, &core::Station::walkingOrder);
    return stations;
}

std::shared_ptr<const plot::Figure> trialMapFigure(const core::Trial& trial, int session, const core::Station& station,
                                                   const core::Shelves& shelves) {
    const auto dealt = dealtAt(trial, session, station.id);
    int cuttings = 0;
    for (const core::TrialBatch* batch : dealt) cuttings += batch->stuck;
    const QString sentence =
        TrialMapWords::tr("%1, session %2: %3", "station, number, cuttings")
            .arg(QString::fromStdString(station.name), plot::countText(session), plot::cuttingsText(cuttings));
    return plot::positionMapFigure(pictureOf(dealt, station), sentence,
                                   armWords(trial, shelves).join(QStringLiteral(", ")),
                                   placesTable(trial, dealt, shelves, sentence));
}

Table dealtTable(const core::Trial& trial, bool isTold, const core::Shelves& shelves) {
    Table table{
        .title = {},
        .headings = {TrialMapWords::tr("session"), TrialMapWords::tr("Station"), TrialMapWords::tr("Block"),
                     TrialMapWords::tr("Arm"), TrialMapWords::tr("Cuttings of"), TrialMapWords::tr("cuttings"),
                     TrialMapWords::tr("positions")},
        .aligned = {Align::Right, Align::Left, Align::Left, Align::Left, Align::Left, Align::Right, Align::Left},
        .rows = {},
        .mayBeShortened = true};
    table.restColumn = 6;
    for (const core::TrialBatch& dealt : trial.batches) {
        const core::Station* station = core::find(shelves.stations, dealt.station);
        const bool isArmTold = isTold || !dealt.batch.isSet();
        table.rows.push_back(
            {plot::countText(dealt.session), station == nullptr ? QString() : QString::fromStdString(station->name),
             QString::fromStdString(dealt.block),
             isArmTold ? armNameIn(trial, dealt.arm, shelves) : TrialMapWords::tr("not told yet"),
             cuttingOf(dealt, shelves), plot::countText(dealt.stuck), QString::fromStdString(dealt.positions)});
    }
    return table;
}

Sheet trialMapSheet(const core::Trial& trial, const core::TrialProgress& progress, const core::Shelves& shelves,
                    const QDateTime& printedAt) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    sheet.title = TrialMapWords::tr("Which cutting goes where: %1").arg(QString::fromStdString(trial.name));
    sheet.subtitle = armWords(trial, shelves).join(QStringLiteral(", "));
    sheet.blocks.emplace_back(Paragraph{
        TrialMapWords::tr(
            "Take the cuttings as they come from the knife and stick them place by place, A1 first; the number at a "
            "place is its arm. Do not choose: that chance decides is what makes the comparison fair."),
        Tone::Answer});
    bool isAnyShown = false;
    for (int session = 1; session <= core::sessionsOf(trial); ++session) {
        if (!isToBeShown(trial, session, progress.isTold)) continue;
        addSession(trial, session, shelves, sheet);
        isAnyShown = true;
    }
    if (!isAnyShown)
        sheet.blocks.emplace_back(Paragraph{
            trial.batches.empty() ? TrialMapWords::tr("Nothing is dealt.")
                                  : TrialMapWords::tr("Everything is stuck; arms are not told before the horizon.")});
    if (trial.allocationSeed)
        sheet.blocks.emplace_back(
            Paragraph{TrialMapWords::tr(
                          "Dealt by chance with the seed %1; the same seed and the same free places give the same map.")
                          .arg(QString::number(*trial.allocationSeed)),
                      Tone::Quiet});
    return sheet;
}

}  // namespace report
