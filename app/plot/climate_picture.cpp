// SPDX-License-Identifier: MIT
#include "app/plot/climate_picture.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/plot/axis.h"
#include "app/plot/batch_strip_values.h"
#include "app/plot/canvas.h"
#include "app/plot/climate_text.h"
#include "app/plot/empty_picture.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/readings_text.h"
#include "app/plot/thinned_line.h"
#include "app/plot/time_axis.h"

namespace plot {
namespace {

struct ClimatePictureWords {
    Q_DECLARE_TR_FUNCTIONS(ClimatePicture)
};

// In ems.
constexpr double kBandCaption = 1.2;
constexpr double kTimeAxis = 1.5;
constexpr double kCareLane = 1.3;

class ClimatePainter {
  public:
    ClimatePainter(Canvas& canvas, const QRectF& area, const ClimateChart& chart)
        : canvas_(canvas), area_(area), chart_(chart), em_(canvas.em()) {
        place();
    }

    void paint() {
        drawTimes();
        for (const BandStretch& stretch : chart_.bands) drawBand(stretch);
        drawValueAxis();
        if (chart_.quantity == core::ClimateQuantity::DailyLight)
            drawDays();
        else
            drawLine();
        drawHandReadings();
        if (!chart_.care.empty()) drawCare();
        canvas_.line({plot_.left(), area_.top(), area_.right() - plot_.left(), em_}, Qt::AlignLeft | Qt::AlignTop,
                     chartBandsText(chart_), canvas_.palette().quietText, Type::Small);
    }

  private:
    static double secondsOf(core::Moment moment) { return static_cast<double>(moment.time_since_epoch().count()); }
    double shown(double stored) const { return shownClimate(stored, chart_.quantity, chart_.units); }

    void place() {
        const double left = area_.left() + 4.2 * em_;
        const double below = kTimeAxis + (chart_.care.empty() ? 0 : kCareLane);
        plot_ = QRectF(left, area_.top() + kBandCaption * em_, area_.right() - 0.6 * em_ - left,
                       std::max(2 * em_, area_.height() - (kBandCaption + below) * em_));
        times_ = {
            .low = secondsOf(chart_.from), .high = secondsOf(chart_.to), .start = plot_.left(), .end = plot_.right()};
        lines_ = thinnedLines(*chart_.values, chart_.from, chart_.to, core::longestGapOf(chart_.quantity),
                              std::clamp(static_cast<int>(plot_.width()), 1, 3000));
        placeValues();
    }

    // Band and values, in the grower's unit; the light of a day from 0, since its bars stand on it.
    void placeValues() {
        double low = HUGE_VAL, high = -HUGE_VAL;
        const auto take = [&](double value) { low = std::min(low, value), high = std::max(high, value); };
        for (const Line& line : lines_)
            for (const core::TimedValue& value : line) take(value.value);
        for (const core::LightOfDay& day : chart_.days) take(day.moles);
        if (chart_.quantity == core::ClimateQuantity::DailyLight) take(0);
        const double lowest = low, highest = high;
        for (const BandStretch& stretch : chart_.bands) {
            drawn_.push_back(drawnBand(stretch.band.band, chart_.quantity, [&](double& from, double& to) {
                from = std::min(from, lowest), to = std::max(to, highest);
            }));
            take(drawn_.back().low), take(drawn_.back().high);
        }
        low = shown(low), high = shown(high);
        const double room = high > low ? 0.08 * (high - low) : std::max(0.1 * std::abs(high), 0.5);
        const bool standsOnNothing = chart_.quantity == core::ClimateQuantity::DailyLight;
        values_ = {
            .low = standsOnNothing ? 0 : low - room, .high = high + room, .start = plot_.bottom(), .end = plot_.top()};
    }

    double x(core::Moment moment) const { return times_.at(secondsOf(moment)); }
    double y(double stored) const { return values_.at(shown(stored)); }

