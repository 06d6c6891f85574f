// SPDX-License-Identifier: MIT
#include "app/desktop/look/drawn_icon.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPalette>
#include <QSvgRenderer>

namespace desktop {

namespace {

QColor inkFor(QIcon::Mode mode) {
    const QPalette palette = QGuiApplication::palette();
    if (mode == QIcon::Disabled) return palette.color(QPalette::Disabled, QPalette::WindowText);
    if (mode == QIcon::Selected) return palette.color(QPalette::HighlightedText);
    return palette.color(QPalette::WindowText);
}

}  // namespace

void DrawnIcon::paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) {
    const qreal scale = painter->device()->devicePixelRatioF();
    painter->drawPixmap(rect, scaledPixmap(rect.size() * scale, mode, state, scale));
}

QPixmap DrawnIcon::pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) {
    return scaledPixmap(size, mode, state, 1);
}

QPixmap DrawnIcon::scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State, qreal) {
    QPixmap drawn(size);
    drawn.fill(Qt::transparent);
    QSvgRenderer drawing(file_);
    QPainter painter(&drawn);
    drawing.render(&painter);
    painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
    painter.fillRect(drawn.rect(), inkFor(mode));
    return drawn;
}

}  // namespace desktop
