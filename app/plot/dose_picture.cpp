// SPDX-License-Identifier: MIT
#include "app/plot/dose_picture.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct DoseWords {
    Q_DECLARE_TR_FUNCTIONS(DosePicture)
};

constexpr double kBestStrip = 2.1;      // ems above the plot: the best dose and its interval
constexpr double kDoseAxisLines = 3.4;  // below it: doses, counts, and what they are

const core::Limits& bandOf(const core::DoseCurvePoint& point) {
    return point.withSpread ? *point.withSpread : point.asCounted;
}

class DosePainter {
  public:
    DosePainter(Canvas& canvas, const QRectF& area, const core::DoseSeries& series)
        : canvas_(canvas), area_(area), series_(series) {
        place();
    }

    void paint() {
        drawShareAxis();
        drawCurve();
        drawBest();
        for (const core::DosePoint& point : series_.points) drawPoint(point);
        drawDoseAxis();
    }

  private:
    bool hasNone() const { return series_.points.front().milligramsPerLitre <= 0; }

    void place() {
        const double em = canvas_.em();
        const double gutter =
            std::max(canvas_.widthOf(shareText(1), Type::Small), canvas_.widthOf(countHeading(), Type::Small)) +
            0.6 * em;
        const double strip = series_.bestMilligrams ? kBestStrip : 0.4;
        plot_ = area_.adjusted(gutter, strip * em, -0.5 * em, -kDoseAxisLines * em);
        if (plot_.height() < 2 * em) plot_.setHeight(2 * em);
        shares_ = {.low = 0, .high = 1, .start = plot_.bottom(), .end = plot_.top()};
        // Wide enough for the counts under the outermost doses.
        const double side = widestCounts() / 2 + 0.3 * em;
        noneWidth_ = 2 * side + 0.8 * em;
        const double none = hasNone() ? noneWidth_ : 0;
        treated_ = plot_.adjusted(none, 0, 0, 0);
        double lowest = HUGE_VAL, highest = 0;
        for (const core::DosePoint& point : series_.points) {
            if (point.milligramsPerLitre <= 0) continue;
            lowest = std::min(lowest, std::log(point.milligramsPerLitre));
            highest = std::max(highest, std::log(point.milligramsPerLitre));
        }
        if (!(lowest < highest)) lowest = std::min(lowest, highest) - 1, highest = lowest + 2;
        doses_ = {.low = lowest, .high = highest, .start = treated_.left() + side, .end = treated_.right() - side};
    }

    double widestCounts() const {
        double widest = canvas_.widthOf(DoseWords::tr("untreated"), Type::Small);
        for (const core::DosePoint& point : series_.points)
            widest = std::max(widest, canvas_.widthOf(countsOf(point), Type::Small));
        return std::min(widest, 0.12 * area_.width());
    }

    static QString countsOf(const core::DosePoint& point) {
        return DoseWords::tr("%1 of %2", "rooted of assessed").arg(countText(point.rooted), countText(point.assessed));
    }

    double xOf(double dose) const {
        if (dose <= 0) return plot_.left() + (noneWidth_ - 0.8 * canvas_.em()) / 2;
        return doses_.at(std::log(dose));
    }

    /// Within the stretch of doses; what lies beyond is drawn at its edge.
    double xWithin(double dose) const {
        if (dose <= 0) return treated_.left();
        if (std::isinf(dose)) return treated_.right();
        return std::clamp(xOf(dose), treated_.left(), treated_.right());
    }

    bool isBeyond(double dose) const {
        return dose <= 0 || std::isinf(dose) || xOf(dose) < treated_.left() || xOf(dose) > treated_.right();
    }

    static QString countHeading() { return DoseWords::tr("rooted of", "heading of counts under a dose"); }

    void drawShareAxis() {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        const int most = std::max(2, static_cast<int>(plot_.height() / (1.3 * em)) + 1);
        for (const double tick : shareTicks(1, most)) {
            const double y = shares_.at(tick);
            if (hasNone()) canvas_.stroke({plot_.left(), y}, {treated_.left() - 0.8 * em, y}, palette.grid, 0.06);
            canvas_.stroke({treated_.left(), y}, {plot_.right(), y}, palette.grid, 0.06);
            canvas_.line({area_.left(), y - em / 2, plot_.left() - 0.4 * em - area_.left(), em},
                         Qt::AlignRight | Qt::AlignVCenter, shareText(tick), palette.quietText, Type::Small);
        }
    }

