// SPDX-License-Identifier: MIT
#include "app/desktop/bench/station_model.h"

#include "app/plot/number_text.h"

namespace desktop {

void StationModel::show(std::vector<StationRow> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int StationModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int StationModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant StationModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const StationRow& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole && (index.column() == Batches || index.column() == Undecided))
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (role == Qt::ToolTipRole && index.column() == Name) return tr("%1, %2").arg(row.name, row.method);
    if (role == Qt::ToolTipRole && index.column() == Plants) return row.plantsInFull;
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
        case Name:
            return row.name;
        case Batches:
            return plot::countText(row.openBatches);
        case Undecided:
            return plot::countText(row.undecided);
        case Since:
            return row.since;
        case Plants:
            return row.plants;
        default:
            return {};
    }
}

QVariant StationModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && (section == Batches || section == Undecided))
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Station");
        case Batches:
            return tr("Open batches");
        case Undecided:
            return tr("Undecided");
        case Since:
            return tr("Since");
        case Plants:
            return tr("Holds");
        default:
            return {};
    }
}

}  // namespace desktop
