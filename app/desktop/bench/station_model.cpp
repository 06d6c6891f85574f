// SPDX-License-Identifier: MIT
#include "app/desktop/bench/station_model.h"

#include "app/desktop/bench/fill_delegate.h"
#include "app/desktop/look/look.h"
#include "app/plot/number_text.h"

namespace desktop {

void StationModel::show(std::vector<StationRow> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

core::StationId StationModel::stationAt(const QModelIndex& index) const {
    return index.isValid() ? rows_[static_cast<std::size_t>(index.row())].id : core::StationId{};
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
    if (role == Qt::TextAlignmentRole && index.column() == Undecided)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (role == Qt::ToolTipRole && index.column() == Name) return tr("%1, %2").arg(row.name, row.method);
    if (role == Qt::ToolTipRole && index.column() == Plants) return row.plantsInFull;
    if (role == Qt::ToolTipRole && index.column() == Readings) return row.readings.detail;
    if (role == Qt::ToolTipRole && index.column() == Places)
        return tr("%1; %2 open", "18 of 60 free; 3 batches open").arg(row.places, plot::batchesText(row.openBatches));
    if (role == Qt::DecorationRole && index.column() == Readings && row.readings.isOutside) return icon("fault");
    if (role == FillDelegate::shareRole && index.column() == Places)
        return row.takenShare ? QVariant(*row.takenShare) : QVariant();
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
        case Name:
            return row.name;
        case Places:
            return row.places;
        case Undecided:
            return plot::countText(row.undecided);
        case Since:
            return row.since;
        case Plants:
            return row.plants;
        case Readings:
            return row.readings.text;
        default:
            return {};
    }
}

QVariant StationModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && section == Undecided)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Station");
        case Places:
            return tr("Positions");
        case Undecided:
            return tr("Undecided");
        case Since:
            return tr("Since");
        case Plants:
            return tr("Holds");
        case Readings:
            return tr("Newest readings");
        default:
            return {};
    }
}

}  // namespace desktop
