// SPDX-License-Identifier: MIT
// Cells that hold one line of plain text and nothing else, drawn as the style draws them but from layouts that are kept; a style lays every
// text out four times each time. Not for models that give icons, ticks, fonts or colours.
#pragma once

#include <QStyledItemDelegate>

namespace desktop {

class PlainTextDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    /// `plantColumn` holds names of plants.
    PlainTextDelegate(int plantColumn, QObject* parent) : QStyledItemDelegate(parent), plantColumn_(plantColumn) {}
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    int plantColumn_;
};

}  // namespace desktop
