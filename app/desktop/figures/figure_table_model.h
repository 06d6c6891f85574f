// SPDX-License-Identifier: MIT
// The figures behind a picture, as a table on the screen.
#pragma once

#include <QAbstractTableModel>

#include "app/plot/figure_table.h"

namespace desktop {

class FigureTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    /// Words in the first so many columns, figures in the others.
    void show(plot::FigureTable table, int columnsOfWords = 1);
    [[nodiscard]] const plot::FigureTable& table() const { return table_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    plot::FigureTable table_;
    int columnsOfWords_{1};
};

}  // namespace desktop
