// SPDX-License-Identifier: MIT
#include "app/plot/cost_parts_picture.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/plot/arm_words.h"
#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/cost_text.h"
#include "app/plot/interval_columns.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct CostPartWords {
    Q_DECLARE_TR_FUNCTIONS(CostPartsPicture)
};

constexpr double kMostCostPitch = 2.6;   // ems
constexpr double kLeastCostPitch = 1.5;  // bar and interval below it
constexpr double kCostAxisLines = 2.4;   // numbers, and what they are

/// The columns of text at both sides; the bars are drawn between them.
IntervalRows columnsOf(const CostRows& rows) {
    IntervalRows texts{.nameHeading = rows.hasPlants ? CostPartWords::tr("Plant") : CostPartWords::tr("Method"),
                       .countHeadings = {CostPartWords::tr("n")},
                       .figureHeading = CostPartWords::tr("a rooted plant, %1").arg(textOf(rows.currency)),
                       .rows = {},
                       .pooled = {},
                       .scale = RowScale::Share,
                       .lowSide = {},
                       .highSide = {},
                       .remarks = {}};
    if (rows.hasPlants) texts.countHeadings.prepend(CostPartWords::tr("Method"));
    for (const core::WorthOfMethod& method : rows.methods) {
        IntervalRow row;
        row.isPlantName = rows.hasPlants;
        row.name = textOf(rows.hasPlants ? method.plantName : method.name);
        row.counts = {CostPartWords::tr("%1 of %2", "rooted of assessed")
                          .arg(countText(method.strike.succeeded), countText(method.strike.of))};
        if (rows.hasPlants) row.counts.prepend(textOf(method.name));
        row.mark = RowMark::Point;
        row.figure = costFigureOf(method);
        texts.rows.push_back(row);
    }
    return texts;
}

/// One wild interval must not squeeze the bars into a point: beyond twice the dearest bar the axis ends.
double endOfAxis(const CostRows& rows) {
    double dearest = 0, highest = 0;
    for (const core::WorthOfMethod& method : rows.methods) {
        if (!method.perRooted.value) continue;
        dearest = std::max(dearest, *method.perRooted.value);
        if (std::isfinite(method.perRooted.limits.high)) highest = std::max(highest, method.perRooted.limits.high);
    }
    const double end = std::max(dearest, std::min(highest, 2 * dearest));
    return end > 0 ? 1.02 * end : 1;
}

class CostPartsPainter {
  public:
    CostPartsPainter(Canvas& canvas, const QRectF& area, const CostRows& rows)
        : canvas_(canvas), area_(area), rows_(rows), texts_(columnsOf(rows)) {
        columns_ = intervalColumns(canvas, area, texts_);
        money_ = {.low = 0, .high = endOfAxis(rows), .start = columns_.plot.left(), .end = columns_.plot.right()};
    }

    void paint() {
        const double em = canvas_.em();
        const double top = drawHeadings(drawKeys(area_.top()) + 0.4 * em);
        const double room = area_.bottom() - kCostAxisLines * em - top;
        const auto wanted = static_cast<int>(rows_.methods.size());
        const int fitting = std::max(1, static_cast<int>(room / (kLeastCostPitch * em)));
        const int shown = wanted <= fitting ? wanted : std::max(1, fitting - 1);
        const int lines = shown + (shown < wanted ? 1 : 0);
        const double pitch = std::min(kMostCostPitch * em, room / lines);
        drawGrid(top, top + pitch * lines);
        for (int i = 0; i < shown; ++i) drawRow(static_cast<std::size_t>(i), top + i * pitch, pitch);
        if (shown < wanted)
            canvas_.line({area_.left(), top + shown * pitch, area_.width(), pitch}, Qt::AlignLeft | Qt::AlignVCenter,
                         CostPartWords::tr("and %1 more, in the table of figures", "lines of a figure without room")
                             .arg(countText(wanted - shown)),
                         canvas_.palette().quietText, Type::Small);
        drawAxis(top + pitch * lines);
    }

  private:
    static QString numberOf(std::size_t part) { return countText(static_cast<int>(part) + 1); }

