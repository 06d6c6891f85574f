// SPDX-License-Identifier: MIT
// The trials as a table, one row each: what is compared and how far it is.
#pragma once

#include <QAbstractTableModel>

#include "core/id.h"

namespace desktop {

class TrialsModel;

class TrialTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Name, State, Arms, HowFar, Due, ColumnCount };

    explicit TrialTableModel(const TrialsModel& trials, QObject* parent = nullptr);

    /// Unset where there is no such row; -1 where there is no such trial.
    [[nodiscard]] core::TrialId trialAt(int row) const;
    [[nodiscard]] int rowOf(core::TrialId trial) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

    void readAgain();

  private:
    [[nodiscard]] QString text(int row, int column) const;

    const TrialsModel& trials_;
    int rows_{};
};

}  // namespace desktop
