// SPDX-License-Identifier: MIT
#include "core/batch/check_rules.h"

#include <algorithm>
#include <array>

#include "core/batch/count_sum.h"
#include "core/batch/day_rules.h"
#include "core/batch/position_rules.h"
#include "core/units/entered_text.h"
#include "core/units/range_text.h"

namespace core {

namespace {

Refusal dayRefusal(const Check& check, const std::string& allowed, const std::string& reason) {
    const std::string day = isoText(check.checkedOn);
    return {.field = "Checked on",
            .value = day,
            .allowed = allowed,
            .sentence = "Checked on is " + day + ", but " + reason + "; " + allowed + " is allowed."};
}

void judgeDay(const Check& check, const Batch& batch, std::span<const Check> others, Date today, Refusals& faults) {
    if (auto fault = faultInDay("Checked on", check.checkedOn, today)) {
        faults.push_back(std::move(*fault));
        return;
    }
    const Date latest = batch.closedOn ? std::min(*batch.closedOn, today) : today;
    const std::string allowed = isoText(batch.stuckOn) + " to " + isoText(latest);
    if (check.checkedOn < batch.stuckOn)
        faults.push_back(dayRefusal(check, allowed, batch.code + " was stuck on " + isoText(batch.stuckOn)));
    if (batch.closedOn && check.checkedOn > *batch.closedOn)
        faults.push_back(dayRefusal(check, allowed, batch.code + " was closed on " + isoText(*batch.closedOn)));
    if (std::ranges::any_of(others, [&](const Check& other) { return other.checkedOn == check.checkedOn; }))
        faults.push_back(dayRefusal(check, "a day without a check", batch.code + " has a check of that day already"));
}

std::string causeName(const Loss& loss, const Shelves& shelves) {
    if (!loss.cause.isSet()) return "cause not known";
    const LossCause* cause = find(shelves.lossCauses, loss.cause);
    return cause == nullptr ? "a cause that is not on the shelves" : cause->name;
}

Refusal countRefusal(const std::string& field, int count, int low, int high) {
    const std::string allowed = rangeText(low, high);
    return {.field = field,
            .value = std::to_string(count),
            .allowed = allowed,
            .sentence = field + " is " + std::to_string(count) + "; " + allowed + " is allowed."};
}

void judgeLosses(const Check& check, const Batch& batch, const Shelves& shelves, Refusals& faults) {
    for (auto loss = check.losses.begin(); loss != check.losses.end(); ++loss) {
        const std::string field = "Lost (" + causeName(*loss, shelves) + ")";
        if (loss->count < 1) faults.push_back(countRefusal(field, loss->count, 1, std::max(1, batch.stuck)));
        if (loss->cause.isSet() && find(shelves.lossCauses, loss->cause) == nullptr)
            faults.push_back({.field = "Cause",
                              .value = std::to_string(loss->cause.value),
                              .allowed = "a cause of loss of this logbook",
                              .sentence = "Cause is one that this logbook does not have (its id is " +
                                          std::to_string(loss->cause.value) +
                                          "); a cause of loss of this logbook is allowed."});
        const auto isSameCause = [&](const Loss& earlier) { return earlier.cause == loss->cause; };
        if (std::any_of(check.losses.begin(), loss, isSameCause))
            faults.push_back({.field = field,
                              .value = std::to_string(loss->count),
                              .allowed = "each cause once",
                              .sentence = field + " is given a second time, with " + std::to_string(loss->count) +
                                          "; each cause once is allowed."});
    }
}

/// How many cuttings a check may account for, and why no more.
struct Room {
    int cuttings{};
    std::string reason;
};

Room roomFor(const Check& check, const Batch& batch, std::span<const Check> others) {
    const int onTheDay = tallyOf(batch, others, check.checkedOn).undecided();
    const int afterAll = tallyOf(batch, others).undecided();
    // Sums only grow, so if the last day holds, all days in between hold.
    if (afterAll == onTheDay)
        return {onTheDay, "only " + std::to_string(onTheDay) + " of the " + std::to_string(batch.stuck) +
                              " cuttings of " + batch.code + " are undecided on " + isoText(check.checkedOn)};
    return {afterAll, "of the " + std::to_string(onTheDay) + " cuttings of " + batch.code + " undecided on " +
                          isoText(check.checkedOn) + " later checks account for " +
                          std::to_string(onTheDay - afterAll)};
}

/// Blames the first of rooted, lost, withdrawn that asks for more than is left by those before it. Where a check is changed, those that
/// stayed come first: what was raised is to blame.
void judgeSum(const Check& check, const Batch& batch, std::span<const Check> others, const Check* before,
              Refusals& faults) {
    struct Part {
        std::string field;
        std::string words;
        int count;
        bool isRaised;
    };
    const Check none;
    const Check& was = before == nullptr ? none : *before;
    std::array parts{Part{"Rooted", " rooted", check.rooted, check.rooted > was.rooted},
                     Part{"Lost", " were lost", check.lost(), check.lost() > was.lost()},
                     Part{"Withdrawn", " were withdrawn", check.withdrawn, check.withdrawn > was.withdrawn}};
    if (before != nullptr) std::ranges::stable_partition(parts, [](const Part& part) { return !part.isRaised; });
    if (std::ranges::any_of(parts, [](const Part& part) { return part.count < 0; })) return;
    const Room room = roomFor(check, batch, others);
    int left = std::max(0, room.cuttings);
    std::string earlier;
    for (const auto& [field, words, count, isRaised] : parts) {
        if (count > left) {
            const std::string allowed = rangeText(0, left);
            const std::string beside = earlier.empty() ? "" : ", and " + earlier + " at this check";
            faults.push_back({field, std::to_string(count), allowed,
                              field + " is " + std::to_string(count) + ", but " + room.reason + beside + "; " +
                                  allowed + " is allowed."});
            return;
        }
        left -= count;
        if (count > 0) earlier += (earlier.empty() ? "" : " and ") + std::to_string(count) + words;
    }
}

}  // namespace

Refusals faultsIn(const Check& check, const Batch& batch, std::span<const Check> others, const Shelves& shelves,
                  Date today, const Check* before) {
    Refusals faults;
    judgeDay(check, batch, others, today, faults);
    if (check.rooted < 0) faults.push_back(countRefusal("Rooted", check.rooted, 0, batch.stuck));
    if (check.withdrawn < 0) faults.push_back(countRefusal("Withdrawn", check.withdrawn, 0, batch.stuck));
    judgeLosses(check, batch, shelves, faults);
    if (check.checkedOn.ok()) judgeSum(check, batch, others, before, faults);
    for (Refusal& fault : faultsInFindings(check, batch, others)) faults.push_back(std::move(fault));
    if (auto fault = faultInNote("Note", check.note)) faults.push_back(std::move(*fault));
    return faults;
}

}  // namespace core
