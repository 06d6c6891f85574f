// SPDX-License-Identifier: MIT
// The logbook's history as a table: when, who, what. What was taken back is grey, struck through, and says so in words.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "db/logbook.h"

namespace desktop {

class HistoryModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { When, Who, What, State, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<db::HistoryEntry> entries);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    std::vector<db::HistoryEntry> entries_;
};

}  // namespace desktop
