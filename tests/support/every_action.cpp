// SPDX-License-Identifier: MIT
#include "tests/support/every_action.h"

#include <memory>
#include <stdexcept>

#include "core/batch/batch_code.h"
#include "core/batch/position_rules.h"
#include "core/demo/demo_season.h"
#include "db/actions/check_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/session_actions.h"
#include "db/actions/shelf_actions.h"
#include "tests/support/chance_values.h"
#include "tests/support/conditions_by_chance.h"
#include "tests/support/events_by_chance.h"
#include "tests/support/money_by_chance.h"
#include "tests/support/trials_by_chance.h"

namespace support {

namespace {

core::Batch newBatch(const core::Shelves& shelves, Chance& chance) {
    core::Batch batch;
    batch.plant = some(shelves.plants, chance).id;
    for (const core::StockPlant& mother : shelves.stockPlants)
        if (mother.plant == batch.plant) batch.stockPlant = mother.id;
    const core::Station station = some(shelves.stations, chance);
    batch.station = station.id;
    batch.method = station.method;
    batch.treatment = some(shelves.treatments, chance, true).id;
    batch.medium = some(shelves.media, chance, true).id;
    batch.stuck = 1 + pick(chance, 40) - pick(chance, 12) / 11 * 40;  // sometimes below one
    return batch;
}

/// Where there is room; where another stands once in a while.
void standSomewhere(const db::Logbook& logbook, core::Batch& batch, Chance& chance) {
    const core::Shelves shelves = logbook.shelves();
    const core::Station* station = core::find(shelves.stations, batch.station);
    if (station == nullptr || !station->hasLayout() || pick(chance, 3) == 0) return;
    std::vector<core::HeldPosition> held;
    if (pick(chance, 8) != 0)
        for (const core::BatchRecord& record : logbook.batchRecordsAt(batch.station))
            for (core::HeldPosition& one : core::heldPositions(record)) held.push_back(std::move(one));
    batch.positions = core::textOf(core::freePositions(*station, held, batch.stuck));
}

Done doStickSession(db::Logbook& logbook, Chance& chance, core::Date today) {
    db::SessionDraft draft;
    draft.session.date = someDay(chance, today);
    draft.session.worker = "CD";
    core::Shelves shelves = logbook.shelves();
    if (pick(chance, 3) == 0) {
        core::Plant plant;
        plant.id.value = db::newId();
        plant.botanicalName = someName(chance);
        draft.made.plants.push_back(plant);
        shelves.plants.push_back(plant);
    }
    for (int number = pick(chance, 4); number >= 0; --number) draft.batches.push_back(newBatch(shelves, chance));
    standSomewhere(logbook, draft.batches.front(), chance);
    auto done = db::stickSession(logbook, std::move(draft), today);
    if (!done) return core::refused(std::move(done.error()));
    return done->changes;
}

Done doChangeBatch(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Batch batch = some(logbook.batchLines(), chance).batch;
    batch.stuck += pick(chance, 7) - 2;
    batch.note = someName(chance);
    batch.licence = someName(chance);
    batch.treatment = some(logbook.shelves().treatments, chance, true).id;
    if (pick(chance, 4) == 0) standSomewhere(logbook, batch, chance);
    if (pick(chance, 4) == 0) batch.code = core::batchCode(2020, 1 + pick(chance, 50));
    return db::changeBatch(logbook, batch, today);
}

Done doChangeSession(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Session session = some(logbook.sessions(), chance);
    session.date = core::addDays(session.date, pick(chance, 5) - 3);
    session.worker = someName(chance);
    return db::changeSession(logbook, session, today);
}

/// Of what rooted, where positions are undecided; one too many once in a while.
void findSomewhere(const core::BatchRecord& record, core::Check& check, Chance& chance) {
    int left = check.rooted + pick(chance, 8) / 7;
    for (const core::PositionState& state : core::positionStates(record)) {
        if (left == 0) return;
        if (state.finding) continue;
        check.findings.push_back({.position = state.position, .outcome = core::Outcome::Rooted, .cause = {}});
        --left;
    }
}

core::Check someCheck(const db::Logbook& logbook, core::BatchId batch, Chance& chance, core::Date today) {
    core::Check check;
    check.batch = batch;
    check.checkedOn = someDay(chance, today);
    check.rooted = pick(chance, 4);
    check.withdrawn = pick(chance, 6) / 5;
    if (pick(chance, 3) == 0)
        check.losses.push_back({.cause = some(logbook.shelves().lossCauses, chance).id, .count = 1 + pick(chance, 2)});
    if (pick(chance, 5) == 0) check.losses.push_back({.cause = {}, .count = 1});
    const auto record = logbook.batch(batch);
    if (record && pick(chance, 2) == 0) findSomewhere(*record, check, chance);
    return check;
}

Done doRecordChecks(db::Logbook& logbook, Chance& chance, core::Date today) {
    std::vector<db::CheckDraft> round;
    for (int number = pick(chance, 3); number >= 0; --number) {
        const core::BatchLine line = some(logbook.batchLines(), chance);
        db::CheckDraft draft{.check = someCheck(logbook, line.batch.id, chance, today),
                             .closesBatch = pick(chance, 6) == 0,
                             .closeReason = {}};
        if (line.tally.lastCheckedOn) draft.check.checkedOn = core::addDays(*line.tally.lastCheckedOn, pick(chance, 9));
        round.push_back(std::move(draft));
    }
    return db::recordChecks(logbook, round, today);
}

core::Check recordedCheck(const db::Logbook& logbook, Chance& chance) {
    const auto record = logbook.batch(someBatch(logbook, chance));
    return record ? some(record->checks, chance) : core::Check{};
}

Done doChangeCheck(db::Logbook& logbook, Chance& chance, core::Date today) {
    const core::Check before = recordedCheck(logbook, chance);
    core::Check after = someCheck(logbook, before.batch, chance, today);
    after.id = before.id;
    if (pick(chance, 3) != 0) after.checkedOn = before.checkedOn;
    return db::changeCheck(logbook, after, today);
}

Done doAddRecords(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Records records = core::demoSeason(
        {.batches = 1 + pick(chance, 3), .seed = static_cast<std::uint32_t>(chance()), .today = today});
    for (core::BatchRecord& record : records.batches)
        record.batch.code = "from afar " + std::to_string(pick(chance, 100000));
    return db::addRecords(logbook, std::move(records), "records from afar");
}

template <class Thing>
Done keepNamed(db::Logbook& logbook, Thing thing, Chance& chance) {
    thing.name = someName(chance);
    return db::keep(logbook, thing);
}

Done doKeepPlant(db::Logbook& logbook, Chance& chance) {
    core::Plant plant = some(logbook.shelves().plants, chance, true);
    plant.botanicalName = someName(chance);
    plant.usualRootingDaysHigh = pick(chance, 30);  // none is refused
    plant.isProtected = pick(chance, 2) == 0;
    plant.isEdible = pick(chance, 2) == 0;
    return db::keep(logbook, plant);
}

Done doKeepStockPlant(db::Logbook& logbook, Chance& chance) {
    const core::Shelves shelves = logbook.shelves();
    core::StockPlant mother = some(shelves.stockPlants, chance, true);
    if (!mother.id.isSet()) mother.plant = some(shelves.plants, chance).id;
    mother.label = someName(chance);
    return db::keep(logbook, mother);
}

Done doKeepStation(db::Logbook& logbook, Chance& chance) {
    const core::Shelves shelves = logbook.shelves();
    core::Station station = some(shelves.stations, chance, true);
    station.method = some(shelves.methods, chance).id;
    station.rows = pick(chance, 9);
    station.columns = station.rows == 0 ? 0 : pick(chance, 14);
    station.isStaggered = pick(chance, 2) == 0;
    station.blocked = pick(chance, 3) == 0 ? "A1" : "";
    return keepNamed(logbook, station, chance);
}

Done doKeepMedium(db::Logbook& logbook, Chance& chance) {
    core::Medium medium = some(logbook.shelves().media, chance, true);
    medium.components.clear();
    for (int number = pick(chance, 4); number > 0; --number)
        medium.components.push_back({.name = "part " + std::to_string(number), .parts = 0.5 * pick(chance, 8)});
    return keepNamed(logbook, medium, chance);
}

Done doKeepTreatment(db::Logbook& logbook, Chance& chance) {
    core::Treatment treatment = some(logbook.shelves().treatments, chance, true);
    treatment.auxins.clear();
    for (int number = pick(chance, 3); number > 0; --number)
        treatment.auxins.push_back(
            {.name = "IBA", .form = core::AuxinForm::Salt, .milligramsPerLitre = 250.0 * number});
    treatment.carrier = static_cast<core::Carrier>(pick(chance, 4));
    return keepNamed(logbook, treatment, chance);
}

Done doKeepLossCause(db::Logbook& logbook, Chance& chance) {
    core::LossCause cause = some(logbook.shelves().lossCauses, chance, true);
    cause.key = static_cast<char>('a' + pick(chance, 26));
    return keepNamed(logbook, cause, chance);
}

Done doKeepTrial(db::Logbook& logbook, Chance& chance) {
    core::Trial trial = some(logbook.shelves().trials, chance, true);
    trial.horizonDay = 7 * pick(chance, 6);
    trial.allocationSeed = static_cast<std::uint32_t>(chance());
    return keepNamed(logbook, trial, chance);
}

Done doKeepFacts(db::Logbook& logbook, Chance& chance) {
    core::LogbookFacts facts = logbook.shelves().facts;
    facts.grower = someName(chance);
    facts.checkEveryDays = pick(chance, 20);
    facts.altitudeMetres = 100.0 * pick(chance, 66) - 430;  // a mountain too high once in a while
    facts.degreeDayBase = pick(chance, 12);
    facts.falseAlarmRate = 0.01 * pick(chance, 9);
    facts.level = 0.8 + 0.01 * pick(chance, 20);
    facts.units.ec = static_cast<core::EcUnit>(pick(chance, 5));
    facts.currency = pick(chance, 4) == 0 ? "euro" : "CHF";
    return db::keep(logbook, facts);
}

}  // namespace

Done perform(db::Logbook& logbook, Action action, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    switch (action) {
        case Action::StickSession:
            return doStickSession(logbook, chance, today);
        case Action::ChangeBatch:
            return doChangeBatch(logbook, chance, today);
        case Action::ChangeSession:
            return doChangeSession(logbook, chance, today);
        case Action::DeleteBatch:
            return db::deleteBatch(logbook, someBatch(logbook, chance));
        case Action::CloseBatch:
            return db::closeBatch(logbook, someBatch(logbook, chance), someDay(chance, today), someName(chance), today);
        case Action::ReopenBatch:
            return db::reopenBatch(logbook, someBatch(logbook, chance));
        case Action::RecordChecks:
            return doRecordChecks(logbook, chance, today);
        case Action::ChangeCheck:
            return doChangeCheck(logbook, chance, today);
        case Action::DeleteCheck:
            return db::deleteCheck(logbook, recordedCheck(logbook, chance).id);
        case Action::AddRecords:
            return doAddRecords(logbook, chance, today);
        case Action::KeepPlant:
            return doKeepPlant(logbook, chance);
        case Action::KeepStockPlant:
            return doKeepStockPlant(logbook, chance);
        case Action::KeepMethod:
            return keepNamed(logbook, some(shelves.methods, chance, true), chance);
        case Action::KeepStation:
            return doKeepStation(logbook, chance);
        case Action::KeepMedium:
            return doKeepMedium(logbook, chance);
        case Action::KeepTreatment:
            return doKeepTreatment(logbook, chance);
        case Action::KeepCuttingKind:
            return keepNamed(logbook, some(shelves.cuttingKinds, chance, true), chance);
        case Action::KeepLossCause:
            return doKeepLossCause(logbook, chance);
        case Action::KeepTrial:
            return doKeepTrial(logbook, chance);
        case Action::KeepFacts:
            return doKeepFacts(logbook, chance);
        case Action::RemovePlant:
            return db::remove(logbook, some(shelves.plants, chance).id);
        case Action::RemoveStockPlant:
            return db::remove(logbook, some(shelves.stockPlants, chance).id);
        case Action::RemoveMethod:
            return db::remove(logbook, some(shelves.methods, chance).id);
        case Action::RemoveStation:
            return db::remove(logbook, some(shelves.stations, chance).id);
        case Action::RemoveMedium:
            return db::remove(logbook, some(shelves.media, chance).id);
        case Action::RemoveTreatment:
            return db::remove(logbook, some(shelves.treatments, chance).id);
        case Action::RemoveCuttingKind:
            return db::remove(logbook, some(shelves.cuttingKinds, chance).id);
        case Action::RemoveLossCause:
            return db::remove(logbook, some(shelves.lossCauses, chance).id);
        case Action::RemoveTrial:
            return db::remove(logbook, some(shelves.trials, chance).id);
        case Action::KeepCheckSchedule:
        case Action::RemoveCheckSchedule:
        case Action::RecordReadings:
        case Action::ChangeReading:
        case Action::DeleteReading:
        case Action::RecordCare:
        case Action::ChangeCare:
        case Action::DeleteCare:
        case Action::AddPhotos:
        case Action::ChangePhoto:
        case Action::DeletePhoto:
        case Action::KeepVisit:
        case Action::RecordLook:
            return performEvent(logbook, action, chance, today);
        case Action::PlanTrial:
        case Action::ChangeTrial:
        case Action::AllocateAgain:
        case Action::PlaceAgain:
        case Action::StickTrialSession:
        case Action::KeepPlan:
        case Action::RemovePlan:
            return performTrial(logbook, action, chance, today);
        case Action::KeepMix:
        case Action::KeepMixWithCare:
        case Action::RemoveMix:
        case Action::SetOwnBand:
        case Action::RemoveOwnBand:
        case Action::AddLoggerDays:
        case Action::RemoveLoggerDays:
        case Action::KeepLoggerFormat:
        case Action::RemoveLoggerFormat:
            return performCondition(logbook, action, chance, today);
        case Action::KeepExpense:
        case Action::DeleteExpense:
        case Action::KeepPrice:
        case Action::RemovePrice:
        case Action::KeepLot:
        case Action::RemoveLot:
        case Action::KeepPotting:
        case Action::DeletePotting:
            return performMoney(logbook, action, chance, today);
        case Action::MergePlants:
        case Action::MergeStockPlants:
        case Action::MergeStations:
        case Action::MergeMedia:
        case Action::MergeTreatments:
        case Action::MergeCuttingKinds:
        case Action::MergeLossCauses:
            return performMerge(logbook, action, chance);
    }
    throw std::logic_error("an action without a generator");
}

db::OpenOptions testOptions(const std::string& author) {
    const auto seconds = std::make_shared<int>(0);
    const auto start = std::chrono::sys_days(std::chrono::year(2026) / 3 / 14) + std::chrono::hours(10);
    return {.clock = [=] { return std::chrono::sys_seconds(start) + std::chrono::seconds(++*seconds); },
            .author = author,
            .access = db::Access::ReadWrite,
            .asWindow = false,
            .patience = std::chrono::milliseconds(20)};
}

db::Logbook sampleLogbook(const std::filesystem::path& file, core::Date today, int batches) {
    core::LogbookFacts facts;
    facts.name = "Sample";
    db::Logbook logbook =
        file.empty() ? db::Logbook::inMemory(facts, testOptions()) : db::Logbook::create(file, facts, testOptions());
    const auto done =
        db::addRecords(logbook, core::demoSeason({.batches = batches, .seed = 7, .today = today}), "sample records");
    if (!done) throw std::logic_error(done.error().front().sentence);
    return logbook;
}

}  // namespace support
