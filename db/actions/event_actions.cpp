// SPDX-License-Identifier: MIT
#include "db/actions/event_actions.h"

#include <algorithm>

#include "core/batch/potting_rules.h"
#include "core/event_rules.h"
#include "db/actions/ask_first.h"
#include "db/inside.h"
#include "db/tables/batch_table.h"
#include "db/tables/care_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/photo_table.h"
#include "db/tables/potting_table.h"
#include "db/tables/reading_table.h"

namespace db {

namespace {

std::string codeOfItsBatch(const Logbook& logbook, core::BatchId id) {
    const auto found = logbook.inside().with([&](Connection& connection) { return batchIn(connection, id); });
    return found ? found->code : "a batch";
}

/// "B260047K", or "the session of 2026-03-14"
std::string ownerOf(const Logbook& logbook, const core::Expense& expense) {
    if (!expense.session.isSet()) return codeOfItsBatch(logbook, expense.batch);
    const std::vector<core::Session> sessions = logbook.sessions();
    const core::Session* session = core::find(sessions, expense.session);
    return session == nullptr ? "a session" : "the session of " + core::isoText(session->date);
}

std::string nameOfStation(const Logbook& logbook, core::StationId id) {
    const core::Shelves shelves = logbook.shelves();
    const core::Station* station = core::find(shelves.stations, id);
    return station == nullptr ? "a station" : station->name;
}

std::string wordsForReading(const Logbook& logbook, const core::Reading& reading) {
    return "reading of " + std::string(core::factsOf(reading.quantity).name) + " at " +
           nameOfStation(logbook, reading.station);
}

std::string wordsForCare(const Logbook& logbook, const core::Care& care) {
    const std::string kind = care.kind == core::CareKind::Other ? "care" : std::string(core::wordFor(care.kind));
    return kind + " at " + nameOfStation(logbook, care.station);
}

/// All of them or none; several are told apart by their number.
template <class Thing, class Judge>
core::Refusals addAll(Writer& writer, const std::vector<Thing>& things, const std::string& kind, const Judge& judge) {
    core::Refusals faults;
    for (std::size_t number = 0; number < things.size(); ++number) {
        core::Refusals found = judge(things[number]);
        if (found.empty()) writer.add(things[number]);
        if (things.size() > 1) prefix(found, kind + ' ' + std::to_string(number + 1));
        append(faults, std::move(found));
    }
    return faults;
}

/// Changes what is there and sound.
template <class Thing, class Find, class Judge>
core::Result<Changes> changeThing(Logbook& logbook, const std::string& words, const std::string& kind,
                                  const Thing& thing, const Find& find, const Judge& judge) {
    return actUnlessRefused(logbook, "change of " + words, [&](Writer& writer) {
        if (!logbook.inside().with([&](Connection& connection) { return find(connection, thing.id).has_value(); }))
            return core::Refusals{notThere(kind, kind)};
        core::Refusals faults = judge();
        if (faults.empty()) writer.change(thing);
        return faults;
    });
}

template <class ThingId, class Find>
core::Result<Changes> deleteThing(Logbook& logbook, const std::string& words, const std::string& kind, ThingId id,
                                  const Find& find) {
    return actUnlessRefused(logbook, "deletion of " + words, [&](Writer& writer) {
        if (!logbook.inside().with([&](Connection& connection) { return find(connection, id).has_value(); }))
            return core::Refusals{notThere(kind, kind)};
        writer.remove(id);
        return core::Refusals{};
    });
}

/// Judges what belongs to a batch, once that is there.
template <class Judge>
core::Refusals judgedWithBatch(const Logbook& logbook, core::BatchId id, const Judge& judge) {
    const auto batch = logbook.inside().with([&](Connection& connection) { return batchIn(connection, id); });
    return batch ? judge(*batch) : core::Refusals{notThere("Batch", "batch")};
}

/// Whether what is left of its batch's counts still adds up when the one of this id goes, or goes to another batch.
core::Refusals faultsWithout(const Logbook& logbook, core::PottingId id) {
    const auto there = logbook.inside().with([&](Connection& connection) { return pottingIn(connection, id); });
    const auto record = there ? logbook.batch(there->batch) : std::nullopt;
    if (!record) return {notThere("Potting", "potting")};
    std::vector<core::Potting> others = logbook.pottings(there->batch);
    std::erase_if(others, [&](const core::Potting& other) { return other.id == id; });
    return core::faultsInPottings(*record, others);
}

}  // namespace

core::Result<Changes> recordReadings(Logbook& logbook, const std::vector<core::Reading>& readings, core::Moment now) {
    const std::string words = readings.size() == 1 ? wordsForReading(logbook, readings.front())
                                                   : std::to_string(readings.size()) + " readings";
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        return addAll(writer, readings, "Reading",
                      [&](const core::Reading& reading) { return core::faultsIn(reading, shelves, now); });
    });
}

