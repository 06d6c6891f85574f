// SPDX-License-Identifier: MIT
// Rooted-by-day curves with their losses and counts: the drawing, apart from what it is about. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/comparison/comparison.h"

namespace plot {

class Canvas;

struct Curve {
    QString name;
    std::size_t series{};
    int stuck{};
    std::optional<double> counted{};  // beside its end, where it is told as a share of those counted
    std::vector<core::DayShare> rooted;
    std::vector<core::DayShare> lost;     // may be empty
    std::vector<core::LookCounts> looks;  // may be empty: then no rows below
};

struct CurvePicture {
    std::vector<Curve> curves;
    std::optional<int> horizonDay;
};

/// Boxes and bands are drawn for one or two curves; of three and more they would hide each other.
[[nodiscard]] bool hasTints(const CurvePicture& picture);
[[nodiscard]] double lastDayOf(const CurvePicture& picture);
void drawCurvePicture(Canvas& canvas, const QRectF& area, const CurvePicture& picture);

}  // namespace plot
