// SPDX-License-Identifier: MIT
#include "app/plot/interval_rows.h"

#include <QCoreApplication>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "app/plot/canvas.h"
#include "app/plot/interval_columns.h"
#include "app/plot/number_text.h"
#include "app/plot/row_axis.h"

namespace plot {
namespace {

struct RowWords {
    Q_DECLARE_TR_FUNCTIONS(IntervalRows)
};

constexpr double kMostRowPitch = 1.9;  // ems
constexpr double kMostPitchOfFew = 2.4;
constexpr int kMostRemarkLines = 3;

QRectF slice(const QRectF& column, double top, double height) {
    return {column.left(), top, column.width(), height};
}

class RowPainter {
  public:
    RowPainter(Canvas& canvas, const QRectF& area, const IntervalRows& rows)
        : canvas_(canvas),
          rows_(rows),
          area_(area),
          columns_(intervalColumns(canvas, area, rows)),
          axis_(rows, columns_.plot) {}

    double paint() {
        const double em = canvas_.em();
        const double headings = headingLines() * canvas_.lineHeight(Type::Small) + 0.4 * em;
        const double remarks = remarksHeight();
        const double axis = (rows_.lowSide.isEmpty() ? 1.3 : 2.6) * em;
        const double room = area_.height() - headings - remarks - axis;
        const auto wanted = static_cast<int>(rows_.rows.size());
        const int pooled = rows_.pooled ? 1 : 0;
        const int fitting = std::max(1, static_cast<int>(std::floor(room / em)) - pooled);
        const int shown = wanted <= fitting ? wanted : std::max(1, fitting - 1);
        const int lines = shown + pooled + (shown < wanted ? 1 : 0);
        const double most = lines <= 2 ? kMostPitchOfFew : kMostRowPitch;
        const double pitch = std::min(most * em, room / std::max(1, lines));
        const double top = area_.top() + headings, bottom = top + pitch * lines;
        drawHeadings(area_.top());
        drawGrid(top, bottom);
        for (int i = 0; i < shown; ++i) drawRow(rows_.rows[static_cast<std::size_t>(i)], top + i * pitch, pitch);
        drawRunning(shown, top, pitch);
        if (shown < wanted) drawLeftOut(wanted - shown, top + shown * pitch, pitch);
        if (rows_.pooled) drawPooled(top + (lines - 1) * pitch, pitch);
        drawAxis(bottom);
        return drawRemarks(bottom + axis);
    }

  private:
    int headingLines() const {
        double most = 1;
        const double line = canvas_.lineHeight(Type::Small);
        for (std::size_t i = 0; i < columns_.counts.size(); ++i)
            most =
                std::max(most, canvas_.paragraphHeight(columns_.counts[i].width(),
                                                       rows_.countHeadings[static_cast<qsizetype>(i)], Type::Small, 2) /
                                   line);
        if (!columns_.figure.isEmpty())
            most = std::max(
                most, canvas_.paragraphHeight(columns_.figure.width(), rows_.figureHeading, Type::Small, 2) / line);
        return static_cast<int>(std::lround(most));
    }

    double remarksHeight() const {
        double height = 0;
        for (const QString& remark : rows_.remarks)
            height +=
                canvas_.paragraphHeight(area_.width(), remark, Type::Plain, kMostRemarkLines) + 0.2 * canvas_.em();
        return height;
    }

    void drawHeading(const QRectF& column, const QString& text, double top, Qt::Alignment alignment) {
        const int lines = headingLines();
        const double line = canvas_.lineHeight(Type::Small);
        const double own = canvas_.paragraphHeight(column.width(), text, Type::Small, 2);
        canvas_.paragraph(slice(column, top + lines * line - own, own), text, canvas_.palette().quietText, Type::Small,
                          2, alignment);
    }

    void drawHeadings(double top) {
        drawHeading(columns_.name, rows_.nameHeading, top, Qt::AlignLeft);
        for (std::size_t i = 0; i < columns_.counts.size(); ++i)
            drawHeading(columns_.counts[i], rows_.countHeadings[static_cast<qsizetype>(i)], top, Qt::AlignRight);
        if (!columns_.figure.isEmpty()) drawHeading(columns_.figure, rows_.figureHeading, top, Qt::AlignRight);
        const double y = top + headingLines() * canvas_.lineHeight(Type::Small) + 0.15 * canvas_.em();
        canvas_.stroke({area_.left(), y}, {area_.right(), y}, canvas_.palette().grid, 0.06);
    }

