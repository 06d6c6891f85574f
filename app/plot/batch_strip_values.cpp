// SPDX-License-Identifier: MIT
#include "app/plot/batch_strip_values.h"

#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"

namespace plot {

double valueStep(double low, double high, int most) {
    const auto between = [&](double step) { return std::floor(high / step) - std::ceil(low / step) + 1; };
    double power = std::pow(10, std::floor(std::log10((high - low) / most)) - 1);
    while (true) {
        for (const double times : {1.0, 2.0, 5.0})
            if (between(times * power) <= most) return times * power;
        power *= 10;
    }
}

QString tickText(double tick, double step) {
    return decimalText(tick, std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 3));
}

Scale valueScaleOf(const StripPanel& panel, double bottom, double top) {
    double low = panel.points.front().value, high = low;
    for (const StripPoint& point : panel.points) low = std::min(low, point.value), high = std::max(high, point.value);
    for (const StripBand& band : panel.bands) low = std::min(low, band.low), high = std::max(high, band.high);
    const double room = high > low ? 0.12 * (high - low) : std::max(0.1 * std::abs(high), 0.5);
    return {.low = low - room, .high = high + room, .start = bottom, .end = top};
}

}  // namespace plot
