// SPDX-License-Identifier: MIT
// Batches out of the ordinary, the rarest first.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "core/causes/out_of_the_ordinary.h"

namespace desktop {

class UnusualTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Code, Plant, Method, StuckOn, State, Rooted, Expected, ByLuck, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<core::UnusualBatch> batches, const core::Shelves& shelves);
    /// Unset where there is no such row.
    [[nodiscard]] core::BatchId batchAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    struct Row {
        core::UnusualBatch batch;
        QString plant;
        QString method;
    };
    [[nodiscard]] static QString textOf(const Row& row, int column);

    std::vector<Row> rows_;
};

}  // namespace desktop
