// SPDX-License-Identifier: MIT
// The arms of a comparison, one row each: what was stuck, what became of it by the horizon day, and the strike rate with both intervals.
#pragma once

#include <QAbstractTableModel>

#include "core/comparison/comparison.h"

namespace desktop {

class ArmTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column {
        Name,
        Batches,
        Stations,
        Stuck,
        Rooted,
        Lost,
        Withdrawn,
        Undecided,
        Rate,
        AsCounted,
        WithSpread,
        HalfBy,
        columns
    };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<core::Arm> arms, core::RateInterval interval);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<core::Arm> arms_;
    QString intervalName_;
};

}  // namespace desktop
