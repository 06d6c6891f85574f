// SPDX-License-Identifier: MIT
// The stations of a BenchView as a table: what each holds, and since when.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "app/desktop/bench/bench_view.h"

namespace desktop {

class StationModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Name, Places, Undecided, Since, Readings, Plants, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<StationRow> rows);
    /// Unset where there is no such row.
    [[nodiscard]] core::StationId stationAt(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    std::vector<StationRow> rows_;
};

}  // namespace desktop
