// SPDX-License-Identifier: MIT
#include "core/batch/batch_rules.h"

#include <algorithm>

#include "core/batch/batch_code.h"
#include "core/batch/day_rules.h"
#include "core/units/entered_text.h"
#include "core/units/range_text.h"

namespace core {

namespace {

void addFault(Refusals& faults, std::optional<Refusal> fault) {
    if (fault) faults.push_back(std::move(*fault));
}

void judgeStuck(const Batch& batch, const Tally& tally, Refusals& faults) {
    const std::int64_t counted = std::int64_t{tally.rooted} + tally.lost + tally.withdrawn;
    const int accounted = static_cast<int>(std::clamp<std::int64_t>(counted, 1, mostStuck));
    if (batch.stuck >= accounted && batch.stuck <= mostStuck) return;
    const std::string allowed = rangeText(accounted, mostStuck);
    const std::string value = std::to_string(batch.stuck);
    const std::string reason =
        batch.stuck >= 1 && batch.stuck < accounted
            ? ", but the checks of " + batch.code + " account for " + std::to_string(accounted) + " cuttings"
            : "";
    faults.push_back({"Stuck", value, allowed, "Stuck is " + value + reason + "; " + allowed + " is allowed."});
}

void judgeStuckOn(const Batch& batch, std::span<const Check> checks, Date today, Refusals& faults) {
    if (auto fault = faultInDay("Stuck on", batch.stuckOn, today)) {
        faults.push_back(std::move(*fault));
        return;
    }
    const auto first = std::ranges::min_element(checks, {}, &Check::checkedOn);
    if (first == checks.end() || first->checkedOn >= batch.stuckOn) return;
    const std::string day = isoText(batch.stuckOn), allowed = "1800-01-01 to " + isoText(first->checkedOn);
    faults.push_back({"Stuck on", day, allowed,
                      "Stuck on is " + day + ", but " + batch.code + " was first checked on " +
                          isoText(first->checkedOn) + "; " + allowed + " is allowed."});
}

void judgeClosing(const Batch& batch, const Tally& tally, Date today, Refusals& faults) {
    addFault(faults, faultInNote("Reason for closing", batch.closeReason));
    if (!batch.closedOn) return;
    if (isBlank(batch.closeReason))
        faults.push_back(
            {"Reason for closing", quotable(batch.closeReason), "a few words",
             "Reason for closing is blank, but " + batch.code + " is closed by hand; a few words are needed."});
    if (auto fault = faultInDay("Closed on", *batch.closedOn, today)) {
        faults.push_back(std::move(*fault));
        return;
    }
    const bool wasChecked = tally.lastCheckedOn && *tally.lastCheckedOn > batch.stuckOn;
    const Date earliest = wasChecked ? *tally.lastCheckedOn : batch.stuckOn;
    if (*batch.closedOn >= earliest) return;
    const std::string day = isoText(*batch.closedOn), allowed = isoText(earliest) + " to " + isoText(today);
    faults.push_back({"Closed on", day, allowed,
                      "Closed on is " + day + ", but " + batch.code +
                          (wasChecked ? " was last checked on " : " was stuck on ") + isoText(earliest) + "; " +
                          allowed + " is allowed."});
}

template <class Thing, class ThingId>
void judgeReference(const std::string& field, ThingId id, const std::vector<Thing>& shelf, bool isNeeded,
                    Refusals& faults) {
    if (!id.isSet() && !isNeeded) return;
    if (find(shelf, id) != nullptr && id.isSet()) return;
    const std::string value = id.isSet() ? "the id " + std::to_string(id.value) : "not given";
    faults.push_back({field, value, "one that this logbook has",
                      field + (id.isSet() ? " has " + value + ", which this logbook does not have" : " is not given") +
                          "; one that this logbook has is allowed."});
}

void judgeReferences(const Batch& batch, const Shelves& shelves, Refusals& faults) {
    judgeReference("Plant", batch.plant, shelves.plants, true, faults);
    judgeReference("Stock plant", batch.stockPlant, shelves.stockPlants, false, faults);
    judgeReference("Method", batch.method, shelves.methods, true, faults);
    judgeReference("Station", batch.station, shelves.stations, false, faults);
    judgeReference("Medium", batch.medium, shelves.media, false, faults);
    judgeReference("Treatment", batch.treatment, shelves.treatments, false, faults);
    judgeReference("Kind of cutting", batch.cuttingKind, shelves.cuttingKinds, false, faults);
    judgeReference("Trial", batch.trial, shelves.trials, false, faults);
    const StockPlant* mother = find(shelves.stockPlants, batch.stockPlant);
    const Plant* plant = find(shelves.plants, batch.plant);
    if (mother == nullptr || plant == nullptr || mother->plant == batch.plant) return;
    faults.push_back({"Stock plant", quotable(mother->label), "a stock plant of " + fullName(*plant),
                      "Stock plant is " + quotable(mother->label) + ", which is not a " + fullName(*plant) +
                          "; a stock plant of " + fullName(*plant) + " is allowed."});
}

}  // namespace

Refusals faultsIn(const Batch& batch, std::span<const Check> checks, const Shelves& shelves, Date today) {
    Refusals faults;
    if (!isAcceptableCode(batch.code))
        faults.push_back(
            {"Code", quotable(batch.code), "1 to 40 characters",
             "Code is " + quotable(batch.code) +
                 "; 1 to 40 characters are allowed, without blanks at the ends and without control characters."});
    const Tally tally = tallyOf(batch, checks);
    judgeStuck(batch, tally, faults);
    judgeStuckOn(batch, checks, today, faults);
    judgeReferences(batch, shelves, faults);
    addFault(faults, faultInLine("Block", batch.block));
    judgeClosing(batch, tally, today, faults);
    addFault(faults, faultInNote("Note", batch.note));
    addFault(faults, faultInLine("Licence", batch.licence));
    return faults;
}

Refusals faultsIn(const Session& session, Date today) {
    Refusals faults;
    addFault(faults, faultInDay("Date", session.date, today));
    addFault(faults, faultInLine("Worker", session.worker));
    addFault(faults, faultInNote("Note", session.note));
    return faults;
}

}  // namespace core
