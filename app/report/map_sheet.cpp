// SPDX-License-Identifier: MIT
#include "app/report/map_sheet.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <set>

#include "app/plot/number_text.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

struct MapWords {
    Q_DECLARE_TR_FUNCTIONS(MapSheet)
};

constexpr double kMostMapHeight = 150;  // millimetres
constexpr double kMapRowHeight = 13;
constexpr double kMapEdges = 24;  // title, column numbers, front
constexpr double kSmallMapHeight = 62;

QString causeWord(const core::Finding& finding, const core::Shelves& shelves) {
    const core::LossCause* cause = core::find(shelves.lossCauses, finding.cause);
    return cause == nullptr ? MapWords::tr("cause not known") : QString::fromStdString(cause->name);
}

QString stateWord(const plot::PlaceContent& content, const core::Shelves& shelves) {
    if (!content.batch.isSet()) return content.isBlocked ? MapWords::tr("blocked") : MapWords::tr("free");
    if (!content.finding) return MapWords::tr("undecided");
    switch (content.finding->outcome) {
        case core::Outcome::Rooted:
            return MapWords::tr("rooted");
        case core::Outcome::Lost:
            return MapWords::tr("lost (%1)", "cause").arg(causeWord(*content.finding, shelves));
        case core::Outcome::Withdrawn:
            break;
    }
    return MapWords::tr("withdrawn");
}

/// What the picture shows, in words.
plot::FigureTable mapTable(const plot::StationMap& map, const core::Shelves& shelves) {
    plot::FigureTable table{.title = MapWords::tr("Positions"),
                            .headings = {MapWords::tr("Position"), MapWords::tr("State"), MapWords::tr("Day"),
                                         MapWords::tr("Batch"), MapWords::tr("Plant")},
                            .rows = {}};
    for (int row = 0; row < map.station.rows; ++row)
        for (int column = 0; column < map.station.columns; ++column) {
            const core::Position position{row, column};
            const plot::PlaceContent& content = map.at(position);
            table.rows.push_back({QString::fromStdString(core::nameOf(position)), stateWord(content, shelves),
                                  map.placeAt(position).day, content.code, content.plant});
        }
    return table;
}

Picture mapPicture(const plot::StationMap& map, const QString& sentence, const core::Shelves& shelves, double most) {
    const QString method = MapWords::tr(
        "Seen from above, front edge towards you. Below a letter: the day on which it "
        "was found, counted from sticking.");
    return {.figure = plot::positionMapFigure(map.picture(), sentence, method, mapTable(map, shelves)),
            .heightInMillimetres = std::min(most, kMapEdges + kMapRowHeight * map.station.rows)};
}

/// Only the signs that the map has.
QString signsText(const plot::StationMap& map, const core::Shelves& shelves) {
    std::set<plot::PlaceState> states;
    std::set<QString> losses;
    for (int row = 0; row < map.station.rows; ++row)
        for (int column = 0; column < map.station.columns; ++column) {
            const plot::MapPlace place = map.placeAt({row, column});
            states.insert(place.state);
            if (place.state != plot::PlaceState::Lost) continue;
            losses.insert(MapWords::tr("%1 %2", "letter, what it says")
                              .arg(place.letter, causeWord(*map.at({row, column}).finding, shelves)));
        }
    const QString lost = QStringList(losses.begin(), losses.end()).join(MapWords::tr(", ", "between causes of loss"));
    QStringList signs;
    const auto add = [&](plot::PlaceState state, const QString& sentence) {
        if (states.contains(state)) signs << sentence;
    };
    add(plot::PlaceState::Rooted, MapWords::tr("Dark with R: rooted."));
    add(plot::PlaceState::Lost, MapWords::tr("Crossed, with a letter: lost (%1).").arg(lost));
    add(plot::PlaceState::Withdrawn, MapWords::tr("Half grey with W: withdrawn."));
    add(plot::PlaceState::Undecided, MapWords::tr("Empty, thick edge: undecided."));
    add(plot::PlaceState::Free, MapWords::tr("Small and empty: free."));
    add(plot::PlaceState::Blocked, MapWords::tr("Grey with a bar: blocked, holds no cutting."));
    return signs.join(u' ');
}

