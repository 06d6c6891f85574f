// SPDX-License-Identifier: MIT
// What stands where a picture would be. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>

namespace plot {

class Canvas;

/// The reason why there is nothing to draw, in the middle of a quiet frame.
void drawEmptyPicture(Canvas& canvas, const QRectF& area, const QString& reason);

}  // namespace plot
