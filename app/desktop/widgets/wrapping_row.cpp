// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/wrapping_row.h"

#include <QStyle>
#include <QWidget>
#include <algorithm>
#include <utility>

namespace desktop {

WrappingRow::WrappingRow(QWidget* parent) : QLayout(parent) {
    setContentsMargins(0, 0, 0, 0);
}

WrappingRow::~WrappingRow() {
    qDeleteAll(items_);
}

void WrappingRow::insertWidget(int place, QWidget* widget) {
    addWidget(widget);
    items_.move(items_.size() - 1, place);
    if (pushedFrom_ >= place) ++pushedFrom_;
    invalidate();
}

void WrappingRow::addItem(QLayoutItem* item) {
    items_.append(item);
    invalidate();
}

QLayoutItem* WrappingRow::itemAt(int index) const {
    return items_.value(index);
}

QLayoutItem* WrappingRow::takeAt(int index) {
    if (index < 0 || index >= items_.size()) return nullptr;
    invalidate();
    return items_.takeAt(index);
}

int WrappingRow::gap() const {
    if (spacing() >= 0) return spacing();
    const QWidget* parent = parentWidget();
    return parent == nullptr ? 0 : parent->style()->pixelMetric(QStyle::PM_LayoutHorizontalSpacing, nullptr, parent);
}

QList<WrappingRow::Line> WrappingRow::linesIn(int width) const {
    QList<Line> lines;
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        const QSize size = item->sizeHint().expandedTo(item->minimumSize());
        if (lines.isEmpty() || lines.back().width + gap() + size.width() > width) lines.append(Line{});
        Line& line = lines.back();
        line.width += (line.items.isEmpty() ? 0 : gap()) + size.width();
        line.height = std::max(line.height, size.height());
        line.items.append(item);
    }
    return lines;
}

int WrappingRow::heightForWidth(int width) const {
    const QMargins margins = contentsMargins();
    int height = 0;
    for (const Line& line : linesIn(width - margins.left() - margins.right()))
        height += (height == 0 ? 0 : gap()) + line.height;
    return height + margins.top() + margins.bottom();
}

QSize WrappingRow::sizeHint() const {
    const QList<Line> lines = linesIn(QLAYOUTSIZE_MAX);
    const QSize size = lines.isEmpty() ? QSize() : QSize(lines.front().width, lines.front().height);
    return size.expandedTo({0, 0}).grownBy(contentsMargins());
}

QSize WrappingRow::minimumSize() const {
    QSize least(0, 0);
    for (const QLayoutItem* item : items_)
        if (!item->isEmpty()) least = least.expandedTo(item->minimumSize());
    return least.grownBy(contentsMargins());
}

void WrappingRow::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    const QRect room = rect.marginsRemoved(contentsMargins());
    const QList<Line> lines = linesIn(room.width());
    int top = room.top();
    for (const Line& line : lines) {
        const int pushed = lines.size() == 1 ? pushedFrom_ : -1;
        place(line, QRect(room.left(), top, room.width(), line.height), pushed);
        top += line.height + gap();
    }
}

void WrappingRow::place(const Line& line, const QRect& room, int pushed) const {
    const Qt::LayoutDirection direction =
        parentWidget() == nullptr ? Qt::LeftToRight : parentWidget()->layoutDirection();
    // What wants to be wide has what is left of the line.
    const auto isWide = [](const QLayoutItem* item) { return (item->expandingDirections() & Qt::Horizontal) != 0; };
    const auto wide = std::ranges::count_if(line.items, isWide);
    int spare = std::max(0, room.width() - line.width);
    const int more = wide == 0 ? 0 : spare / static_cast<int>(wide);
    if (wide > 0) spare = 0;
    int left = room.left();
    for (QLayoutItem* item : line.items) {
        QSize size = item->sizeHint().expandedTo(item->minimumSize());
        size.setWidth(std::min(size.width() + (isWide(item) ? more : 0), room.width()));
        if (pushed >= 0 && items_.indexOf(item) >= pushed) left += std::exchange(spare, 0);
        const QRect here(left, room.top() + (line.height - size.height()) / 2, size.width(), size.height());
        item->setGeometry(QStyle::visualRect(direction, room, here));
        left += size.width() + gap();
    }
}

}  // namespace desktop
