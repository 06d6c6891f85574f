// SPDX-License-Identifier: MIT
// The plane of two strike rates. Inside plot only.
#pragma once

#include <QPointF>
#include <QRectF>
#include <vector>

#include "core/money/worth.h"

namespace plot {

class Canvas;

/// Rates of the cheaper (x) and the dearer (y) at which both cost the same, rising; as far as they stay at or below 1.
[[nodiscard]] std::vector<QPointF> tyingRates(const core::TurningLine& line);
/// "75 % (18 of 24)" of those assessed
[[nodiscard]] QString strikeText(const core::WorthOfMethod& method);

/// Contract: both have something assessed, and something priced.
void drawStrikePlane(Canvas& canvas, const QRectF& area, const core::WorthOfPair& pair, double level);

}  // namespace plot
