// SPDX-License-Identifier: MIT
// Paints how full a station is: a bar of the positions that are taken and those that are free, with the figures beside it.
#pragma once

#include <QStyledItemDelegate>

namespace desktop {

class FillDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    /// double, 0 to 1: the share that is taken. Absent where a station's layout isn't described: only the words are painted then.
    static constexpr int shareRole = Qt::UserRole + 1;

    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace desktop
