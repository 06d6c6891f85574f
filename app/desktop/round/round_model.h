// SPDX-License-Identifier: MIT
// A round of checks: one row a batch in walking order, and what was typed for each. Entries are held here, read by core's grammar and judged by
// core's rules as they come, and saved together by the dialog as one action. What is typed is kept with the workspace until then.
#pragma once

#include <QAbstractTableModel>
#include <functional>
#include <optional>
#include <vector>

#include "core/batch/check_entry.h"
#include "core/due/due_today.h"
#include "core/records.h"
#include "core/result.h"
#include "db/actions/check_actions.h"

namespace desktop {

class UnfinishedRound;
class Workspace;

/// What the looks of a round come to so far.
struct RoundSums {
    int looks{};
    int cuttings{};   // of the batches looked at
    int undecided{};  // of these, after the round
};

class RoundModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Code, Plant, Station, Day, Rooted, Lost, Withdrawn, Undecided, Entry, Meaning, ColumnCount };
    /// bool: the row's meaning is a refusal.
    static constexpr int isFaultRole = Qt::UserRole;

    explicit RoundModel(Workspace& workspace, QObject* parent = nullptr);

    /// The batches of the round. What was typed for them, now or before the round was left, stands there.
    void show(std::vector<core::DueBatch> batches);
    /// The day of the round; the counts before it are worked out anew and every entry is judged again.
    void setCheckedOn(core::Date day);
    /// What a number without a sign means from now on. What stands there already keeps what it says.
    void setPlainNumber(core::PlainNumber plain);
    [[nodiscard]] core::PlainNumber plainNumber() const;

    /// While typing: says what it would mean, holds nothing.
    void preview(int row, const QString& typed);
    /// Holds the entry when it is good or blank; false, with the reason in the row, when it is refused.
    bool enter(int row, const QString& typed);
    /// Everything typed in this round is given up.
    void forget();

    // Without the keyboard: each changes the row's entry by one step. An empty text, or why it can't be; then the entry stays as it was.
    [[nodiscard]] QString addRooted(int row, int more);
    [[nodiscard]] QString addWithdrawn(int row, int more);
    /// Losses without a cause get this one; where there are none, one more is lost to it.
    [[nodiscard]] QString blame(int row, core::LossCauseId cause);
    [[nodiscard]] QString addLost(int row, int more);  // one fewer is one fewer of the last cause

    /// The row of the batch with this code, -1 when the round has none.
    [[nodiscard]] int rowOf(const QString& code) const;
    [[nodiscard]] const core::DueBatch& due(int row) const { return rows_[static_cast<std::size_t>(row)].due; }
    [[nodiscard]] int enteredCount() const;
    [[nodiscard]] RoundSums sums() const;
    [[nodiscard]] bool isComplete() const;
    [[nodiscard]] bool isEntered(int row) const { return rows_[static_cast<std::size_t>(row)].entry.has_value(); }
    [[nodiscard]] bool isFault(int row) const { return rows_[static_cast<std::size_t>(row)].isFault; }
    /// As typed or previewed; nothing of an entry that is refused or blank.
    [[nodiscard]] core::CheckEntry shownEntry(int row) const;
    [[nodiscard]] core::Tally tallyBefore(int row) const;
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
        mutable std::optional<core::Tally> before;  // the counts before the day of the round, read when first asked for
        QString typed;
        std::optional<core::CheckEntry> entry;  // held; absent: not looked at
        std::optional<core::CheckEntry> shown;  // held or previewed
        QString meaning;
        bool isFault{};
    };

    void judge(Row& row, const QString& typed) const;
    [[nodiscard]] QString change(int row, const std::function<void(core::CheckEntry&)>& step);
    [[nodiscard]] core::Check checkFrom(const Row& row, const core::CheckEntry& entry) const;
    [[nodiscard]] const core::Tally& before(const Row& row) const;
    [[nodiscard]] QString textAt(const Row& row, int column) const;
    void showRow(int row);

    Workspace& workspace_;
    UnfinishedRound& kept_;
    core::Date checkedOn_;
    std::vector<Row> rows_;
};

}  // namespace desktop
