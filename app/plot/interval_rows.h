// SPDX-License-Identifier: MIT
// Points with their intervals, one a line, on one axis, with text columns at both sides: what the forest, the strike rates and the difference
// have in common. Inside plot only.
#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/comparison/comparison.h"

namespace plot {

class Canvas;

enum class RowMark { Series, Point, Square, Bar };  // Series: with its key before the name; Bar: from zero to the value

struct IntervalRow {
    QString name;
    bool isPlantName{};
    QStringList counts;  // text columns after the name
    std::optional<double> value;
    std::optional<core::Limits> thick;  // as counted
    std::optional<core::Limits> thin;   // allowing for the spread between batches
    RowMark mark{RowMark::Series};
    std::size_t series{};
    double weight{1};  // 0 to 1: the area of a square
    QString figure;    // text column at the right
    QString hint;
    std::optional<double> running{};  // of this row and all before it: joined by a line
};

enum class RowScale { Share, Difference, Ratio, Day };

struct IntervalRows {
    QString nameHeading;
    QStringList countHeadings;
    QString figureHeading;
    std::vector<IntervalRow> rows;
    std::optional<IntervalRow> pooled;
    RowScale scale{RowScale::Share};
    QString lowSide, highSide;  // what a point left and right of zero, or of a ratio of one, means
    QStringList remarks;        // sentences below
};

/// Returns where they end: at most the area's bottom.
double drawIntervalRows(Canvas& canvas, const QRectF& area, const IntervalRows& rows);

}  // namespace plot
