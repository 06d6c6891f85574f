// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_model.h"

#include <algorithm>

#include "app/desktop/round/round_words.h"
#include "app/desktop/round/unfinished_round.h"
#include "app/desktop/workspace.h"
#include "core/batch/check_rules.h"

namespace desktop {

RoundModel::RoundModel(Workspace& workspace, QObject* parent)
    : QAbstractTableModel(parent),
      workspace_(workspace),
      kept_(UnfinishedRound::of(workspace)),
      checkedOn_(kept_.day.value_or(workspace.today())) {}

void RoundModel::show(std::vector<core::DueBatch> batches) {
    beginResetModel();
    rows_.clear();
    rows_.reserve(batches.size());
    for (core::DueBatch& due : batches) {
        rows_.push_back({.due = std::move(due), .before = {}, .typed = {}, .entry = {}, .shown = {}, .meaning = {}});
        const QString typed = kept_.typedFor(rows_.back().due.line.batch.id);
        if (!typed.isEmpty()) judge(rows_.back(), typed);
    }
    endResetModel();
    emit entriesChanged();
}

void RoundModel::setCheckedOn(core::Date day) {
    checkedOn_ = day;
    kept_.day = day;
    for (Row& row : rows_) {
        row.before.reset();
        if (!row.typed.isEmpty()) judge(row, row.typed);
    }
    if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    emit entriesChanged();
}

void RoundModel::setPlainNumber(core::PlainNumber plain) {
    if (plain == kept_.plain) return;
    kept_.plain = plain;
    for (Row& row : rows_) {
        if (row.typed.isEmpty()) continue;
        judge(row, row.entry ? QString::fromStdString(core::entryText(*row.entry, workspace_.shelves().lossCauses))
                             : row.typed);
        kept_.keep(row.due.line.batch.id, row.typed);
    }
    if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
    emit entriesChanged();
}

core::PlainNumber RoundModel::plainNumber() const {
    return kept_.plain;
}

const core::Tally& RoundModel::before(const Row& row) const {
    if (row.before) return *row.before;
    const core::BatchLine& line = row.due.line;
    row.before = line.tally;
    if (line.tally.lastCheckedOn && *line.tally.lastCheckedOn >= checkedOn_)
        // A round written down late: later checks stand already, so what counts is how things were on that day.
        workspace_.attempt([&](db::Logbook& logbook) {
            if (const auto record = logbook.batch(line.batch.id))
                row.before = core::tallyOf(record->batch, record->checks, core::addDays(checkedOn_, -1));
        });
    return *row.before;
}

core::Tally RoundModel::tallyBefore(int row) const {
    return before(rows_[static_cast<std::size_t>(row)]);
}

core::CheckEntry RoundModel::shownEntry(int row) const {
    return rows_[static_cast<std::size_t>(row)].shown.value_or(core::CheckEntry{});
}

core::Check RoundModel::checkFrom(const Row& row, const core::CheckEntry& entry) const {
    core::Check check;
    check.batch = row.due.line.batch.id;
    check.checkedOn = checkedOn_;
    check.rooted = entry.rooted;
    check.withdrawn = entry.withdrawn;
    check.losses = entry.losses;
    check.note = entry.note;
    return check;
}

void RoundModel::judge(Row& row, const QString& typed) const {
    row.typed = typed.trimmed();
    row.entry.reset();
    row.shown.reset();
    row.meaning.clear();
    row.isFault = false;
    if (row.typed.isEmpty()) return;
    const std::vector<core::LossCause>& causes = workspace_.shelves().lossCauses;
    core::Result<core::CheckEntry> entry =
        core::checkEntryFrom(row.typed.toStdString(), before(row), causes, kept_.plain);
    core::Refusals faults = entry ? core::Refusals() : entry.error();
    if (entry) {
        workspace_.attempt([&](db::Logbook& logbook) {
            const auto record = logbook.batch(row.due.line.batch.id);
            if (record)
                faults = core::faultsIn(checkFrom(row, *entry), record->batch, record->checks, workspace_.shelves(),
                                        workspace_.today());
        });
    }
    row.isFault = !faults.empty();
    row.meaning = row.isFault ? QString::fromStdString(faults.front().sentence)
                              : meaningText(*entry, before(row), causes, kept_.plain);
    if (row.isFault) return;
    row.entry = *entry;
    row.shown = *entry;
}

void RoundModel::preview(int row, const QString& typed) {
    Row shown = rows_[static_cast<std::size_t>(row)];
    judge(shown, typed);
    Row& kept = rows_[static_cast<std::size_t>(row)];
    kept.meaning = shown.meaning;
    kept.isFault = shown.isFault;
    kept.shown = shown.shown;
    emit dataChanged(index(row, Rooted), index(row, Undecided));
    emit dataChanged(index(row, Meaning), index(row, Meaning));
    emit entriesChanged();
}

bool RoundModel::enter(int row, const QString& typed) {
    Row& entered = rows_[static_cast<std::size_t>(row)];
    judge(entered, typed);
    kept_.keep(entered.due.line.batch.id, entered.typed);
    showRow(row);
    emit entriesChanged();
    return !entered.isFault;
}

void RoundModel::forget() {
    kept_.forget();
    for (Row& row : rows_) judge(row, {});
    if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    emit entriesChanged();
}

QString RoundModel::change(int row, const std::function<void(core::CheckEntry&)>& step) {
    const Row& now = rows_[static_cast<std::size_t>(row)];
    if (now.isFault) return now.meaning;
    core::CheckEntry entry = now.entry.value_or(core::CheckEntry{});
    step(entry);
    Row tried = now;
    judge(tried, QString::fromStdString(core::entryText(entry, workspace_.shelves().lossCauses)));
    if (tried.isFault) return tried.meaning;
    enter(row, tried.typed);
    return {};
}

QString RoundModel::addRooted(int row, int more) {
    return change(row, [more](core::CheckEntry& entry) { entry.rooted = std::max(0, entry.rooted + more); });
}

QString RoundModel::addWithdrawn(int row, int more) {
    return change(row, [more](core::CheckEntry& entry) { entry.withdrawn = std::max(0, entry.withdrawn + more); });
}

QString RoundModel::addLost(int row, int more) {
    return change(row, [more](core::CheckEntry& entry) {
        if (more > 0) {
            const auto open =
                std::ranges::find_if(entry.losses, [](const core::Loss& each) { return !each.cause.isSet(); });
            if (open == entry.losses.end()) return entry.losses.push_back({.cause = {}, .count = more});
            open->count += more;
        } else if (!entry.losses.empty() && (entry.losses.back().count += more) < 1) {
            entry.losses.pop_back();
        }
    });
}

QString RoundModel::blame(int row, core::LossCauseId cause) {
    return change(row, [cause](core::CheckEntry& entry) {
        const auto open =
            std::ranges::find_if(entry.losses, [](const core::Loss& each) { return !each.cause.isSet(); });
        const int count = open == entry.losses.end() ? 1 : open->count;
        if (open != entry.losses.end()) entry.losses.erase(open);
        const auto same = std::ranges::find(entry.losses, cause, &core::Loss::cause);
        if (same == entry.losses.end()) return entry.losses.push_back({.cause = cause, .count = count});
        same->count += count;
    });
}

void RoundModel::showRow(int row) {
    emit dataChanged(index(row, 0), index(row, ColumnCount - 1));
}

int RoundModel::rowOf(const QString& code) const {
    const auto found = std::ranges::find_if(rows_, [&](const Row& row) {
        return code.compare(QString::fromStdString(row.due.line.batch.code), Qt::CaseInsensitive) == 0;
    });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

int RoundModel::enteredCount() const {
    return static_cast<int>(std::ranges::count_if(rows_, [](const Row& row) { return row.entry.has_value(); }));
}

RoundSums RoundModel::sums() const {
    RoundSums sums;
    for (const Row& row : rows_) {
        if (!row.shown) continue;
        ++sums.looks;
        sums.cuttings += row.due.line.batch.stuck;
        sums.undecided += before(row).undecided() - row.shown->rooted - row.shown->lost() - row.shown->withdrawn;
    }
    return sums;
}

bool RoundModel::isComplete() const {
    return !rows_.empty() && enteredCount() == rowCount();
}

int RoundModel::firstFault() const {
    const auto found = std::ranges::find_if(rows_, [](const Row& row) { return row.isFault; });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

std::vector<db::CheckDraft> RoundModel::drafts() const {
    std::vector<db::CheckDraft> drafts;
    for (const Row& row : rows_) {
        if (!row.entry) continue;
        db::CheckDraft draft{
            .check = checkFrom(row, *row.entry), .closesBatch = row.entry->closesBatch, .closeReason = {}};
        if (draft.closesBatch)
            draft.closeReason =
                row.entry->note.empty() ? tr("nothing left to wait for").toStdString() : row.entry->note;
        drafts.push_back(std::move(draft));
    }
    return drafts;
}

int RoundModel::mark(const core::Refusals& refusals) {
    int first = -1;
    for (int number = 0; number < rowCount(); ++number) {
        Row& row = rows_[static_cast<std::size_t>(number)];
        const auto refusal = std::ranges::find_if(
            refusals, [&](const core::Refusal& each) { return each.field.starts_with(row.due.line.batch.code); });
        if (refusal == refusals.end()) continue;
        row.meaning = QString::fromStdString(refusal->sentence);
        row.isFault = true;
        showRow(number);
        if (first < 0) first = number;
    }
    return first;
}

}  // namespace desktop
