// SPDX-License-Identifier: MIT
#include "db/actions/shelf_actions.h"

#include <utility>

#include "core/batch/position_rules.h"
#include "core/shelf_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/priced_things.h"
#include "db/actions/trial_actions.h"
#include "db/inside.h"
#include "db/tables/batch_table.h"
#include "db/tables/care_table.h"
#include "db/tables/check_table.h"
#include "db/tables/logger_day_table.h"
#include "db/tables/method_table.h"
#include "db/tables/own_band_table.h"
#include "db/tables/plan_table.h"
#include "db/tables/plant_table.h"
#include "db/tables/reading_table.h"
#include "db/tables/station_table.h"
#include "db/tables/stock_plant_table.h"
#include "db/tables/trial_batch_table.h"
#include "db/tables/trial_table.h"

namespace db {

namespace {

/// What the shelves alone can't say against a thing.
template <class Thing>
core::Refusals faultsWithRecords(const Logbook&, const Thing&) {
    return {};
}

core::Refusals faultsWithRecords(const Logbook& logbook, const core::Station& station) {
    if (!station.id.isSet()) return {};
    return core::faultsInLayout(station, logbook.batchRecordsAt(station.id));
}

template <class Thing>
core::Result<Changes> keepThing(Logbook& logbook, const Thing& thing, const std::string& named) {
    const std::string words = (thing.id.isSet() ? "change of " : "new ") + named;
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = core::faultsIn(thing, logbook.shelves());
        if (faults.empty()) faults = faultsWithRecords(logbook, thing);
        if (!faults.empty()) return faults;
        if (thing.id.isSet()) {
            writer.change(thing);
        } else {
            writer.add(thing);
        }
        return faults;
    });
}

core::Refusal inUse(const std::string& kind, const std::string& name, bool canBeRetired) {
    return {.field = kind,
            .value = name,
            .allowed = "one that nothing uses",
            .sentence = "The " + kind + " " + name + " is used by records, so it can't be removed; " +
                        (canBeRetired ? "retire it instead." : "remove it from those first.")};
}

core::Refusal priced(const std::string& kind, const std::string& name, const std::string& by) {
    return {.field = kind,
            .value = name,
            .allowed = "one that nothing uses",
            .sentence = "The " + kind + " " + name + " has the " + by +
                        ", so it can't be removed; remove that first, or retire the " + kind + " instead."};
}

/// The one setting that is another one, or "settings" where it is none or several.
std::string whatDiffers(const core::LogbookFacts& before, const core::LogbookFacts& after) {
    const std::pair<bool, const char*> differences[] = {
        {before.name != after.name, "name"},
        {before.grower != after.grower, "grower"},
        {before.rootLengthMillimetres != after.rootLengthMillimetres, "root length that counts"},
        {before.checkEveryDays != after.checkEveryDays, "days between checks"},
        {before.firstCheckAfterDays != after.firstCheckAfterDays, "days to the first check"},
        {before.horizonDay != after.horizonDay, "horizon day"},
        {before.level != after.level, "level of intervals"},
        {before.interval != after.interval, "interval of a strike rate"},
        {before.paper != after.paper, "paper"},
        {!(before.units == after.units), "units"},
        {before.currency != after.currency, "currency"},
        {before.altitudeMetres != after.altitudeMetres, "altitude"},
        {before.degreeDayBase != after.degreeDayBase, "base of degree-days"},
        {before.falseAlarmRate != after.falseAlarmRate, "rate of false alarms"},
        {before.citation != after.citation, "citation"}};
    std::string what = "settings";
    int count = 0;
    for (const auto& [differs, called] : differences)
        if (differs && ++count == 1) what = called;
    return count == 1 ? what : "settings";
}

std::string nameOf(const core::Plant& plant) {
    return core::fullName(plant);
}

std::string nameOf(const core::StockPlant& stockPlant) {
    return stockPlant.label;
}

std::string nameOf(const core::Method& method) {
    return method.name;
}

std::string nameOf(const core::Station& station) {
    return station.name;
}

std::string nameOf(const core::Medium& medium) {
    return medium.name;
}

std::string nameOf(const core::Treatment& treatment) {
    return treatment.name;
}

std::string nameOf(const core::CuttingKind& kind) {
    return kind.name;
}

std::string nameOf(const core::LossCause& cause) {
    return cause.name;
}

std::string nameOf(const core::Trial& trial) {
    return trial.name;
}

std::string nameOf(const core::CheckSchedule& schedule) {
    return schedule.name;
}

template <class Thing, class ThingId>
core::Result<Changes> removeThing(Logbook& logbook, ThingId id, const std::string& kind,
                                  std::vector<Thing> core::Shelves::*shelf, bool canBeRetired,
                                  const std::function<bool(Connection&)>& isUsed) {
    const core::Shelves shelves = logbook.shelves();
    const Thing* thing = core::find(shelves.*shelf, id);
    if (thing == nullptr) return core::refused({notThere(kind, kind)});
    const std::string name = nameOf(*thing);
    return actUnlessRefused(logbook, "removal of " + kind + ' ' + name, [&](Writer& writer) {
        if (logbook.inside().with(isUsed)) return core::Refusals{inUse(kind, name, canBeRetired)};
        if (const std::string by = namedByPrice(shelves, id); !by.empty())
            return core::Refusals{priced(kind, name, by)};
        writer.remove(id);
        return core::Refusals{};
    });
}

}  // namespace

