// SPDX-License-Identifier: MIT
#include "db/actions/records_actions.h"

#include <algorithm>
#include <set>

#include "core/units/entered_text.h"
#include "db/actions/ask_first.h"
#include "db/actions/records_writing.h"
#include "db/inside.h"
#include "db/tables/care_table.h"
#include "db/tables/logger_day_table.h"

namespace db {

namespace {

core::Refusal codeIsTaken(const std::string& code) {
    const std::string value = core::quotable(code);
    return {
        .field = "Code",
        .value = value,
        .allowed = "a code that no other batch has",
        .sentence = "The batch " + value + " is in the logbook already, or comes twice; each code may be there once."};
}

core::Refusal stoppedBeforeTheEnd() {
    return {.field = "Records",
            .value = "stopped",
            .allowed = "",
            .sentence = "The records were not brought in, because it was stopped before the end."};
}

}  // namespace

bool isUntouched(const Logbook& logbook) {
    const core::Shelves shelves = logbook.shelves();
    const auto isPlanned = [](const core::Trial& trial) { return trial.factor.has_value(); };
    return shelves.plans.empty() && shelves.ownBands.empty() && shelves.prices.empty() && shelves.lots.empty() &&
           std::ranges::none_of(shelves.trials, isPlanned) && logbook.sessions().empty() &&
           logbook.newestReadings().empty() && logbook.loggerSpans().empty() && logbook.loggerFormats().empty() &&
           logbook.inside().with([](Connection& connection) { return allCare(connection).empty(); });
}

core::Refusals RecordsWriting::write(bool withFacts) {
    core::Refusals faults = takenCodes();
    if (!faults.empty()) return faults;
    if (withFacts) writer_.change(records_.shelves.facts);
    if (withFacts && keepsIds_) clearShelves();
    writeShelves();
    for (core::Session& session : records_.sessions) sessions_.set(session.id, addAs(session.id, session));
    for (core::BatchRecord& record : records_.batches) {
        if (stop_.stop_requested()) return {stoppedBeforeTheEnd()};
        core::Refusals found = writeBatch(record);
        prefix(found, record.batch.code);
        append(faults, std::move(found));
    }
    writeStuck();
    writeEvents();
    if (stop_.stop_requested()) faults.push_back(stoppedBeforeTheEnd());
    return faults;
}

core::Refusals RecordsWriting::takenCodes() const {
    core::Refusals faults;
    std::set<std::string> seen;
    for (const core::BatchRecord& record : records_.batches)
        if (!seen.insert(record.batch.code).second || logbook_.batchWithCode(record.batch.code).isSet())
            faults.push_back(codeIsTaken(record.batch.code));
    return faults;
}

/// Refuses a batch only for where it stands: the logbook's station of that name may have another layout, or no room.
core::Refusals RecordsWriting::writeBatch(core::BatchRecord& record) {
    core::Batch& batch = record.batch;
    batch.session = sessions_(batch.session);
    batch.plant = plants_(batch.plant);
    batch.stockPlant = stockPlants_(batch.stockPlant);
    batch.method = methods_(batch.method);
    batch.station = stations_(batch.station);
    batch.medium = media_(batch.medium);
    batch.treatment = treatments_(batch.treatment);
    batch.cuttingKind = cuttingKinds_(batch.cuttingKind);
    batch.trial = trials_(batch.trial);
    const core::BatchId from = batch.id;
    batch.id = addAs(batch.id, batch);
    batches_.set(from, batch.id);
    for (core::Check& check : record.checks) {
        check.batch = batch.id;
        for (core::Loss& loss : check.losses) loss.cause = causes_(loss.cause);
        for (core::Finding& finding : check.findings) finding.cause = causes_(finding.cause);
        addAs(check.id, check);
    }
    if (batch.positions.empty()) return {};
    core::Refusals faults = held_.faultsIn(record, shelves_);
    held_.add(record);
    return faults;
}

void RecordsWriting::writeEvents() {
    for (core::Reading& reading : records_.readings) {
        reading.station = stations_(reading.station);
        addAs(reading.id, reading);
    }
    for (core::Care& care : records_.care) {
        const core::CareId from = care.id;
        care.station = stations_(care.station);
        care_.set(from, addAs(from, care));
    }
    for (core::Expense& expense : records_.expenses) {
        expense.batch = batches_(expense.batch);
        expense.session = sessions_(expense.session);
        addAs(expense.id, expense);
    }
    for (core::Potting& potting : records_.pottings) {
        potting.batch = batches_(potting.batch);
        addAs(potting.id, potting);
    }
    for (core::PhotoRecord& record : records_.photos) {
        record.photo.batch = batches_(record.photo.batch);
        if (!keepsIds_) record.photo.id = {};
        writer_.add(std::move(record));
    }
    writeLogged();
    writeMixes();
}

/// Where the logbook has values of the same moments, they stay.
void RecordsWriting::writeLogged() {
    for (core::LoggerDay& day : records_.loggerDays) {
        if (stop_.stop_requested()) return;
        day.station = stations_(day.station);
        core::MergedSamples merged = core::mergedSamples(logbook_.inside().with([&](Connection& connection) {
            return samplesOf(connection, day.station, day.quantity, day.day);
        }),
                                                         day.samples);
        if (merged.added == 0) continue;
        day.samples = std::move(merged.samples);
        writer_.put(day);
    }
    const std::vector<core::LoggerFormat> formats = logbook_.loggerFormats();
    for (const core::LoggerFormat& format : records_.loggerFormats)
        if (std::ranges::find(formats, format.name, &core::LoggerFormat::name) == formats.end())
            addAs(format.id, format);
}

void RecordsWriting::writeMixes() {
    for (core::KeptMix& mix : records_.mixes) {
        mix.session = sessions_(mix.session);
        mix.care = care_(mix.care);
        addAs(mix.id, mix);
    }
}

core::Result<Changes> addRecords(Logbook& logbook, core::Records records, const std::string& words, bool withFacts,
                                 std::stop_token stop) {
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        return RecordsWriting(logbook, writer, records, std::move(stop)).write(withFacts);
    });
}

}  // namespace db
