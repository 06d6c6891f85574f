// SPDX-License-Identifier: MIT
// The axis of interval rows: shares from 0 to 1, differences about 0, ratios about 1 by their logarithm, days from 0. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

#include "app/plot/axis.h"
#include "app/plot/interval_rows.h"

namespace plot {

class RowAxis {
  public:
    RowAxis(const IntervalRows& rows, const QRectF& plot);

    /// What lies beyond the axis (a ratio of 0, an endless limit) is placed at its end.
    [[nodiscard]] double at(double value) const;
    [[nodiscard]] bool isBeyond(double value) const;
    [[nodiscard]] std::vector<double> ticks(int most) const;
    [[nodiscard]] QString labelOf(double tick) const;
    /// Where two arms are alike: 0 of differences, 1 of ratios.
    [[nodiscard]] std::optional<double> neutral() const;

  private:
    [[nodiscard]] double laid(double value) const;

    RowScale kind_{};
    Scale scale_;
};

}  // namespace plot