core::Result<Changes> keep(Logbook& logbook, const core::Plant& plant) {
    return keepThing(logbook, plant, "plant " + nameOf(plant));
}

core::Result<Changes> keep(Logbook& logbook, const core::StockPlant& stockPlant) {
    return keepThing(logbook, stockPlant, "stock plant " + nameOf(stockPlant));
}

core::Result<Changes> keep(Logbook& logbook, const core::Method& method) {
    return keepThing(logbook, method, "method " + nameOf(method));
}

core::Result<Changes> keep(Logbook& logbook, const core::Station& station) {
    core::Station tidy = station;
    tidy.blocked = core::tidyPositions(station.blocked);
    return keepThing(logbook, tidy, "station " + nameOf(station));
}

core::Result<Changes> keep(Logbook& logbook, const core::Medium& medium) {
    return keepThing(logbook, medium, "medium " + nameOf(medium));
}

core::Result<Changes> keep(Logbook& logbook, const core::Treatment& treatment) {
    return keepThing(logbook, treatment, "treatment " + nameOf(treatment));
}

core::Result<Changes> keep(Logbook& logbook, const core::CuttingKind& kind) {
    return keepThing(logbook, kind, "kind of cutting " + nameOf(kind));
}

core::Result<Changes> keep(Logbook& logbook, const core::LossCause& cause) {
    return keepThing(logbook, cause, "cause of loss " + nameOf(cause));
}

core::Result<Changes> keep(Logbook& logbook, const core::Trial& trial) {
    if (!trial.id.isSet()) return keepThing(logbook, trial, "trial " + nameOf(trial));
    const auto today = std::chrono::floor<std::chrono::days>(logbook.inside().options.clock());
    return changeTrial(logbook, trial, {}, core::Date(today));
}

core::Result<Changes> keep(Logbook& logbook, const core::CheckSchedule& schedule) {
    return keepThing(logbook, schedule, "check schedule " + nameOf(schedule));
}

core::Result<Changes> keep(Logbook& logbook, const core::LogbookFacts& facts) {
    const std::string words = "change of the logbook's " + whatDiffers(logbook.shelves().facts, facts);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = core::faultsIn(facts);
        if (faults.empty()) writer.change(facts);
        return faults;
    });
}

core::Result<Changes> remove(Logbook& logbook, core::PlantId id) {
    return removeThing(logbook, id, "plant", &core::Shelves::plants, true, [id](Connection& connection) {
        return hasBatches(connection, id) || hasStockPlants(connection, id) || hasDealt(connection, id) ||
               hasPlans(connection, id) || hasOwnBands(connection, id);
    });
}

core::Result<Changes> remove(Logbook& logbook, core::StockPlantId id) {
    return removeThing(logbook, id, "stock plant", &core::Shelves::stockPlants, true,
                       [id](Connection& connection) { return hasBatches(connection, id) || hasDealt(connection, id); });
}

core::Result<Changes> remove(Logbook& logbook, core::MethodId id) {
    return removeThing(logbook, id, "method", &core::Shelves::methods, true, [id](Connection& connection) {
        return hasBatches(connection, id) || hasStations(connection, id) || hasArms(connection, id) ||
               hasPlans(connection, id);
    });
}

core::Result<Changes> remove(Logbook& logbook, core::StationId id) {
    return removeThing(logbook, id, "station", &core::Shelves::stations, true, [id](Connection& connection) {
        return hasBatches(connection, id) || hasReadings(connection, id) || hasCare(connection, id) ||
               hasLoggerDays(connection, id) || hasDealt(connection, id);
    });
}

core::Result<Changes> remove(Logbook& logbook, core::MediumId id) {
    return removeThing(logbook, id, "medium", &core::Shelves::media, true,
                       [id](Connection& connection) { return hasBatches(connection, id) || hasArms(connection, id); });
}

core::Result<Changes> remove(Logbook& logbook, core::TreatmentId id) {
    return removeThing(logbook, id, "treatment", &core::Shelves::treatments, true,
                       [id](Connection& connection) { return hasBatches(connection, id) || hasArms(connection, id); });
}

core::Result<Changes> remove(Logbook& logbook, core::CuttingKindId id) {
    return removeThing(logbook, id, "kind of cutting", &core::Shelves::cuttingKinds, true,
                       [id](Connection& connection) { return hasBatches(connection, id) || hasArms(connection, id); });
}

core::Result<Changes> remove(Logbook& logbook, core::LossCauseId id) {
    return removeThing(logbook, id, "cause of loss", &core::Shelves::lossCauses, true,
                       [id](Connection& connection) { return hasLosses(connection, id); });
}

core::Result<Changes> remove(Logbook& logbook, core::TrialId id) {
    return removeThing(logbook, id, "trial", &core::Shelves::trials, false,
                       [id](Connection& connection) { return hasBatches(connection, id); });
}

core::Result<Changes> remove(Logbook& logbook, core::CheckScheduleId id) {
    return removeThing(
        logbook, id, "check schedule", &core::Shelves::checkSchedules, true,
        [id](Connection& connection) { return hasPlants(connection, id) || hasMethods(connection, id); });
}

}  // namespace db
