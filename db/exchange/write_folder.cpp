// SPDX-License-Identifier: MIT
#include "db/exchange/write_folder.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>

#include "db/exchange/data_package.h"
#include "db/exchange/exchange_text.h"
#include "db/exchange/table_files.h"
#include "db/exchange/write_conditions.h"
#include "db/exchange/write_events.h"
#include "db/exchange/write_money.h"
#include "db/exchange/write_trials.h"

namespace db {

namespace {

class FolderWriter {
  public:
    FolderWriter(const core::Records& records, std::filesystem::path folder, const Waiting& waiting)
        : records_(records), shelves_(records.shelves), files_(std::move(folder), waiting) {}

    void write();

  private:
    void writeShelves() const;
    void writePlants() const;
    void writeStations() const;
    void writeMedia() const;
    void writeTreatments() const;
    void writeSessions();
    void writeBatches() const;
    void writeChecks() const;

    const core::Records& records_;
    const core::Shelves& shelves_;
    TableFiles files_;
    ById<core::CheckSchedule> schedule_{shelves_.checkSchedules};
    ById<core::Plant> plant_{shelves_.plants};
    ById<core::Method> method_{shelves_.methods};
    SessionLabels sessionLabel_;
};

void FolderWriter::write() {
    files_.file("datapackage.json", [&](std::ostream& out) { writeDataPackage(out, shelves_.facts); });
    writeShelves();
    writePlants();
    writeStations();
    writeMedia();
    writeTreatments();
    writeSessions();
    writeBatches();
    writeChecks();
    writeTrials(records_, files_);
    writeEvents(records_, files_);
    writeMoney(records_, sessionLabel_, files_);
    writeConditions(records_, sessionLabel_, files_);
}

void FolderWriter::writeShelves() const {
    files_.table("logbook", [&](CsvWriter& csv) {
        const core::LogbookFacts& facts = shelves_.facts;
        csv.text(facts.name).text(facts.grower).number(facts.rootLengthMillimetres).number(facts.checkEveryDays);
        csv.number(facts.firstCheckAfterDays).number(facts.horizonDay).figure(facts.level).text(facts.paper);
        csv.truth(facts.isInvented).text(facts.citation).text(facts.interval);
        csv.text(core::wordFor(facts.units.temperature)).text(core::wordFor(facts.units.ec));
        csv.text(core::wordFor(facts.units.volume)).text(core::wordFor(facts.units.length)).text(facts.currency);
        csv.figure(facts.altitudeMetres).figure(facts.degreeDayBase).figure(facts.falseAlarmRate);
        csv.endRow();
    });
    files_.table("methods", [&](CsvWriter& csv) {
        for (const core::Method& method : shelves_.methods)
            csv.text(method.name).truth(method.isRetired).text(schedule_(method.checkSchedule).name).endRow();
    });
    files_.table("check_schedules", [&](CsvWriter& csv) {
        for (const core::CheckSchedule& schedule : shelves_.checkSchedules)
            csv.text(schedule.name)
                .number(schedule.firstAfterDays)
                .number(schedule.everyDays)
                .truth(schedule.isRetired)
                .endRow();
    });
    files_.table("cutting_kinds", [&](CsvWriter& csv) {
        for (const core::CuttingKind& kind : shelves_.cuttingKinds) csv.text(kind.name).truth(kind.isRetired).endRow();
    });
    files_.table("loss_causes", [&](CsvWriter& csv) {
        for (const core::LossCause& cause : shelves_.lossCauses)
            csv.text(cause.name)
                .text(cause.key == '\0' ? std::string() : std::string(1, cause.key))
                .truth(cause.isRetired)
                .endRow();
    });
}

void FolderWriter::writePlants() const {
    files_.table("plants", [&](CsvWriter& csv) {
        for (const core::Plant& plant : shelves_.plants)
            csv.text(plant.botanicalName)
                .text(plant.cultivar)
                .text(plant.commonName)
                .truth(plant.isProtected)
                .number(plant.usualRootingDaysHigh)
                .text(plant.note)
                .truth(plant.isRetired)
                .text(schedule_(plant.checkSchedule).name)
                .truth(plant.isEdible)
                .endRow();
    });
    // Labels repeat from plant to plant, so a logbook has them in the order of ids, which a copy doesn't share.
    std::vector<const core::StockPlant*> stockPlants;
    for (const core::StockPlant& stockPlant : shelves_.stockPlants) stockPlants.push_back(&stockPlant);
    std::ranges::sort(stockPlants, {}, [this](const core::StockPlant* stockPlant) {
        const core::Plant& plant = plant_(stockPlant->plant);
        return std::tie(plant.botanicalName, plant.cultivar, stockPlant->label);
    });
    files_.table("stock_plants", [&](CsvWriter& csv) {
        for (const core::StockPlant* stockPlant : stockPlants)
            csv.text(plant_(stockPlant->plant).botanicalName)
                .text(plant_(stockPlant->plant).cultivar)
                .text(stockPlant->label)
                .text(stockPlant->note)
                .truth(stockPlant->isRetired)
                .endRow();
    });
}

void FolderWriter::writeStations() const {
    files_.table("stations", [&](CsvWriter& csv) {
        for (const core::Station& station : shelves_.stations)
            csv.text(station.name)
                .text(method_(station.method).name)
                .number(station.rows)
                .number(station.columns)
                .number(station.walkingOrder)
                .text(station.note)
                .truth(station.isRetired)
                .truth(station.isStaggered)
                .text(station.blocked)
                .endRow();
    });
}

void FolderWriter::writeMedia() const {
    files_.table("media", [&](CsvWriter& csv) {
        for (const core::Medium& medium : shelves_.media)
            csv.text(medium.name).text(medium.note).truth(medium.isRetired).endRow();
    });
    files_.table("medium_components", [&](CsvWriter& csv) {
        for (const core::Medium& medium : shelves_.media)
            for (const core::MediumComponent& component : medium.components)
                csv.text(medium.name).text(component.name).figure(component.parts).endRow();
    });
}

void FolderWriter::writeTreatments() const {
    files_.table("treatments", [&](CsvWriter& csv) {
        for (const core::Treatment& treatment : shelves_.treatments)
            csv.text(treatment.name)
                .text(core::wordFor(treatment.carrier))
                .number(treatment.seconds)
                .truth(treatment.isWounded)
                .text(treatment.note)
                .truth(treatment.isRetired)
                .endRow();
    });
    files_.table("treatment_auxins", [&](CsvWriter& csv) {
        for (const core::Treatment& treatment : shelves_.treatments)
            for (const core::Auxin& auxin : treatment.auxins)
                csv.text(treatment.name)
                    .text(auxin.name)
                    .text(core::wordFor(auxin.form))
                    .figure(auxin.milligramsPerLitre)
                    .endRow();
    });
}

/// Sessions have no name of their own: the day serves, with a number where there are several. Their order within a day comes from what is
/// in them, not from ids, so that a copy of the logbook gives the same file.
void FolderWriter::writeSessions() {
    std::unordered_map<std::int64_t, std::string> firstCode;
    for (const core::BatchRecord& record : records_.batches) {
        std::string& first = firstCode[record.batch.session.value];
        if (first.empty() || record.batch.code < first) first = record.batch.code;
    }
    std::vector<const core::Session*> sessions;
    for (const core::Session& session : records_.sessions) sessions.push_back(&session);
    std::ranges::sort(sessions, {}, [&](const core::Session* session) {
        return std::tuple(session->date, session->worker, session->note, firstCode[session->id.value]);
    });
    std::map<core::Date, int> onDay, written;
    for (const core::Session* session : sessions) ++onDay[session->date];
    files_.table("sessions", [&](CsvWriter& csv) {
        for (const core::Session* session : sessions) {
            const std::string day = core::isoText(session->date);
            const int number = ++written[session->date];
            std::string& label = sessionLabel_[session->id.value];
            label = onDay[session->date] == 1 ? day : day + "/" + std::to_string(number);
            csv.text(label).text(day).text(session->worker).text(session->note).endRow();
        }
    });
}

void FolderWriter::writeBatches() const {
    const ById stockPlant(shelves_.stockPlants);
    const ById station(shelves_.stations);
    const ById medium(shelves_.media);
    const ById treatment(shelves_.treatments);
    const ById kind(shelves_.cuttingKinds);
    const ById trial(shelves_.trials);
    files_.table("batches", [&](CsvWriter& csv) {
        for (const auto& [batch, checks] : records_.batches) {
            const auto label = sessionLabel_.find(batch.session.value);
            const core::Treatment& treated = treatment(batch.treatment);
            csv.text(batch.code).text(core::isoText(batch.stuckOn));
            csv.text(plant_(batch.plant).botanicalName)
                .text(plant_(batch.plant).cultivar)
                .text(stockPlant(batch.stockPlant).label);
            csv.text(method_(batch.method).name).text(station(batch.station).name).text(medium(batch.medium).name);
            csv.text(treated.name)
                .text(auxinNames(treated))
                .text(auxinDoses(treated))
                .text(kind(batch.cuttingKind).name);
            csv.number(batch.stuck).text(trial(batch.trial).name).text(batch.block).text(batch.note);
            csv.text(label == sessionLabel_.end() ? std::string() : label->second);
            csv.text(batch.closedOn ? core::isoText(*batch.closedOn) : std::string()).text(batch.closeReason);
            csv.text(batch.positions).text(batch.licence).endRow();
        }
    });
}

/// The first row of a check has its note and what is not a loss; each further cause has a row of its own.
void FolderWriter::writeChecks() const {
    const ById cause(shelves_.lossCauses);
    files_.table("checks", [&](CsvWriter& csv) {
        for (const auto& [batch, checks] : records_.batches)
            for (const core::Check& check : checks) {
                std::vector<core::Loss> losses = check.losses;
                if (losses.empty()) losses.push_back({});
                for (std::size_t i = 0; i < losses.size(); ++i) {
                    csv.text(batch.code)
                        .text(core::isoText(check.checkedOn))
                        .number(i == 0 ? check.rooted : 0)
                        .number(losses[i].count);
                    csv.number(i == 0 ? check.withdrawn : 0)
                        .text(cause(losses[i].cause).name)
                        .text(i == 0 ? check.note : std::string());
                    csv.endRow();
                }
            }
    });
}

}  // namespace

void writeFolder(const core::Records& records, const std::filesystem::path& folder, const Waiting& waiting) {
    FolderWriter(records, folder, waiting).write();
}

}  // namespace db
