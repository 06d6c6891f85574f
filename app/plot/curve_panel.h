// SPDX-License-Identifier: MIT
// One panel of step curves: bands, boxes between checks, steps, markers, and the labels at their ends. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>
#include <cstddef>
#include <vector>

#include "app/plot/axis.h"
#include "core/comparison/comparison.h"

namespace plot {

class Canvas;

struct PanelCurve {
    std::vector<core::DayShare> shares;
    std::size_t series{};
    QString label;    // at its end
    QString detail;   // second line of it, where there is room for all curves' second lines
    QString shortly;  // both in one line, where there is not
};

struct Panel {
    QRectF plot;
    Scale days;
    Scale shares;
    QRectF labels;  // where the labels go, right of the plot
    std::vector<PanelCurve> curves;
    bool hasTints{true};
};

/// Room that the bars at the ends of the curves need, in ems.
[[nodiscard]] double endBarsWidth(const std::vector<PanelCurve>& curves);
void drawPanel(Canvas& canvas, const Panel& panel);

}  // namespace plot
