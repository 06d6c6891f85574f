// SPDX-License-Identifier: MIT
#include "app/desktop/session/allocation_table_model.h"

#include "app/desktop/session/arm_letter.h"

namespace desktop {

void AllocationTableModel::show(core::Allocation allocation, const QStringList& arms) {
    beginResetModel();
    allocation_ = std::move(allocation);
    arms_ = arms;
    endResetModel();
}

int AllocationTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : (static_cast<int>(allocation_.armOfCutting.size()) + perLine - 1) / perLine;
}

int AllocationTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : perLine;
}

QVariant AllocationTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto cutting = static_cast<std::size_t>(index.row() * perLine + index.column());
    if (cutting >= allocation_.armOfCutting.size()) return {};
    const int arm = allocation_.armOfCutting[cutting];
    switch (role) {
        case Qt::DisplayRole:
            return tr("%1 %2", "number of the cutting, letter of its arm").arg(cutting + 1).arg(armLetter(arm));
        case Qt::AccessibleTextRole:
        case Qt::ToolTipRole:
            return tr("Cutting %1 goes to %2").arg(cutting + 1).arg(arms_.value(arm));
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(Qt::AlignCenter));
        default:
            return {};
    }
}

}  // namespace desktop
