// SPDX-License-Identifier: MIT
// The bars of the cost parts. Inside plot only.
#pragma once

#include <QRectF>

#include "app/plot/cost_parts_figure.h"

namespace plot {

class Canvas;

/// "Hebe 'Emerald', media tray"
[[nodiscard]] QString nameOfCostRow(const core::WorthOfMethod& method, bool hasPlants);
/// The parts of the cost of each rooted plant; nothing where none rooted or nothing is priced.
[[nodiscard]] core::CostParts partsPerRooted(const core::WorthOfMethod& method);
[[nodiscard]] bool isPriced(const core::WorthOfMethod& method);
/// "0.42 (0.34 to 0.61)", or in words why there is no figure.
[[nodiscard]] QString costFigureOf(const core::WorthOfMethod& method);

void drawCostParts(Canvas& canvas, const QRectF& area, const CostRows& rows);

}  // namespace plot
