// SPDX-License-Identifier: MIT
#include "core/treatment/lot_rules.h"

#include "core/batch/day_rules.h"
#include "core/field_faults.h"

namespace core {

namespace {

void judgeOwner(const Lot& lot, const Shelves& shelves, Refusals& faults) {
    if (lot.treatment.isSet() == lot.medium.isSet()) {
        const std::string what = lot.treatment.isSet() ? "a treatment and a medium" : "nothing";
        faults.push_back({"Lot of", what, "one treatment or one medium",
                          "Lot of is " + what + "; one treatment or one medium is allowed."});
        return;
    }
    if (lot.treatment.isSet() && find(shelves.treatments, lot.treatment) == nullptr)
        faults.push_back(missingRefusal("Lot of", lot.treatment.value));
    if (lot.medium.isSet() && find(shelves.media, lot.medium) == nullptr)
        faults.push_back(missingRefusal("Lot of", lot.medium.value));
}

void judgeAgainst(const Lot& other, const Lot& lot, Refusals& faults) {
    if (other.id == lot.id || other.treatment != lot.treatment || other.medium != lot.medium) return;
    if (other.name == lot.name) faults.push_back(takenRefusal("Name", lot.name));
    if (other.usedFrom == lot.usedFrom)
        faults.push_back({"Used from", isoText(lot.usedFrom), "another day",
                          "Used from is " + isoText(lot.usedFrom) + ", the day from which " + quotable(other.name) +
                              " is used; another day is allowed."});
}

}  // namespace

Refusals faultsIn(const Lot& lot, const Shelves& shelves, Date today) {
    Refusals faults;
    collect(faults, faultInName("Name", lot.name));
    judgeOwner(lot, shelves, faults);
    collect(faults, faultInDay("Used from", lot.usedFrom, today));
    if (lot.madeOn) {
        collect(faults, faultInDay("Made on", *lot.madeOn, today));
        if (*lot.madeOn > lot.usedFrom)
            faults.push_back(
                {"Made on", isoText(*lot.madeOn), isoText(lot.usedFrom) + " or earlier",
                 "Made on is " + isoText(*lot.madeOn) + "; " + isoText(lot.usedFrom) + " or earlier is allowed."});
    }
    collect(faults, faultInNote("Note", lot.note));
    for (const Lot& other : shelves.lots) judgeAgainst(other, lot, faults);
    return faults;
}

}  // namespace core
