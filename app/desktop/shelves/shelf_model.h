// SPDX-License-Identifier: MIT
// A shelf as a table: the shelf's own columns, then how many batches use each thing, the last day (where batches name such things), and
// its state. Filters and sorts by itself over a plain vector.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include "app/desktop/shelves/shelf.h"

namespace desktop {

class ShelfModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    explicit ShelfModel(std::vector<ShelfColumn> columns, QObject* parent = nullptr, bool countsUses = true);

    void show(std::vector<ShelfItem> items, ShelfUses uses);
    /// Rows that have every word of it somewhere.
    void setFilter(const QString& words);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

    [[nodiscard]] const std::vector<ShelfColumn>& columns() const { return columns_; }
    [[nodiscard]] const std::vector<ShelfItem>& items() const { return items_; }
    [[nodiscard]] ShelfUse useOf(std::int64_t id) const;
    [[nodiscard]] int total() const { return static_cast<int>(items_.size()); }
    /// nullptr: there is no such row.
    [[nodiscard]] const ShelfItem* itemAt(int row) const;
    [[nodiscard]] int rowOf(std::int64_t id) const;  // -1: not shown

  private:
    enum Tail { Batches, LastDay, State, TailCount };

    /// Below 0: one of the shelf's own.
    [[nodiscard]] int tailOf(int column) const;
    [[nodiscard]] QString textOf(const ShelfItem& item, int column) const;
    [[nodiscard]] bool isFigure(int column) const;
    [[nodiscard]] bool isBefore(const ShelfItem& one, const ShelfItem& other) const;
    [[nodiscard]] double figureOf(const ShelfItem& item, int column) const;
    void chooseShown();

    std::vector<ShelfColumn> columns_;
    bool countsUses_;
    std::vector<ShelfItem> items_;
    ShelfUses uses_;
    std::vector<std::size_t> shown_;  // indices into items_, in the order shown
    QStringList words_;
    int sortedBy_{};
    Qt::SortOrder order_{Qt::AscendingOrder};
};

}  // namespace desktop
