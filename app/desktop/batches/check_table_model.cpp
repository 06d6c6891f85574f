// SPDX-License-Identifier: MIT
#include "app/desktop/batches/check_table_model.h"

#include "app/plot/number_text.h"

namespace desktop {

namespace {

Qt::Alignment alignmentOf(int column) {
    const bool isNumber = column == CheckTableModel::Day || column == CheckTableModel::Rooted ||
                          column == CheckTableModel::Withdrawn || column == CheckTableModel::RootedInAll ||
                          column == CheckTableModel::Undecided;
    return (isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter;
}

QString newText(int count) {
    return count == 0 ? plot::countText(0) : CheckTableModel::tr("+%1", "three more").arg(plot::countText(count));
}

}  // namespace

void CheckTableModel::show(core::BatchRecord record, const core::Shelves& shelves) {
    beginResetModel();
    record_ = std::move(record);
    causes_ = shelves.lossCauses;
    after_.clear();
    for (const core::Check& check : record_.checks)
        after_.push_back(core::tallyOf(record_.batch, record_.checks, check.checkedOn));
    endResetModel();
}

const core::Check* CheckTableModel::checkAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &record_.checks[static_cast<std::size_t>(row)];
}

int CheckTableModel::rowOf(core::CheckId check) const {
    for (int row = 0; row < rowCount(); ++row)
        if (checkAt(row)->id == check) return row;
    return -1;
}

int CheckTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(record_.checks.size());
}

int CheckTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant CheckTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(alignmentOf(index.column()));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const core::Check& check = *checkAt(index.row());
    const core::Tally& after = after_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
        case CheckedOn:
            return QString::fromStdString(core::isoText(check.checkedOn));
        case Day:
            return plot::countText(core::daysBetween(record_.batch.stuckOn, check.checkedOn));
        case Rooted:
            return newText(check.rooted);
        case Lost:
            return lostText(check);
        case Withdrawn:
            return newText(check.withdrawn);
        case RootedInAll:
            return plot::countText(after.rooted);
        case Undecided:
            return plot::countText(after.undecided());
        case Note:
            return QString::fromStdString(check.note).simplified();
        default:
            return {};
    }
}

QVariant CheckTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(alignmentOf(section));
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case CheckedOn:
            return tr("Checked on");
        case Day:
            return tr("Day");
        case Rooted:
            return tr("Rooted");
        case Lost:
            return tr("Lost");
        case Withdrawn:
            return tr("Withdrawn");
        case RootedInAll:
            return tr("Rooted in all");
        case Undecided:
            return tr("Undecided");
        case Note:
            return tr("Note");
        default:
            return {};
    }
}

QString CheckTableModel::lostText(const core::Check& check) const {
    if (check.lost() == 0) return plot::countText(0);
    QStringList causes;
    for (const core::Loss& loss : check.losses) {
        const core::LossCause* cause = core::find(causes_, loss.cause);
        const QString name = cause == nullptr ? tr("cause not known") : QString::fromStdString(cause->name);
        causes.append(tr("+%1 (%2)", "+2 (rot)").arg(plot::countText(loss.count), name));
    }
    return causes.join(tr(", "));
}

}  // namespace desktop
