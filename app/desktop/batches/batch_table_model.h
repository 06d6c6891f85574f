// SPDX-License-Identifier: MIT
// All batches as a table. Filters and sorts by itself over a plain vector, so that 20 000 rows answer at once; no cell asks the logbook.
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <optional>
#include <vector>

#include "app/desktop/place.h"
#include "core/comparison/comparison.h"
#include "core/records.h"

namespace desktop {

enum class BatchColumn {
    Code,
    Day,
    Plant,
    Method,
    Station,
    Stuck,
    Rooted,
    Lost,
    Withdrawn,
    Undecided,
    StrikeRate,
    Interval,
    State
};
inline constexpr int batchColumns = 13;

class BatchTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    /// Everything anew. `level` is that of the intervals.
    void show(std::vector<core::BatchLine> lines, const core::Shelves& shelves);
    /// `lines` are what the logbook has of `touched` now: changed, new, or gone.
    void refresh(const std::vector<core::BatchId>& touched, std::vector<core::BatchLine> lines);
    /// Rows that have every word of it somewhere in code, plant, method, station or state.
    void setFilter(const QString& words);
    /// Only the batches of this plant, stock plant or station; of all for any other place.
    void setOnly(const Place& whose);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

    [[nodiscard]] const core::Shelves& shelves() const { return shelves_; }
    [[nodiscard]] int total() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] core::BatchId batchAt(int row) const;
    [[nodiscard]] int rowOf(core::BatchId batch) const;  // -1: not shown

  private:
    struct Row {
        core::BatchLine line;
        QString code, plant, method, station;
        QString searched;  // what the filter looks through, as searchText()
        core::Limits interval;
        bool isClosed{};
    };

    [[nodiscard]] Row rowFor(core::BatchLine line) const;
    [[nodiscard]] const Row& at(int row) const { return rows_[shown_[static_cast<std::size_t>(row)]]; }
    [[nodiscard]] static QString textOf(const Row& row, BatchColumn column);
    [[nodiscard]] static int count(const Row& row, BatchColumn column);
    [[nodiscard]] bool isBefore(const Row& one, const Row& other) const;
    [[nodiscard]] bool isOneOfOnly(const core::Batch& batch) const;
    [[nodiscard]] bool isWanted(const Row& row) const;
    void chooseShown();

    core::Shelves shelves_;
    std::vector<Row> rows_;
    std::vector<std::size_t> shown_;  // indices into rows_, in the order shown
    QStringList words_;
    Place only_;
    BatchColumn sortedBy_{BatchColumn::Day};
    Qt::SortOrder order_{Qt::DescendingOrder};
};

}  // namespace desktop
