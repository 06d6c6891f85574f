// SPDX-License-Identifier: MIT
#include "app/desktop/bench/bench_view.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <unordered_set>

#include "app/plot/number_text.h"

namespace desktop {

namespace {

QString onBench(const char* text) {
    return QCoreApplication::translate("desktop::Bench", text);
}

QString dueText(const core::DueBatch& due) {
    return due.daysOverdue > 0 ? onBench("%1 overdue").arg(plot::daysText(due.daysOverdue)) : onBench("today");
}

DueRow dueRow(const core::DueBatch& due, const std::unordered_map<core::PlantId, QString>& plantNames,
              core::Date today) {
    const core::Batch& batch = due.line.batch;
    const auto plant = plantNames.find(batch.plant);
    return {.batch = batch.id,
            .code = QString::fromStdString(batch.code),
            .plant = plant == plantNames.end() ? QString() : plant->second,
            .day = onBench("day %1").arg(core::daysBetween(batch.stuckOn, today)),
            .counts = countsText(due.line.tally),
            .due = dueText(due),
            .isOverdue = due.daysOverdue > 0};
}

std::unordered_map<core::PlantId, QString> namesOfPlants(const core::Shelves& shelves) {
    std::unordered_map<core::PlantId, QString> names;
    for (const core::Plant& plant : shelves.plants) names[plant.id] = QString::fromStdString(core::fullName(plant));
    return names;
}

QString groupSummary(const DueGroup& group) {
    const auto overdue = static_cast<int>(std::ranges::count_if(group.rows, &DueRow::isOverdue));
    const QString due = onBench("%1 due").arg(plot::batchesText(static_cast<int>(group.rows.size())));
    return overdue == 0 ? due : onBench("%1, %2 overdue").arg(due).arg(overdue);
}

std::vector<DueGroup> dueGroups(std::vector<core::DueBatch> due, const core::Shelves& shelves, core::Date today) {
    const auto plantNames = namesOfPlants(shelves);
    std::vector<DueGroup> groups;
    std::optional<core::StationId> current;
    // dueOn() walks from station to station; within one the longest overdue comes first.
    for (auto first = due.begin(); first != due.end();) {
        current = first->line.batch.station;
        const auto last =
            std::find_if(first, due.end(), [&](const auto& each) { return each.line.batch.station != *current; });
        std::stable_sort(first, last, [](const auto& a, const auto& b) { return a.daysOverdue > b.daysOverdue; });
        const core::Station* station = core::find(shelves.stations, *current);
        DueGroup group{.station = station ? QString::fromStdString(station->name) : onBench("No station"),
                       .summary = {},
                       .rows = {}};
        for (; first != last; ++first) group.rows.push_back(dueRow(*first, plantNames, today));
        group.summary = groupSummary(group);
        groups.push_back(std::move(group));
    }
    return groups;
}

struct Held {
    int batches{};
    int undecided{};
    int standing{};  // undecided, or rooted and not yet potted on
    std::unordered_set<core::PlantId> plants;
    std::optional<core::Date> since;
};

std::unordered_map<core::StationId, Held> heldByStation(std::span<const core::BatchLine> lines) {
    std::unordered_map<core::StationId, Held> held;
    for (const core::BatchLine& line : lines) {
        if (core::isClosed(line.batch, line.tally)) continue;
        Held& here = held[line.batch.station];
        ++here.batches;
        here.undecided += line.tally.undecided();
        here.standing += line.tally.undecided() + line.tally.rooted;
        here.plants.insert(line.batch.plant);
        if (!here.since || line.batch.stuckOn < *here.since) here.since = line.batch.stuckOn;
    }
    return held;
}

/// Each name once, in order; "free" when there is none.
QString namesOf(const Held& held, const core::Shelves& shelves,
                const std::function<std::string(const core::Plant&)>& name) {
    std::set<QString> names;
    for (const core::Plant& plant : shelves.plants)
        if (held.plants.contains(plant.id)) names.insert(QString::fromStdString(name(plant)));
    return names.empty() ? onBench("free") : QStringList(names.begin(), names.end()).join(", ");
}

QString placesText(const core::Station& station, const Held& held) {
    if (station.positions() == 0) return plot::cuttingsText(held.standing);
    return onBench("%1 of %2 free")
        .arg(plot::countText(std::max(0, station.positions() - held.standing)), plot::countText(station.positions()));
}

std::optional<double> takenShare(const core::Station& station, const Held& held) {
    if (station.positions() == 0) return {};
    return std::min(1.0, static_cast<double>(held.standing) / station.positions());
}

StationRow stationRow(const core::Station& station, const Held& held, const core::Shelves& shelves, core::Date today,
                      std::span<const core::Reading> readings, std::span<const core::Standing> standing) {
    const core::Method* method = core::find(shelves.methods, station.method);
    return {.id = station.id,
            .name = QString::fromStdString(station.name),
            .method = method ? QString::fromStdString(method->name) : QString(),
            .openBatches = held.batches,
            .undecided = held.undecided,
            .places = placesText(station, held),
            .takenShare = takenShare(station, held),
            .readings = readingsGlance(station, readings, standing, shelves),
            .plants = namesOf(held, shelves, [](const core::Plant& plant) { return plant.botanicalName; }),
            .plantsInFull = namesOf(held, shelves, core::fullName),
            .since = held.since ? onBench("%1 (%2)").arg(plot::shortDateText(*held.since),
                                                         plot::daysText(core::daysBetween(*held.since, today)))
                                : QString()};
}

std::vector<StationRow> stationRows(std::span<const core::BatchLine> lines, const core::Shelves& shelves,
                                    core::Date today, std::span<const core::Reading> readings) {
    auto held = heldByStation(lines);
    core::StandingByStation standing = core::standingByStation(lines);
    std::vector<const core::Station*> stations;
    for (const core::Station& station : shelves.stations)
        if (!station.isRetired || held.contains(station.id)) stations.push_back(&station);
    std::ranges::stable_sort(stations, {}, &core::Station::walkingOrder);
    std::vector<StationRow> rows;
    for (const core::Station* station : stations)
        rows.push_back(stationRow(*station, held[station->id], shelves, today, readings, standing[station->id]));
    return rows;
}

QString nextDueText(std::span<const core::BatchLine> lines, const core::Shelves& shelves) {
    std::optional<core::Date> next;
    for (const core::BatchLine& line : lines) {
        if (core::isClosed(line.batch, line.tally)) continue;
        const core::Date on = core::nextCheckOn(line, shelves);
        if (!next || on < *next) next = on;
    }
    return next ? plot::dateText(*next) : QString();
}

}  // namespace

QString countsText(const core::Tally& tally) {
    QStringList parts{onBench("%1 of %2 rooted").arg(tally.rooted).arg(tally.stuck)};
    if (tally.lost > 0) parts << onBench("%1 lost").arg(tally.lost);
    if (tally.withdrawn > 0) parts << onBench("%1 withdrawn").arg(tally.withdrawn);
    parts << onBench("%1 undecided").arg(tally.undecided());
    return parts.join(", ");
}

BenchView benchView(std::span<const core::BatchLine> lines, const core::Shelves& shelves, core::Date today,
                    std::span<const core::Reading> readings) {
    std::vector<core::DueBatch> due = core::dueOn(today, lines, shelves);
    BenchView view;
    view.dueCount = static_cast<int>(due.size());
    view.overdueCount =
        static_cast<int>(std::ranges::count_if(due, [](const auto& each) { return each.daysOverdue > 0; }));
    view.due = dueGroups(std::move(due), shelves, today);
    if (view.dueCount == 0) view.nextDue = nextDueText(lines, shelves);
    view.stations = stationRows(lines, shelves, today, readings);
    return view;
}

}  // namespace desktop
