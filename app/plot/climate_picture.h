// SPDX-License-Identifier: MIT
// The drawing of a climate figure, apart from its words. Inside plot only.
#pragma once

#include <QRectF>

#include "app/plot/climate_chart.h"

namespace plot {

class Canvas;

void drawClimatePicture(Canvas& canvas, const QRectF& area, const ClimateChart& chart);

}  // namespace plot
