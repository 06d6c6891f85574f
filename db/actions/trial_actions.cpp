// SPDX-License-Identifier: MIT
#include "db/actions/trial_actions.h"

#include <algorithm>

#include "core/shelf_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/session_writing.h"
#include "db/inside.h"
#include "db/new_id.h"
#include "db/tables/batch_table.h"
#include "db/tables/check_table.h"

namespace db {

namespace {

core::Refusals noSuchTrial() {
    return {notThere("Trial", "trial")};
}

/// The places of the layout that somebody has taken since it was made.
core::Refusals faultsInFree(const Logbook& logbook, const core::TrialLayout& layout, const core::Shelves& shelves) {
    core::Refusals faults;
    for (const core::StationRoom& room : layout.stations) {
        const core::Station* station = core::find(shelves.stations, room.station);
        if (station == nullptr) {
            faults.push_back(notThere("Station", "station"));
            continue;
        }
        const std::vector<core::Position> free = roomAt(logbook, *station).free;
        std::vector<core::Position> taken;
        for (const core::Position position : room.free)
            if (std::ranges::find(free, position) == free.end()) taken.push_back(position);
        if (taken.empty()) continue;
        const std::string field = "Free places at " + station->name, value = core::textOf(std::move(taken));
        faults.push_back(
            {field, value, "places that are free now",
             field + " are " + value + ", which are not free any more; places that are free now are allowed."});
    }
    return faults;
}

/// Deals into the trial: its number, seed, day and what each arm gets.
core::Refusals deal(const Logbook& logbook, core::Trial& trial, const core::TrialLayout& layout, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    trial.batches.clear();
    core::Refusals faults = core::faultsInDesign(trial, shelves);
    for (core::Refusal& fault : core::faultsIn(trial, layout))
        if (std::ranges::find(faults, fault.field, &core::Refusal::field) == faults.end())
            faults.push_back(std::move(fault));  // what the design is blamed for already is not said twice
    if (faults.empty()) append(faults, faultsInFree(logbook, layout, shelves));
    if (!faults.empty()) return faults;
    if (!trial.allocationSeed) trial.allocationSeed = static_cast<std::uint32_t>(drawId());
    auto dealt = core::allocateTrial(trial, layout, *trial.allocationSeed);
    if (!dealt) return dealt.error();
    trial.batches = std::move(*dealt);
    trial.setOn = today;
    return core::faultsIn(trial, shelves);
}

core::Result<TrialWritten> written(core::Result<Changes> done, core::Trial trial) {
    if (!done) return core::refused(std::move(done.error()));
    return TrialWritten{.changes = std::move(*done), .trial = std::move(trial)};
}

std::string calledTrial(const Logbook& logbook, core::TrialId id) {
    const core::Shelves shelves = logbook.shelves();
    const core::Trial* trial = core::find(shelves.trials, id);
    return trial == nullptr ? "a trial" : "trial " + trial->name;
}

bool hasAnyBatch(const Logbook& logbook, core::TrialId id) {
    return logbook.inside().with([id](Connection& connection) { return hasBatches(connection, id); });
}

core::Refusal alreadyStuck(const core::Trial& trial) {
    return {.field = "Trial",
            .value = trial.name,
            .allowed = "a trial of which nothing is stuck yet",
            .sentence = "Trial " + trial.name +
                        " can't be dealt again, since batches of it are stuck; a trial of which "
                        "nothing is stuck yet is allowed."};
}

/// As it is to be written: what was dealt, and when it was set, is not the caller's to say.
core::Trial changedFrom(const core::Trial& before, core::Trial after) {
    after.batches = before.batches;
    after.changes = before.changes;
    after.setOn = before.setOn;
    if (!before.batches.empty()) after.allocationSeed = before.allocationSeed;
    return after;
}

core::Refusals changeByTheRule(const Logbook& logbook, Writer& writer, const core::Trial& trial,
                               const std::string& reason, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    const core::Trial* before = core::find(shelves.trials, trial.id);
    if (before == nullptr) return noSuchTrial();
    core::Trial after = changedFrom(*before, trial);
    const bool isLate = wasChecked(logbook, trial.id);
    core::Refusals faults = core::faultsIn(after, shelves);
    append(faults, core::faultsInChange(*before, after, isLate, reason, shelves));
    if (!faults.empty()) return faults;
    const auto changes = core::changesBetween(*before, after, shelves, today, reason);
    if (isLate)
        after.changes.insert(after.changes.end(), changes.begin(), changes.end());
    else if (after.factor && (!changes.empty() || after.question != before->question))
        after.setOn = today;
    writer.change(after);
    return faults;
}

/// What is to be stuck must be as it was dealt, all of one session of the trial.
core::Refusals faultsInDraft(const core::Trial& trial, const TrialSessionDraft& draft, const core::Shelves& shelves) {
    core::Refusals faults;
    int session = 0;
    for (const core::PlannedBatch& planned : draft.batches) {
        const std::string about = "Dealt batch " + std::to_string(planned.number);
        core::Refusals found = core::faultsInSticking(planned, trial, shelves);
        const auto dealt = std::ranges::find(trial.batches, planned.number, &core::TrialBatch::number);
        if (dealt != trial.batches.end()) {
            if (session != 0 && dealt->session != session)
                found.push_back({"Session", std::to_string(dealt->session), std::to_string(session),
                                 "Session is " + std::to_string(dealt->session) + ", but others are of session " +
                                     std::to_string(session) + "; one session at a time is allowed."});
            session = dealt->session;
        }
        const auto sameNumber = std::ranges::count(draft.batches, planned.number, &core::PlannedBatch::number);
        if (sameNumber > 1)
            found.push_back({"Dealt batch", std::to_string(planned.number), "each once",
                             "Dealt batch is " + std::to_string(planned.number) + " once more; each once is allowed."});
        prefix(found, about);
        append(faults, std::move(found));
    }
    return faults;
}

void markStuck(core::Trial& trial, const TrialSessionDraft& draft, const std::vector<core::Batch>& batches) {
    for (std::size_t place = 0; place < batches.size(); ++place) {
        const auto dealt = std::ranges::find(trial.batches, draft.batches[place].number, &core::TrialBatch::number);
        dealt->batch = batches[place].id;
    }
}

}  // namespace

core::Result<TrialWritten> planTrial(Logbook& logbook, core::Trial trial, const core::TrialLayout& layout,
                                     core::Date today, core::Shelves made) {
    trial.id = {};
    auto done = actUnlessRefused(logbook, "new trial " + trial.name, [&](Writer& writer) {
        trial.changes.clear();
        core::Refusals faults = writeMade(logbook, writer, made);
        if (faults.empty()) faults = deal(logbook, trial, layout, today);
        if (faults.empty()) trial.id = writer.add(trial);
        return faults;
    });
    return written(std::move(done), std::move(trial));
}

core::Result<Changes> changeTrial(Logbook& logbook, const core::Trial& trial, const std::string& reason,
                                  core::Date today) {
    return actUnlessRefused(logbook, "change of trial " + trial.name,
                            [&](Writer& writer) { return changeByTheRule(logbook, writer, trial, reason, today); });
}

core::Result<TrialWritten> allocateAgain(Logbook& logbook, core::Trial trial, const core::TrialLayout& layout,
                                         core::Date today) {
    auto done = actUnlessRefused(logbook, "new deal of trial " + trial.name, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        const core::Trial* before = core::find(shelves.trials, trial.id);
        if (before == nullptr) return noSuchTrial();
        if (hasAnyBatch(logbook, trial.id)) return core::Refusals{alreadyStuck(*before)};
        trial.changes = before->changes;
        core::Refusals faults = deal(logbook, trial, layout, today);
        if (faults.empty()) writer.change(trial);
        return faults;
    });
    return written(std::move(done), std::move(trial));
}

