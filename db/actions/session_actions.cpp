// SPDX-License-Identifier: MIT
#include "db/actions/session_actions.h"

#include "core/batch/batch_rules.h"
#include "core/event_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/batch_codes.h"
#include "db/actions/held_positions.h"
#include "db/inside.h"
#include "db/new_id.h"
#include "db/tables/batch_table.h"

namespace db {

namespace {

std::string codeOfBatch(const Logbook& logbook, core::BatchId id) {
    const auto record = logbook.batch(id);
    return record ? record->batch.code : "a batch";
}

std::vector<core::BatchId> batchesIn(const Logbook& logbook, core::SessionId session) {
    return logbook.inside().with([&](Connection& connection) { return batchesOf(connection, session); });
}

/// Judges one batch as it is to become, and writes it when nothing is wrong.
core::Refusals changeIfSound(Logbook& logbook, Writer& writer, const core::BatchRecord& record, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    core::Refusals faults = core::faultsIn(record.batch, record.checks, shelves, today);
    append(faults, HeldPositions(logbook).faultsIn(record, shelves));
    if (auto taken = BatchCodes(logbook).take(record.batch.code, record.batch.id)) faults.push_back(std::move(*taken));
    if (faults.empty()) writer.change(record.batch);
    return faults;
}

core::Refusals writeChangedSession(const Logbook& logbook, Writer& writer, const core::Session& session,
                                   core::Date today) {
    if (core::find(logbook.sessions(), session.id) == nullptr) return {notThere("Session", "session")};
    core::Refusals faults = core::faultsIn(session, today);
    if (!faults.empty()) return faults;
    const core::Shelves shelves = logbook.shelves();
    for (const core::BatchId id : batchesIn(logbook, session.id)) {
        auto record = logbook.batch(id);
        if (!record) continue;
        record->batch.stuckOn = session.date;
        core::Refusals found = core::faultsIn(record->batch, record->checks, shelves, today);
        prefix(found, record->batch.code);
        append(faults, std::move(found));
    }
    if (faults.empty()) writer.change(session);
    return faults;
}

core::Refusals writeWork(const Logbook& logbook, Writer& writer, const core::Session& session, core::Expense work,
                         core::Date today) {
    const std::vector<core::Expense> before = logbook.expenses(session.id);
    const bool isThere = core::find(before, work.id) != nullptr;
    if (!work.minutes) {
        if (isThere) writer.remove(work.id);
        return {};
    }
    if (work.id.isSet() && !isThere) return {notThere("Minutes", "expense")};
    work.session = session.id;
    core::Refusals faults = core::faultsIn(work, today);
    if (!faults.empty()) return faults;
    if (work.id.isSet())
        writer.change(work);
    else
        writer.add(work);
    return faults;
}

}  // namespace

std::int64_t newId() {
    return drawId();
}

core::Result<Changes> changeBatch(Logbook& logbook, const core::Batch& batch, core::Date today) {
    return actUnlessRefused(logbook, "change of " + codeOfBatch(logbook, batch.id), [&](Writer& writer) {
        auto record = logbook.batch(batch.id);
        if (!record) return core::Refusals{notThere("Batch", "batch")};
        const core::SessionId session = record->batch.session;
        const core::Date day = record->batch.stuckOn;
        record->batch = batch;
        record->batch.session = session;
        record->batch.stuckOn = day;
        record->batch.positions = core::tidyPositions(batch.positions);
        return changeIfSound(logbook, writer, *record, today);
    });
}

core::Result<Changes> changeSession(Logbook& logbook, const core::Session& session, core::Date today) {
    return actUnlessRefused(logbook, "change of the session of " + core::isoText(session.date),
                            [&](Writer& writer) { return writeChangedSession(logbook, writer, session, today); });
}

core::Result<Changes> changeSession(Logbook& logbook, const core::Session& session, const core::Expense& work,
                                    core::Date today) {
    return actUnlessRefused(logbook, "change of the session of " + core::isoText(session.date), [&](Writer& writer) {
        core::Refusals faults = writeChangedSession(logbook, writer, session, today);
        append(faults, writeWork(logbook, writer, session, work, today));
        return faults;
    });
}

core::Result<Changes> deleteBatch(Logbook& logbook, core::BatchId batch) {
    return actUnlessRefused(logbook, "deletion of " + codeOfBatch(logbook, batch), [&](Writer& writer) {
        const auto record = logbook.batch(batch);
        if (!record) return core::Refusals{notThere("Batch", "batch")};
        writer.remove(batch);
        if (batchesIn(logbook, record->batch.session).empty()) writer.remove(record->batch.session);
        return core::Refusals{};
    });
}

core::Result<Changes> closeBatch(Logbook& logbook, core::BatchId batch, core::Date on, const std::string& reason,
                                 core::Date today) {
    return actUnlessRefused(logbook, "closing of " + codeOfBatch(logbook, batch), [&](Writer& writer) {
        auto record = logbook.batch(batch);
        if (!record) return core::Refusals{notThere("Batch", "batch")};
        if (record->batch.closedOn)
            return core::Refusals{{.field = "Closed on",
                                   .value = core::isoText(on),
                                   .allowed = "an open batch",
                                   .sentence = record->batch.code + " was closed on " +
                                               core::isoText(*record->batch.closedOn) +
                                               " already; reopen it first to close it on " + core::isoText(on) + "."}};
        record->batch.closedOn = on;
        record->batch.closeReason = reason;
        return changeIfSound(logbook, writer, *record, today);
    });
}

core::Result<Changes> reopenBatch(Logbook& logbook, core::BatchId batch) {
    return actUnlessRefused(logbook, "reopening of " + codeOfBatch(logbook, batch), [&](Writer& writer) {
        auto record = logbook.batch(batch);
        if (!record) return core::Refusals{notThere("Batch", "batch")};
        if (!record->batch.closedOn)
            return core::Refusals{
                {.field = "Closed on",
                 .value = "not closed by hand",
                 .allowed = "a batch that was closed by hand",
                 .sentence = record->batch.code +
                             " was not closed by hand, so there is nothing to reopen; change its checks instead."}};
        record->batch.closedOn.reset();
        record->batch.closeReason.clear();
        core::Refusals faults = HeldPositions(logbook).faultsIn(*record, logbook.shelves());
        if (faults.empty()) writer.change(record->batch);
        return faults;
    });
}

}  // namespace db
