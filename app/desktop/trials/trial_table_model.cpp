// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_table_model.h"

#include "app/desktop/trials/trials_model.h"
#include "app/plot/number_text.h"
#include "app/report/trial_words.h"

namespace desktop {

TrialTableModel::TrialTableModel(const TrialsModel& trials, QObject* parent)
    : QAbstractTableModel(parent), trials_(trials), rows_(static_cast<int>(trials.rows().size())) {}

core::TrialId TrialTableModel::trialAt(int row) const {
    return row >= 0 && row < rows_ ? trials_.rows()[static_cast<std::size_t>(row)].trial.id : core::TrialId{};
}

int TrialTableModel::rowOf(core::TrialId trial) const {
    for (int row = 0; row < rows_; ++row)
        if (trialAt(row) == trial) return row;
    return -1;
}

int TrialTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rows_;
}

int TrialTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant TrialTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rows_) return {};
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return text(index.row(), index.column());
    if (role == Qt::AccessibleTextRole)
        return tr("%1: %2", "column heading, value")
            .arg(headerData(index.column(), Qt::Horizontal).toString(), text(index.row(), index.column()));
    return {};
}

QVariant TrialTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Trial");
        case State:
            return tr("State");
        case Arms:
            return tr("Arms");
        case HowFar:
            return tr("Stuck");
        case Due:
            return tr("Result from");
        default:
            return {};
    }
}

void TrialTableModel::readAgain() {
    beginResetModel();
    rows_ = static_cast<int>(trials_.rows().size());
    endResetModel();
}

QString TrialTableModel::text(int row, int column) const {
    const TrialRow& shown = trials_.rows()[static_cast<std::size_t>(row)];
    switch (column) {
        case Name:
            return QString::fromStdString(shown.trial.name);
        case State:
            return report::stageWords(shown.progress.stage);
        case Arms: {
            QStringList names;
            for (const core::ArmCounts& counts : shown.progress.arms) names << QString::fromStdString(counts.name);
            return names.join(tr(", "));
        }
        case HowFar:
            return tr("%1 of %2", "batches stuck of those dealt")
                .arg(plot::countText(shown.progress.batchesStuck),
                     plot::batchesText(std::max(shown.progress.batchesDealt, shown.progress.batchesStuck)));
        case Due:
            return shown.progress.decidedOn ? plot::shortDateText(*shown.progress.decidedOn) : QStringLiteral("\u2013");
        default:
            return {};
    }
}

}  // namespace desktop