    void drawTimes() {
        const Palette& palette = canvas_.palette();
        const double bottom = plot_.bottom() + (chart_.care.empty() ? 0 : kCareLane * em_);
        for (const TimeTick& tick : timeTicks(chart_.from, chart_.to, static_cast<int>(plot_.width() / (4.5 * em_)))) {
            const double at = x(tick.at);
            canvas_.stroke({at, plot_.top()}, {at, bottom + 0.2 * em_}, palette.grid, 0.06);
            if (at - 2 * em_ < area_.left() || at + 2 * em_ > area_.right() + 0.6 * em_) continue;
            canvas_.line({at - 2.2 * em_, bottom + 0.25 * em_, 4.4 * em_, em_}, Qt::AlignHCenter | Qt::AlignTop,
                         tick.text, palette.quietText, Type::Small);
        }
    }

    // Tinted between two hairlines, so that grey print shows where it ends.
    void drawBand(const BandStretch& stretch) {
        const core::Band& band = drawn_[static_cast<std::size_t>(&stretch - chart_.bands.data())];
        const double left = std::max(plot_.left(), x(stretch.from)), right = std::min(plot_.right(), x(stretch.to));
        if (right <= left) return;
        const SeriesLook& look = canvas_.palette().look(2);
        const QRectF area(left, y(band.high), right - left, y(band.low) - y(band.high));
        canvas_.fill(area, look.band);
        for (const double height : {area.top(), area.bottom()})
            canvas_.stroke({left, height}, {right, height}, look.line, 0.05, Qt::DashLine);
        canvas_.hint(area,
                     ClimatePictureWords::tr("good: %1, %2, %3\nSource: %4")
                         .arg(bandText(stretch.band.band, stretch.band.quantity, chart_.units),
                              stageName(stretch.band.stage), ownerText(stretch.band.owner), bandSource(stretch.band)));
    }

    void drawValueAxis() {
        const Palette& palette = canvas_.palette();
        const int most = std::max(2, static_cast<int>(plot_.height() / (1.4 * em_)));
        const double step = valueStep(values_.low, values_.high, most);
        for (double i = std::ceil(values_.low / step); i * step <= values_.high; ++i) {
            const double height = values_.at(i * step);
            canvas_.stroke({plot_.left() - 0.2 * em_, height}, {plot_.left(), height}, palette.axis, 0.07);
            canvas_.line({area_.left(), height - em_ / 2, plot_.left() - 0.4 * em_ - area_.left(), em_},
                         Qt::AlignRight | Qt::AlignVCenter, tickText(i * step, step), palette.quietText, Type::Small);
        }
        canvas_.line({area_.left(), area_.top(), plot_.left() - 0.4 * em_ - area_.left(), em_},
                     Qt::AlignRight | Qt::AlignTop, climateUnit(chart_.quantity, chart_.units), palette.quietText,
                     Type::Small);
        canvas_.stroke(plot_.topLeft(), plot_.bottomLeft(), palette.axis, 0.07);
        canvas_.stroke(plot_.bottomLeft(), plot_.bottomRight(), palette.axis, 0.07);
    }

    void drawLine() {
        const SeriesLook& look = canvas_.palette().look(0);
        canvas_.painter().save();
        canvas_.painter().setClipRect(plot_.adjusted(-0.3 * em_, -0.3 * em_, 0.3 * em_, 0.3 * em_));
        for (const Line& line : lines_) {
            QPainterPath path({x(line.front().at), y(line.front().value)});
            for (const core::TimedValue& value : line) path.lineTo(x(value.at), y(value.value));
            canvas_.stroke(path, look.line, 0.1);
            // What stands alone between two gaps would be no line at all.
            if (line.size() == 1 && chart_.byHand.empty())
                canvas_.marker(path.elementAt(0), Marker::Disc, 0.3, look.line);
        }
        canvas_.painter().restore();
    }

