// SPDX-License-Identifier: MIT
// One line of plain text in a cell, drawn from a layout that is kept: to lay text out takes many times as long as to draw it, and tables
// say the same words in many rows and again in every frame of a scroll.
#pragma once

#include <QString>

class QFont;
class QPainter;
class QRect;

namespace desktop {

struct DrawnText {
    double width{};
    bool isWhole{};  // false: shortened, with an ellipsis
};

/// In the painter's font and colour, in the middle of the place's height. `alignment` is a side, as seen; `direction` is that in which the
/// text is read.
DrawnText drawCellText(QPainter& painter, const QRect& place, Qt::Alignment alignment, Qt::LayoutDirection direction,
                       const QString& text);

/// As wide as drawCellText() would draw the whole of it.
[[nodiscard]] double cellTextWidth(const QFont& font, Qt::LayoutDirection direction, const QString& text);

}  // namespace desktop
