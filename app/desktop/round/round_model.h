// SPDX-License-Identifier: MIT
// A round of checks: one row a batch in walking order, and what was typed for each. Entries are held here, read by core's grammar and judged by
// core's rules as they come, and saved together by the dialog as one action.
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "core/batch/check_entry.h"
#include "core/due/due_today.h"
#include "core/records.h"
#include "core/result.h"
#include "db/actions/check_actions.h"

namespace desktop {

class Workspace;

class RoundModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Code, Plant, Station, Day, SoFar, Entry, Meaning, ColumnCount };
    /// bool: the row's meaning is a refusal.
    static constexpr int isFaultRole = Qt::UserRole;

    explicit RoundModel(Workspace& workspace, QObject* parent = nullptr);

    /// The batches of the round. What was typed for a batch that is in both lists is kept.
    void show(std::vector<core::DueBatch> batches);
    /// The day of the round; the counts before it are worked out anew and every entry is judged again.
    void setCheckedOn(core::Date day);

    /// While typing: says what it would mean, holds nothing.
    void preview(int row, const QString& typed);
    /// Holds the entry when it is good or blank; false, with the reason in the row, when it is refused.
    bool enter(int row, const QString& typed);
    /// The row of the batch with this code, -1 when the round has none.
    [[nodiscard]] int rowOf(const QString& code) const;

    [[nodiscard]] int enteredCount() const;
    [[nodiscard]] bool isComplete() const;
    [[nodiscard]] bool isEntered(int row) const { return rows_[static_cast<std::size_t>(row)].entry.has_value(); }
    /// The first row whose entry is refused, -1 when there is none.
    [[nodiscard]] int firstFault() const;
    [[nodiscard]] std::vector<db::CheckDraft> drafts() const;
    /// What the logbook refused, each beside its batch; the first such row, -1 when none is of a batch.
    int mark(const core::Refusals& refusals);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  signals:
    void entriesChanged();

  private:
    struct Row {
        core::DueBatch due;
        core::Tally before;  // the counts before the day of the round
        QString typed;
        std::optional<core::CheckEntry> entry;  // held; absent: not looked at
        QString meaning;
        bool isFault{};
    };

    void judge(Row& row, const QString& typed);
    [[nodiscard]] core::Check checkFrom(const Row& row, const core::CheckEntry& entry) const;
    [[nodiscard]] core::Tally tallyBefore(const core::BatchLine& line) const;
    [[nodiscard]] QString meaningOf(const Row& row, const core::CheckEntry& entry) const;
    [[nodiscard]] QString textAt(const Row& row, int column) const;
    void showRow(int row);

    Workspace& workspace_;
    core::Date checkedOn_;
    std::vector<Row> rows_;
};

}  // namespace desktop