    std::vector<double> ticks() const {
        return axis_.ticks(std::max(3, static_cast<int>(columns_.plot.width() / (3.4 * canvas_.em()))));
    }

    void drawGrid(double top, double bottom) {
        for (const double tick : ticks()) {
            const double x = axis_.at(tick);
            canvas_.stroke({x, top}, {x, bottom}, canvas_.palette().grid, 0.06);
        }
        if (const auto neutral = axis_.neutral())
            canvas_.stroke({axis_.at(*neutral), top}, {axis_.at(*neutral), bottom}, canvas_.palette().axis, 0.09);
    }

    void drawAxis(double bottom) {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        canvas_.stroke({columns_.plot.left(), bottom}, {columns_.plot.right(), bottom}, palette.axis, 0.07);
        for (const double tick : ticks()) {
            const double x = axis_.at(tick);
            canvas_.stroke({x, bottom}, {x, bottom + 0.2 * em}, palette.axis, 0.07);
            canvas_.line({x - 1.7 * em, bottom + 0.25 * em, 3.4 * em, em}, Qt::AlignHCenter | Qt::AlignTop,
                         axis_.labelOf(tick), palette.quietText, Type::Small);
        }
        const QRectF below(columns_.plot.left() - kColumnGap * em / 2, bottom + 1.25 * em,
                           columns_.plot.width() + kColumnGap * em, em);
        if (!rows_.lowSide.isEmpty()) drawSides(below);
    }

    // The two sides meet at zero; where one is too short for its words they may reach out to the columns beside the plot.
    void drawSides(const QRectF& below) {
        const double em = canvas_.em(), zero = axis_.at(axis_.neutral().value_or(0)), gap = 0.7 * em;
        const double leftEnd = area_.left(), rightEnd = area_.right();
        canvas_.line({leftEnd, below.top(), zero - gap - leftEnd, em}, Qt::AlignRight | Qt::AlignTop,
                     QStringLiteral("← ") + rows_.lowSide, canvas_.palette().quietText, Type::Small);
        canvas_.line({zero + gap, below.top(), rightEnd - zero - gap, em}, Qt::AlignLeft | Qt::AlignTop,
                     rows_.highSide + QStringLiteral(" →"), canvas_.palette().quietText, Type::Small);
    }

    void drawTexts(const IntervalRow& row, double top, double pitch, Type type) {
        const Palette& palette = canvas_.palette();
        QRectF name = slice(columns_.name, top, pitch);
        if (row.mark == RowMark::Series) {
            canvas_.sample({name.left(), top, 1.8 * canvas_.em(), pitch}, palette.look(row.series));
            name.setLeft(name.left() + 2.4 * canvas_.em());
        }
        if (row.isPlantName)
            canvas_.plantName(name, row.name);
        else
            canvas_.line(name, Qt::AlignLeft | Qt::AlignVCenter, row.name, palette.text, type);
        for (std::size_t i = 0; i < columns_.counts.size() && std::ssize(row.counts) > static_cast<std::ptrdiff_t>(i);
             ++i)
            canvas_.line(slice(columns_.counts[i], top, pitch), Qt::AlignRight | Qt::AlignVCenter,
                         row.counts[static_cast<qsizetype>(i)], palette.text, Type::Plain);
        if (!columns_.figure.isEmpty())
            canvas_.line(slice(columns_.figure, top, pitch), Qt::AlignRight | Qt::AlignVCenter, row.figure,
                         palette.text, Type::Plain);
        canvas_.hint({area_.left(), top, area_.width(), pitch}, row.hint);
    }

    void drawLimits(const std::optional<core::Limits>& limits, double y, double width, bool hasEnds,
                    const QColor& color) {
        if (!limits) return;
        const double low = axis_.at(limits->low), high = axis_.at(limits->high), end = 0.24 * canvas_.em();
        canvas_.stroke({low, y}, {high, y}, color, width);
        for (const double limit : {limits->low, limits->high}) {
            const double x = axis_.at(limit), inwards = limit == limits->low ? end : -end;
            if (axis_.isBeyond(limit)) {
                canvas_.stroke({x, y}, {x + 1.5 * inwards, y - end}, color, 0.09);
                canvas_.stroke({x, y}, {x + 1.5 * inwards, y + end}, color, 0.09);
            } else if (hasEnds) {
                canvas_.stroke({x, y - end}, {x, y + end}, color, width);
            }
        }
    }