    void drawCurve() {
        if (series_.curve.size() < 2) return;
        const SeriesLook& look = canvas_.palette().look(0);
        QPainterPath band, line;
        const auto at = [this](const core::DoseCurvePoint& point, double share) {
            return QPointF(xOf(point.milligramsPerLitre), shares_.at(std::clamp(share, 0.0, 1.0)));
        };
        for (const core::DoseCurvePoint& point : series_.curve) {
            const bool isFirst = &point == &series_.curve.front();
            isFirst ? line.moveTo(at(point, point.rate)) : line.lineTo(at(point, point.rate));
            isFirst ? band.moveTo(at(point, bandOf(point).high)) : band.lineTo(at(point, bandOf(point).high));
        }
        for (auto point = series_.curve.rbegin(); point != series_.curve.rend(); ++point)
            band.lineTo(at(*point, bandOf(*point).low));
        band.closeSubpath();
        canvas_.fill(band, look.band);
        canvas_.stroke(line, look.line, 0.14);
    }

    void drawPoint(const core::DosePoint& point) {
        const double em = canvas_.em(), x = xOf(point.milligramsPerLitre);
        const Palette& palette = canvas_.palette();
        const bool isNone = point.milligramsPerLitre <= 0;
        const SeriesLook& look = palette.look(isNone ? 1 : 0);
        const double low = shares_.at(point.asCounted.low), high = shares_.at(point.asCounted.high), end = 0.22 * em;
        canvas_.stroke({x, low}, {x, high}, look.line, 0.12);
        for (const double y : {low, high}) canvas_.stroke({x - end, y}, {x + end, y}, look.line, 0.12);
        canvas_.marker({x, shares_.at(point.rate)}, look.marker, 0.86, palette.paper);
        canvas_.marker({x, shares_.at(point.rate)}, look.marker, 0.68, look.line);
        canvas_.hint({x - em, plot_.top(), 2 * em, plot_.height()},
                     DoseWords::tr("%1: %2\nas counted %3, in %4")
                         .arg(nameOfDose(point), percentText(point.rooted, point.assessed), limitsText(point.asCounted),
                              batchesText(point.batches)));
    }

    QString nameOfDose(const core::DosePoint& point) const {
        return point.milligramsPerLitre <= 0 ? DoseWords::tr("untreated") : doseText(series_, point.milligramsPerLitre);
    }

    void drawBest() {
        if (!series_.bestMilligrams) return;
        const double em = canvas_.em(), top = area_.top() + 1.15 * em, y = top + 0.45 * em;
        const Palette& palette = canvas_.palette();
        const double x = xWithin(*series_.bestMilligrams);
        canvas_.stroke({x, y}, {x, plot_.bottom()}, palette.text, 0.07, Qt::DashLine);
        QString text = DoseWords::tr("best near %1").arg(doseText(series_, *series_.bestMilligrams));
        if (const auto limits = bestDoseLimits(series_)) {
            drawBestLimits(*limits, y);
            text = DoseWords::tr("%1 (%2 to %3)", "best near a dose, its interval")
                       .arg(text, doseAmount(limits->low), doseAmount(limits->high));
        } else {
            text = DoseWords::tr("%1 (no dose can be excluded)").arg(text);
        }
        canvas_.marker({x, y}, Marker::Diamond, 0.8, palette.text);
        const double width = std::min(canvas_.widthOf(text, Type::Small) + 0.2 * em, plot_.width());
        const double left = std::clamp(x - width / 2, plot_.left(), plot_.right() - width);
        canvas_.line({left, area_.top(), width, em}, Qt::AlignHCenter | Qt::AlignTop, text, palette.text, Type::Small);
    }

