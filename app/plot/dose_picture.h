// SPDX-License-Identifier: MIT
// A dose series as a picture: the drawing, apart from its words. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>
#include <optional>

#include "core/comparison/doses.h"

namespace plot {

class Canvas;

/// "2000"; what can't be a dose any more is 0 or endless.
[[nodiscard]] QString doseAmount(double dose);
/// "2000 mg/L", or mg/kg for powders.
[[nodiscard]] QString doseText(const core::DoseSeries& series, double dose);
/// Of the best dose: with spread where it can be seen, else as counted; absent where no dose can be excluded.
[[nodiscard]] std::optional<core::Limits> bestDoseLimits(const core::DoseSeries& series);
/// Domain: at least one point.
void drawDosePicture(Canvas& canvas, const QRectF& area, const core::DoseSeries& series);

}  // namespace plot
