// SPDX-License-Identifier: MIT
#include "app/plot/strike_plane_picture.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>

#include "app/plot/arm_words.h"
#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct PlaneWords {
    Q_DECLARE_TR_FUNCTIONS(StrikePlane)
};

constexpr int kTyingSteps = 200;
constexpr double kPlaneAxisLines = 2.5;  // ems below: numbers, whose they are
constexpr double kPlaneCaption = 1.3;    // above: whose the upright ones are
constexpr double kLeastKeys = 15;        // ems of words beside the plane
constexpr int kMostKeyLines = 4;

class PlanePainter {
  public:
    PlanePainter(Canvas& canvas, const QRectF& area, const core::WorthOfPair& pair, double level)
        : canvas_(canvas), area_(area), pair_(pair), level_(level), tying_(tyingRates(pair.line)) {
        const double em = canvas.em();
        gutter_ = canvas.widthOf(shareText(1), Type::Small) + 0.7 * em;
        const double height = area.height() - (kPlaneCaption + kPlaneAxisLines) * em;
        const double side = std::max(3 * em, std::min(height, area.width() - gutter_ - (kLeastKeys + 2) * em));
        plane_ = QRectF(area.left() + gutter_, area.top() + kPlaneCaption * em, side, side);
        cheap_ = {.low = 0, .high = 1, .start = plane_.left(), .end = plane_.right()};
        dear_ = {.low = 0, .high = 1, .start = plane_.bottom(), .end = plane_.top()};
    }

    void paint() {
        drawSides();
        drawAxes();
        drawLine();
        drawRecords();
        drawLetters();
        drawKeys();
    }

  private:
    QPointF at(const QPointF& rates) const { return {cheap_.at(rates.x()), dear_.at(rates.y())}; }
    QString dear() const { return textOf(pair_.dear.name); }
    QString cheap() const { return textOf(pair_.cheap.name); }
    static QString dearLetter() { return PlaneWords::tr("A", "names a side of the line"); }
    static QString cheapLetter() { return PlaneWords::tr("B", "names a side of the line"); }

    // Above the line the dearer costs less for each rooted plant.
    void drawSides() {
        canvas_.fill(plane_, canvas_.palette().paper);
        if (tying_.empty()) return canvas_.fill(plane_, canvas_.palette().look(1).band);
        canvas_.fill(plane_, canvas_.palette().look(1).band);
        QPainterPath above(at({0, 0}));
        above.lineTo(at({0, 1}));
        above.lineTo(at({tying_.back().x(), 1}));
        for (auto point = tying_.rbegin(); point != tying_.rend(); ++point) above.lineTo(at(*point));
        above.closeSubpath();
        canvas_.fill(above, canvas_.palette().look(0).band);
    }

    void drawAxes() {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        const auto ticks = shareTicks(1, std::max(2, static_cast<int>(plane_.height() / (2.2 * em)) + 1));
        for (const double tick : ticks) {
            const double x = cheap_.at(tick), y = dear_.at(tick);
            canvas_.stroke({x, plane_.bottom()}, {x, plane_.bottom() + 0.2 * em}, palette.axis, 0.07);
            canvas_.stroke({plane_.left() - 0.2 * em, y}, {plane_.left(), y}, palette.axis, 0.07);
            canvas_.line({x - 1.6 * em, plane_.bottom() + 0.25 * em, 3.2 * em, em}, Qt::AlignHCenter | Qt::AlignTop,
                         shareText(tick), palette.quietText, Type::Small);
            canvas_.line({area_.left(), y - em / 2, gutter_ - 0.4 * em, em}, Qt::AlignRight | Qt::AlignVCenter,
                         shareText(tick), palette.quietText, Type::Small);
        }
        QPainterPath frame;
        frame.addRect(plane_);
        canvas_.stroke(frame, palette.axis, 0.07);
        const QRectF caption(area_.left(), area_.top() - 0.25 * em, gutter_ + plane_.width(), em);
        canvas_.line(caption, Qt::AlignLeft | Qt::AlignTop, PlaneWords::tr("strike rate, %1").arg(dear()),
                     palette.quietText, Type::Small);
        canvas_.line({plane_.left(), plane_.bottom() + 1.35 * em, plane_.width(), em}, Qt::AlignHCenter | Qt::AlignTop,
                     PlaneWords::tr("strike rate, %1").arg(cheap()), palette.quietText, Type::Small);
    }

    void drawLine() {
        if (tying_.empty()) return;
        QPainterPath path(at(tying_.front()));
        for (const QPointF& point : tying_) path.lineTo(at(point));
        canvas_.stroke(path, canvas_.palette().text, 0.14);
    }

