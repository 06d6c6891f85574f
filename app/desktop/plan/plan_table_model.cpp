// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plan_table_model.h"

#include "app/desktop/look/look.h"
#include "app/desktop/plan/plans_model.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

bool isNumber(int column) {
    return column == PlanTableModel::Wanted || column == PlanTableModel::Sure || column == PlanTableModel::Stick;
}

}  // namespace

PlanTableModel::PlanTableModel(const PlansModel& plans, QObject* parent) : QAbstractTableModel(parent), plans_(plans) {}

void PlanTableModel::readAgain() {
    beginResetModel();
    rows_ = static_cast<int>(plans_.plans().answers.size());
    endResetModel();
}

core::PlanId PlanTableModel::planAt(int row) const {
    return row < 0 || row >= rows_ ? core::PlanId{} : plans_.plans().answers[static_cast<std::size_t>(row)].plan.id;
}

int PlanTableModel::rowOf(core::PlanId plan) const {
    for (int row = 0; row < rows_; ++row)
        if (planAt(row) == plan) return row;
    return -1;
}

int PlanTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rows_;
}

int PlanTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString PlanTableModel::text(int row, int column) const {
    const auto at = static_cast<std::size_t>(row);
    const core::PlanAnswer& answer = plans_.plans().answers[at];
    const core::PlanFit* fit = plans_.plans().fitOf(at);
    switch (column) {
        case Plant:
            return QString::fromStdString(answer.records.plantName);
        case Method:
            return answer.records.methodName.empty() ? tr("not decided")
                                                     : QString::fromStdString(answer.records.methodName);
        case Wanted:
            return plot::countText(answer.plan.wanted);
        case Sure:
            return plot::chanceText(answer.plan.assurance);
        case NeededBy:
            return answer.plan.needBy ? plot::shortDateText(*answer.plan.needBy) : tr("any day");
        case Stick:
            return answer.howMany && answer.howMany->stick ? plot::countText(*answer.howMany->stick) : tr("too many");
        case StickBy:
            return answer.when && *answer.when ? plot::shortDateText((*answer.when)->stickBy) : tr("any day");
        case Room:
            return fit == nullptr ? QString() : fit->fits ? tr("fits") : tr("does not fit");
        default:
            return {};
    }
}

QVariant PlanTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole && isNumber(index.column()))
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    const core::PlanFit* fit = plans_.plans().fitOf(static_cast<std::size_t>(index.row()));
    if (role == Qt::DecorationRole && index.column() == Room && fit != nullptr && !fit->fits) return icon("fault");
    if (role == Qt::ToolTipRole && index.column() == Room && fit != nullptr)
        return QString::fromStdString(fit->inWords);
    return role == Qt::DisplayRole || role == Qt::ToolTipRole ? QVariant(text(index.row(), index.column()))
                                                              : QVariant();
}

QVariant PlanTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole && isNumber(section))
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Plant:
            return tr("Plant");
        case Method:
            return tr("Method");
        case Wanted:
            return tr("Wanted", "number of plants");
        case Sure:
            return tr("Enough", "times in 100");
        case NeededBy:
            return tr("Needed by");
        case Stick:
            return tr("Stick", "number of cuttings");
        case StickBy:
            return tr("Stick by");
        case Room:
            return tr("Free positions");
        default:
            return {};
    }
}

}  // namespace desktop
