// SPDX-License-Identifier: MIT
#include "tests/db/exchange/plain_ids.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace support {

namespace {

/// Old value of an id to new.
using Renaming = std::map<std::int64_t, std::int64_t>;

template <class Thing, class Key>
Renaming sortAndNumber(std::vector<Thing>& things, Key key) {
    std::ranges::stable_sort(things, {}, key);
    Renaming renaming{{0, 0}};
    for (Thing& thing : things) {
        const std::int64_t number = static_cast<std::int64_t>(renaming.size());
        renaming[thing.id.value] = number;
        thing.id.value = number;
    }
    return renaming;
}

template <class Id>
void rename(Id& id, const Renaming& renaming) {
    id.value = renaming.at(id.value);
}

template <class Thing>
std::string nameOf(const Thing& thing) {
    return thing.name;
}

Renaming numberSessions(core::Records& records) {
    std::map<std::int64_t, std::string> codes;
    for (const core::BatchRecord& record : records.batches) {
        std::string& first = codes[record.batch.session.value];
        if (first.empty() || record.batch.code < first) first = record.batch.code;
    }
    return sortAndNumber(records.sessions, [&codes](const core::Session& session) {
        return std::tuple(session.date, session.worker, session.note, codes[session.id.value]);
    });
}

void renameIn(core::BatchRecord& record, const core::BatchId number, const Renaming& causes) {
    std::ranges::sort(record.checks, {}, &core::Check::checkedOn);
    record.batch.id = number;
    std::int64_t check = 0;
    for (core::Check& each : record.checks) {
        each.id.value = ++check;
        each.batch = number;
        for (core::Loss& loss : each.losses) rename(loss.cause, causes);
    }
}

}  // namespace

core::Records withPlainIds(core::Records records) {
    core::Shelves& shelves = records.shelves;
    const Renaming plants =
        sortAndNumber(shelves.plants, [](const core::Plant& p) { return std::tuple(p.botanicalName, p.cultivar); });
    for (core::StockPlant& stockPlant : shelves.stockPlants) rename(stockPlant.plant, plants);
    const Renaming stockPlants = sortAndNumber(
        shelves.stockPlants, [](const core::StockPlant& s) { return std::tuple(s.plant.value, s.label); });
    const Renaming methods = sortAndNumber(shelves.methods, nameOf<core::Method>);
    for (core::Station& station : shelves.stations) rename(station.method, methods);
    const Renaming stations = sortAndNumber(shelves.stations, nameOf<core::Station>);
    const Renaming media = sortAndNumber(shelves.media, nameOf<core::Medium>);
    const Renaming treatments = sortAndNumber(shelves.treatments, nameOf<core::Treatment>);
    const Renaming kinds = sortAndNumber(shelves.cuttingKinds, nameOf<core::CuttingKind>);
    const Renaming causes = sortAndNumber(shelves.lossCauses, [](const core::LossCause&) { return 0; });
    const Renaming trials = sortAndNumber(shelves.trials, nameOf<core::Trial>);
    const Renaming sessions = numberSessions(records);
    std::ranges::sort(records.batches, {}, [](const core::BatchRecord& record) { return record.batch.code; });
    std::int64_t number = 0;
    for (core::BatchRecord& record : records.batches) {
        core::Batch& batch = record.batch;
        rename(batch.plant, plants);
        rename(batch.stockPlant, stockPlants);
        rename(batch.method, methods);
        rename(batch.station, stations);
        rename(batch.medium, media);
        rename(batch.treatment, treatments);
        rename(batch.cuttingKind, kinds);
        rename(batch.trial, trials);
        rename(batch.session, sessions);
        renameIn(record, core::BatchId{++number}, causes);
    }
    return records;
}

}  // namespace support