    void drawRecords() {
        const core::CountedRate &x = pair_.cheap.strike, &y = pair_.dear.strike;
        const Palette& palette = canvas_.palette();
        const QRectF box(at({x.limits.low, y.limits.high}), at({x.limits.high, y.limits.low}));
        QPainterPath outline;
        outline.addRect(box);
        canvas_.stroke(outline, palette.text, 0.09, Qt::DashLine);
        const QPointF place = at({x.rate, y.rate});
        canvas_.stroke({box.left(), place.y()}, {box.right(), place.y()}, palette.text, 0.09);
        canvas_.stroke({place.x(), box.top()}, {place.x(), box.bottom()}, palette.text, 0.09);
        canvas_.marker(place, Marker::Disc, 0.9, palette.paper);
        canvas_.marker(place, Marker::Disc, 0.7, palette.text);
        canvas_.hint(
            box,
            PlaneWords::tr("%1: %2\n%3: %4").arg(dear(), strikeText(pair_.dear), cheap(), strikeText(pair_.cheap)));
    }

    // Each in a corner of its own side, away from the line.
    void drawLetters() {
        const double em = canvas_.em(), size = 1.4 * em;
        const auto letter = [&](double left, double top, const QString& text, std::size_t series) {
            canvas_.line({left, top, size, size}, Qt::AlignCenter, text, canvas_.palette().look(series).text,
                         Type::Bold);
        };
        const bool hasDearSide = !tying_.empty() && cheap_.at(tying_.back().x()) - plane_.left() > size;
        if (hasDearSide) letter(plane_.left() + 0.1 * em, plane_.top() + 0.1 * em, dearLetter(), 0);
        letter(plane_.right() - size, plane_.bottom() - size, cheapLetter(), 1);
    }

    void drawKeys() {
        const double em = canvas_.em();
        const double left = plane_.right() + 2 * em;
        double top = area_.top() + kPlaneCaption * em;
        const auto say = [&](const auto& drawSample, const QString& text) {
            const QRectF sample(left, top, 1.8 * em, em);
            drawSample(sample);
            top += canvas_.paragraph({left + 2.3 * em, top, area_.right() - left - 2.3 * em, area_.bottom() - top},
                                     text, canvas_.palette().text, Type::Small, kMostKeyLines) +
                   0.45 * em;
        };
        const auto side = [&](std::size_t series, const QString& letter) {
            return [this, series, letter](const QRectF& sample) {
                canvas_.fill(sample, canvas_.palette().look(series).band);
                canvas_.line(sample, Qt::AlignCenter, letter, canvas_.palette().look(series).text, Type::Bold);
            };
        };
        say(side(0, dearLetter()), PlaneWords::tr("a rooted plant costs less by %1").arg(dear()));
        say(side(1, cheapLetter()), PlaneWords::tr("a rooted plant costs less by %1").arg(cheap()));
        const QColor& ink = canvas_.palette().text;
        say(
            [&](const QRectF& sample) {
                canvas_.stroke({sample.left(), sample.center().y()}, {sample.right(), sample.center().y()}, ink, 0.14);
            },
            PlaneWords::tr("it costs the same by both"));
        say([&](const QRectF& sample) { canvas_.marker(sample.center(), Marker::Disc, 0.7, ink); },
            PlaneWords::tr("your records, with %1 intervals: %2 %3, %4 %5", "level, method, rate, method, rate")
                .arg(levelText(level_), dear(), strikeText(pair_.dear), cheap(), strikeText(pair_.cheap)));
    }

    Canvas& canvas_;
    QRectF area_;
    const core::WorthOfPair& pair_;
    double level_;
    std::vector<QPointF> tying_;
    double gutter_{};
    QRectF plane_;
    Scale cheap_, dear_;
};

}  // namespace

std::vector<QPointF> tyingRates(const core::TurningLine& line) {
    std::vector<QPointF> points;
    for (int step = 1; step <= kTyingSteps; ++step) {
        const double cheap = static_cast<double>(step) / kTyingSteps;
        const auto dear = line.dearRateFor(cheap);
        if (!dear) break;
        if (points.empty()) points.emplace_back(0, 0);
        points.emplace_back(cheap, *dear);
    }
    return points;
}

QString strikeText(const core::WorthOfMethod& method) {
    return PlaneWords::tr("%1 in %2", "a strike rate with its counts, so many batches")
        .arg(percentText(method.strike.rate, method.strike.succeeded, method.strike.of),
             batchesText(method.strike.batches));
}

void drawStrikePlane(Canvas& canvas, const QRectF& area, const core::WorthOfPair& pair, double level) {
    PlanePainter(canvas, area, pair, level).paint();
}

}  // namespace plot
