// SPDX-License-Identifier: MIT
// Plant names in tables as they should be set: the botanical part in italics, the cultivar upright.
#pragma once

#include <QStyledItemDelegate>

namespace desktop {

/// Draws the name into the text's place of an item, with the item's own font and text colour.
void drawPlantName(QPainter& painter, const QStyleOptionViewItem& option, const QString& name);
/// Where the text's place is known.
void drawPlantNameIn(QRect place, QPainter& painter, const QStyleOptionViewItem& option, const QString& name);
/// The colour in which an item's text is drawn, selected or not.
[[nodiscard]] QColor textColourOf(const QStyleOptionViewItem& option);

class PlantNameDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

/// The same as rich text, for labels.
[[nodiscard]] QString plantNameAsHtml(const QString& name);

}  // namespace desktop
