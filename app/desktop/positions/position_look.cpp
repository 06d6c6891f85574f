// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_look.h"

#include <algorithm>

#include "app/desktop/positions/sorted_counts.h"
#include "core/batch/check_rules.h"
#include "core/batch/position_rules.h"

namespace desktop {

namespace {

const core::Finding* findingAt(const core::Check* check, core::Position position) {
    if (check == nullptr) return nullptr;
    const auto found = std::ranges::find(check->findings, position, &core::Finding::position);
    return found == check->findings.end() ? nullptr : &*found;
}

core::Finding findingOf(core::Position position, const Mark& mark) {
    return {.position = position, .outcome = *mark.outcome, .cause = mark.cause};
}

void insertInOrder(std::vector<core::Finding>& findings, const core::Finding& finding) {
    const auto place = std::ranges::lower_bound(findings, finding.position, {}, &core::Finding::position);
    findings.insert(place, finding);
}

}  // namespace

PositionLook::PositionLook(std::vector<core::BatchRecord> batches, core::Date day)
    : batches_(std::move(batches)), day_(day) {
    // Where a cutting was lost and another stuck since, it is the one that stands there.
    for (const bool isGone : {false, true})
        for (std::size_t i = 0; i < batches_.size(); ++i)
            for (const core::PositionState& state : core::positionStates(batches_[i]))
                if (isGone == (state.finding && state.finding->outcome != core::Outcome::Rooted))
                    batchOf_.emplace(state.position, i);
}

const core::BatchRecord* PositionLook::batchAt(core::Position position) const {
    const auto found = batchOf_.find(position);
    return found == batchOf_.end() ? nullptr : &batches_[found->second];
}

const core::Check* PositionLook::checkOf(const core::BatchRecord& record) const {
    const auto found = std::ranges::find(record.checks, day_, &core::Check::checkedOn);
    return found == record.checks.end() ? nullptr : &*found;
}

bool PositionLook::canMark(core::Position position) const {
    const core::BatchRecord* record = batchAt(position);
    return record != nullptr && std::ranges::none_of(record->checks, [&](const core::Check& check) {
               return check.checkedOn != day_ && findingAt(&check, position) != nullptr;
           });
}

Mark PositionLook::markAt(core::Position position) const {
    const auto marked = marks_.find(position);
    if (marked != marks_.end() && canMark(position)) return marked->second.mark;
    const core::BatchRecord* record = batchAt(position);
    if (record == nullptr) return {};
    for (const core::Check& check : record->checks)
        if (const core::Finding* finding = findingAt(&check, position))
            return {.outcome = finding->outcome, .cause = finding->cause};
    return {};
}

int PositionLook::roomBefore(const core::BatchRecord& record, const Mark& mark) const {
    int room = 0;
    for (const core::Check& check : record.checks)
        if (check.checkedOn < day_) room += unplacedIn(check)[{*mark.outcome, mark.cause}];
    for (const auto& [position, marked] : marks_)
        if (marked.wasCounted && marked.mark == mark && canMark(position) && batchAt(position) == &record) --room;
    return room;
}

bool PositionLook::mark(std::span<const core::Position> positions, const LookMark& mark) {
    bool wentAllTheWay = true;
    for (const core::Position position : positions) {
        if (!canMark(position)) continue;
        const core::BatchRecord& record = *batchAt(position);
        const auto before = marks_.find(position);
        if (before != marks_.end() && before->second == mark) continue;
        if (mark.wasCounted && mark.mark.outcome && roomBefore(record, mark.mark) < 1) {
            wentAllTheWay = false;
            continue;
        }
        const core::Finding* found = findingAt(checkOf(record), position);
        const Mark said = found == nullptr ? Mark{} : Mark{.outcome = found->outcome, .cause = found->cause};
        if (said == mark.mark)
            marks_.erase(position);
        else
            marks_.insert_or_assign(position, LookMark{mark.mark, mark.wasCounted && mark.mark.outcome.has_value()});
    }
    return wentAllTheWay;
}

std::optional<core::Finding> PositionLook::findingNow(const core::BatchRecord& record, core::Position position,
                                                      const core::Finding* said) const {
    if (batchAt(position) != &record) return said == nullptr ? std::nullopt : std::optional(*said);
    const auto marked = marks_.find(position);
    const bool wasCounted = marked != marks_.end() && marked->second.wasCounted;
    const Mark mark = markAt(position);
    if (!canMark(position) || !mark.outcome || wasCounted) return std::nullopt;
    return findingOf(position, mark);
}

core::Check PositionLook::checkFor(const core::BatchRecord& record) const {
    const core::Check* before = checkOf(record);
    core::Check check;
    if (before != nullptr) check = *before;
    check.batch = record.batch.id;
    check.checkedOn = day_;
    check.findings.clear();
    std::map<Sort, int> kept, fresh;
    for (const core::PositionState& state : core::positionStates(record)) {
        const core::Finding* said = findingAt(before, state.position);
        const auto now = findingNow(record, state.position, said);
        if (!now) continue;
        check.findings.push_back(*now);
        ++(said != nullptr && *said == *now ? kept : fresh)[sortOf(*now)];
    }
    const auto unplaced = before == nullptr ? std::map<Sort, int>() : unplacedIn(*before);
    setCounts(check, countsWith(std::move(kept), fresh, unplaced));
    if (!note_) return check;
    if (batches_.size() == 1 || check.note.empty())
        check.note = *note_;
    else if (!note_->empty())
        check.note += '\n' + *note_;
    return check;
}

bool PositionLook::isLookedAt(const core::BatchRecord& record) const {
    if (looksAtAll_ || batches_.size() == 1) return true;
    return std::ranges::any_of(marks_, [&](const auto& each) {
        return batchAt(each.first) == &record && canMark(each.first) && !each.second.wasCounted;
    });
}

core::BatchRecord PositionLook::outcomeOf(const core::BatchRecord& record) const {
    core::BatchRecord after = record;
    for (const auto& [position, marked] : marks_) {
        if (!marked.wasCounted || batchAt(position) != &record || !canMark(position)) continue;
        const core::Finding finding = findingOf(position, marked.mark);
        // The latest look that counted one: it had rooted, or been lost, by then.
        const auto latest = std::find_if(after.checks.rbegin(), after.checks.rend(), [&](const core::Check& check) {
            return check.checkedOn < day_ && unplacedIn(check)[sortOf(finding)] > 0;
        });
        if (latest != after.checks.rend()) insertInOrder(latest->findings, finding);
    }
    if (!isLookedAt(record)) return after;
    const core::Check check = checkFor(record);
    const auto place = std::ranges::lower_bound(after.checks, day_, {}, &core::Check::checkedOn);
    if (place != after.checks.end() && place->checkedOn == day_)
        *place = check;
    else
        after.checks.insert(place, check);
    return after;
}

std::vector<core::BatchRecord> PositionLook::outcome() const {
    std::vector<core::BatchRecord> after;
    for (const core::BatchRecord& record : batches_) after.push_back(outcomeOf(record));
    return after;
}

std::set<core::Position> PositionLook::decidedNow() const {
    std::set<core::Position> positions;
    for (const auto& [position, batch] : batchOf_)
        if (canMark(position) && markAt(position).outcome) positions.insert(position);
    return positions;
}

std::vector<core::Check> PositionLook::checks() const {
    std::vector<core::Check> changed;
    for (const core::BatchRecord& record : batches_)
        for (core::Check& check : outcomeOf(record).checks)
            if (std::ranges::find(record.checks, check) == record.checks.end()) changed.push_back(std::move(check));
    return changed;
}

core::Refusals PositionLook::faultsInPlaces() const {
    core::Refusals faults;
    for (const auto& [position, marked] : marks_) {
        if (!marked.wasCounted || !canMark(position)) continue;
        const auto states = core::positionStates(outcomeOf(*batchAt(position)));
        const auto state = std::ranges::find(states, position, &core::PositionState::position);
        if (state != states.end() && state->finding) continue;
        const std::string name = core::nameOf(position), before = "before " + core::isoText(day_);
        faults.push_back({"Position " + name, "counted " + before, "a mark of something new",
                          "Position " + name + " is marked as counted " + before +
                              ", but no check from then has one without its place; a mark of something new is "
                              "allowed."});
    }
    return faults;
}

core::Refusals PositionLook::faults(const core::Shelves& shelves, core::Date today) const {
    core::Refusals faults = faultsInPlaces();
    for (const core::BatchRecord& record : batches_) {
        const core::BatchRecord after = outcomeOf(record);
        for (const core::Check& check : after.checks) {
            if (std::ranges::find(record.checks, check) != record.checks.end()) continue;
            std::vector<core::Check> others = after.checks;
            std::erase(others, check);
            for (core::Refusal& fault : core::faultsIn(check, record.batch, others, shelves, today)) {
                if (batches_.size() > 1) fault.sentence = record.batch.code + ": " + fault.sentence;
                faults.push_back(std::move(fault));
            }
        }
    }
    return faults;
}

LookSums PositionLook::sums() const {
    LookSums sums;
    for (const core::BatchRecord& record : batches_) {
        const core::BatchRecord after = outcomeOf(record);
        const core::Tally tally = core::tallyOf(after.batch, after.checks, day_);
        sums.rooted += tally.rooted;
        sums.lost += tally.lost;
        sums.withdrawn += tally.withdrawn;
        sums.undecided += tally.undecided();
        const core::Check* check = checkOf(after);
        if (check == nullptr) continue;
        sums.newRooted += check->rooted;
        sums.newLost += check->lost();
        sums.newWithdrawn += check->withdrawn;
    }
    return sums;
}

std::vector<Unplaced> PositionLook::unplacedBefore() const {
    std::map<Sort, int> sums;
    for (const core::BatchRecord& record : batches_)
        for (const core::Check& check : record.checks)
            if (check.checkedOn < day_)
                for (const auto& [sort, count] : unplacedIn(check)) sums[sort] += count;
    for (const auto& [position, marked] : marks_)
        if (marked.wasCounted && canMark(position)) --sums[{*marked.mark.outcome, marked.mark.cause}];
    std::vector<Unplaced> unplaced;
    for (const auto& [sort, count] : sums)
        if (count > 0) unplaced.push_back({.mark = {.outcome = sort.first, .cause = sort.second}, .count = count});
    return unplaced;
}

std::string PositionLook::noteKept() const {
    const core::Check* check = batches_.size() == 1 ? checkOf(batches_.front()) : nullptr;
    return check == nullptr ? std::string() : check->note;
}

}  // namespace desktop
