// SPDX-License-Identifier: MIT
// What is out of the ordinary, as a table: what it is about, and why.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "app/desktop/bench/attention_view.h"

namespace desktop {

class AttentionModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Subject, Why, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<AttentionRow> rows);
    /// Contract: a row of the model.
    [[nodiscard]] const AttentionRow& rowAt(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    std::vector<AttentionRow> rows_;
};

}  // namespace desktop
