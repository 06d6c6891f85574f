// SPDX-License-Identifier: MIT
// The rows under the day axis: how many are waiting, rooted and lost in each arm at each tick. Inside plot only.
#pragma once

#include <QRectF>
#include <vector>

#include "app/plot/axis.h"
#include "app/plot/curve_picture.h"

namespace plot {

enum class RowsShape { None, OneLineAnArm, ThreeLinesAnArm };

[[nodiscard]] double countRowsHeight(const Canvas& canvas, const CurvePicture& picture, RowsShape shape);
/// What the column left of the axis must hold for them.
[[nodiscard]] double countRowsGutter(const Canvas& canvas, const CurvePicture& picture, RowsShape shape);
/// `area` begins left of the gutter and ends with the axis; `ticks` are the axis' own, thinned out where numbers would touch.
void drawCountRows(Canvas& canvas, const QRectF& area, const CurvePicture& picture, RowsShape shape, const Scale& days,
                   const std::vector<int>& ticks);

}  // namespace plot
