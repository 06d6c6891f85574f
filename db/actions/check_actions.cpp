// SPDX-License-Identifier: MIT
#include "db/actions/check_actions.h"

#include <algorithm>
#include <map>

#include "core/batch/batch_rules.h"
#include "core/batch/check_rules.h"
#include "core/batch/potting_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/ask_first.h"
#include "db/actions/held_positions.h"
#include "db/inside.h"
#include "db/tables/check_table.h"

namespace db {

namespace {

core::BatchId batchOf(const Logbook& logbook, core::CheckId check) {
    return logbook.inside().with([&](Connection& connection) { return batchOfCheck(connection, check); });
}

std::string codeOf(const Logbook& logbook, core::BatchId id) {
    const auto record = logbook.batch(id);
    return record ? record->batch.code : "a batch";
}

std::string wordsFor(const Logbook& logbook, const std::vector<CheckDraft>& checks) {
    if (checks.size() == 1) return "check of " + codeOf(logbook, checks.front().check.batch);
    return std::to_string(checks.size()) + " checks";
}

void closeAfter(core::BatchRecord& record, const CheckDraft& draft) {
    record.batch.closedOn = draft.check.checkedOn;
    record.batch.closeReason = core::isBlank(draft.closeReason) ? "nothing left to wait for" : draft.closeReason;
}

/// One draft of a round, judged with the checks that its batch has, those of earlier drafts included.
core::Refusals recordOne(Writer& writer, const CheckDraft& draft, core::BatchRecord& record,
                         const core::Shelves& shelves, core::Date today) {
    core::Refusals faults = core::faultsIn(draft.check, record.batch, record.checks, shelves, today);
    if (!faults.empty()) return faults;
    record.checks.push_back(draft.check);
    record.checks.back().id = writer.add(draft.check);
    if (!draft.closesBatch) return {};
    closeAfter(record, draft);
    faults = core::faultsIn(record.batch, record.checks, shelves, today);
    if (faults.empty()) writer.change(record.batch);
    return faults;
}

/// The check, its batch, and the batch's other checks; nothing when it is gone.
struct CheckInPlace {
    core::Check check;
    core::BatchRecord others;
};

std::optional<CheckInPlace> checkInPlace(const Logbook& logbook, core::CheckId id) {
    auto record = logbook.batch(batchOf(logbook, id));
    if (!record) return std::nullopt;
    const auto at = std::ranges::find(record->checks, id, &core::Check::id);
    if (at == record->checks.end()) return std::nullopt;
    CheckInPlace found{.check = *at, .others = {}};
    record->checks.erase(at);
    found.others = std::move(*record);
    return found;
}

/// A check that says less than it did leaves cuttings standing where others may have been stuck since, and may leave fewer rooted than
/// were potted on.
core::Refusals faultsInTaken(const Logbook& logbook, const core::BatchRecord& record, const core::Shelves& shelves) {
    core::Refusals faults = core::faultsInPottings(record, logbook.pottings(record.batch.id));
    if (!record.batch.positions.empty()) append(faults, HeldPositions(logbook).faultsIn(record, shelves));
    return faults;
}

}  // namespace

core::Result<Changes> recordChecks(Logbook& logbook, const std::vector<CheckDraft>& checks, core::Date today) {
    return actUnlessRefused(logbook, wordsFor(logbook, checks), [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        std::map<core::BatchId, std::optional<core::BatchRecord>> records;
        core::Refusals faults;
        for (const CheckDraft& draft : checks) {
            auto& record = records.try_emplace(draft.check.batch).first->second;
            if (!record) record = logbook.batch(draft.check.batch);
            if (!record) {
                faults.push_back(notThere("Batch", "batch"));
                continue;
            }
            core::Refusals found = recordOne(writer, draft, *record, shelves, today);
            prefix(found, record->batch.code);
            append(faults, std::move(found));
        }
        return faults;
    });
}

core::Result<Changes> changeCheck(Logbook& logbook, const core::Check& check, core::Date today) {
    const std::string words = "change of a check of " + codeOf(logbook, batchOf(logbook, check.id));
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const auto place = checkInPlace(logbook, check.id);
        if (!place) return core::Refusals{notThere("Check", "check")};
        const core::Shelves shelves = logbook.shelves();
        core::Check changed = check;
        changed.batch = place->check.batch;
        core::Refusals faults =
            core::faultsIn(changed, place->others.batch, place->others.checks, shelves, today, &place->check);
        if (faults.empty()) {
            core::BatchRecord after = place->others;
            after.checks.push_back(changed);
            faults = faultsInTaken(logbook, after, shelves);
        }
        if (faults.empty()) writer.change(changed);
        return faults;
    });
}

core::Result<Changes> deleteCheck(Logbook& logbook, core::CheckId check) {
    const std::string words = "deletion of a check of " + codeOf(logbook, batchOf(logbook, check));
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const auto place = checkInPlace(logbook, check);
        if (!place) return core::Refusals{notThere("Check", "check")};
        core::Refusals faults = faultsInTaken(logbook, place->others, logbook.shelves());
        if (faults.empty()) writer.remove(check);
        return faults;
    });
}

}  // namespace db
