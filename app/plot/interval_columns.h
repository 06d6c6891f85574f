// SPDX-License-Identifier: MIT
// How the text columns and the plot of interval rows share the width. Inside plot only.
#pragma once

#include <QRectF>
#include <vector>

#include "app/plot/interval_rows.h"

namespace plot {

inline constexpr double kColumnGap = 1.0;  // between columns, in ems

struct IntervalColumns {
    QRectF name;
    std::vector<QRectF> counts;
    QRectF plot;
    QRectF figure;  // empty when there's no room for it
};

[[nodiscard]] std::vector<const IntervalRow*> allRows(const IntervalRows& rows);
/// Names give way first, then the column of figures is left out; each column is as tall as `area`.
[[nodiscard]] IntervalColumns intervalColumns(const Canvas& canvas, const QRectF& area, const IntervalRows& rows);

}  // namespace plot
