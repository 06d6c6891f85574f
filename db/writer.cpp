// SPDX-License-Identifier: MIT
#include "db/writer.h"

#include "db/tables/batch_table.h"
#include "db/tables/check_schedule_table.h"
#include "db/tables/check_table.h"
#include "db/tables/cutting_kind_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/facts_table.h"
#include "db/tables/loss_cause_table.h"
#include "db/tables/medium_table.h"
#include "db/tables/method_table.h"
#include "db/tables/mix_table.h"
#include "db/tables/photo_table.h"
#include "db/tables/plant_table.h"
#include "db/tables/potting_table.h"
#include "db/tables/session_table.h"
#include "db/tables/station_table.h"
#include "db/tables/stock_plant_table.h"
#include "db/tables/treatment_table.h"
#include "db/tables/trial_batch_table.h"
#include "db/tables/trial_table.h"
#include "db/writer_rows.h"

namespace db {

core::PlantId Writer::add(core::Plant plant) {
    return addThing(*inside_.connection, plant);
}

core::StockPlantId Writer::add(core::StockPlant stockPlant) {
    return addThing(*inside_.connection, stockPlant);
}

core::MethodId Writer::add(core::Method method) {
    return addThing(*inside_.connection, method);
}

core::StationId Writer::add(core::Station station) {
    return addThing(*inside_.connection, station);
}

core::MediumId Writer::add(core::Medium medium) {
    return addThing(*inside_.connection, medium);
}

core::TreatmentId Writer::add(core::Treatment treatment) {
    return addThing(*inside_.connection, treatment);
}

core::CuttingKindId Writer::add(core::CuttingKind cuttingKind) {
    return addThing(*inside_.connection, cuttingKind);
}

core::LossCauseId Writer::add(core::LossCause lossCause) {
    return addThing(*inside_.connection, lossCause);
}

core::TrialId Writer::add(core::Trial trial) {
    return addThing(*inside_.connection, trial);
}

core::SessionId Writer::add(core::Session session) {
    return addThing(*inside_.connection, session);
}

core::BatchId Writer::add(core::Batch batch) {
    return addThing(*inside_.connection, batch);
}

core::CheckId Writer::add(core::Check check) {
    return addThing(*inside_.connection, check);
}

core::CheckScheduleId Writer::add(core::CheckSchedule schedule) {
    return addThing(*inside_.connection, schedule);
}

core::PhotoId Writer::add(core::PhotoRecord photo) {
    if (!photo.photo.id.isSet()) photo.photo.id.value = drawId();
    insertRow(*inside_.connection, photo);
    return photo.photo.id;
}

void Writer::change(const core::LogbookFacts& facts) {
    requireFound(updateRow(*inside_.connection, facts));
}

void Writer::change(const core::Plant& plant) {
    requireFound(updateRow(*inside_.connection, plant));
}

void Writer::change(const core::StockPlant& stockPlant) {
    requireFound(updateRow(*inside_.connection, stockPlant));
}

void Writer::change(const core::Method& method) {
    requireFound(updateRow(*inside_.connection, method));
}

void Writer::change(const core::Station& station) {
    requireFound(updateRow(*inside_.connection, station));
}

void Writer::change(const core::Medium& medium) {
    requireFound(updateRow(*inside_.connection, medium));
}

void Writer::change(const core::Treatment& treatment) {
    requireFound(updateRow(*inside_.connection, treatment));
}

void Writer::change(const core::CuttingKind& cuttingKind) {
    requireFound(updateRow(*inside_.connection, cuttingKind));
}

void Writer::change(const core::LossCause& lossCause) {
    requireFound(updateRow(*inside_.connection, lossCause));
}

void Writer::change(const core::Trial& trial) {
    requireFound(updateRow(*inside_.connection, trial));
}

void Writer::change(const core::Session& session) {
    requireFound(updateRow(*inside_.connection, session));
}

void Writer::change(const core::Batch& batch) {
    requireFound(updateRow(*inside_.connection, batch));
}

void Writer::change(const core::Check& check) {
    requireFound(updateRow(*inside_.connection, check));
}

void Writer::change(const core::CheckSchedule& schedule) {
    requireFound(updateRow(*inside_.connection, schedule));
}

void Writer::change(const core::Photo& photo) {
    requireFound(updateRow(*inside_.connection, photo));
}

void Writer::remove(core::PlantId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::StockPlantId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::MethodId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::StationId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::MediumId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::TreatmentId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::CuttingKindId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::LossCauseId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::TrialId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::SessionId id) {
    deleteMixesOf(*inside_.connection, id);
    deleteExpensesOf(*inside_.connection, id);
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::BatchId id) {
    deleteChecksOf(*inside_.connection, id);
    deletePhotosOf(*inside_.connection, id);
    deleteExpensesOf(*inside_.connection, id);
    deletePottingsOf(*inside_.connection, id);
    releaseDealt(*inside_.connection, id);
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::CheckId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::CheckScheduleId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::PhotoId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

}  // namespace db