    // "1 lasting things  2 used up ...", over as many lines as it takes.
    double drawKeys(double top) {
        const double em = canvas_.em(), height = 1.2 * em;
        double left = area_.left();
        for (std::size_t part = 0; part < core::allCostParts.size(); ++part) {
            const QString text = costPartText(core::allCostParts[part]);
            const double width = 1.9 * em + canvas_.widthOf(text, Type::Small) + 0.2 * em;
            if (left > area_.left() && left + width > area_.right()) left = area_.left(), top += height;
            drawSegment({left, top, 1.5 * em, height - 0.15 * em}, part);
            canvas_.line({left + 1.9 * em, top, width - 1.9 * em, height - 0.15 * em}, Qt::AlignLeft | Qt::AlignVCenter,
                         text, canvas_.palette().text, Type::Small);
            left += width + 0.9 * em;
        }
        return top + height;
    }

    void drawSegment(const QRectF& bar, std::size_t part) {
        const SeriesLook& look = canvas_.palette().look(part);
        QPainterPath outline;
        outline.addRect(bar);
        canvas_.fill(bar, look.box);
        canvas_.stroke(outline, look.line, 0.07);
        const QString number = numberOf(part);
        if (bar.width() >= canvas_.widthOf(number, Type::Small) + 0.3 * canvas_.em())
            canvas_.line(bar, Qt::AlignCenter, number, canvas_.palette().text, Type::Small);
    }

    double drawHeadings(double top) {
        const double line = canvas_.lineHeight(Type::Small), y = top + line + 0.15 * canvas_.em();
        const QColor& color = canvas_.palette().quietText;
        const auto heading = [&](const QRectF& column, Qt::Alignment alignment, const QString& text) {
            canvas_.line({column.left(), top, column.width(), line}, alignment | Qt::AlignBottom, text, color,
                         Type::Small);
        };
        heading(columns_.name, Qt::AlignLeft, texts_.nameHeading);
        for (std::size_t i = 0; i < columns_.counts.size(); ++i)
            heading(columns_.counts[i], Qt::AlignRight, texts_.countHeadings[static_cast<qsizetype>(i)]);
        if (!columns_.figure.isEmpty()) heading(columns_.figure, Qt::AlignRight, texts_.figureHeading);
        canvas_.stroke({area_.left(), y}, {area_.right(), y}, canvas_.palette().grid, 0.06);
        return y + 0.2 * canvas_.em();
    }

    std::vector<double> ticks() const {
        return amountTicks(money_.high, std::max(2, static_cast<int>(columns_.plot.width() / (3.6 * canvas_.em()))));
    }

    void drawGrid(double top, double bottom) {
        for (const double tick : ticks())
            canvas_.stroke({money_.at(tick), top}, {money_.at(tick), bottom}, canvas_.palette().grid, 0.06);
        canvas_.stroke({money_.start, top}, {money_.start, bottom}, canvas_.palette().axis, 0.08);
    }

    void drawAxis(double bottom) {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        canvas_.stroke({money_.start, bottom}, {money_.end, bottom}, palette.axis, 0.07);
        for (const double tick : ticks()) {
            const double x = money_.at(tick);
            canvas_.stroke({x, bottom}, {x, bottom + 0.2 * em}, palette.axis, 0.07);
            canvas_.line({x - 1.8 * em, bottom + 0.25 * em, 3.6 * em, em}, Qt::AlignHCenter | Qt::AlignTop,
                         amountText(tick), palette.quietText, Type::Small);
        }
        canvas_.line({columns_.plot.left() - em, bottom + 1.3 * em, columns_.plot.width() + 2 * em, em},
                     Qt::AlignHCenter | Qt::AlignTop,
                     CostPartWords::tr("%1 for each rooted plant", "currency").arg(textOf(rows_.currency)),
                     palette.quietText, Type::Small);
    }

