// SPDX-License-Identifier: MIT
// The kept plans as a table, one row each, what to stick first on top.
#pragma once

#include <QAbstractTableModel>
#include <memory>

#include "core/id.h"

namespace desktop {

struct AnsweredPlans;
class PlansModel;

class PlanTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Plant, Method, Wanted, Sure, NeededBy, Stick, StickBy, Room, ColumnCount };

    explicit PlanTableModel(const PlansModel& plans, QObject* parent = nullptr);

    /// Unset where there is no such row.
    [[nodiscard]] core::PlanId planAt(int row) const;
    [[nodiscard]] int rowOf(core::PlanId plan) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

    void readAgain();

  private:
    [[nodiscard]] QString text(int row, int column) const;

    const PlansModel& plans_;
    int rows_{};
};

}  // namespace desktop
