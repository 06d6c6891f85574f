// SPDX-License-Identifier: MIT
#include "app/plot/interval_columns.h"

#include <algorithm>
#include <cstddef>

#include "app/plot/canvas.h"

namespace plot {
namespace {

constexpr double kLeastPlot = 8.0;  // ems; below that the figures' column goes
constexpr double kLeastName = 8.0;  // ems

double nameWidth(const Canvas& canvas, const IntervalRow& row) {
    return row.isPlantName ? canvas.plantNameWidth(row.name) : canvas.widthOf(row.name, Type::Bold);
}

// The widest heading is broken into two lines, so a column need not be as wide as it.
double headingWidth(const Canvas& canvas, const QString& heading) {
    return std::min(canvas.widthOf(heading, Type::Small) + 0.2 * canvas.em(), 6.9 * canvas.em());
}

struct NaturalWidths {
    double name{};
    std::vector<double> counts;
    double figure{};
};

NaturalWidths naturalWidths(const Canvas& canvas, const IntervalRows& rows) {
    NaturalWidths widths{.name = canvas.widthOf(rows.nameHeading, Type::Small),
                         .counts = {},
                         .figure = headingWidth(canvas, rows.figureHeading)};
    for (const QString& heading : rows.countHeadings) widths.counts.push_back(headingWidth(canvas, heading));
    for (const IntervalRow* row : allRows(rows)) {
        // A key stands before the names of series.
        widths.name =
            std::max(widths.name, nameWidth(canvas, *row) + (row->mark == RowMark::Series ? 2.4 * canvas.em() : 0));
        widths.figure = std::max(widths.figure, canvas.widthOf(row->figure));
        for (std::size_t i = 0; i < widths.counts.size() && static_cast<qsizetype>(i) < row->counts.size(); ++i)
            widths.counts[i] = std::max(widths.counts[i], canvas.widthOf(row->counts[static_cast<qsizetype>(i)]));
    }
    return widths;
}

}  // namespace

std::vector<const IntervalRow*> allRows(const IntervalRows& rows) {
    std::vector<const IntervalRow*> all;
    for (const IntervalRow& row : rows.rows) all.push_back(&row);
    if (rows.pooled) all.push_back(&*rows.pooled);
    return all;
}

IntervalColumns intervalColumns(const Canvas& canvas, const QRectF& area, const IntervalRows& rows) {
    const double em = canvas.em(), gap = kColumnGap * em;
    auto [name, counts, figure] = naturalWidths(canvas, rows);
    double fixed = 0;
    for (const double width : counts) fixed += width + gap;
    const double wanted = std::max(0.22 * area.width(), kLeastPlot * em);
    const double room = area.width() - fixed - figure - 2 * gap - wanted;
    name = std::min(name, std::max(kLeastName * em, room));
    const bool hasFigure = area.width() - name - fixed - figure - 2 * gap >= (kLeastPlot - 0.5) * em;
    if (!hasFigure) name = std::min(name, std::max(kLeastName * em, area.width() - fixed - gap - wanted));

    IntervalColumns columns;
    double left = area.left();
    const auto take = [&](double width) {
        const QRectF column(left, area.top(), width, area.height());
        left += width + gap;
        return column;
    };
    columns.name = take(name);
    for (const double width : counts) columns.counts.push_back(take(width));
    const double plotEnd = area.right() - (hasFigure ? figure + gap : 0.5 * em);
    columns.plot = QRectF(left, area.top(), plotEnd - left, area.height());
    if (hasFigure) columns.figure = QRectF(area.right() - figure, area.top(), figure, area.height());
    return columns;
}

}  // namespace plot
