// SPDX-License-Identifier: MIT
// One photo, or two side by side at the same scale with the day under each: before and after, on the screen and on paper.
#pragma once

#include <QImage>
#include <QString>
#include <memory>
#include <vector>

#include "app/plot/figure.h"

namespace plot {

struct ShownPhoto {
    QImage image;
    QString day;      // "day 14, 28 March 2026"
    QString caption;  // may be empty
};

/// Of `photos` the first two are drawn.
[[nodiscard]] std::shared_ptr<const Figure> photosFigure(std::vector<ShownPhoto> photos);

}  // namespace plot
