// SPDX-License-Identifier: MIT
// A control chart of strike rates as a picture: the drawing, apart from its words. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>

#include "core/comparison/turning_point.h"
#include "core/comparison/unusual.h"

namespace plot {

class Canvas;

/// With a turning point, if there is one: between which batches it lies, and the rates before and after.
/// Domain: at least one batch and a centre.
void drawChartPicture(Canvas& canvas, const QRectF& area, const core::StrikeChart& chart, const QString& thisBatch,
                      const core::TurningPoint* turn);

}  // namespace plot