    void drawBestLimits(const core::Limits& limits, double y) {
        const double em = canvas_.em(), low = xWithin(limits.low), high = xWithin(limits.high), end = 0.24 * em;
        const QColor& color = canvas_.palette().text;
        canvas_.stroke({low, y}, {high, y}, color, 0.12);
        for (const bool isLow : {true, false}) {
            const double at = isLow ? low : high, inwards = isLow ? 1.5 * end : -1.5 * end;
            if (isBeyond(isLow ? limits.low : limits.high)) {
                canvas_.stroke({at, y}, {at + inwards, y - end}, color, 0.1);
                canvas_.stroke({at, y}, {at + inwards, y + end}, color, 0.1);
            } else {
                canvas_.stroke({at, y - end}, {at, y + end}, color, 0.12);
            }
        }
    }

    // Doses close together share a label's room: what does not fit is left to the table, with a word about it.
    void drawDoseAxis() {
        const double em = canvas_.em(), bottom = plot_.bottom();
        const Palette& palette = canvas_.palette();
        if (hasNone()) canvas_.stroke({plot_.left(), bottom}, {treated_.left() - 0.8 * em, bottom}, palette.axis, 0.07);
        canvas_.stroke({treated_.left(), bottom}, {plot_.right(), bottom}, palette.axis, 0.07);
        double free = plot_.left() - em;
        int leftOut = 0;
        for (const core::DosePoint& point : series_.points) {
            const bool isNone = point.milligramsPerLitre <= 0;
            const QString dose = isNone ? DoseWords::tr("untreated") : amountText(point.milligramsPerLitre);
            const QString counts = countsOf(point);
            const double x = xOf(point.milligramsPerLitre);
            canvas_.stroke({x, bottom}, {x, bottom + 0.2 * em}, palette.axis, 0.07);
            const double width =
                std::max(canvas_.widthOf(dose, Type::Small), canvas_.widthOf(counts, Type::Small)) + 0.1 * em;
            const double left = std::clamp(x - width / 2, plot_.left() - 0.4 * em, area_.right() - width);
            if (left < free) {
                ++leftOut;
                continue;
            }
            free = left + width + 0.4 * em;
            canvas_.line({left, bottom + 0.25 * em, width, em}, Qt::AlignHCenter | Qt::AlignTop, dose,
                         palette.quietText, Type::Small);
            canvas_.line({left, bottom + 1.25 * em, width, em}, Qt::AlignHCenter | Qt::AlignTop, counts, palette.text,
                         Type::Small);
        }
        drawAxisWords(leftOut);
    }

    void drawAxisWords(int leftOut) {
        const double em = canvas_.em(), bottom = plot_.bottom();
        const QColor& color = canvas_.palette().quietText;
        canvas_.line({area_.left(), bottom + 1.25 * em, plot_.left() - 0.6 * em - area_.left(), em},
                     Qt::AlignRight | Qt::AlignTop, countHeading(), color, Type::Small);
        QString words = series_.isPowder ? DoseWords::tr("dose in mg/kg, on a logarithmic axis")
                                         : DoseWords::tr("dose in mg/L, on a logarithmic axis");
        if (leftOut > 0)
            words += DoseWords::tr("; the counts of %1 more are in the table of figures").arg(countText(leftOut));
        canvas_.line({plot_.left(), bottom + 2.3 * em, plot_.width(), em}, Qt::AlignLeft | Qt::AlignTop, words, color,
                     Type::Small);
    }

    Canvas& canvas_;
    QRectF area_;
    const core::DoseSeries& series_;
    QRectF plot_, treated_;
    double noneWidth_{};  // of the stretch of the untreated, with the gap after it
    Scale shares_, doses_;
};

}  // namespace

QString doseAmount(double dose) {
    constexpr double least = 1e-3, most = 1e6;  // mg/L: a million is the pure stuff
    if (dose < least) return countText(0);
    return amountText(dose > most ? HUGE_VAL : dose);
}

QString doseText(const core::DoseSeries& series, double dose) {
    return (series.isPowder ? DoseWords::tr("%1 mg/kg") : DoseWords::tr("%1 mg/L")).arg(doseAmount(dose));
}

std::optional<core::Limits> bestDoseLimits(const core::DoseSeries& series) {
    if (series.isUnboundedWithSpread) return {};
    return series.withSpread ? series.withSpread : series.asCounted;
}

void drawDosePicture(Canvas& canvas, const QRectF& area, const core::DoseSeries& series) {
    DosePainter(canvas, area, series).paint();
}

}  // namespace plot
