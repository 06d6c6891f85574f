// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/batch/batch_rules.h"
#include "core/batch/check_rules.h"
#include "core/batch/count_sum.h"
#include "core/shelf_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/session_actions.h"
#include "db/exchange/folder_batches.h"
#include "db/exchange/table_reader.h"

namespace db {

namespace {

constexpr std::size_t mostChecksOfABatch = 1000;

/// A check with the rows that it came from: one, or one for each cause.
struct ReadCheck {
    core::Check check;
    int row{};
    std::vector<std::string> causes;
};

class CheckReading {
  public:
    CheckReading(FolderShelves& shelves, FolderBatches& read, core::Date today, FaultList& faults)
        : shelves_(shelves), read_(read), today_(today), faults_(faults), checks_(read.batches.size()) {}

    void take(TableRow& row);
    void judgeAll();

  private:
    void takeInto(std::vector<ReadCheck>& checks, const std::string& code, TableRow& row);
    static ReadCheck* checkOfDay(std::vector<ReadCheck>& checks, core::Date day, TableRow& row);
    core::LossCauseId causeNamed(const std::string& name, TableRow& row);
    void judge(core::BatchRecord& record, std::vector<ReadCheck>& checks);

    FolderShelves& shelves_;
    FolderBatches& read_;
    core::Date today_;
    FaultList& faults_;
    std::vector<std::vector<ReadCheck>> checks_;  // as read_.batches
};

void CheckReading::take(TableRow& row) {
    if (!row.isWhole()) return;
    const std::string code = row.text("batch");
    const auto known = read_.codes.find(code);
    if (known != read_.codes.end() && known->second.isSound) return takeInto(checks_[known->second.place], code, row);
    if (known == read_.codes.end() && read_.hasBatchTable)
        row.fault("batch", "No batch " + core::quotable(code) + " is in batches.csv.");
    // The batch is at fault, but figures that can't be read are worth a word all the same.
    std::vector<ReadCheck> alone;
    takeInto(alone, code, row);
}

void CheckReading::takeInto(std::vector<ReadCheck>& checks, const std::string& code, TableRow& row) {
    const std::optional<core::Date> day = row.date("checked_on");
    const auto cuttings = [&row](std::string_view column) { return row.countOr(column, 0, core::mostStuck); };
    const int rooted = cuttings("rooted"), lost = cuttings("lost"), withdrawn = cuttings("withdrawn");
    const std::string cause = row.text("cause"), note = row.text("note");
    if (const auto refusal = core::faultInNote("Note", note)) row.refuse({*refusal});
    if (!cause.empty() && lost == 0 && row.isSound())
        row.fault("cause",
                  core::quotable(cause) +
                      " is named as the cause, but nothing was lost; say how many in lost, or leave cause empty.");
    const core::LossCauseId causeId = causeNamed(cause, row);
    if (!row.isSound() || !day) return;
    ReadCheck* found = checkOfDay(checks, *day, row);
    if (found == nullptr) return;
    core::Check& check = found->check;
    if (std::ranges::count(found->causes, cause) > 0)
        return row.fault("checked_on", code + " has a row for " + core::isoText(*day) +
                                           (cause.empty() ? " without a cause" : " with this cause") +
                                           " already (row " + std::to_string(found->row) +
                                           "); rows of one day differ in their cause.");
    if (!note.empty() && note != check.note && !check.note.empty())
        return row.fault("note", "Row " + std::to_string(found->row) +
                                     " has another note for the same batch and day; one check has one note.");
    found->causes.push_back(cause);
    if (check.note.empty()) check.note = note;
    check.rooted = core::countSum(check.rooted, rooted);
    check.withdrawn = core::countSum(check.withdrawn, withdrawn);
    if (lost > 0) check.losses.push_back({.cause = causeId, .count = lost});
}

/// The day's check, made where this row is its first; nothing where that would be one too many.
ReadCheck* CheckReading::checkOfDay(std::vector<ReadCheck>& checks, core::Date day, TableRow& row) {
    // Rows mostly come in order, so the day is most likely the last one.
    for (auto read = checks.rbegin(); read != checks.rend(); ++read)
        if (read->check.checkedOn == day) return &*read;
    if (checks.size() == mostChecksOfABatch) {
        row.fault("batch", core::quotable(row.text("batch")) + " has more than " + std::to_string(mostChecksOfABatch) +
                               " checks; no batch needs so many.");
        return nullptr;
    }
    ReadCheck& read = checks.emplace_back();
    read.check.id.value = newId();
    read.check.checkedOn = day;
    read.row = row.number();
    return &read;
}

core::LossCauseId CheckReading::causeNamed(const std::string& name, TableRow& row) {
    if (name.empty()) return {};
    if (const core::LossCause* known = shelves_.lossCauses.find(name)) return known->id;
    if (shelves_.lossCauses.hasTable) {
        row.fault("cause", core::quotable(name) + " is not in loss_causes.csv.");
        return {};
    }
    core::LossCause made{.id = {newId()}, .name = name, .key = '\0', .isRetired = false};
    const core::Refusals refusals = core::faultsIn(made, shelves_.shelves);
    for (const core::Refusal& refusal : refusals) row.fault("cause", refusal.sentence);
    return refusals.empty() && row.isSound() ? shelves_.lossCauses.add(name, std::move(made)).id : core::LossCauseId{};
}

void CheckReading::judgeAll() {
    for (std::size_t place = 0; place < checks_.size() && !faults_.isOver(); ++place)
        judge(read_.batches[place], checks_[place]);
}

/// Each check against those before it: the first that takes more cuttings than there are is the one to name.
void CheckReading::judge(core::BatchRecord& record, std::vector<ReadCheck>& checks) {
    std::ranges::sort(checks, {}, [](const ReadCheck& read) { return read.check.checkedOn; });
    const ExchangeTable& table = exchangeTable("checks");
    for (ReadCheck& read : checks) {
        read.check.batch = record.batch.id;
        bool isOverfull = false;
        for (const core::Refusal& refusal :
             core::faultsIn(read.check, record.batch, record.checks, shelves_.shelves, today_)) {
            isOverfull =
                isOverfull || refusal.field == "Rooted" || refusal.field == "Lost" || refusal.field == "Withdrawn";
            faults_.add({.file = "checks.csv",
                         .row = read.row,
                         .column = columnOf(table, refusal.field),
                         .reason = refusal.sentence});
        }
        // Later checks of an overfull batch would only say the same again.
        if (isOverfull) return;
        record.checks.push_back(std::move(read.check));
    }
}

}  // namespace

void readChecks(const std::filesystem::path& folder, FolderShelves& shelves, FolderBatches& into, core::Date today,
                FaultList& faults, const std::stop_token& stop) {
    CheckReading reading(shelves, into, today, faults);
    readTable(folder, "checks", faults, stop, [&reading](TableRow& row) { reading.take(row); });
    reading.judgeAll();
}

}  // namespace db