    void drawHandReadings() {
        const SeriesLook &inside = canvas_.palette().look(0), &outside = canvas_.palette().look(1);
        for (const core::TimedValue& reading : chart_.byHand) {
            if (reading.at < chart_.from || reading.at > chart_.to) continue;
            const core::StageBand* band = bandAt(reading.at);
            const bool isOutside = band != nullptr && core::isOutside(band->band, reading.value);
            const QPointF spot(x(reading.at), y(reading.value));
            canvas_.marker(spot, isOutside ? Marker::Diamond : Marker::Disc, isOutside ? 0.62 : 0.44,
                           isOutside ? outside.line : inside.line);
            QString hint = ClimatePictureWords::tr("%1: %2 %3, read by hand; %4", "moment, quantity, figure, n")
                               .arg(momentText(reading.at), climateName(chart_.quantity),
                                    climateText(reading.value, chart_.quantity, chart_.units), countedText(chart_));
            if (isOutside)
                hint += u'\n' +
                        ClimatePictureWords::tr("outside %1").arg(bandText(band->band, band->quantity, chart_.units));
            canvas_.hint(QRectF(spot - QPointF(0.45, 0.45) * em_, QSizeF(0.9 * em_, 0.9 * em_)), hint);
        }
    }

    const core::StageBand* bandAt(core::Moment moment) const {
        for (const BandStretch& stretch : chart_.bands)
            if (moment >= stretch.from && moment < stretch.to) return &stretch.band;
        return nullptr;
    }

    // Hollow where much of the day is missing: the bar is no more than a least.
    void drawDays() {
        const SeriesLook& look = canvas_.palette().look(0);
        for (const core::LightOfDay& day : chart_.days) {
            const double left = std::max(plot_.left(), x(day.from)), right = std::min(plot_.right(), x(day.to));
            if (right <= left) continue;
            const double gap = 0.12 * (right - left);
            const QRectF bar(left + gap, y(day.moles), right - left - 2 * gap, plot_.bottom() - y(day.moles));
            if (day.isWellCovered()) {
                canvas_.fill(bar, look.line);
            } else {
                QPainterPath frame;
                frame.addRect(bar);
                canvas_.stroke(frame, look.line, 0.08, Qt::DashLine);
            }
            canvas_.hint({left, plot_.top(), right - left, plot_.height()},
                         ClimatePictureWords::tr("%1: %2; %3 of the day covered")
                             .arg(dateText(day.day), climateText(day.moles, chart_.quantity, chart_.units),
                                  shareText(day.covered)));
        }
    }

    void drawCare() {
        const Palette& palette = canvas_.palette();
        const double top = plot_.bottom() + 0.15 * em_;
        canvas_.line({area_.left(), top, plot_.left() - 0.4 * em_ - area_.left(), em_}, Qt::AlignRight | Qt::AlignTop,
                     ClimatePictureWords::tr("care", "name of a row of marks"), palette.quietText, Type::Small);
        double free = plot_.left();
        for (const core::Care& care : chart_.care) {
            if (care.doneAt < chart_.from || care.doneAt > chart_.to) continue;
            const double at = x(care.doneAt);
            const QString words = careInWords(care, chart_.units), word = careText(care.kind);
            canvas_.stroke({at, plot_.top()}, {at, top + em_}, palette.look(4).line, 0.07, Qt::DotLine);
            canvas_.marker({at, top + 0.2 * em_}, Marker::Triangle, 0.5, palette.look(4).line);
            const double width = canvas_.widthOf(word, Type::Small) + 0.1 * em_, left = at + 0.4 * em_;
            QRectF hint(at - 0.5 * em_, top - 0.3 * em_, em_, 1.3 * em_);
            if (left > free && left + width < area_.right()) {
                canvas_.line({left, top, width, em_}, Qt::AlignLeft | Qt::AlignTop, word, palette.text, Type::Small);
                hint = hint.united({left, top, width, em_});
                free = left + width + 0.3 * em_;
            }
            canvas_.hint(hint, ClimatePictureWords::tr("%1: %2", "moment, care").arg(momentText(care.doneAt), words));
        }
    }

    Canvas& canvas_;
    QRectF area_;
    const ClimateChart& chart_;
    double em_;
    QRectF plot_;
    Scale times_, values_;
    std::vector<Line> lines_;
    std::vector<core::Band> drawn_;
};

}  // namespace

void drawClimatePicture(Canvas& canvas, const QRectF& area, const ClimateChart& chart) {
    const bool hasValues = !core::valuesAround(*chart.values, chart.from, chart.to).empty();
    if (!hasValues && chart.days.empty())
        return drawEmptyPicture(canvas, area, ClimatePictureWords::tr("Nothing was read in this time."));
    ClimatePainter(canvas, area, chart).paint();
}

}  // namespace plot
