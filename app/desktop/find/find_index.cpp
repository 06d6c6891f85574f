// SPDX-License-Identifier: MIT
#include "app/desktop/find/find_index.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <ranges>
#include <unordered_set>

#include "app/desktop/find/search_text.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

constexpr int noMatch = -1;
constexpr int exact = 0;
/// So that no kind fills the whole list. Batches, of which there are most, get what the others leave.
constexpr std::array<std::size_t, 5> mostOfAKind{8, 6, 6, 8, 6};  // in the order of FindKind

QString inFind(const char* text) {
    return QCoreApplication::translate("desktop::Find", text);
}

QString withRetired(const QString& detail, bool isRetired) {
    if (!isRetired) return detail;
    const QString retired = inFind("retired");
    return detail.isEmpty() ? retired : detail + QStringLiteral(" \u00B7 ") + retired;
}

template <class Key, class Value>
Value valueOr(const std::unordered_map<Key, Value>& values, Key key) {
    const auto found = values.find(key);
    return found == values.end() ? Value{} : found->second;
}

}  // namespace

struct FindIndex::Query {
    explicit Query(const QString& typed) : words(searchWords(typed)), whole(words.join(u' ')) {
        for (const QString& word : words) starts.append(u' ' + word);
    }
    QStringList words;
    QStringList starts;  // the same with the space before a word
    QString whole;
};

struct FindIndex::Match {
    int rank{};
    const Thing* thing{};
};

void FindIndex::setDoors(std::vector<FoundThing> doors) {
    doors_.clear();
    for (FoundThing& door : doors) addThing(std::move(door), {}, doors_);
}

void FindIndex::addThing(FoundThing thing, const QString& alsoFoundBy, std::vector<Thing>& things) {
    Thing added;
    added.head = searchText(thing.title);
    added.all = u' ' + added.head + u' ' + searchText(alsoFoundBy);
    added.found = std::move(thing);
    things.push_back(std::move(added));
}

void FindIndex::build(const core::Shelves& shelves, const std::vector<core::BatchLine>& lines) {
    shelves_ = shelves;
    addShelves();
    batches_.clear();
    batches_.reserve(lines.size());
    for (const core::BatchLine& line : lines) batches_.push_back(entryFor(line.batch));
}

void FindIndex::addShelves() {
    things_.clear();
    plants_.clear();
    stockPlants_.clear();
    stations_.clear();
    for (const core::Plant& plant : shelves_.plants) {
        const QString name = QString::fromStdString(core::fullName(plant));
        const QString common = QString::fromStdString(plant.commonName);
        plants_[plant.id] = {name, searchText(name + u' ' + common), common};
        addThing({FindKind::Plant, name, name, withRetired(common, plant.isRetired), "plant", placeOf(plant.id), {}},
                 common, things_);
    }
    for (const core::StockPlant& stock : shelves_.stockPlants) {
        const QString label = QString::fromStdString(stock.label);
        const Named plant = valueOr(plants_, stock.plant);
        stockPlants_[stock.id] = {label, searchText(label), {}};
        addThing({FindKind::StockPlant,
                  label,
                  plant.shown,
                  withRetired({}, stock.isRetired),
                  "stock_plant",
                  placeOf(stock.id),
                  {}},
                 plant.searched, things_);
    }
    for (const core::Station& station : shelves_.stations) {
        const QString name = QString::fromStdString(station.name);
        const core::Method* method = core::find(shelves_.methods, station.method);
        const QString way = method ? QString::fromStdString(method->name) : QString();
        stations_[station.id] = {name, searchText(name), {}};
        addThing({FindKind::Station, name, {}, withRetired(way, station.isRetired), "station", placeOf(station.id), {}},
                 {}, things_);
    }
}

FindIndex::BatchEntry FindIndex::entryFor(const core::Batch& batch) const {
    BatchEntry entry;
    entry.id = batch.id;
    entry.code = QString::fromStdString(batch.code);
    entry.note = QString::fromStdString(batch.note);
    entry.plant = batch.plant;
    entry.stockPlant = batch.stockPlant;
    entry.station = batch.station;
    entry.stuckOn = batch.stuckOn;
    entry.head = searchText(entry.code);
    entry.all = u' ' + entry.head + u' ' + valueOr(plants_, batch.plant).searched + u' ' +
                valueOr(stations_, batch.station).searched + u' ' + valueOr(stockPlants_, batch.stockPlant).searched;
    if (!entry.note.isEmpty()) entry.all += u' ' + searchText(entry.note);
    return entry;
}

void FindIndex::refresh(const std::vector<core::BatchId>& touched, const std::vector<core::BatchLine>& lines) {
    const std::unordered_set<core::BatchId> old(touched.begin(), touched.end());
    std::erase_if(batches_, [&](const BatchEntry& entry) { return old.contains(entry.id); });
    for (const core::BatchLine& line : lines) batches_.push_back(entryFor(line.batch));
}

