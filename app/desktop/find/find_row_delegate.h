// SPDX-License-Identifier: MIT
// A row of what was found: sign, code or name, plant, what tells it from others, and at the far end the word for its kind.
#pragma once

#include <QStyledItemDelegate>

namespace desktop {

class FindRowDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace desktop
