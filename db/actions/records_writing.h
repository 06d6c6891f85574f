// SPDX-License-Identifier: MIT
// How a whole set of records comes into a logbook: for records_actions.h only. Into a logbook in which nothing has happened yet things
// keep their ids; else every row gets a new one.
#pragma once

#include <map>
#include <stop_token>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/result.h"
#include "db/actions/held_positions.h"
#include "db/logbook.h"
#include "db/writer.h"

namespace db {

/// From an id in the records that come in to the id that the thing has in the logbook.
template <class ThingId>
class IdMap {
  public:
    void set(ThingId from, ThingId to) { ids_[from] = to; }
    [[nodiscard]] ThingId operator()(ThingId from) const {
        const auto found = ids_.find(from);
        return found == ids_.end() ? ThingId{} : found->second;
    }

  private:
    std::unordered_map<ThingId, ThingId> ids_;
};

/// Neither a session nor a plan, a reading or whatever else a grower writes down.
[[nodiscard]] bool isUntouched(const Logbook& logbook);

class RecordsWriting {
  public:
    RecordsWriting(const Logbook& logbook, Writer& writer, core::Records& records, std::stop_token stop)
        : logbook_(logbook),
          writer_(writer),
          records_(records),
          stop_(std::move(stop)),
          shelves_(logbook.shelves()),
          keepsIds_(isUntouched(logbook)),
          held_(logbook) {}

    core::Refusals write(bool withFacts);

  private:
    core::Refusals takenCodes() const;
    core::Refusals writeBatch(core::BatchRecord& record);
    void writeEvents();
    void writeLogged();
    void writeMixes();

    // In records_shelves.cpp.
    void clearShelves();
    void writeShelves();
    void writeNamedByPlant();
    void writePrices();
    void renameIn(core::Trial& trial);
    void writeStuck();
    void freeKey(core::LossCause& cause) const;
    template <class Thing, class ThingId>
    void bringIn(std::vector<Thing>& things, std::vector<Thing>& shelf, IdMap<ThingId>& ids);

    template <class Thing, class ThingId>
    ThingId addAs(ThingId id, Thing thing) {
        thing.id = keepsIds_ ? id : ThingId{};
        return writer_.add(thing);
    }

    const Logbook& logbook_;
    Writer& writer_;
    core::Records& records_;
    std::stop_token stop_;
    core::Shelves shelves_;
    bool keepsIds_;
    IdMap<core::PlantId> plants_;
    IdMap<core::StockPlantId> stockPlants_;
    IdMap<core::MethodId> methods_;
    IdMap<core::StationId> stations_;
    IdMap<core::MediumId> media_;
    IdMap<core::TreatmentId> treatments_;
    IdMap<core::CuttingKindId> cuttingKinds_;
    IdMap<core::LossCauseId> causes_;
    IdMap<core::TrialId> trials_;
    IdMap<core::PlanId> plans_;
    IdMap<core::OwnBandId> ownBands_;
    IdMap<core::PriceId> prices_;
    IdMap<core::LotId> lots_;
    std::map<std::string, std::map<int, core::BatchId>> stuck_;  // by trial and number of what was dealt
    IdMap<core::SessionId> sessions_;
    IdMap<core::CareId> care_;
    IdMap<core::BatchId> batches_;
    IdMap<core::CheckScheduleId> schedules_;
    HeldPositions held_;
};

}  // namespace db