int FindIndex::rankOf(const Sought& sought, const Query& query) {
    // Asked of each of 20,000 batches at every letter: nothing here makes a text of its own.
    const auto hasAll = [](const QString& text, const QStringList& parts) {
        return std::ranges::all_of(parts, [&](const QString& part) { return text.contains(part); });
    };
    const auto startsAWordOfHead = [&](qsizetype i) {
        return sought.head.startsWith(query.words[i]) || sought.head.contains(query.starts[i]);
    };
    if (!hasAll(sought.all, query.words)) return noMatch;
    if (sought.head == query.whole) return exact;
    if (sought.head.startsWith(query.whole)) return 1;
    if (std::ranges::all_of(std::views::iota(qsizetype{0}, query.words.size()), startsAWordOfHead)) return 2;
    return hasAll(sought.all, query.starts) ? 3 : 4;
}

void FindIndex::matchThings(const std::vector<Thing>& things, const Query& query, std::vector<Match>& matches) {
    for (const Thing& thing : things)
        if (const int rank = rankOf(thing, query); rank != noMatch) matches.push_back({rank, &thing});
}

FoundThing FindIndex::shown(const BatchEntry& entry, const Query& query) const {
    const Named plant = valueOr(plants_, entry.plant);
    const Named station = valueOr(stations_, entry.station);
    QStringList parts;
    if (!station.shown.isEmpty()) parts.append(station.shown);
    parts.append(inFind("stuck on %1").arg(plot::shortDateText(entry.stuckOn)));
    // What it was found by is shown, so that nobody wonders why it is there.
    const QString seen = entry.head + u' ' + searchText(plant.shown) + u' ' + station.searched;
    for (const QString& text : {plant.also, valueOr(stockPlants_, entry.stockPlant).shown, entry.note.simplified()}) {
        const QString searched = searchText(text);
        if (std::ranges::any_of(query.words,
                                [&](const QString& word) { return searched.contains(word) && !seen.contains(word); }))
            parts.append(text);
    }
    return {FindKind::Batch, entry.code,        plant.shown, parts.join(QStringLiteral(" \u00B7 ")),
            "batches",       placeOf(entry.id), {},          entry.head == query.whole};
}

void FindIndex::addBatches(const Query& query, FindAnswer& answer, int& bestRank) const {
    struct Found {
        int rank{};
        const BatchEntry* entry{};
    };
    std::vector<Found> found;
    for (const BatchEntry& entry : batches_)
        if (const int rank = rankOf(entry, query); rank != noMatch) found.push_back({rank, &entry});
    const std::size_t room = static_cast<std::size_t>(mostShown) - answer.shown.size();
    const auto end = found.begin() + static_cast<std::ptrdiff_t>(std::min(room, found.size()));
    std::partial_sort(found.begin(), end, found.end(), [](const Found& one, const Found& other) {
        if (one.rank != other.rank) return one.rank < other.rank;
        if (one.entry->stuckOn != other.entry->stuckOn) return one.entry->stuckOn > other.entry->stuckOn;
        return one.entry->code < other.entry->code;
    });
    answer.total += static_cast<int>(found.size());
    if (found.empty()) return;
    std::vector<FoundThing> batches;
    for (auto each = found.begin(); each != end; ++each) batches.push_back(shown(*each->entry, query));
    const bool comesFirst = found.front().rank < bestRank;
    answer.shown.insert(comesFirst ? answer.shown.begin() : answer.shown.end(), batches.begin(), batches.end());
    bestRank = std::min(bestRank, found.front().rank);
}

FindAnswer FindIndex::find(const QString& typed) const {
    const Query query(typed);
    FindAnswer answer;
    if (query.words.isEmpty()) return answer;
    std::vector<Match> matches;
    matchThings(things_, query, matches);
    matchThings(doors_, query, matches);
    std::array<int, mostOfAKind.size()> best;
    best.fill(1000);
    const auto kindOf = [](const Match& match) { return static_cast<std::size_t>(match.thing->found.kind); };
    for (const Match& match : matches) best[kindOf(match)] = std::min(best[kindOf(match)], match.rank);
    std::ranges::stable_sort(matches, [&](const Match& one, const Match& other) {
        const std::size_t a = kindOf(one), b = kindOf(other);
        if (a != b) return best[a] != best[b] ? best[a] < best[b] : a < b;
        return one.rank < other.rank;
    });
    std::array<std::size_t, mostOfAKind.size()> taken{};
    for (const Match& match : matches) {
        if (taken[kindOf(match)]++ >= mostOfAKind[kindOf(match)]) continue;
        answer.shown.push_back(match.thing->found);
        answer.shown.back().isExact = match.rank == exact;
    }
    answer.total = static_cast<int>(matches.size());
    int bestRank = std::ranges::min(best);
    addBatches(query, answer, bestRank);
    return answer;
}

}  // namespace desktop
