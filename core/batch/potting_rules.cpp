// SPDX-License-Identifier: MIT
#include "core/batch/potting_rules.h"

#include <algorithm>
#include <vector>

#include "core/batch/day_rules.h"
#include "core/field_faults.h"

namespace core {

namespace {

struct PottedByDay {
    Date day{};
    PottedTally tally;
    int rooted{};
};

/// So much was potted and lost by each day of a count, beside those rooted by then.
std::vector<PottedByDay> pottedByDay(const BatchRecord& record, std::span<const Potting> pottings) {
    std::vector<Potting> inOrder(pottings.begin(), pottings.end());
    std::ranges::sort(inOrder, {}, &Potting::countedOn);
    std::vector<PottedByDay> days;
    PottedTally sum;
    for (const Potting& potting : inOrder) {
        sum.potted += potting.potted;
        sum.lost += potting.lost;
        const PottedByDay now{potting.countedOn, sum, tallyOf(record.batch, record.checks, potting.countedOn).rooted};
        if (!days.empty() && days.back().day == potting.countedOn)
            days.back() = now;
        else
            days.push_back(now);
    }
    return days;
}

}  // namespace

Refusals faultsInPottings(const BatchRecord& record, std::span<const Potting> pottings) {
    for (const PottedByDay& by : pottedByDay(record, pottings)) {
        const std::string day = isoText(by.day);
        if (by.tally.potted > by.rooted)
            return {{"Potted", std::to_string(by.tally.potted), rangeText(0, by.rooted),
                     "Potted is " + std::to_string(by.tally.potted) + " in all by " + day + "; " +
                         rangeText(0, by.rooted) + " is allowed, since so many of " + record.batch.code +
                         " had rooted by then."}};
        if (by.tally.lost > by.tally.potted)
            return {{"Lost after potting", std::to_string(by.tally.lost), rangeText(0, by.tally.potted),
                     "Lost after potting is " + std::to_string(by.tally.lost) + " in all by " + day + "; " +
                         rangeText(0, by.tally.potted) + " is allowed, since so many of " + record.batch.code +
                         " had been potted by then."}};
    }
    return {};
}

Refusals faultsIn(const Potting& potting, const BatchRecord& record, std::span<const Potting> others, Date today) {
    Refusals faults;
    collect(faults, faultInDay("Counted on", potting.countedOn, today));
    if (faults.empty() && potting.countedOn < record.batch.stuckOn)
        faults.push_back(outOfRange("Counted on", isoText(potting.countedOn),
                                    isoText(record.batch.stuckOn) + " to " + isoText(today)));
    collect(faults, faultInWhole("Potted", potting.potted, 0, record.batch.stuck));
    collect(faults, faultInWhole("Lost after potting", potting.lost, 0, record.batch.stuck));
    if (faults.empty() && potting.potted == 0 && potting.lost == 0)
        faults.push_back({"Potted", "0", "1 or more, or some lost",
                          "Potted is 0 and nothing was lost; at least one of the two is needed."});
    collect(faults, faultInNote("Note", potting.note));
    if (!faults.empty()) return faults;
    std::vector<Potting> all{potting};
    for (const Potting& other : others)
        if (other.id != potting.id) all.push_back(other);
    return faultsInPottings(record, all);
}

}  // namespace core
