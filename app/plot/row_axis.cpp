// SPDX-License-Identifier: MIT
#include "app/plot/row_axis.h"

#include <algorithm>
#include <cmath>

#include "app/plot/interval_columns.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct Reach {
    double low{};
    double high{};
};

template <class Take>
void forEachFigure(const IntervalRows& rows, Take take) {
    for (const IntervalRow* row : allRows(rows)) {
        if (row->value) take(*row->value);
        for (const std::optional<core::Limits>& limits : {row->thick, row->thin})
            if (limits) take(limits->low), take(limits->high);
    }
}

Reach reachOfDifferences(const IntervalRows& rows) {
    Reach reach;
    forEachFigure(rows, [&](double value) {
        reach.low = std::min(reach.low, value);
        reach.high = std::max(reach.high, value);
    });
    constexpr double least = 0.1;  // either side of zero, so that the zero line never lies on the edge
    return {.low = std::min(-least, std::floor(reach.low * 10) / 10),
            .high = std::max(least, std::ceil(reach.high * 10) / 10)};
}

// In powers of ten. One wild interval must not squeeze the others into a point, so beyond a hundredfold the axis ends.
Reach reachOfRatios(const IntervalRows& rows) {
    constexpr double least = 0.30103, most = 2;  // a factor of two and of a hundred, either side
    Reach reach{.low = -least, .high = least};
    forEachFigure(rows, [&](double value) {
        if (!(value > 0) || std::isinf(value)) return;
        reach.low = std::min(reach.low, std::log10(value));
        reach.high = std::max(reach.high, std::log10(value));
    });
    return {.low = std::max(-most, reach.low), .high = std::min(most, reach.high)};
}

// Of days: an endless or very late limit ends with the axis, at three times the latest estimate.
Reach reachOfDays(const IntervalRows& rows) {
    double latest = 7, highest = 7;
    for (const IntervalRow* row : allRows(rows))
        if (row->value && std::isfinite(*row->value)) latest = std::max(latest, *row->value);
    forEachFigure(rows, [&](double value) {
        if (std::isfinite(value)) highest = std::max(highest, value);
    });
    const double end = std::min({highest, 3 * latest, 36500.0});
    return {.low = 0, .high = static_cast<double>(lastTickFor(static_cast<int>(std::ceil(end))))};
}

Reach reachOf(const IntervalRows& rows) {
    switch (rows.scale) {
        case RowScale::Share:
            break;
        case RowScale::Difference:
            return reachOfDifferences(rows);
        case RowScale::Ratio:
            return reachOfRatios(rows);
        case RowScale::Day:
            return reachOfDays(rows);
    }
    return {.low = 0, .high = 1};
}

}  // namespace

RowAxis::RowAxis(const IntervalRows& rows, const QRectF& plot) : kind_(rows.scale) {
    const Reach reach = reachOf(rows);
    scale_ = {.low = reach.low, .high = reach.high, .start = plot.left(), .end = plot.right()};
}

double RowAxis::laid(double value) const {
    if (kind_ != RowScale::Ratio) return value;
    return value > 0 ? std::log10(value) : -HUGE_VAL;
}

double RowAxis::at(double value) const {
    return scale_.at(std::clamp(laid(value), scale_.low, scale_.high));
}

bool RowAxis::isBeyond(double value) const {
    constexpr double hair = 1e-9;
    return laid(value) < scale_.low - hair || laid(value) > scale_.high + hair;
}

std::vector<double> RowAxis::ticks(int most) const {
    std::vector<double> ticks;
    switch (kind_) {
        case RowScale::Share:
            return shareTicks(1, most);
        case RowScale::Difference:
            return differenceTicks(scale_.low, scale_.high, most);
        case RowScale::Ratio:
            return ratioTicks(std::pow(10, scale_.low), std::pow(10, scale_.high), most);
        case RowScale::Day:
            for (const int day : weekTicks(static_cast<int>(scale_.high), most)) ticks.push_back(day);
            return ticks;
    }
    return ticks;
}

QString RowAxis::labelOf(double tick) const {
    switch (kind_) {
        case RowScale::Share:
            return shareText(tick);
        case RowScale::Difference:
            return pointsText(tick);
        case RowScale::Ratio:
        case RowScale::Day:
            return amountText(tick);
    }
    return {};
}

std::optional<double> RowAxis::neutral() const {
    if (kind_ == RowScale::Difference) return 0;
    if (kind_ == RowScale::Ratio) return 1;
    return {};
}

}  // namespace plot
