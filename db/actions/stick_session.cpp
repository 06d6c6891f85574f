// SPDX-License-Identifier: MIT
// The verb stickSession(): a day's work with all that it makes on the spot, in one step of history.
#include "core/batch/batch_rules.h"
#include "core/shelf_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/batch_codes.h"
#include "db/actions/held_positions.h"
#include "db/actions/session_writing.h"

namespace db {

namespace {

template <class Thing>
void appendShelf(std::vector<Thing>& shelf, std::vector<Thing>& made) {
    for (Thing& thing : made) {
        if (!thing.id.isSet()) thing.id.value = newId();
        shelf.push_back(thing);
    }
}

/// Calls `visit` with each pair of lists of the same things.
template <class A, class B, class Visit>
void forEachShelf(A& first, B& second, const Visit& visit) {
    visit(first.checkSchedules, second.checkSchedules);
    visit(first.plants, second.plants);
    visit(first.stockPlants, second.stockPlants);
    visit(first.methods, second.methods);
    visit(first.stations, second.stations);
    visit(first.media, second.media);
    visit(first.treatments, second.treatments);
    visit(first.cuttingKinds, second.cuttingKinds);
    visit(first.lossCauses, second.lossCauses);
    visit(first.trials, second.trials);
}

/// What is on the shelves and what is made with the session, as if it were there already: so that two new things of one name are found.
core::Shelves withMade(core::Shelves shelves, core::Shelves& made) {
    forEachShelf(shelves, made, [](auto& shelf, auto& things) { appendShelf(shelf, things); });
    return shelves;
}

core::Refusals addMade(Writer& writer, const core::Shelves& made, const core::Shelves& shelves) {
    core::Refusals faults;
    forEachShelf(made, made, [&](const auto& things, const auto&) {
        for (const auto& thing : things) {
            core::Refusals found = core::faultsIn(thing, shelves);
            if (found.empty()) writer.add(thing);
            append(faults, std::move(found));
        }
    });
    return faults;
}

class SessionWriting {
  public:
    SessionWriting(Logbook& logbook, Writer& writer, SessionDraft& draft, core::Date today)
        : logbook_(logbook), writer_(writer), draft_(draft), today_(today), codes_(logbook), held_(logbook) {}

    core::Refusals write() {
        const core::Shelves shelves = withMade(logbook_.shelves(), draft_.made);
        core::Refusals faults = addMade(writer_, draft_.made, shelves);
        append(faults, writeSession());
        if (draft_.batches.empty())
            faults.push_back({.field = "Batches",
                              .value = "none",
                              .allowed = "at least one",
                              .sentence = "Batches are none; at least one is needed for a session."});
        int number = 0;
        for (core::Batch& batch : draft_.batches) {
            core::Refusals found = writeBatch(batch, shelves);
            ++number;
            if (draft_.batches.size() > 1) prefix(found, "Batch " + std::to_string(number));
            append(faults, std::move(found));
        }
        return faults;
    }

  private:
    /// With an id that the logbook has, the batches join that session.
    core::Refusals writeSession() {
        const auto sessions = logbook_.sessions();
        if (const core::Session* there = core::find(sessions, draft_.session.id)) {
            draft_.session = *there;
            return {};
        }
        core::Refusals faults = core::faultsIn(draft_.session, today_);
        if (!draft_.session.id.isSet()) draft_.session.id.value = newId();
        if (faults.empty()) writer_.add(draft_.session);
        isSessionSound_ = faults.empty();
        return faults;
    }

    core::Refusals writeBatch(core::Batch& batch, const core::Shelves& shelves) {
        batch.session = draft_.session.id;
        // A bad date has been refused with the session; its batches are judged for all else.
        batch.stuckOn = isSessionSound_ ? draft_.session.date : today_;
        batch.positions = core::tidyPositions(batch.positions);
        if (!batch.id.isSet()) batch.id.value = newId();
        const int year = static_cast<int>(batch.stuckOn.year());
        if (batch.code.empty()) {
            const auto code = codes_.next(year);
            if (!code) return {noCodeLeft(year)};
            batch.code = *code;
        }
        core::Refusals faults = core::faultsIn(batch, {}, shelves, today_);
        append(faults, held_.faultsIn({.batch = batch, .checks = {}}, shelves));
        held_.add({.batch = batch, .checks = {}});
        if (auto taken = codes_.take(batch.code, batch.id)) faults.push_back(std::move(*taken));
        if (faults.empty()) writer_.add(batch);
        return faults;
    }

    Logbook& logbook_;
    Writer& writer_;
    SessionDraft& draft_;
    core::Date today_;
    BatchCodes codes_;
    HeldPositions held_;
    bool isSessionSound_ = true;
};

}  // namespace

core::Refusals writeMade(Logbook& logbook, Writer& writer, core::Shelves& made) {
    return addMade(writer, made, withMade(logbook.shelves(), made));
}

core::Refusals writeSession(Logbook& logbook, Writer& writer, SessionDraft& draft, core::Date today) {
    return SessionWriting(logbook, writer, draft, today).write();
}

std::string wordsForSession(const core::Session& session, std::size_t batches) {
    const std::string count = batches == 1 ? "1 batch" : std::to_string(batches) + " batches";
    const std::string day = session.date.ok() ? core::isoText(session.date) : "an unknown day";
    return "session of " + day + ", " + count;
}

core::Result<SessionWritten> stickSession(Logbook& logbook, SessionDraft draft, core::Date today) {
    auto done = actUnlessRefused(logbook, wordsForSession(draft.session, draft.batches.size()),
                                 [&](Writer& writer) { return writeSession(logbook, writer, draft, today); });
    if (!done) return core::refused(std::move(done.error()));
    return SessionWritten{
        .changes = std::move(*done), .session = draft.session.id, .batches = std::move(draft.batches)};
}

}  // namespace db
