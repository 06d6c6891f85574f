// SPDX-License-Identifier: MIT
// Fusion with edges that can be seen: what can be typed into, ticked or dragged has an outline of at least 3:1 against its surroundings
// (WCAG 2.2, 1.4.11), which Fusion's own has neither in light nor in dark. In high contrast every frame has one, and a wider one. And words
// with an underlined letter are as wide as widgets are made for: Qt measures them whole but draws them in pieces, without the kerning
// between, so that "Taken on" lost half its last letter.
#pragma once

#include <QProxyStyle>

namespace desktop {

class EdgedStyle : public QProxyStyle {
    Q_OBJECT

  public:
    EdgedStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    void drawItemText(QPainter* painter, const QRect& rect, int flags, const QPalette& palette, bool isEnabled,
                      const QString& text, QPalette::ColorRole role) const override;
};

}  // namespace desktop