core::Result<TrialWritten> placeAgain(Logbook& logbook, core::TrialId id, int session) {
    core::Trial trial;
    const std::string words = "new places for session " + std::to_string(session) + " of " + calledTrial(logbook, id);
    auto done = actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        const core::Trial* before = core::find(shelves.trials, id);
        if (before == nullptr) return noSuchTrial();
        trial = *before;
        std::vector<core::StationRoom> rooms;
        for (const core::Station& station : shelves.stations) rooms.push_back(roomAt(logbook, station));
        auto placed = core::placedAgain(trial, session, std::move(rooms));
        if (!placed) return placed.error();
        trial.batches = std::move(*placed);
        writer.change(trial);
        return core::Refusals{};
    });
    return written(std::move(done), std::move(trial));
}

core::Result<SessionWritten> stickTrialSession(Logbook& logbook, const TrialSessionDraft& draft, core::Date today) {
    SessionDraft session{.session = draft.session, .made = draft.made, .batches = {}};
    for (const core::PlannedBatch& planned : draft.batches) session.batches.push_back(planned.batch);
    const std::string words =
        wordsForSession(draft.session, draft.batches.size()) + " of " + calledTrial(logbook, draft.trial);
    auto done = actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        const core::Trial* before = core::find(shelves.trials, draft.trial);
        if (before == nullptr) return noSuchTrial();
        core::Refusals faults = faultsInDraft(*before, draft, shelves);
        if (!faults.empty()) return faults;
        for (core::Batch& batch : session.batches) batch.trial = draft.trial;
        faults = writeSession(logbook, writer, session, today);
        if (!faults.empty()) return faults;
        core::Trial trial = *before;
        markStuck(trial, draft, session.batches);
        writer.change(trial);
        return faults;
    });
    if (!done) return core::refused(std::move(done.error()));
    return SessionWritten{
        .changes = std::move(*done), .session = session.session.id, .batches = std::move(session.batches)};
}

core::StationRoom roomAt(const Logbook& logbook, const core::Station& station) {
    return core::roomAt(station, logbook.batchRecordsAt(station.id));
}

bool wasChecked(const Logbook& logbook, core::TrialId trial) {
    return logbook.inside().with([trial](Connection& connection) { return hasChecks(connection, trial); });
}

}  // namespace db
