// SPDX-License-Identifier: MIT
#include "app/plot/figure.h"

#include <QPainter>

#include "app/plot/canvas.h"

namespace plot {

Drawing Figure::paint(QPainter& painter, const QRectF& area, const Palette& palette) const {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Canvas canvas(painter, palette);
    double top = area.top();
    top += canvas.paragraph(area, sentence(), palette.text, Type::Bold, 3);
    top += 0.15 * canvas.em();
    top += canvas.paragraph({area.left(), top, area.width(), area.bottom() - top}, method(), palette.quietText,
                            Type::Small, 2);
    top += 0.6 * canvas.em();
    draw(canvas, {area.left(), top, area.width(), area.bottom() - top});
    painter.restore();
    return canvas.takeDrawing();
}

}  // namespace plot
