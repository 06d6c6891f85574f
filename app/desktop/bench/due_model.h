// SPDX-License-Identifier: MIT
// The due batches of a BenchView as a tree of two levels: stations, and under each its batches.
#pragma once

#include <QAbstractItemModel>
#include <vector>

#include "app/desktop/bench/bench_view.h"

namespace desktop {

class DueModel : public QAbstractItemModel {
    Q_OBJECT

  public:
    enum Column { Code, Plant, Day, Counts, Due, ColumnCount };

    using QAbstractItemModel::QAbstractItemModel;

    void show(std::vector<DueGroup> groups);
    /// Unset for a station's own row.
    [[nodiscard]] core::BatchId batchAt(const QModelIndex& index) const;

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& child) const override;
    using QObject::parent;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    [[nodiscard]] QVariant groupData(const DueGroup& group, int column, int role) const;
    [[nodiscard]] QVariant rowData(const DueRow& row, int column, int role) const;

    std::vector<DueGroup> groups_;
};

}  // namespace desktop
