// SPDX-License-Identifier: MIT
#include "app/plot/empty_picture.h"

#include <QPainterPath>
#include <algorithm>

#include "app/plot/canvas.h"

namespace plot {

void drawEmptyPicture(Canvas& canvas, const QRectF& area, const QString& reason) {
    const double em = canvas.em();
    QPainterPath frame;
    frame.addRoundedRect(area.adjusted(0.1 * em, 0.1 * em, -0.1 * em, -0.1 * em), 0.4 * em, 0.4 * em);
    canvas.stroke(frame, canvas.palette().grid, 0.08);
    const QRectF inner = area.adjusted(em, 0, -em, 0);
    const int lines = std::max(1, static_cast<int>(area.height() / em) - 1);
    const double height = canvas.paragraphHeight(inner.width(), reason, Type::Plain, lines);
    canvas.paragraph({inner.left(), inner.center().y() - height / 2, inner.width(), height}, reason,
                     canvas.palette().quietText, Type::Plain, lines, Qt::AlignHCenter);
}

}  // namespace plot
