// SPDX-License-Identifier: MIT
// Everything that happened to a batch on one axis of days: the drawing, apart from what it is about. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>
#include <vector>

#include "app/plot/curve_panel.h"

namespace plot {

class Canvas;

/// A thing of one moment: care, a photo, a look.
struct StripMark {
    double day{};
    QString word;  // beside it where there is room
    QString hint;
};

struct StripPoint {
    double day{};
    double value{};
    bool isOutside{};  // of the good band
    QString hint;
};

/// From one day to another.
struct StripBand {
    double fromDay{};
    double toDay{};
    double low{};
    double high{};
};

/// What was read of one quantity, in the grower's unit.
struct StripPanel {
    QString caption;  // "solution EC, mS/cm"
    std::vector<StripPoint> points;
    std::vector<StripBand> bands{};
    QString bandWords{};  // "good: 5.6 to 6.2"
    QString last;         // the last figure, beside its point
};

struct StripPicture {
    PanelCurve curve;
    int lastDay{};
    std::vector<StripMark> looks;
    std::vector<StripMark> care;
    std::vector<StripMark> photos;
    std::vector<StripPanel> panels;
    QString emptyText;  // where there are no panels
};

/// At which it looks its best.
[[nodiscard]] double stripHeightInEms(const StripPicture& picture);
void drawStripPicture(Canvas& canvas, const QRectF& area, const StripPicture& picture);

}  // namespace plot
