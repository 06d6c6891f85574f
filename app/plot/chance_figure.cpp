// SPDX-License-Identifier: MIT
#include "app/plot/chance_figure.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct ChanceWords {
    Q_DECLARE_TR_FUNCTIONS(ChanceFigure)
};

constexpr double kChanceCaption = 1.4;    // ems above the plot
constexpr double kNumberAxisLines = 2.6;  // below it: numbers, what they count
constexpr int kMostDots = 60;             // more would run into each other

class ChancePainter {
  public:
    ChancePainter(Canvas& canvas, const QRectF& area, const ChanceCurve& curve)
        : canvas_(canvas), area_(area), curve_(curve) {
        const double em = canvas.em();
        const double gutter = canvas.widthOf(shareText(1), Type::Small) + 0.7 * em;
        plot_ = area.adjusted(gutter, kChanceCaption * em, -1.5 * em, -kNumberAxisLines * em);
        if (plot_.height() < 2 * em) plot_.setHeight(2 * em);
        const double first = curve.points.front().number, last = curve.points.back().number;
        numbers_ = {.low = first, .high = std::max(last, first + 1), .start = plot_.left(), .end = plot_.right()};
        chances_ = {.low = 0, .high = 1, .start = plot_.bottom(), .end = plot_.top() + 0.3 * em};
    }

    void paint() {
        drawChanceAxis();
        drawNumberAxis();
        drawWanted();
        drawCurve();
        drawAnswer();
        leaveHints();
    }

  private:
    QPointF placeOf(const ChanceOfNumber& point) const {
        return {numbers_.at(point.number), chances_.at(point.chance)};
    }

    void drawChanceAxis() {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        for (const double tick : shareTicks(1, std::max(2, static_cast<int>(plot_.height() / (1.4 * em)) + 1))) {
            const double y = chances_.at(tick);
            canvas_.stroke({plot_.left(), y}, {plot_.right(), y}, palette.grid, 0.05);
            canvas_.line({area_.left(), y - em / 2, plot_.left() - 0.4 * em - area_.left(), em},
                         Qt::AlignRight | Qt::AlignVCenter, shareText(tick), palette.quietText, Type::Small);
        }
        canvas_.stroke(plot_.topLeft(), plot_.bottomLeft(), palette.axis, 0.07);
        canvas_.line({area_.left(), area_.top(), area_.width(), em}, Qt::AlignLeft | Qt::AlignTop, curve_.chanceCaption,
                     palette.quietText, Type::Small);
    }

    void drawNumberAxis() {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        canvas_.stroke(plot_.bottomLeft(), plot_.bottomRight(), palette.axis, 0.07);
        const double room = canvas_.widthOf(countText(curve_.points.back().number), Type::Small) + 1.2 * em;
        for (const int tick : countTicks(curve_.points.front().number, curve_.points.back().number,
                                         static_cast<int>(plot_.width() / room))) {
            const double x = numbers_.at(tick);
            canvas_.stroke({x, plot_.bottom()}, {x, plot_.bottom() + 0.25 * em}, palette.axis, 0.07);
            canvas_.line({x - room / 2, plot_.bottom() + 0.3 * em, room, em}, Qt::AlignHCenter | Qt::AlignTop,
                         countText(tick), palette.quietText, Type::Small);
        }
        canvas_.line({plot_.left(), plot_.bottom() + 1.4 * em, plot_.width(), em}, Qt::AlignHCenter | Qt::AlignTop,
                     curve_.numberCaption, palette.quietText, Type::Small);
    }

    void drawWanted() {
        if (!curve_.wanted) return;
        const double em = canvas_.em(), y = chances_.at(*curve_.wanted);
        canvas_.stroke({plot_.left(), y}, {plot_.right(), y}, canvas_.palette().text, 0.07, Qt::DashLine);
        const QString text = ChanceWords::tr("wanted: %1").arg(chanceText(*curve_.wanted));
        const double width = canvas_.widthOf(text, Type::Small) + 0.2 * em;
        // Where the curve has not come up yet.
        canvas_.line({plot_.left() + 0.4 * em, y - 1.1 * em, width, em}, Qt::AlignLeft | Qt::AlignVCenter, text,
                     canvas_.palette().quietText, Type::Small);
    }

