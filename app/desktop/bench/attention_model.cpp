// SPDX-License-Identifier: MIT
#include "app/desktop/bench/attention_model.h"

#include "app/desktop/look/look.h"

namespace desktop {

void AttentionModel::show(std::vector<AttentionRow> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

const AttentionRow& AttentionModel::rowAt(const QModelIndex& index) const {
    return rows_[static_cast<std::size_t>(index.row())];
}

int AttentionModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int AttentionModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant AttentionModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const AttentionRow& row = rowAt(index);
    if (role == Qt::ToolTipRole) return row.detail;
    if (role == Qt::DecorationRole && index.column() == Subject)
        return icon(row.batch.isSet() ? QStringLiteral("batches") : QStringLiteral("station"));
    if (role != Qt::DisplayRole) return {};
    return index.column() == Subject ? row.subject : row.why;
}

QVariant AttentionModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == Subject ? tr("What") : tr("Why");
}

}  // namespace desktop