    void drawRow(std::size_t index, double top, double pitch) {
        const core::WorthOfMethod& method = rows_.methods[index];
        const IntervalRow& row = texts_.rows[index];
        const Palette& palette = canvas_.palette();
        const auto cell = [&](const QRectF& column) { return QRectF(column.left(), top, column.width(), pitch); };
        if (rows_.hasPlants)
            canvas_.plantName(cell(columns_.name), row.name);
        else
            canvas_.line(cell(columns_.name), Qt::AlignLeft | Qt::AlignVCenter, row.name, palette.text);
        for (std::size_t i = 0; i < columns_.counts.size(); ++i)
            canvas_.line(cell(columns_.counts[i]), Qt::AlignRight | Qt::AlignVCenter,
                         row.counts[static_cast<qsizetype>(i)], palette.text);
        const bool hasColumn = !columns_.figure.isEmpty();
        if (hasColumn) canvas_.line(cell(columns_.figure), Qt::AlignRight | Qt::AlignVCenter, row.figure, palette.text);
        if (method.perRooted.value)
            drawBar(method, top, pitch);
        else if (!hasColumn)
            canvas_.line(cell(columns_.plot).adjusted(0.4 * canvas_.em(), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         row.figure, palette.text, Type::Small);
        canvas_.hint({area_.left(), top, area_.width(), pitch}, hintOf(method, row));
    }

    void drawBar(const core::WorthOfMethod& method, double top, double pitch) {
        const core::CostParts parts = partsPerRooted(method);
        double from = 0;
        for (std::size_t part = 0; part < core::allCostParts.size(); ++part) {
            const double amount = parts.amounts[part];
            if (!(amount > 0)) continue;
            const double left = money_.at(from), right = money_.at(from + amount);
            drawSegment({left, top + 0.12 * pitch, right - left, 0.5 * pitch}, part);
            from += amount;
        }
        drawLimits(method.perRooted.limits, top + 0.8 * pitch);
    }

    void drawLimits(const core::Limits& limits, double y) {
        const double end = 0.2 * canvas_.em();
        const QColor& color = canvas_.palette().text;
        const double low = money_.at(std::min(limits.low, money_.high)),
                     high = money_.at(std::min(limits.high, money_.high));
        canvas_.stroke({low, y}, {high, y}, color, 0.1);
        canvas_.stroke({low, y - end}, {low, y + end}, color, 0.1);
        if (limits.high > money_.high) {
            canvas_.stroke({high, y}, {high - 1.5 * end, y - end}, color, 0.1);
            canvas_.stroke({high, y}, {high - 1.5 * end, y + end}, color, 0.1);
        } else {
            canvas_.stroke({high, y - end}, {high, y + end}, color, 0.1);
        }
    }

    QString hintOf(const core::WorthOfMethod& method, const IntervalRow& row) const {
        QStringList lines{CostPartWords::tr("%1: %2", "a method, its cost for each rooted plant")
                              .arg(nameOfCostRow(method, rows_.hasPlants), row.figure)};
        const core::CostParts parts = partsPerRooted(method);
        for (const core::CostPart part : core::allCostParts)
            if (parts.of(part) > 0)
                lines << CostPartWords::tr("%1 %2", "a part of the cost, its amount")
                             .arg(costPartText(part), costText(parts.of(part), rows_.currency));
        lines << CostPartWords::tr("rooted %1, costs of %2")
                     .arg(percentText(method.strike.rate, method.strike.succeeded, method.strike.of),
                          batchesText(method.pricedBatches));
        return lines.join(u'\n');
    }

    Canvas& canvas_;
    QRectF area_;
    const CostRows& rows_;
    IntervalRows texts_;
    IntervalColumns columns_;
    Scale money_;
};

}  // namespace

QString nameOfCostRow(const core::WorthOfMethod& method, bool hasPlants) {
    if (!hasPlants) return textOf(method.name);
    return CostPartWords::tr("%1, %2", "a plant, a method").arg(textOf(method.plantName), textOf(method.name));
}

core::CostParts partsPerRooted(const core::WorthOfMethod& method) {
    const double whole = method.perCutting.total();
    if (!method.perRooted.value || !(whole > 0)) return {};
    return method.perCutting.times(*method.perRooted.value / whole);
}

bool isPriced(const core::WorthOfMethod& method) {
    return method.pricedBatches > 0;
}

QString costFigureOf(const core::WorthOfMethod& method) {
    if (!isPriced(method)) return CostPartWords::tr("nothing priced");
    if (method.strike.of == 0) return CostPartWords::tr("nothing assessed");
    if (!method.perRooted.value) return noneSucceededText(method.perRooted, CostPartWords::tr("none rooted"));
    return costOfEachText(method.perRooted);
}

void drawCostParts(Canvas& canvas, const QRectF& area, const CostRows& rows) {
    CostPartsPainter(canvas, area, rows).paint();
}

}  // namespace plot
