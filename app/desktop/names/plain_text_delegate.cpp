// SPDX-License-Identifier: MIT
#include "app/desktop/names/plain_text_delegate.h"

#include <QApplication>
#include <QPainter>

#include "app/desktop/names/cell_text.h"
#include "app/desktop/names/plant_name_delegate.h"

namespace desktop {

namespace {

void drawFocus(QPainter& painter, const QStyleOptionViewItem& option, const QStyle& style) {
    QStyleOptionFocusRect focus;
    focus.QStyleOption::operator=(option);
    focus.rect = style.subElementRect(QStyle::SE_ItemViewItemFocusRect, &option, option.widget);
    focus.state |= QStyle::State_KeyboardFocusChange | QStyle::State_Item;
    const bool isSelected = option.state & QStyle::State_Selected;
    focus.backgroundColor = option.palette.color(isSelected ? QPalette::Highlight : QPalette::Window);
    style.drawPrimitive(QStyle::PE_FrameFocusRect, &focus, &painter, option.widget);
}

}  // namespace

void PlainTextDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QStyle& style = option.widget ? *option.widget->style() : *QApplication::style();
    style.drawPrimitive(QStyle::PE_PanelItemViewItem, &option, painter, option.widget);
    const int margin = style.pixelMetric(QStyle::PM_FocusFrameHMargin, &option, option.widget) + 1;
    const QRect place = option.rect.adjusted(margin, 0, -margin, 0);
    const QString text = index.data().toString();
    if (index.column() == plantColumn_) {
        drawPlantNameIn(place, *painter, option, text);
    } else {
        const auto alignment = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
        painter->setPen(textColourOf(option));
        drawCellText(*painter, place, QStyle::visualAlignment(option.direction, alignment), option.direction, text);
    }
    if (option.state & QStyle::State_HasFocus) drawFocus(*painter, option, style);
}

}  // namespace desktop
