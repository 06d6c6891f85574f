// SPDX-License-Identifier: MIT
// A control chart of strike rates as a picture: the drawing, apart from its words. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>

#include "core/comparison/unusual.h"

namespace plot {

class Canvas;

/// Domain: at least one batch and a centre.
void drawChartPicture(Canvas& canvas, const QRectF& area, const core::StrikeChart& chart, const QString& thisBatch);

}  // namespace plot
