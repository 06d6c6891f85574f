// SPDX-License-Identifier: MIT
// The timeline of one batch: what each look found, and where every cutting was after it.
#pragma once

#include <QAbstractTableModel>

#include "core/records.h"

namespace desktop {

class CheckTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { CheckedOn, Day, Rooted, Lost, Withdrawn, RootedInAll, Undecided, Note, columns };

    using QAbstractTableModel::QAbstractTableModel;

    void show(core::BatchRecord record, const core::Shelves& shelves);
    [[nodiscard]] const core::Check* checkAt(int row) const;
    [[nodiscard]] int rowOf(core::CheckId check) const;  // -1: none

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] QString lostText(const core::Check& check) const;

    core::BatchRecord record_;
    std::vector<core::Tally> after_;
    std::vector<core::LossCause> causes_;
};

}  // namespace desktop
