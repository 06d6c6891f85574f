// SPDX-License-Identifier: MIT
// The timeline of one batch as a table.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "app/desktop/batches/batch_events.h"

namespace desktop {

class EventTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { When, Day, Event, What, RootedInAll, Undecided, Note, columns };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<BatchEvent> events, core::Date stuckOn);
    [[nodiscard]] const BatchEvent* eventAt(int row) const;          // nullptr: no such row
    [[nodiscard]] int rowOf(const BatchEvent& event) const;          // -1: none
    [[nodiscard]] int rowOf(EventKind kind, std::int64_t id) const;  // -1: none

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] QString textAt(const BatchEvent& event, int column) const;

    std::vector<BatchEvent> events_;
    core::Date stuckOn_{};
};

}  // namespace desktop
