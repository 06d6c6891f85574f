// SPDX-License-Identifier: MIT
#include "app/desktop/look/edged_style.h"

#include <QPainter>
#include <QStyleOption>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

void drawEdge(const QRect& rect, const QStyleOption& option, QPainter& painter) {
    const bool isFocused = option.state & QStyle::State_HasFocus;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(isFocused ? focusColour(option.palette) : edgeColour(option.palette), isFocused ? 2 : 1));
    painter.drawRoundedRect(QRectF(rect).adjusted(.5, .5, -.5, -.5), 2, 2);
    painter.restore();
}

}  // namespace

void EdgedStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (!(option->state & State_Enabled)) return;
    if (element == PE_FrameLineEdit || element == PE_IndicatorCheckBox || element == PE_PanelButtonCommand)
        drawEdge(option->rect, *option, *painter);
}

void EdgedStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_ComboBox && (option->state & State_Enabled)) drawEdge(option->rect, *option, *painter);
}

}  // namespace desktop
