// SPDX-License-Identifier: MIT
#include "app/desktop/look/edged_style.h"

#include <QApplication>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleOption>
#include <algorithm>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

enum class Shape { Box, Disc };

void drawEdge(const QRect& rect, const QStyleOption& option, QPainter& painter, Shape shape = Shape::Box) {
    const bool isFocused = option.state & QStyle::State_HasFocus;
    const int width = (isFocused ? 2 : 1) + (isHighContrast(option.palette) && isFocused ? 1 : 0);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(isFocused ? focusColour(option.palette) : edgeColour(option.palette), width));
    const QRectF within = QRectF(rect).adjusted(.5, .5, -.5, -.5);
    if (shape == Shape::Disc)
        painter.drawEllipse(within);
    else
        painter.drawRoundedRect(within, 2, 2);
    painter.restore();
}

/// Frames that only set things apart: an edge is wanted in high contrast, where surfaces have one colour.
bool setsApart(QStyle::PrimitiveElement element) {
    return element == QStyle::PE_FrameMenu || element == QStyle::PE_FrameTabWidget ||
           element == QStyle::PE_FrameGroupBox || element == QStyle::PE_PanelTipLabel || element == QStyle::PE_Frame;
}

}  // namespace

void EdgedStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (!(option->state & State_Enabled)) return;
    const bool isTyped = element == PE_Frame && qobject_cast<const QPlainTextEdit*>(widget);
    const bool isControl = element == PE_FrameLineEdit || element == PE_IndicatorCheckBox ||
                           element == PE_IndicatorItemViewItemCheck || element == PE_PanelButtonCommand || isTyped;
    if (isControl || (setsApart(element) && isHighContrast(option->palette))) drawEdge(option->rect, *option, *painter);
    if (element == PE_IndicatorRadioButton) drawEdge(option->rect, *option, *painter, Shape::Disc);
}

void EdgedStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (!(option->state & State_Enabled)) return;
    if (control == CC_ComboBox || control == CC_SpinBox) drawEdge(option->rect, *option, *painter);
    if (control == CC_Slider) drawEdge(subControlRect(CC_Slider, option, SC_SliderHandle, widget), *option, *painter);
}

int EdgedStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    const bool isIndicator = metric == PM_IndicatorWidth || metric == PM_IndicatorHeight ||
                             metric == PM_ExclusiveIndicatorWidth || metric == PM_ExclusiveIndicatorHeight;
    if (!isIndicator) return usual;
    // What is ticked grows with the text beside it.
    const QFontMetrics metrics = widget ? widget->fontMetrics() : QFontMetrics(QApplication::font());
    return std::max(usual, metrics.ascent());
}

}  // namespace desktop
