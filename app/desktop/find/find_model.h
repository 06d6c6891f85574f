// SPDX-License-Identifier: MIT
// What was found, as the list under the field shows it.
#pragma once

#include <QAbstractListModel>

#include "app/desktop/find/find_index.h"

namespace desktop {

class FindModel : public QAbstractListModel {
    Q_OBJECT

  public:
    enum Role { PlantRole = Qt::UserRole, DetailRole, KindRole, StartsKindRole };

    using QAbstractListModel::QAbstractListModel;
    void show(FindAnswer answer);
    [[nodiscard]] const FindAnswer& answer() const { return answer_; }
    /// nullptr when there is no such row.
    [[nodiscard]] const FoundThing* at(int row) const;
    /// All of a row in words.
    [[nodiscard]] static QString inWords(const FoundThing& thing);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

  private:
    FindAnswer answer_;
};

}  // namespace desktop
