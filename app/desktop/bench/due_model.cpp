// SPDX-License-Identifier: MIT
#include "app/desktop/bench/due_model.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

// An index carries the number of its group plus one; a group's own index carries 0.
constexpr quintptr groupMark = 0;

std::size_t groupOf(const QModelIndex& index) {
    return static_cast<std::size_t>(index.internalId() == groupMark ? static_cast<quintptr>(index.row())
                                                                    : index.internalId() - 1);
}

QString textOf(const DueRow& row, int column) {
    switch (column) {
        case DueModel::Code:
            return row.code;
        case DueModel::Plant:
            return row.plant;
        case DueModel::Day:
            return row.day;
        case DueModel::Counts:
            return row.counts;
        case DueModel::Due:
            return row.due;
        default:
            return {};
    }
}

}  // namespace

void DueModel::show(std::vector<DueGroup> groups) {
    beginResetModel();
    groups_ = std::move(groups);
    endResetModel();
}

core::BatchId DueModel::batchAt(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == groupMark) return {};
    return groups_[groupOf(index)].rows[static_cast<std::size_t>(index.row())].batch;
}

QModelIndex DueModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : groupMark);
}

QModelIndex DueModel::parent(const QModelIndex& child) const {
    if (!child.isValid() || child.internalId() == groupMark) return {};
    return createIndex(static_cast<int>(groupOf(child)), 0, groupMark);
}

int DueModel::rowCount(const QModelIndex& parent) const {
    if (!parent.isValid()) return static_cast<int>(groups_.size());
    if (parent.internalId() != groupMark || parent.column() != 0) return 0;
    return static_cast<int>(groups_[groupOf(parent)].rows.size());
}

int DueModel::columnCount(const QModelIndex&) const {
    return ColumnCount;
}

QVariant DueModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const DueGroup& group = groups_[groupOf(index)];
    if (index.internalId() == groupMark) return groupData(group, index.column(), role);
    return rowData(group.rows[static_cast<std::size_t>(index.row())], index.column(), role);
}

QVariant DueModel::groupData(const DueGroup& group, int column, int role) const {
    if (role == Qt::FontRole) {
        QFont font;
        font.setBold(column == Code);
        return font;
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    if (column == Code) return group.station;
    if (column == Due) return group.summary;
    return {};
}

QVariant DueModel::rowData(const DueRow& row, int column, int role) const {
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return textOf(row, column);
    if (role == Qt::ForegroundRole && column == Due && row.isOverdue) return accentColour(QGuiApplication::palette());
    return {};
}

QVariant DueModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Code:
            return tr("Batch");
        case Plant:
            return tr("Plant");
        case Day:
            return tr("Day");
        case Counts:
            return tr("So far");
        case Due:
            return tr("Due");
        default:
            return {};
    }
}

}  // namespace desktop
