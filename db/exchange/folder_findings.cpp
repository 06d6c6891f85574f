// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "core/batch/position_rules.h"
#include "core/units/entered_text.h"
#include "db/exchange/folder_batches.h"
#include "db/exchange/table_reader.h"

namespace db {

namespace {

/// One check that findings.csv speaks of, and the rows that do.
struct FoundCheck {
    std::size_t batch{};  // place in FolderBatches::batches
    std::map<core::Position, int> rows;
    int lastRow{};
};

class FindingReading {
  public:
    FindingReading(const FolderShelves& shelves, FolderBatches& read, FaultList& faults)
        : shelves_(shelves), read_(read), faults_(faults) {}

    void take(TableRow& row);
    void judgeAll();

  private:
    core::Check* checkOf(TableRow& row, const ReadBatch& batch);
    std::optional<core::Finding> findingIn(TableRow& row) const;
    void judge(const core::CheckId& id, const FoundCheck& found);

    const FolderShelves& shelves_;
    FolderBatches& read_;
    FaultList& faults_;
    std::map<core::CheckId, FoundCheck> checks_;
};

void FindingReading::take(TableRow& row) {
    if (!row.isWhole()) return;
    const std::string code = row.text("batch");
    const auto known = read_.codes.find(code);
    if (known == read_.codes.end()) {
        if (read_.hasBatchTable) row.fault("batch", "No batch " + core::quotable(code) + " is in batches.csv.");
        return;
    }
    const auto finding = findingIn(row);
    if (!finding || !known->second.isSound) return;
    core::Check* check = checkOf(row, known->second);
    if (check == nullptr) return;
    FoundCheck& found = checks_[check->id];
    found.batch = known->second.place;
    found.lastRow = row.number();
    if (!found.rows.emplace(finding->position, row.number()).second)
        return row.fault("position", core::nameOf(finding->position) + " is in row " +
                                         std::to_string(found.rows.at(finding->position)) +
                                         " already; a check finds each position once.");
    check->findings.push_back(*finding);
}

core::Check* FindingReading::checkOf(TableRow& row, const ReadBatch& batch) {
    const std::optional<core::Date> day = row.date("checked_on");
    if (!day) return nullptr;
    std::vector<core::Check>& checks = read_.batches[batch.place].checks;
    const auto check = std::ranges::find(checks, *day, &core::Check::checkedOn);
    if (check != checks.end()) return &*check;
    // Where the table of checks has faults, the check may only have been left out for one.
    if (faults_.isEmpty())
        row.fault("checked_on", "No check of " + core::quotable(row.text("batch")) + " on " + core::isoText(*day) +
                                    " is in checks.csv.");
    return nullptr;
}

std::optional<core::Finding> FindingReading::findingIn(TableRow& row) const {
    core::Finding finding;
    const std::string place = row.text("position"), word = row.text("outcome"), cause = row.text("cause");
    if (const auto position = core::positionNamed(place))
        finding.position = *position;
    else
        row.fault("position", core::quotable(place) + " is no position; write one such as A1.");
    const auto outcomes = {core::Outcome::Rooted, core::Outcome::Lost, core::Outcome::Withdrawn};
    const auto outcome = std::ranges::find(outcomes, word, [](core::Outcome one) { return core::wordFor(one); });
    if (outcome != outcomes.end())
        finding.outcome = *outcome;
    else
        row.fault("outcome", core::quotable(word) + " is no outcome; rooted, lost or withdrawn is allowed.");
    if (!cause.empty()) {
        const core::LossCause* known = shelves_.lossCauses.find(cause);
        if (known == nullptr)
            row.fault("cause", core::quotable(cause) + " is no cause of a loss in checks.csv or loss_causes.csv.");
        else if (finding.outcome != core::Outcome::Lost)
            row.fault("cause", "A cause is named, but the cutting was not lost; leave cause empty.");
        else
            finding.cause = known->id;
    }
    return row.isSound() ? std::optional(finding) : std::nullopt;
}

void FindingReading::judgeAll() {
    for (auto& [id, found] : checks_) {
        for (core::Check& check : read_.batches[found.batch].checks)
            if (check.id == id) std::ranges::sort(check.findings, {}, &core::Finding::position);
        if (!faults_.isOver()) judge(id, found);
    }
}

void FindingReading::judge(const core::CheckId& id, const FoundCheck& found) {
    const core::BatchRecord& record = read_.batches[found.batch];
    std::vector<core::Check> others = record.checks;
    const auto at = std::ranges::find(others, id, &core::Check::id);
    const core::Check check = *at;
    others.erase(at);
    for (const core::Refusal& refusal : core::faultsInFindings(check, record.batch, others)) {
        int row = found.lastRow;
        std::string column = "outcome";
        for (const auto& [position, itsRow] : found.rows)
            if (refusal.field == "Position " + core::nameOf(position)) {
                row = itsRow;
                column = "position";
            }
        faults_.add({.file = "findings.csv", .row = row, .column = column, .reason = refusal.sentence});
    }
}

}  // namespace

void readFindings(const std::filesystem::path& folder, const FolderShelves& shelves, FolderBatches& into,
                  FaultList& faults, const std::stop_token& stop) {
    FindingReading reading(shelves, into, faults);
    readTable(folder, "findings", faults, stop, [&reading](TableRow& row) { reading.take(row); });
    reading.judgeAll();
}

void judgePositions(const FolderShelves& shelves, const FolderBatches& read, FaultList& faults) {
    std::map<core::StationId, std::vector<core::HeldPosition>> held;
    for (std::size_t place = 0; place < read.batches.size() && !faults.isOver(); ++place) {
        const core::BatchRecord& record = read.batches[place];
        if (record.batch.positions.empty()) continue;
        std::vector<core::HeldPosition>& there = held[record.batch.station];
        for (const core::Refusal& refusal :
             core::faultsInPositions(record.batch, record.checks, shelves.shelves, there))
            faults.add(
                {.file = "batches.csv", .row = read.rows[place], .column = "positions", .reason = refusal.sentence});
        const auto own = core::heldPositions(record);
        there.insert(there.end(), own.begin(), own.end());
    }
}

}  // namespace db
