// SPDX-License-Identifier: MIT
#include "db/actions/look_actions.h"

#include <algorithm>
#include <map>
#include <optional>

#include "core/batch/check_rules.h"
#include "core/batch/potting_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/held_positions.h"

namespace db {

namespace {

/// A batch as it is to become, and which of its checks are this look's.
struct Looked {
    std::optional<core::BatchRecord> record;
    std::vector<core::Check> changed;
};

using LookedBatches = std::map<core::BatchId, Looked>;

LookedBatches gathered(const Logbook& logbook, const std::vector<core::Check>& checks) {
    LookedBatches batches;
    for (const core::Check& check : checks) {
        const auto [place, isNew] = batches.try_emplace(check.batch);
        if (isNew) place->second.record = logbook.batch(check.batch);
        place->second.changed.push_back(check);
    }
    return batches;
}

std::string wordsOf(const LookedBatches& batches) {
    if (batches.size() != 1) return "look hole by hole at " + std::to_string(batches.size()) + " batches";
    const auto& record = batches.begin()->second.record;
    return "look hole by hole at " + (record ? record->batch.code : std::string("a batch"));
}

/// Puts the changed checks in place of what they were; false when one of them is gone.
bool putInPlace(Looked& looked) {
    for (const core::Check& check : looked.changed) {
        if (!check.id.isSet()) continue;
        const auto at = std::ranges::find(looked.record->checks, check.id, &core::Check::id);
        if (at == looked.record->checks.end()) return false;
        *at = check;
    }
    return true;
}

core::Refusals faultsIn(const Looked& looked, const core::Shelves& shelves, core::Date today) {
    core::Refusals faults;
    std::vector<core::Check> others = looked.record->checks;
    for (const core::Check& check : looked.changed)
        if (check.id.isSet()) std::erase_if(others, [&](const core::Check& each) { return each.id == check.id; });
    for (const core::Check& check : looked.changed) {
        append(faults, core::faultsIn(check, looked.record->batch, others, shelves, today));
        others.push_back(check);
    }
    return faults;
}

core::Refusals keepLook(const Logbook& logbook, Writer& writer, Looked& looked, const core::Shelves& shelves,
                        core::Date today) {
    if (!looked.record) return {notThere("Batch", "batch")};
    if (!putInPlace(looked)) return {notThere("Check", "check")};
    core::Refusals faults = faultsIn(looked, shelves, today);
    for (const core::Check& check : looked.changed)
        if (!check.id.isSet()) looked.record->checks.push_back(check);
    // A finding that is taken back may leave fewer rooted than were potted on, or a cutting where another has been stuck since.
    if (faults.empty()) faults = core::faultsInPottings(*looked.record, logbook.pottings(looked.record->batch.id));
    if (faults.empty() && !looked.record->batch.positions.empty())
        faults = HeldPositions(logbook).faultsIn(*looked.record, shelves);
    if (!faults.empty()) return faults;
    for (const core::Check& check : looked.changed) {
        if (check.id.isSet())
            writer.change(check);
        else
            writer.add(check);
    }
    return {};
}

}  // namespace

core::Result<Changes> recordLook(Logbook& logbook, const std::vector<core::Check>& checks, core::Date today) {
    LookedBatches batches = gathered(logbook, checks);
    return actUnlessRefused(logbook, wordsOf(batches), [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        core::Refusals faults;
        for (auto& [id, looked] : batches) {
            core::Refusals found = keepLook(logbook, writer, looked, shelves, today);
            if (batches.size() > 1 && looked.record) prefix(found, looked.record->batch.code);
            append(faults, std::move(found));
        }
        return faults;
    });
}

}  // namespace db
