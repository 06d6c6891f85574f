// SPDX-License-Identifier: MIT
#include "app/desktop/losses/unusual_table_model.h"

#include "app/plot/number_text.h"
#include "app/plot/rare_text.h"
#include "app/report/losses_words.h"

namespace desktop {

void UnusualTableModel::show(std::vector<core::UnusualBatch> batches, const core::Shelves& shelves) {
    beginResetModel();
    rows_.clear();
    for (core::UnusualBatch& batch : batches) {
        const core::Plant* plant = core::find(shelves.plants, batch.plant);
        const core::Method* method = core::find(shelves.methods, batch.method);
        rows_.push_back({.batch = std::move(batch),
                         .plant = plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                         .method = method == nullptr ? QString() : QString::fromStdString(method->name)});
    }
    endResetModel();
}

core::BatchId UnusualTableModel::batchAt(int row) const {
    const bool isThere = row >= 0 && row < static_cast<int>(rows_.size());
    return isThere ? rows_[static_cast<std::size_t>(row)].batch.batch : core::BatchId{};
}

int UnusualTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int UnusualTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString UnusualTableModel::textOf(const Row& row, int column) {
    const core::AgainstThePast& against = row.batch.against;
    switch (column) {
        case Code:
            return QString::fromStdString(row.batch.code);
        case Plant:
            return row.plant;
        case Method:
            return row.method;
        case StuckOn:
            return plot::shortDateText(row.batch.stuckOn);
        case State:
            return row.batch.isOpen ? tr("open", "of a batch") : tr("closed", "of a batch");
        case Rooted:
            return report::rootedText(against);
        case Expected:
            return plot::decimalText(against.expected, 1);
        case ByLuck:
            return plot::oneInText(against.chanceOfSoFew);
        default:
            return {};
    }
}

QVariant UnusualTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return textOf(row, index.column());
    if (role == Qt::ToolTipRole) return QString::fromStdString(row.batch.against.inWords);
    if (role == Qt::TextAlignmentRole && index.column() >= Rooted)
        return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant UnusualTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole && section >= Rooted) return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && section == ByLuck)
        return tr("How rare so few, or fewer, would be by luck alone, given your earlier batches");
    if (role != Qt::DisplayRole) return {};
    const QStringList headings{tr("Batch"), tr("Plant"),  tr("Method"),   tr("Stuck on"),
                               tr("State"), tr("Rooted"), tr("Expected"), tr("By luck")};
    return headings.value(section);
}

}  // namespace desktop
