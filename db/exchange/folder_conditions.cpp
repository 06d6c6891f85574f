// SPDX-License-Identifier: MIT
#include "db/exchange/folder_conditions.h"

#include "core/climate/own_band_rules.h"
#include "core/event_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/session_actions.h"
#include "db/exchange/folder_events.h"
#include "db/exchange/table_reader.h"

namespace db {

namespace {

class ConditionReading {
  public:
    ConditionReading(FolderShelves& shelves, const FolderBatches& batches, core::Moment now, core::Records& records)
        : shelves_(shelves), batches_(batches), now_(now), records_(records) {}

    void takeCare(TableRow& row);
    void takeMix(TableRow& row);
    void takeBand(TableRow& row);
    void takeFormat(TableRow& row);

  private:
    core::CareId care(TableRow& row) const;
    core::PlantId plant(TableRow& row) const;

    FolderShelves& shelves_;
    const FolderBatches& batches_;
    core::Moment now_;
    core::Records& records_;
    std::unordered_map<std::string, core::CareId> careOfLabel_;
};

void ConditionReading::takeCare(TableRow& row) {
    core::Care care;
    care.id.value = newId();
    care.station = stationIn(row, shelves_);
    care.doneAt = row.moment("done_at").value_or(core::Moment{});
    const std::string word = row.text("kind");
    if (const auto kind = core::careKindFrom(word))
        care.kind = *kind;
    else
        row.fault("kind", core::quotable(word) + " is no care that is known here; other with a note is allowed.");
    care.note = row.text("note");
    care.litres = row.figure("litres");
    const std::string label = row.text("care");
    if (!label.empty() && !careOfLabel_.emplace(label, care.id).second)
        row.fault("care", "The care " + core::quotable(label) + " is there already; each has a label of its own.");
    if (row.isSound()) row.refuse(core::faultsIn(care, shelves_.shelves, now_));
    if (row.isSound()) records_.care.push_back(std::move(care));
}

core::CareId ConditionReading::care(TableRow& row) const {
    const std::string label = row.text("care");
    if (label.empty()) return {};
    if (const auto known = careOfLabel_.find(label); known != careOfLabel_.end()) return known->second;
    row.fault("care", core::quotable(label) + " is not in care.csv.");
    return {};
}

void ConditionReading::takeMix(TableRow& row) {
    core::KeptMix mix;
    mix.id.value = newId();
    mix.session = sessionIn(row, batches_);
    mix.care = care(row);
    mix.madeAt = row.moment("made_at").value_or(core::Moment{});
    const std::string word = row.text("kind");
    if (const auto kind = core::mixKindFrom(word))
        mix.kind = *kind;
    else
        row.fault("kind", core::quotable(word) + " is no kind of mix that is known here, such as nutrient.");
    mix.title = row.text("title");
    mix.amounts = row.text("amounts");
    mix.workings = row.text("workings");
    mix.cautions = row.text("cautions");
    if (row.isSound()) row.refuse(core::faultsIn(mix, now_));
    if (row.isSound()) records_.mixes.push_back(std::move(mix));
}

core::PlantId ConditionReading::plant(TableRow& row) const {
    const std::string species = row.text("species"), cultivar = row.text("cultivar");
    if (species.empty() && cultivar.empty()) return {};
    if (const core::Plant* known = shelves_.plants.find(plantKey(species, cultivar))) return known->id;
    row.fault("species", "No plant of this species and cultivar is in plants.csv.");
    return {};
}

void ConditionReading::takeBand(TableRow& row) {
    core::OwnBand band;
    band.id.value = newId();
    const std::string stage = row.text("stage"), word = row.text("quantity");
    const auto knownStage = core::stageFrom(stage);
    const auto quantity = core::bandQuantityFrom(word);
    if (!knownStage)
        row.fault("stage", core::quotable(stage) + " is no stage; before roots, first roots, filling roots or " +
                               "hardening is allowed.");
    if (!quantity)
        row.fault("quantity", core::quotable(word) + " is no quantity that is known here, such as solution_ec.");
    band.plant = plant(row);
    band.low = row.signedFigure("low");
    band.high = row.signedFigure("high");
    band.note = row.text("note");
    if (!row.isSound() || !knownStage || !quantity) return;
    band.stage = *knownStage;
    band.quantity = *quantity;
    row.refuse(core::faultsIn(band, shelves_.shelves));
    if (row.isSound()) shelves_.shelves.ownBands.push_back(std::move(band));
}

void ConditionReading::takeFormat(TableRow& row) {
    core::LoggerFormat format{
        .id = {newId()}, .name = row.text("name"), .header = row.text("header"), .mapping = row.text("mapping")};
    row.refuse(core::faultsIn(format, records_.loggerFormats));
    if (row.isSound()) records_.loggerFormats.push_back(std::move(format));
}

}  // namespace

void readConditions(const std::filesystem::path& folder, FolderShelves& shelves, const FolderBatches& batches,
                    core::Date today, core::Records& records, FaultList& faults, const std::stop_token& stop) {
    // The day is all that an import knows of now, and its end is later than any moment of it anywhere.
    const core::Moment now = std::chrono::sys_days(today) + std::chrono::days(2);
    ConditionReading reading(shelves, batches, now, records);
    const auto table = [&](std::string_view name, void (ConditionReading::*take)(TableRow&)) {
        readTable(folder, name, faults, stop, [&](TableRow& row) {
            if (row.isWhole()) (reading.*take)(row);
        });
    };
    table("care", &ConditionReading::takeCare);
    table("mixes", &ConditionReading::takeMix);
    table("own_bands", &ConditionReading::takeBand);
    table("logger_formats", &ConditionReading::takeFormat);
    records.loggerDays = readLogger(folder, shelves, now, faults, stop);
}

}  // namespace db
