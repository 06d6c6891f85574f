// SPDX-License-Identifier: MIT
// Which cutting goes to which arm, ten to a line, in the order in which they are cut: "7 B".
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include "core/trial/allocation.h"

namespace desktop {

class AllocationTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;
    static constexpr int perLine = 10;

    void show(core::Allocation allocation, const QStringList& arms);
    void clear() { show({}, {}); }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

  private:
    core::Allocation allocation_;
    QStringList arms_;
};

}  // namespace desktop