    void drawRow(const IntervalRow& row, double top, double pitch) {
        const Palette& palette = canvas_.palette();
        const double y = top + pitch / 2;
        drawTexts(row, top, pitch, Type::Plain);
        if (row.mark == RowMark::Bar) drawBar(row, top, pitch);
        const bool isBlack = row.mark == RowMark::Square || row.mark == RowMark::Bar;
        const QColor color = isBlack ? palette.text : palette.look(row.series).line;
        drawLimits(row.thin, y, 0.09, true, color);
        drawLimits(row.thick, y, row.mark == RowMark::Square ? 0.12 : 0.26, false, color);
        if (!row.value || row.mark == RowMark::Bar) return;
        const QPointF place(axis_.at(*row.value), y);
        if (row.mark == RowMark::Square) {
            canvas_.marker(place, Marker::Square, 0.3 + 0.55 * std::sqrt(row.weight), palette.look(0).line);
            return;
        }
        canvas_.marker(place, palette.look(row.series).marker, 0.86, palette.paper);
        canvas_.marker(place, palette.look(row.series).marker, 0.68, color);
    }

    // Tinted, with an edge that grey print shows.
    void drawBar(const IntervalRow& row, double top, double pitch) {
        if (!row.value) return;
        const SeriesLook& look = canvas_.palette().look(row.series);
        const QRectF bar(QPointF(axis_.at(0), top + 0.16 * pitch), QPointF(axis_.at(*row.value), top + 0.84 * pitch));
        QPainterPath edge;
        edge.addRect(bar);
        canvas_.fill(bar, look.box);
        canvas_.stroke(edge, look.line, 0.07);
    }

    void drawRunning(int shown, double top, double pitch) {
        const SeriesLook& look = canvas_.palette().look(1);
        std::vector<QPointF> points;
        for (int i = 0; i < shown; ++i)
            if (const auto& running = rows_.rows[static_cast<std::size_t>(i)].running)
                points.emplace_back(axis_.at(*running), top + (i + 0.5) * pitch);
        for (std::size_t i = 1; i < points.size(); ++i)
            canvas_.stroke(points[i - 1], points[i], look.line, 0.1, look.dash);
        for (const QPointF& point : points) {
            canvas_.marker(point, look.marker, 0.62, canvas_.palette().paper);
            canvas_.marker(point, look.marker, 0.46, look.line);
        }
    }

    void drawPooled(double top, double pitch) {
        const IntervalRow& row = *rows_.pooled;
        const Palette& palette = canvas_.palette();
        canvas_.stroke({area_.left(), top}, {area_.right(), top}, palette.grid, 0.06);
        drawTexts(row, top, pitch, Type::Bold);
        if (!row.value || !row.thick) return;
        const double y = top + pitch / 2, half = 0.36 * canvas_.em(), x = axis_.at(*row.value);
        drawLimits(row.thin, y, 0.09, true, palette.text);
        QPainterPath diamond(QPointF(axis_.at(row.thick->low), y));
        diamond.lineTo(x, y - half);
        diamond.lineTo(axis_.at(row.thick->high), y);
        diamond.lineTo(x, y + half);
        diamond.closeSubpath();
        canvas_.fill(diamond, palette.text);
    }

    void drawLeftOut(int count, double top, double pitch) {
        canvas_.line({area_.left(), top, columns_.plot.left() - area_.left() + columns_.plot.width(), pitch},
                     Qt::AlignLeft | Qt::AlignVCenter,
                     RowWords::tr("and %1 more, in the table of figures", "lines of a figure without room")
                         .arg(countText(count)),
                     canvas_.palette().quietText, Type::Small);
    }

    double drawRemarks(double top) {
        for (const QString& remark : rows_.remarks)
            top += canvas_.paragraph({area_.left(), top, area_.width(), canvas_.em()}, remark, canvas_.palette().text,
                                     Type::Plain, kMostRemarkLines) +
                   0.2 * canvas_.em();
        return top;
    }

    Canvas& canvas_;
    const IntervalRows& rows_;
    QRectF area_;
    IntervalColumns columns_;
    RowAxis axis_;
};

}  // namespace

double drawIntervalRows(Canvas& canvas, const QRectF& area, const IntervalRows& rows) {
    return RowPainter(canvas, area, rows).paint();
}

}  // namespace plot
