// SPDX-License-Identifier: MIT
// The session's grid: one row a batch, cells as typed. Knows which cells may be typed into, what stands in them by default, and which
// faults to mark; it asks no rules itself.
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <functional>
#include <vector>

#include "app/desktop/session/session_reading.h"
#include "app/desktop/session/session_sheet.h"

namespace desktop {

/// What the grid asks of the logbook while somebody types.
struct SessionLookup {
    std::function<QString(const QString& station)> methodOf;
    std::function<QString(const QString& station)> usualMediumOf;  // stands in Medium until something else is typed
    /// What stands in Stock plant once a row's plant is another: a stock plant of the one before doesn't stay.
    std::function<QString(const QString& before, const QString& plant, const QString& stockPlant)> stockPlantFor;
    /// The name that was meant, as the logbook writes it; what was typed where nothing is meant for certain.
    std::function<QString(SessionColumn column, const QString& typed)> understood;
};

class SessionGridModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Role { FaultRole = Qt::UserRole + 1, IsOfferedRole, IsLockedRole, IsPlantNameRole, IsFilledRole };

    /// `sheet` outlives the model.
    explicit SessionGridModel(SessionSheet& sheet, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

    /// Blank where there is none: the sheet outlives this, and may be put away for a blank one meanwhile.
    [[nodiscard]] const SessionRow& row(int row) const;
    void setLookup(SessionLookup lookup);

    /// An offered row becomes a batch: someone went through it with Enter.
    void accept(int row);
    /// Every offered row becomes a batch.
    void acceptAll();
    [[nodiscard]] int offeredRows() const;
    /// Rows to start from, in place of a sheet on which nothing stands yet.
    void offer(std::vector<SessionRow> rows);
    /// Adds an offered copy of the last row, without its note.
    void offerRow();
    /// The cell above once more; false where there is none or the cell is locked.
    bool copyFromAbove(const QModelIndex& index);
    void remove(int row);
    void split(int row, SplitByChance split);
    void join(int split);
    void startAfresh();

    /// Positions as they fill themselves in, one text a row.
    void setFilled(const std::vector<QString>& filled);
    void setFaults(std::vector<CellFault> faults);
    [[nodiscard]] const std::vector<CellFault>& faults() const { return faults_; }

  signals:
    /// Something typed or a row more or less.
    void edited();

  private:
    [[nodiscard]] QString rowLabel(int row) const;
    [[nodiscard]] bool isLocked(const SessionRow& row, SessionColumn column) const;
    [[nodiscard]] QString faultAt(const QModelIndex& index) const;
    [[nodiscard]] bool hasCell(const QModelIndex& index) const;
    void keepOneRow();
    void tellRow(int row);

    SessionSheet& sheet_;
    std::vector<CellFault> faults_;
    SessionLookup lookup_;
};

}  // namespace desktop
