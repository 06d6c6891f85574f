// SPDX-License-Identifier: MIT
#include "app/desktop/look/edged_style.h"

#include <QApplication>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleOption>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

#include "app/desktop/look/look.h"
#include "app/desktop/names/mnemonic.h"

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

/// The letter that is underlined in the text without its mark; -1: none, or in one of several lines.
int underlinedLetter(const QString& text, int flags) {
    if (!(flags & Qt::TextShowMnemonic) || (flags & Qt::TextHideMnemonic) || (flags & Qt::TextWordWrap)) return -1;
    if (text.contains(u'\n') || text.contains(u'\t')) return -1;
    int letter = -1, marks = 0;
    for (int i = 0; i + 1 < text.size(); ++i) {
        if (text[i] != u'&') continue;
        if (text[i + 1] != u'&') {
            if (letter >= 0) return -1;  // two of them, or one too many: as Qt has it
            letter = i - marks;
        }
        ++marks;
        ++i;
    }
    return letter;
}

void drawUnderline(QPainter& painter, const QRectF& box, const QString& plain, int letter, const QColor& colour) {
    const QFont font = painter.font();
    QTextLayout layout(plain, font);
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setTextDirection(painter.layoutDirection());
    layout.setTextOption(option);
    layout.beginLayout();
    const QTextLine line = layout.createLine();
    layout.endLayout();
    const double one = line.cursorToX(letter), other = line.cursorToX(letter + 1);
    const QFontMetricsF metrics(font);
    const double thick = std::max(1.0, std::round(metrics.lineWidth()));
    // Rounded down the page, so that it does not touch the letter.
    const double top =
        std::round(box.top() + metrics.ascent()) + std::ceil(metrics.underlinePos()) - std::floor((thick - 1) / 2);
    painter.fillRect(QRectF(box.left() + std::min(one, other), top, std::abs(other - one), thick), colour);
}

}  // namespace

void EdgedStyle::drawItemText(QPainter* painter, const QRect& rect, int flags, const QPalette& palette, bool isEnabled,
                              const QString& text, QPalette::ColorRole role) const {
    const int letter = underlinedLetter(text, flags);
    if (letter < 0) return QProxyStyle::drawItemText(painter, rect, flags, palette, isEnabled, text, role);
    const int whole = flags | Qt::TextHideMnemonic;
    QProxyStyle::drawItemText(painter, rect, whole, palette, isEnabled, text, role);
    const QPalette::ColorGroup group = isEnabled ? palette.currentColorGroup() : QPalette::Disabled;
    const QColor colour = role == QPalette::NoRole ? painter->pen().color() : palette.color(group, role);
    drawUnderline(*painter, painter->boundingRect(QRectF(rect), whole, text), withoutMnemonic(text), letter, colour);
}

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
