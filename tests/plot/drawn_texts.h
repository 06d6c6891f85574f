// SPDX-License-Identifier: MIT
// What a figure says where, painted offscreen.
#pragma once

#include <QImage>
#include <QPainter>
#include <QSize>
#include <QStringList>

#include "app/plot/figure.h"
#include "app/plot/figure_font.h"
#include "app/plot/palette.h"

namespace examples {

inline plot::Drawing drawn(const plot::Figure& figure, const QSize& size = {900, 640}) {
    QImage image(size, QImage::Format_RGB32);
    image.setDotsPerMeterX(3780);
    image.setDotsPerMeterY(3780);
    QPainter painter(&image);
    painter.setFont(plot::figureFont(9));
    return figure.paint(painter, QRectF(8, 8, size.width() - 16, size.height() - 16), plot::Palette::light());
}

inline QStringList drawnTexts(const plot::Figure& figure, const QSize& size = {900, 640}) {
    QStringList texts;
    for (const plot::DrawnText& text : drawn(figure, size).texts) texts << text.text;
    return texts;
}

}  // namespace examples
