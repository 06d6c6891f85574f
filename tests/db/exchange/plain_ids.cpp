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
        for (core::Finding& finding : each.findings) rename(finding.cause, causes);
    }
}

struct ShelfRenamings {
    const Renaming &plants, &stockPlants, &methods, &stations, &media, &treatments, &kinds, &batches;
};

void renameInTrials(core::Shelves& shelves, const ShelfRenamings& to) {
    for (core::Trial& trial : shelves.trials) {
        for (core::TrialArm& arm : trial.arms) {
            rename(arm.method, to.methods);
            rename(arm.treatment, to.treatments);
            rename(arm.medium, to.media);
            rename(arm.cuttingKind, to.kinds);
        }
        for (core::TrialBatch& dealt : trial.batches) {
            rename(dealt.station, to.stations);
            rename(dealt.plant, to.plants);
            rename(dealt.stockPlant, to.stockPlants);
            rename(dealt.batch, to.batches);
        }
    }
    for (core::Plan& plan : shelves.plans) {
        rename(plan.plant, to.plants);
        rename(plan.method, to.methods);
    }
    sortAndNumber(shelves.plans, [](const core::Plan& plan) {
        return std::tuple(plan.plant, plan.method, plan.needBy, plan.wanted, plan.assurance, plan.pottedLivePercent,
                          plan.hardeningDays, plan.pottingDays, plan.note);
    });
}

std::string contentOf(const core::KeptMix& mix) {
    return core::isoText(mix.madeAt) + '\n' + std::string(core::wordFor(mix.kind)) + '\n' + mix.title + '\n' +
           mix.amounts + '\n' + mix.workings + '\n' + mix.cautions;
}

/// Care first, by what was mixed for it where all else is the same; then the mixes.
void numberCareAndMixes(core::Records& records, const Renaming& sessions) {
    std::ranges::stable_sort(records.mixes, {}, contentOf);
    std::map<std::int64_t, std::string> mixed;
    for (const core::KeptMix& mix : records.mixes)
        if (mix.care.isSet()) mixed[mix.care.value] += contentOf(mix);
    const Renaming care = sortAndNumber(records.care, [&](const core::Care& c) {
        return std::tuple(c.doneAt, c.station, c.kind, c.note, c.litres, mixed[c.id.value]);
    });
    for (core::KeptMix& mix : records.mixes) {
        rename(mix.session, sessions);
        rename(mix.care, care);
    }
    sortAndNumber(records.mixes,
                  [](const core::KeptMix& mix) { return std::tuple(contentOf(mix), mix.session, mix.care); });
}

void numberConditions(core::Records& records, const Renaming& stations, const Renaming& plants) {
    for (core::LoggerDay& day : records.loggerDays) rename(day.station, stations);
    std::ranges::sort(records.loggerDays, {},
                      [](const core::LoggerDay& day) { return std::tuple(day.station, day.quantity, day.day); });
    sortAndNumber(records.loggerFormats, nameOf<core::LoggerFormat>);
    for (core::OwnBand& band : records.shelves.ownBands) rename(band.plant, plants);
    sortAndNumber(records.shelves.ownBands,
                  [](const core::OwnBand& band) { return std::tuple(band.plant, band.quantity, band.stage); });
}

void numberPrices(core::Shelves& shelves, const Renaming& methods, const Renaming& stations, const Renaming& media,
                  const Renaming& treatments) {
    for (core::Price& price : shelves.prices) {
        rename(price.method, methods);
        rename(price.station, stations);
        rename(price.medium, media);
        rename(price.treatment, treatments);
    }
    sortAndNumber(shelves.prices, [](const core::Price& p) {
        return std::tuple(p.kind, p.what, p.from, p.basis, p.method, p.station, p.medium, p.treatment);
    });
    for (core::Lot& lot : shelves.lots) {
        rename(lot.medium, media);
        rename(lot.treatment, treatments);
    }
    sortAndNumber(shelves.lots,
                  [](const core::Lot& lot) { return std::tuple(lot.usedFrom, lot.name, lot.medium, lot.treatment); });
}

/// What happened at stations and to batches, in an order of its own content.
void numberEvents(core::Records& records, const Renaming& stations, const Renaming& batches, const Renaming& sessions) {
    for (core::Reading& reading : records.readings) rename(reading.station, stations);
    for (core::Care& care : records.care) rename(care.station, stations);
    for (core::Expense& expense : records.expenses) {
        rename(expense.batch, batches);
        rename(expense.session, sessions);
    }
    for (core::Potting& potting : records.pottings) rename(potting.batch, batches);
    for (core::PhotoRecord& record : records.photos) rename(record.photo.batch, batches);
    sortAndNumber(records.readings,
                  [](const core::Reading& r) { return std::tuple(r.readAt, r.station, r.quantity, r.value, r.note); });
    sortAndNumber(records.expenses, [](const core::Expense& e) {
        return std::tuple(e.spentOn, e.batch, e.session, e.what, e.hundredths, e.minutes);
    });
    sortAndNumber(records.pottings,
                  [](const core::Potting& p) { return std::tuple(p.countedOn, p.batch, p.potted, p.lost, p.note); });
    std::ranges::sort(records.photos, {}, [](const core::PhotoRecord& record) {
        return std::tuple(record.photo.takenOn, record.photo.batch, record.photo.caption, record.image);
    });
    std::int64_t number = 0;
    for (core::PhotoRecord& record : records.photos) record.photo.id.value = ++number;
}

}  // namespace

core::Records withPlainIds(core::Records records) {
    core::Shelves& shelves = records.shelves;
    const Renaming schedules = sortAndNumber(shelves.checkSchedules, nameOf<core::CheckSchedule>);
    for (core::Plant& plant : shelves.plants) rename(plant.checkSchedule, schedules);
    for (core::Method& method : shelves.methods) rename(method.checkSchedule, schedules);
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
    Renaming batches{{0, 0}};
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
        batches[batch.id.value] = ++number;
        renameIn(record, core::BatchId{number}, causes);
    }
    renameInTrials(shelves, {.plants = plants,
                             .stockPlants = stockPlants,
                             .methods = methods,
                             .stations = stations,
                             .media = media,
                             .treatments = treatments,
                             .kinds = kinds,
                             .batches = batches});
    numberEvents(records, stations, batches, sessions);
    numberPrices(shelves, methods, stations, media, treatments);
    numberCareAndMixes(records, sessions);
    numberConditions(records, stations, plants);
    return records;
}

}  // namespace support
