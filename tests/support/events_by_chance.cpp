// SPDX-License-Identifier: MIT
#include "tests/support/events_by_chance.h"

#include <stdexcept>

#include "core/batch/position_rules.h"
#include "db/actions/event_actions.h"
#include "db/actions/look_actions.h"
#include "db/actions/merge_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/actions/station_actions.h"
#include "tests/support/chance_values.h"

namespace support {

namespace {

core::Moment endOf(core::Date day) {
    return std::chrono::sys_days(day) + std::chrono::days(1);
}

core::Moment someMoment(Chance& chance, core::Date today) {
    return std::chrono::sys_days(someDay(chance, today)) + std::chrono::seconds(pick(chance, 86'400));
}

core::Reading newReading(const core::Shelves& shelves, Chance& chance, core::Date today) {
    core::Reading reading;
    reading.station = some(shelves.stations, chance).id;
    reading.quantity = static_cast<core::Quantity>(pick(chance, static_cast<int>(core::allQuantities.size())));
    reading.readAt = someMoment(chance, today);
    const core::QuantityFacts& facts = core::factsOf(reading.quantity);
    reading.value = facts.low + (facts.high - facts.low) * pick(chance, 110) / 100;
    return reading;
}

core::Reading recordedReading(const db::Logbook& logbook, Chance& chance) {
    return some(logbook.newestReadings(), chance);
}

core::Care newCare(const core::Shelves& shelves, Chance& chance, core::Date today) {
    core::Care care;
    care.station = some(shelves.stations, chance).id;
    care.doneAt = someMoment(chance, today);
    care.kind = some(std::vector(core::allCareKinds.begin(), core::allCareKinds.end()), chance);
    care.note = someName(chance);
    if (pick(chance, 3) == 0) care.litres = 0.5 * pick(chance, 40);
    return care;
}

core::Care recordedCare(const db::Logbook& logbook, Chance& chance) {
    const core::StationId station = some(logbook.shelves().stations, chance).id;
    return some(logbook.care(station, endOf(core::Date{std::chrono::year(1990) / 1 / 1}),
                             endOf(core::Date{std::chrono::year(2090) / 1 / 1})),
                chance);
}

core::PhotoRecord newPhoto(const db::Logbook& logbook, Chance& chance, core::Date today) {
    core::PhotoRecord record;
    record.photo.batch = someBatch(logbook, chance);
    record.photo.takenOn = core::addDays(today, -pick(chance, 30));
    record.photo.caption = someName(chance);
    record.image = {0xFF, 0xD8, static_cast<std::uint8_t>(pick(chance, 8) == 0 ? 0 : 0xFF), 0xE0};
    for (int bytes = pick(chance, 2000); bytes > 0; --bytes)
        record.image.push_back(static_cast<std::uint8_t>(pick(chance, 256)));
    return record;
}

core::Photo recordedPhoto(const db::Logbook& logbook, Chance& chance) {
    std::vector<core::Photo> photos;
    for (const core::BatchLine& line : logbook.batchLines())
        for (core::Photo& photo : logbook.photos(line.batch.id)) photos.push_back(std::move(photo));
    return some(photos, chance);
}

Done doRecordReadings(db::Logbook& logbook, Chance& chance, core::Date today) {
    std::vector<core::Reading> readings;
    for (int number = pick(chance, 3); number >= 0; --number)
        readings.push_back(newReading(logbook.shelves(), chance, today));
    return db::recordReadings(logbook, readings, endOf(today));
}

Done doChangeReading(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Reading reading = newReading(logbook.shelves(), chance, today);
    reading.id = recordedReading(logbook, chance).id;
    return db::changeReading(logbook, reading, endOf(today));
}

Done doChangeCare(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Care care = newCare(logbook.shelves(), chance, today);
    care.id = recordedCare(logbook, chance).id;
    return db::changeCare(logbook, care, endOf(today));
}

Done doChangePhoto(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Photo photo = recordedPhoto(logbook, chance);
    photo.caption = someName(chance);
    if (pick(chance, 3) == 0) photo.takenOn = someDay(chance, today);
    return db::changePhoto(logbook, photo, today);
}

Done doKeepSchedule(db::Logbook& logbook, Chance& chance) {
    core::Shelves shelves = logbook.shelves();
    core::CheckSchedule schedule = some(shelves.checkSchedules, chance, true);
    schedule.name = someName(chance);
    schedule.firstAfterDays = pick(chance, 20);
    schedule.everyDays = pick(chance, 20);
    if (!shelves.checkSchedules.empty() && pick(chance, 2) == 0) {
        core::Method method = some(shelves.methods, chance);
        method.checkSchedule = some(shelves.checkSchedules, chance).id;
        return db::keep(logbook, method);
    }
    return db::keep(logbook, schedule);
}

/// What is read and done at a station in one go; what was read there before is changed or goes.
Done doKeepVisit(db::Logbook& logbook, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    db::StationVisit visit;
    visit.station = some(shelves.stations, chance).id;
    visit.readings.push_back(newReading(shelves, chance, today));
    visit.readings.front().station = visit.station;
    visit.care.push_back(newCare(shelves, chance, today));
    visit.care.front().station = visit.station;
    for (const core::Reading& newest : logbook.newestReadings())
        if (newest.station == visit.station && pick(chance, 2) == 0) visit.gone.push_back(newest);
    return db::keepVisit(logbook, visit, endOf(today));
}

/// Of one batch: the next undecided position rooted, at a look of its own or at one that was.
Done doRecordLook(db::Logbook& logbook, Chance& chance, core::Date today) {
    std::vector<core::BatchRecord> placed;
    for (core::BatchRecord& record : logbook.batchRecords())
        if (!record.batch.positions.empty()) placed.push_back(std::move(record));
    const core::BatchRecord record = some(placed, chance);
    core::Check check = pick(chance, 2) == 0 ? some(record.checks, chance) : core::Check{};
    check.batch = record.batch.id;
    if (!check.id.isSet()) check.checkedOn = core::addDays(today, -pick(chance, 20));
    for (const core::PositionState& state : core::positionStates(record)) {
        if (state.finding) continue;
        check.findings.push_back({.position = state.position, .outcome = core::Outcome::Rooted, .cause = {}});
        check.rooted += pick(chance, 8) == 0 ? 0 : 1;
        break;
    }
    return db::recordLook(logbook, {check}, today);
}

/// Two of a shelf; the same one twice once in a while.
template <class Thing, class Merge>
Done mergeTwo(db::Logbook& logbook, const std::vector<Thing>& shelf, Chance& chance, const Merge& merge) {
    return merge(logbook, some(shelf, chance).id, some(shelf, chance).id);
}

/// Two that agree in `member`, without which they can't be one; any two once in a while.
template <class Thing, class Member, class Merge>
Done mergeAlike(db::Logbook& logbook, const std::vector<Thing>& shelf, Member Thing::*member, Chance& chance,
                const Merge& merge) {
    if (pick(chance, 6) == 0) return mergeTwo(logbook, shelf, chance, merge);
    const Thing first = some(shelf, chance);
    std::vector<Thing> alike;
    for (const Thing& other : shelf)
        if (other.id != first.id && other.*member == first.*member) alike.push_back(other);
    return merge(logbook, first.id, some(alike, chance).id);
}

}  // namespace

Done performEvent(db::Logbook& logbook, Action action, Chance& chance, core::Date today) {
    switch (action) {
        case Action::KeepCheckSchedule:
            return doKeepSchedule(logbook, chance);
        case Action::RemoveCheckSchedule:
            return db::remove(logbook, some(logbook.shelves().checkSchedules, chance).id);
        case Action::RecordReadings:
            return doRecordReadings(logbook, chance, today);
        case Action::ChangeReading:
            return doChangeReading(logbook, chance, today);
        case Action::DeleteReading:
            return db::deleteReading(logbook, recordedReading(logbook, chance));
        case Action::RecordCare:
            return db::recordCare(logbook, {newCare(logbook.shelves(), chance, today)}, endOf(today));
        case Action::ChangeCare:
            return doChangeCare(logbook, chance, today);
        case Action::DeleteCare:
            return db::deleteCare(logbook, recordedCare(logbook, chance));
        case Action::AddPhotos:
            return db::addPhotos(logbook, {newPhoto(logbook, chance, today)}, today);
        case Action::ChangePhoto:
            return doChangePhoto(logbook, chance, today);
        case Action::DeletePhoto:
            return db::deletePhoto(logbook, recordedPhoto(logbook, chance));
        case Action::KeepVisit:
            return doKeepVisit(logbook, chance, today);
        case Action::RecordLook:
            return doRecordLook(logbook, chance, today);
        default:
            throw std::logic_error("not an event");
    }
}

Done performMerge(db::Logbook& logbook, Action action, Chance& chance) {
    const core::Shelves shelves = logbook.shelves();
    switch (action) {
        case Action::MergePlants:
            return mergeTwo(logbook, shelves.plants, chance, db::mergePlants);
        case Action::MergeStockPlants:
            return mergeAlike(logbook, shelves.stockPlants, &core::StockPlant::plant, chance, db::mergeStockPlants);
        case Action::MergeStations:
            return mergeAlike(logbook, shelves.stations, &core::Station::method, chance, db::mergeStations);
        case Action::MergeMedia:
            return mergeTwo(logbook, shelves.media, chance, db::mergeMedia);
        case Action::MergeTreatments:
            return mergeTwo(logbook, shelves.treatments, chance, db::mergeTreatments);
        case Action::MergeCuttingKinds:
            return mergeTwo(logbook, shelves.cuttingKinds, chance, db::mergeCuttingKinds);
        case Action::MergeLossCauses:
            return mergeTwo(logbook, shelves.lossCauses, chance, db::mergeLossCauses);
        default:
            throw std::logic_error("not a merge");
    }
}

}  // namespace support
