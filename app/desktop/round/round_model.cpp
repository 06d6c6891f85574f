// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_model.h"

#include <QGuiApplication>
#include <QPalette>
#include <QStringList>
#include <algorithm>

#include "app/desktop/bench/bench_view.h"
#include "app/desktop/look/look.h"
#include "app/desktop/workspace.h"
#include "core/batch/check_rules.h"

namespace desktop {

RoundModel::RoundModel(Workspace& workspace, QObject* parent)
    : QAbstractTableModel(parent), workspace_(workspace), checkedOn_(workspace.today()) {}

void RoundModel::show(std::vector<core::DueBatch> batches) {
    beginResetModel();
    std::vector<Row> before = std::exchange(rows_, {});
    for (core::DueBatch& due : batches) {
        const auto known =
            std::ranges::find_if(before, [&](const Row& row) { return row.due.line.batch.id == due.line.batch.id; });
        if (known != before.end()) {
            rows_.push_back(std::move(*known));
            continue;
        }
        const core::Tally tally = tallyBefore(due.line);
        rows_.push_back({.due = std::move(due), .before = tally, .typed = {}, .entry = {}, .meaning = {}});
    }
    endResetModel();
    emit entriesChanged();
}

void RoundModel::setCheckedOn(core::Date day) {
    checkedOn_ = day;
    for (Row& row : rows_) {
        row.before = tallyBefore(row.due.line);
        judge(row, row.typed);
    }
    if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    emit entriesChanged();
}

core::Tally RoundModel::tallyBefore(const core::BatchLine& line) const {
    if (!line.tally.lastCheckedOn || *line.tally.lastCheckedOn < checkedOn_) return line.tally;
    // A round written down late: later checks stand already, so what counts is how things were on that day.
    core::Tally tally = line.tally;
    workspace_.attempt([&](db::Logbook& logbook) {
        if (const auto record = logbook.batch(line.batch.id))
            tally = core::tallyOf(record->batch, record->checks, core::addDays(checkedOn_, -1));
    });
    return tally;
}

core::Check RoundModel::checkFrom(const Row& row, const core::CheckEntry& entry) const {
    return {.id = {},
            .batch = row.due.line.batch.id,
            .checkedOn = checkedOn_,
            .rooted = entry.rooted,
            .withdrawn = entry.withdrawn,
            .losses = entry.losses,
            .note = entry.note};
}

void RoundModel::judge(Row& row, const QString& typed) {
    row.typed = typed.trimmed();
    row.entry.reset();
    row.meaning.clear();
    row.isFault = false;
    if (row.typed.isEmpty()) return;
    core::Result<core::CheckEntry> entry =
        core::checkEntryFrom(row.typed.toStdString(), row.before, workspace_.shelves().lossCauses);
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
    row.meaning = row.isFault ? QString::fromStdString(faults.front().sentence) : meaningOf(row, *entry);
    if (!row.isFault) row.entry = *entry;
}

void RoundModel::preview(int row, const QString& typed) {
    Row shown = rows_[static_cast<std::size_t>(row)];
    judge(shown, typed);
    Row& kept = rows_[static_cast<std::size_t>(row)];
    kept.meaning = shown.meaning;
    kept.isFault = shown.isFault;
    emit dataChanged(index(row, Meaning), index(row, Meaning));
}

bool RoundModel::enter(int row, const QString& typed) {
    Row& entered = rows_[static_cast<std::size_t>(row)];
    judge(entered, typed);
    showRow(row);
    emit entriesChanged();
    return !entered.isFault;
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

QString RoundModel::meaningOf(const Row& row, const core::CheckEntry& entry) const {
    const core::Tally& before = row.before;
    QStringList parts;
    const int rooted = before.rooted + entry.rooted;
    parts << (entry.rooted > 0 && before.rooted > 0 ? tr("%1 rooted (+%2)").arg(rooted).arg(entry.rooted)
                                                    : tr("%1 rooted").arg(rooted));
    for (const core::Loss& loss : entry.losses) {
        const core::LossCause* cause = core::find(workspace_.shelves().lossCauses, loss.cause);
        parts << (cause ? tr("%1 lost (%2)").arg(loss.count).arg(QString::fromStdString(cause->name))
                        : tr("%1 lost").arg(loss.count));
    }
    if (entry.withdrawn > 0) parts << tr("%1 withdrawn").arg(entry.withdrawn);
    const int undecided = before.undecided() - entry.rooted - entry.lost() - entry.withdrawn;
    parts << (entry.closesBatch ? tr("%1 undecided, closed").arg(undecided) : tr("%1 undecided").arg(undecided));
    if (!entry.note.empty()) parts << tr("“%1”").arg(QString::fromStdString(entry.note));
    return parts.join(", ");
}

int RoundModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RoundModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString RoundModel::textAt(const Row& row, int column) const {
    const core::Batch& batch = row.due.line.batch;
    const core::Shelves& shelves = workspace_.shelves();
    switch (column) {
        case Code:
            return QString::fromStdString(batch.code);
        case Plant: {
            const core::Plant* plant = core::find(shelves.plants, batch.plant);
            return plant ? QString::fromStdString(core::fullName(*plant)) : QString();
        }
        case Station: {
            const core::Station* station = core::find(shelves.stations, batch.station);
            return station ? QString::fromStdString(station->name) : QString();
        }
        case Day:
            return QString::number(core::daysBetween(batch.stuckOn, checkedOn_));
        case SoFar:
            return countsText(row.before);
        case Entry:
            return row.typed;
        case Meaning:
            return row.meaning;
        default:
            return {};
    }
}

QVariant RoundModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
        case Qt::ToolTipRole:
            return textAt(row, column);
        case isFaultRole:
            return row.isFault;
        case Qt::ForegroundRole:
            if (column == Meaning && row.isFault) return faultColour(QGuiApplication::palette());
            return {};
        case Qt::DecorationRole:
            if (column == Meaning && row.isFault) return icon("fault");
            if (column == Meaning && row.entry) return icon("done");
            return {};
        case Qt::TextAlignmentRole:
            if (column == Day) return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
            return {};
        default:
            return {};
    }
}

bool RoundModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    return role == Qt::EditRole && index.column() == Entry && enter(index.row(), value.toString());
}

Qt::ItemFlags RoundModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.column() == Entry ? flags | Qt::ItemIsEditable : flags;
}

QVariant RoundModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && section == Day)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Code:
            return tr("Batch");
        case Plant:
            return tr("Plant");
        case Station:
            return tr("Station");
        case Day:
            return tr("Day");
        case SoFar:
            return tr("So far");
        case Entry:
            return tr("Entry");
        case Meaning:
            return tr("What it means");
        default:
            return {};
    }
}

}  // namespace desktop