QString sumsText(const plot::StationMap& map) {
    int rooted = 0, lost = 0, withdrawn = 0, undecided = 0, free = 0, blocked = 0;
    for (const plot::PlaceContent& content : map.contents) {
        if (!content.batch.isSet())
            ++(content.isBlocked ? blocked : free);
        else if (!content.finding)
            ++undecided;
        else
            ++(content.finding->outcome == core::Outcome::Rooted ? rooted
               : content.finding->outcome == core::Outcome::Lost ? lost
                                                                 : withdrawn);
    }
    return MapWords::tr("Of %1 positions: %2 undecided, %3 rooted, %4 lost, %5 withdrawn, %6 free, %7 blocked.")
        .arg(plot::countText(map.station.rows * map.station.columns), plot::countText(undecided),
             plot::countText(rooted), plot::countText(lost), plot::countText(withdrawn), plot::countText(free),
             plot::countText(blocked));
}

Table batchTable(const plot::StationMap& map, const std::vector<core::BatchRecord>& records,
                 const core::Shelves& shelves) {
    Table table;
    table.headings = {MapWords::tr("Batch"),     MapWords::tr("Plant"),    MapWords::tr("stuck on"),
                      MapWords::tr("rooted"),    MapWords::tr("lost"),     MapWords::tr("withdrawn"),
                      MapWords::tr("undecided"), MapWords::tr("positions")};
    table.aligned = {Align::Left,  Align::Left,  Align::Left,  Align::Right,
                     Align::Right, Align::Right, Align::Right, Align::Left};
    table.plantColumn = 1;
    table.breaksPlantNames = true;
    table.wholeColumns = {0};
    table.restColumn = 7;
    table.mostCellLines = 8;
    for (const core::BatchRecord& record : records) {
        const bool isOnMap = std::ranges::any_of(
            map.contents, [&](const plot::PlaceContent& content) { return content.batch == record.batch.id; });
        if (!isOnMap) continue;
        const core::Tally tally = core::tallyOf(record.batch, record.checks);
        const core::Plant* plant = core::find(shelves.plants, record.batch.plant);
        table.rows.push_back({QString::fromStdString(record.batch.code),
                              plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                              plot::shortDateText(record.batch.stuckOn), plot::countText(tally.rooted),
                              plot::countText(tally.lost), plot::countText(tally.withdrawn),
                              plot::countText(tally.undecided()), QString::fromStdString(record.batch.positions)});
    }
    return table;
}

/// "Tub 1 with B260047K"
QString mapTitle(const core::Station& station, const std::vector<core::BatchRecord>& records, core::BatchId focus) {
    const QString name = QString::fromStdString(station.name);
    for (const core::BatchRecord& record : records)
        if (focus.isSet() && record.batch.id == focus)
            return MapWords::tr("%1 with batch %2", "station, code")
                .arg(name, QString::fromStdString(record.batch.code));
    return name;
}

}  // namespace

Sheet mapSheet(const core::Station& station, const std::vector<core::BatchRecord>& records, core::BatchId focus,
               const core::Shelves& shelves, const QDateTime& printedAt) {
    const plot::StationMap map = plot::stationMap(station, records, focus, shelves);
    const core::Method* method = core::find(shelves.methods, station.method);
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    const QString about = mapTitle(station, records, focus);
    sheet.title = MapWords::tr("Map of %1", "station").arg(about);
    sheet.subtitle = method == nullptr ? QString() : QString::fromStdString(method->name);
    sheet.blocks.emplace_back(Paragraph{sumsText(map), Tone::Answer});
    sheet.blocks.emplace_back(mapPicture(map, about, shelves, kMostMapHeight));
    QString signs = signsText(map, shelves);
    const bool hasOthers = std::ranges::any_of(map.contents, &plot::PlaceContent::isOther);
    if (hasOthers) signs += u' ' + MapWords::tr("Smaller and pale: of other batches.");
    sheet.blocks.emplace_back(Paragraph{signs, Tone::Plain});
    Table batches = batchTable(map, records, shelves);
    if (batches.rows.empty()) {
        sheet.blocks.emplace_back(
            Paragraph{MapWords::tr("No batch says where on it its cuttings stand."), Tone::Plain});
        return sheet;
    }
    sheet.blocks.emplace_back(Heading{MapWords::tr("Batches on it")});
    sheet.blocks.emplace_back(std::move(batches));
    return sheet;
}

std::vector<Block> mapBlocks(const core::BatchRecord& record, const core::Shelves& shelves) {
    const core::Station* station = core::find(shelves.stations, record.batch.station);
    if (station == nullptr || !station->hasLayout() || core::positionStates(record).empty()) return {};
    const plot::StationMap map = plot::stationMap(*station, {record}, record.batch.id, shelves);
    return {Heading{MapWords::tr("Where they stood")},
            mapPicture(map, mapTitle(*station, {record}, record.batch.id), shelves, kSmallMapHeight),
            Paragraph{signsText(map, shelves), Tone::Quiet}};
}

}  // namespace report