core::Result<Changes> changeReading(Logbook& logbook, const core::Reading& reading, core::Moment now) {
    return changeThing(logbook, "a " + wordsForReading(logbook, reading), "reading", reading, readingIn,
                       [&] { return core::faultsIn(reading, logbook.shelves(), now); });
}

core::Result<Changes> deleteReading(Logbook& logbook, const core::Reading& reading) {
    return deleteThing(logbook, "a " + wordsForReading(logbook, reading), "reading", reading.id, readingIn);
}

core::Result<Changes> recordCare(Logbook& logbook, const std::vector<core::Care>& care, core::Moment now) {
    const std::string words = care.size() == 1 ? wordsForCare(logbook, care.front())
                                               : "care of stations, " + std::to_string(care.size()) + " times";
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        return addAll(writer, care, "Care", [&](const core::Care& one) { return core::faultsIn(one, shelves, now); });
    });
}

core::Result<Changes> changeCare(Logbook& logbook, const core::Care& care, core::Moment now) {
    return changeThing(logbook, "care: " + wordsForCare(logbook, care), "care", care, careIn,
                       [&] { return core::faultsIn(care, logbook.shelves(), now); });
}

core::Result<Changes> deleteCare(Logbook& logbook, const core::Care& care) {
    return deleteThing(logbook, "care: " + wordsForCare(logbook, care), "care", care.id, careIn);
}

core::Result<Changes> addPhotos(Logbook& logbook, std::vector<core::PhotoRecord> photos, core::Date today) {
    const std::string words = photos.size() == 1 ? "photo of " + codeOfItsBatch(logbook, photos.front().photo.batch)
                                                 : std::to_string(photos.size()) + " photos";
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        return addAll(writer, photos, "Photo", [&](const core::PhotoRecord& record) {
            return judgedWithBatch(logbook, record.photo.batch, [&](const core::Batch& batch) {
                return core::faultsIn(record.photo, record.image, batch, today);
            });
        });
    });
}

core::Result<Changes> changePhoto(Logbook& logbook, const core::Photo& photo, core::Date today) {
    return changeThing(logbook, "a photo of " + codeOfItsBatch(logbook, photo.batch), "photo", photo, photoIn, [&] {
        return judgedWithBatch(logbook, photo.batch, [&](const core::Batch& batch) {
            return core::faultsIn(photo, logbook.photoImage(photo.id), batch, today);
        });
    });
}

core::Result<Changes> deletePhoto(Logbook& logbook, const core::Photo& photo) {
    return deleteThing(logbook, "a photo of " + codeOfItsBatch(logbook, photo.batch), "photo", photo.id, photoIn);
}

core::Result<Changes> keepExpense(Logbook& logbook, const core::Expense& expense, core::Date today) {
    const std::string words = "expense for " + ownerOf(logbook, expense);
    const auto judge = [&] {
        if (!expense.session.isSet() || expense.batch.isSet())
            return judgedWithBatch(logbook, expense.batch,
                                   [&](const core::Batch&) { return core::faultsIn(expense, today); });
        if (core::find(logbook.sessions(), expense.session) == nullptr)
            return core::Refusals{notThere("Session", "session")};
        return core::faultsIn(expense, today);
    };
    if (expense.id.isSet()) return changeThing(logbook, "an " + words, "expense", expense, expenseIn, judge);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = judge();
        if (faults.empty()) writer.add(expense);
        return faults;
    });
}

core::Result<Changes> deleteExpense(Logbook& logbook, const core::Expense& expense) {
    return deleteThing(logbook, "an expense for " + ownerOf(logbook, expense), "expense", expense.id, expenseIn);
}

core::Result<Changes> keepPotting(Logbook& logbook, const core::Potting& potting, core::Date today) {
    const std::string words = "potting on of " + codeOfItsBatch(logbook, potting.batch);
    const auto judge = [&]() -> core::Refusals {
        const auto record = logbook.batch(potting.batch);
        if (!record) return {notThere("Batch", "batch")};
        const std::vector<core::Potting> own = logbook.pottings(potting.batch);
        if (potting.id.isSet() && core::find(own, potting.id) == nullptr)
            if (core::Refusals faults = faultsWithout(logbook, potting.id); !faults.empty()) return faults;
        return core::faultsIn(potting, *record, own, today);
    };
    if (potting.id.isSet()) return changeThing(logbook, "a " + words, "potting", potting, pottingIn, judge);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = judge();
        if (faults.empty()) writer.add(potting);
        return faults;
    });
}

core::Result<Changes> deletePotting(Logbook& logbook, const core::Potting& potting) {
    const std::string words = "deletion of a potting on of " + codeOfItsBatch(logbook, potting.batch);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = faultsWithout(logbook, potting.id);
        if (faults.empty()) writer.remove(potting.id);
        return faults;
    });
}

}  // namespace db