    void drawCurve() {
        const SeriesLook& look = canvas_.palette().look(0);
        QPainterPath path(placeOf(curve_.points.front()));
        for (const ChanceOfNumber& point : curve_.points) path.lineTo(placeOf(point));
        canvas_.stroke(path, look.line, 0.11);
        if (curve_.points.size() > kMostDots) return;
        for (const ChanceOfNumber& point : curve_.points) canvas_.marker(placeOf(point), Marker::Disc, 0.35, look.line);
    }

    void drawAnswer() {
        const auto found = std::ranges::find(curve_.points, curve_.answer.value_or(-1), &ChanceOfNumber::number);
        if (found == curve_.points.end()) return;
        const double em = canvas_.em();
        const QPointF at = placeOf(*found);
        const SeriesLook& look = canvas_.palette().look(1);
        canvas_.stroke(at, {at.x(), plot_.bottom()}, look.line, 0.09, Qt::DashLine);
        canvas_.marker(at, Marker::Diamond, 1.1, canvas_.palette().paper);
        canvas_.marker(at, Marker::Diamond, 0.9, look.line);
        const QString text = ChanceWords::tr("%1: %2", "a number of cuttings and its chance")
                                 .arg(countText(found->number), chanceText(found->chance));
        const double width = canvas_.widthOf(text, Type::Bold) + 0.2 * em, line = canvas_.lineHeight(Type::Bold);
        // Below the curve, which rises to the right of the mark.
        const double left = std::clamp(at.x() + 0.7 * em, plot_.left(), std::max(plot_.left(), area_.right() - width));
        const double top = std::min(at.y() + 0.9 * em, plot_.bottom() - line);
        canvas_.fill(QRectF(left, top, width, line), canvas_.palette().paper);
        canvas_.line({left, top, width, line}, Qt::AlignLeft | Qt::AlignVCenter, text, look.text, Type::Bold);
    }

    void leaveHints() {
        const double half = plot_.width() / (2 * std::max(1.0, numbers_.high - numbers_.low));
        for (const ChanceOfNumber& point : curve_.points)
            canvas_.hint({numbers_.at(point.number) - half, plot_.top(), 2 * half, plot_.height()},
                         ChanceWords::tr("%1: %2", "a number of cuttings and its chance")
                             .arg(countText(point.number), chanceText(point.chance)));
    }

    Canvas& canvas_;
    QRectF area_;
    const ChanceCurve& curve_;
    QRectF plot_;
    Scale numbers_, chances_;
};

class ChanceFigure : public Figure {
  public:
    explicit ChanceFigure(ChanceCurve curve) : curve_(std::move(curve)) {}

    QString sentence() const override { return curve_.sentence; }
    QString method() const override { return curve_.points.empty() ? QString() : curve_.method; }

    FigureTable table() const override {
        FigureTable table{
            .title = sentence(),
            .headings = {curve_.numberCaption, ChanceWords::tr("%1, %", "a chance").arg(curve_.chanceCaption)},
            .rows = {}};
        for (const ChanceOfNumber& point : curve_.points)
            table.rows.push_back({countText(point.number), decimalText(100 * point.chance, 1)});
        return table;
    }

    QSizeF sizeInEms() const override { return {52, 22}; }

  private:
    void draw(Canvas& canvas, const QRectF& area) const override {
        if (curve_.points.empty())
            drawEmptyPicture(canvas, area, curve_.nothing);
        else
            ChancePainter(canvas, area, curve_).paint();
    }

    ChanceCurve curve_;
};

}  // namespace

std::shared_ptr<const Figure> chanceFigure(ChanceCurve curve) {
    return std::make_shared<ChanceFigure>(std::move(curve));
}

}  // namespace plot
