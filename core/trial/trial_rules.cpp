// SPDX-License-Identifier: MIT
#include "core/trial/trial_rules.h"

#include <algorithm>

#include "core/field_faults.h"

namespace core {

namespace {

constexpr const char* notSet = "not set";

std::string textOrNot(const std::optional<int>& value) {
    return value ? std::to_string(*value) : notSet;
}

std::string textOrNot(const std::optional<double>& value) {
    return value ? figureText(*value) : notSet;
}

std::string textOrNot(const std::optional<Factor>& value) {
    return value ? std::string(wordFor(*value)) : notSet;
}

std::string armNames(const Trial& trial, const Shelves& shelves) {
    std::string names;
    for (const TrialArm& arm : trial.arms)
        names += (names.empty() ? "" : ", ") + nameOf(arm, trial.factor.value_or(Factor::Method), shelves);
    return names.empty() ? notSet : names;
}

std::string blindingText(bool isBlinded) {
    return isBlinded ? "blinded" : "not blinded";
}

/// What was dealt from it can't be told otherwise afterwards.
void judgeDealtFrom(const std::string& field, const std::string& was, const std::string& becomes, Refusals& faults) {
    if (was == becomes) return;
    faults.push_back({field, becomes, was + ", or deal again",
                      field + " is " + becomes + ", but cuttings were dealt with " + was + "; only " + was +
                          " is allowed, or deal again."});
}

}  // namespace

std::vector<TrialChange> changesBetween(const Trial& before, const Trial& after, const Shelves& shelves, Date on,
                                        const std::string& reason) {
    std::vector<TrialChange> changes;
    const auto note = [&](const char* what, const std::string& was, const std::string& became) {
        if (was != became)
            changes.push_back({.changedOn = on, .what = what, .was = was, .became = became, .reason = reason});
    };
    note("horizon day", textOrNot(before.horizonDay), textOrNot(after.horizonDay));
    note("measure", std::string(wordFor(before.measure)), std::string(wordFor(after.measure)));
    note("margin", textOrNot(before.margin), textOrNot(after.margin));
    note("factor", textOrNot(before.factor), textOrNot(after.factor));
    note("arms", armNames(before, shelves), armNames(after, shelves));
    note("blinding", blindingText(before.isBlinded), blindingText(after.isBlinded));
    return changes;
}

Refusals faultsInChange(const Trial& before, const Trial& after, bool wasChecked, const std::string& reason,
                        const Shelves& shelves) {
    Refusals faults;
    collect(faults, faultInNote("Reason", reason));
    if (!before.batches.empty()) {
        judgeDealtFrom("Factor", textOrNot(before.factor), textOrNot(after.factor), faults);
        judgeDealtFrom("Arms", armNames(before, shelves), armNames(after, shelves), faults);
        judgeDealtFrom("Blocks", std::string(wordFor(before.blockedBy)), std::string(wordFor(after.blockedBy)), faults);
        judgeDealtFrom("Per arm", textOrNot(before.perArm), textOrNot(after.perArm), faults);
        judgeDealtFrom("Crossed over", before.isCrossedOver ? "yes" : "no", after.isCrossedOver ? "yes" : "no", faults);
    }
    const auto changes = changesBetween(before, after, shelves, {}, reason);
    if (!wasChecked || changes.empty() || !isBlank(reason)) return faults;
    std::string what;
    for (const TrialChange& change : changes) what += (what.empty() ? "" : ", ") + change.what;
    faults.push_back({"Reason", reason.empty() ? "not given" : quotable(reason), "a few words",
                      "Reason is not given, but batches of this trial have been checked, so a change of its " + what +
                          " needs one; a few words are allowed, and the trial's report prints them."});
    return faults;
}

int sessionsOf(const Trial& trial) {
    int sessions = 0;
    for (const TrialBatch& dealt : trial.batches) sessions = std::max(sessions, dealt.session);
    return sessions;
}

bool isStuck(const Trial& trial) {
    return std::ranges::any_of(trial.batches, [](const TrialBatch& dealt) { return dealt.batch.isSet(); });
}

}  // namespace core
