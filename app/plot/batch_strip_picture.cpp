// SPDX-License-Identifier: MIT
#include "app/plot/batch_strip_picture.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/plot/batch_strip_values.h"
#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct StripWords {
    Q_DECLARE_TR_FUNCTIONS(BatchStripPicture)
};

// All in ems.
constexpr double kStripCaption = 1.15;
constexpr double kStripDayAxis = 1.4;
constexpr double kUsualCurve = 8.5;
constexpr double kLeastCurve = 4.5;
constexpr double kUsualPanel = 3.2;
constexpr double kLeastPanel = 1.9;
constexpr double kPanelGap = 0.4;
constexpr double kCareLine = 1.05;
constexpr double kPhotoLane = 1.25;
constexpr double kEmptyNote = 2.6;
constexpr int kCareLines = 2;

class StripPainter {
  public:
    StripPainter(Canvas& canvas, const QRectF& area, const StripPicture& picture)
        : canvas_(canvas), area_(area), picture_(picture), em_(canvas.em()) {
        placeColumns();
        placeLines();
    }

    void paint() {
        drawWeeks();
        drawCurve();
        if (!picture_.care.empty()) drawCare();
        if (!picture_.photos.empty()) drawPhotos();
        for (std::size_t i = 0; i < shownPanels_; ++i) drawReadings(picture_.panels[i], panelTops_[i]);
        drawDayAxis();
        drawRest();
    }

  private:
    void placeColumns() {
        double gutter = canvas_.widthOf(shareText(1), Type::Small);
        for (const QString& lane : {careLane(), photoLane()})
            gutter = std::max(gutter, canvas_.widthOf(lane, Type::Small));
        double labels = std::max(canvas_.widthOf(picture_.curve.label, Type::Bold),
                                 canvas_.widthOf(picture_.curve.detail, Type::Small));
        for (const StripPanel& panel : picture_.panels)
            labels = std::max(labels, canvas_.widthOf(panel.last, Type::Bold));
        labels = std::min(labels + 0.4 * em_, 0.26 * area_.width());
        const double left = area_.left() + gutter + 0.8 * em_, right = area_.right() - labels - 0.9 * em_;
        ticks_ = weekTicks(lastTickFor(picture_.lastDay), static_cast<int>((right - left) / (2.6 * em_)) + 1);
        days_ = {.low = 0, .high = static_cast<double>(lastTickFor(picture_.lastDay)), .start = left, .end = right};
        labels_ = QRectF(right + 0.9 * em_, 0, labels, 0);
    }

    double lanes() const {
        return (picture_.care.empty() ? 0 : kCareLines * kCareLine + 0.4) + (picture_.photos.empty() ? 0 : kPhotoLane);
    }

    // What there is no room for goes: panels from the last on, with a word about it.
    void placeLines() {
        const double fixed = kStripCaption + lanes() + kStripDayAxis;
        const double room = area_.height() / em_ - fixed;
        shownPanels_ = picture_.panels.size();
        const auto least = [&] { return kLeastCurve + panelsHeight(kLeastPanel); };
        while (shownPanels_ > 0 && least() > room - (shownPanels_ < picture_.panels.size() ? 1.2 : 0)) --shownPanels_;
        const double note = hasLeftOut() ? 1.2 : picture_.panels.empty() ? kEmptyNote : 0;
        const double usual = kUsualCurve + panelsHeight(kUsualPanel), free = room - note;
        const double grow = std::clamp(free / usual, 0.0, 1.6);
        const double panel = std::max(kLeastPanel, kUsualPanel * grow);
        const double curve = std::max(2.0, free - panelsHeight(panel));
        const double top = area_.top() + kStripCaption * em_;
        curve_ = QRectF(days_.start, top, days_.end - days_.start, curve * em_);
        careTop_ = curve_.bottom() + 0.3 * em_;
        double next = curve_.bottom() + lanes() * em_;
        photoTop_ = next - kPhotoLane * em_;
        for (std::size_t i = 0; i < shownPanels_; ++i) {
            next += (kPanelGap + kStripCaption) * em_;
            panelTops_.push_back(next);
            next += panel * em_;
        }
        panelHeight_ = panel * em_;
        bottom_ = next;
    }

    double panelsHeight(double each) const {
        return static_cast<double>(shownPanels_) * (each + kStripCaption + kPanelGap);
    }
    bool hasLeftOut() const { return shownPanels_ < picture_.panels.size(); }

    static QString careLane() { return StripWords::tr("care", "name of a row of marks"); }
    static QString photoLane() { return StripWords::tr("photos", "name of a row of marks"); }

    void laneName(double top, const QString& name) {
        canvas_.line({area_.left(), top, days_.start - 0.4 * em_ - area_.left(), em_}, Qt::AlignRight | Qt::AlignTop,
                     name, canvas_.palette().quietText, Type::Small);
    }

    void drawWeeks() {
        for (const int tick : ticks_)
            canvas_.stroke({days_.at(tick), curve_.top()}, {days_.at(tick), bottom_}, canvas_.palette().grid, 0.06);
    }

    void drawCurve() {
        const Palette& palette = canvas_.palette();
        Panel panel{
            .plot = curve_,
            .days = days_,
            .shares = {.low = 0, .high = 1, .start = curve_.bottom(), .end = curve_.top()},
            .labels = QRectF(labels_.left(), curve_.top() - 0.4 * em_, labels_.width(), curve_.height() + 0.7 * em_),
            .curves = {},
            .hasTints = true};
        if (!picture_.curve.shares.empty()) panel.curves.push_back(picture_.curve);
        for (const double tick : shareTicks(1, std::max(2, static_cast<int>(curve_.height() / (1.3 * em_)) + 1))) {
            const double y = panel.shares.at(tick);
            canvas_.stroke({curve_.left(), y}, {curve_.right(), y}, palette.grid, 0.06);
            canvas_.line({area_.left(), y - em_ / 2, curve_.left() - 0.4 * em_ - area_.left(), em_},
                         Qt::AlignRight | Qt::AlignVCenter, shareText(tick), palette.quietText, Type::Small);
        }
        caption(curve_.top(), StripWords::tr("rooted, of those stuck"), {});
        canvas_.stroke(curve_.bottomLeft(), curve_.bottomRight(), palette.axis, 0.07);
        drawPanel(canvas_, panel);
        for (std::size_t i = 0; i < picture_.looks.size(); ++i) hintLook(i);
    }

    // In a strip that reaches half way to the neighbours.
    void hintLook(std::size_t look) {
        const std::vector<StripMark>& looks = picture_.looks;
        const double left = look == 0 ? curve_.left() : days_.at((looks[look - 1].day + looks[look].day) / 2);
        const double right =
            look + 1 == looks.size() ? curve_.right() : days_.at((looks[look].day + looks[look + 1].day) / 2);
        canvas_.hint({left, curve_.top(), right - left, curve_.height()}, looks[look].hint);
    }

    void caption(double plotTop, const QString& text, const QString& more) {
        const QRectF line(days_.start, plotTop - kStripCaption * em_, days_.end - days_.start, em_);
        canvas_.line(line, Qt::AlignLeft | Qt::AlignTop, text, canvas_.palette().quietText, Type::Small);
        if (!more.isEmpty() &&
            canvas_.widthOf(text, Type::Small) + canvas_.widthOf(more, Type::Small) + em_ < line.width())
            canvas_.line(line, Qt::AlignRight | Qt::AlignTop, more, canvas_.palette().quietText, Type::Small);
    }

    // Ticks with words, on as many lines as there are; a word with no room left is in the hint only.
    void drawCare() {
        const Palette& palette = canvas_.palette();
        laneName(careTop_, careLane());
        std::vector<double> free(kCareLines, days_.start);
        for (const StripMark& mark : picture_.care) {
            const double x = days_.at(mark.day), width = canvas_.widthOf(mark.word, Type::Small) + 0.1 * em_;
            canvas_.stroke({x, careTop_}, {x, careTop_ + kCareLines * kCareLine * em_}, palette.look(4).line, 0.09);
            QRectF hint(x - 0.4 * em_, careTop_, 0.8 * em_, kCareLines * kCareLine * em_);
            for (int line = 0; line < kCareLines; ++line) {
                const double left = x + 0.25 * em_;
                if (free[static_cast<std::size_t>(line)] > x || left + width > area_.right()) continue;
                const double top = careTop_ + line * kCareLine * em_;
                canvas_.line({left, top, width, em_}, Qt::AlignLeft | Qt::AlignTop, mark.word, palette.text,
                             Type::Small);
                hint = hint.united({left, top, width, em_});
                free[static_cast<std::size_t>(line)] = left + width + 0.3 * em_;
                break;
            }
            canvas_.hint(hint, mark.hint);
        }
    }

    void drawPhotos() {
        laneName(photoTop_, photoLane());
        const SeriesLook& look = canvas_.palette().look(3);
        for (const StripMark& mark : picture_.photos) {
            const QPointF place(days_.at(mark.day), photoTop_ + 0.55 * em_);
            canvas_.marker(place, Marker::Square, 0.62, look.line);
            canvas_.marker(place, Marker::Disc, 0.26, canvas_.palette().paper);
            canvas_.hint(QRectF(place - QPointF(0.5, 0.5) * em_, QSizeF(em_, em_)), mark.hint);
        }
    }

    QPointF placeOf(const StripPoint& point, const Scale& values) const {
        return {days_.at(point.day), values.at(point.value)};
    }

    void drawReadings(const StripPanel& panel, double top) {
        const Scale values = valueScaleOf(panel, top + panelHeight_, top);
        caption(top, panel.caption, panel.bandWords);
        for (const StripBand& band : panel.bands) drawBand(band, values);
        drawValueAxis(values);
        const SeriesLook &inside = canvas_.palette().look(0), &outside = canvas_.palette().look(1);
        QPainterPath line(placeOf(panel.points.front(), values));
        for (const StripPoint& point : panel.points) line.lineTo(placeOf(point, values));
        canvas_.stroke(line, canvas_.palette().axis, 0.07);
        for (const StripPoint& point : panel.points) {
            const QPointF place = placeOf(point, values);
            canvas_.marker(place, point.isOutside ? Marker::Diamond : Marker::Disc, point.isOutside ? 0.62 : 0.44,
                           point.isOutside ? outside.line : inside.line);
            canvas_.hint(QRectF(place - QPointF(0.45, 0.45) * em_, QSizeF(0.9 * em_, 0.9 * em_)), point.hint);
        }
        const StripPoint& last = panel.points.back();
        const double y = std::clamp(values.at(last.value) - em_ / 2, top, top + panelHeight_ - 0.8 * em_);
        const double left = std::min(labels_.left(), days_.at(last.day) + 0.6 * em_);
        canvas_.line({left, y, area_.right() - left, em_}, Qt::AlignLeft | Qt::AlignVCenter, panel.last,
                     last.isOutside ? outside.text : inside.text, Type::Bold);
    }

    // Tinted between two hairlines, so that grey print shows where it ends.
    void drawBand(const StripBand& band, const Scale& values) {
        const double top = values.at(band.high), bottom = values.at(band.low);
        const double left = days_.at(band.fromDay), right = std::min(days_.end, days_.at(band.toDay));
        const SeriesLook& look = canvas_.palette().look(2);
        canvas_.fill(QRectF(left, top, right - left, bottom - top), look.band);
        for (const double y : {top, bottom}) canvas_.stroke({left, y}, {right, y}, look.line, 0.05, Qt::DashLine);
    }

    void drawValueAxis(const Scale& values) {
        const Palette& palette = canvas_.palette();
        const int most = std::max(2, static_cast<int>((values.start - values.end) / (1.05 * em_)));
        const double step = valueStep(values.low, values.high, most);
        for (double i = std::ceil(values.low / step); i * step <= values.high; ++i) {
            const double y = values.at(i * step);
            canvas_.stroke({days_.start - 0.2 * em_, y}, {days_.start, y}, palette.axis, 0.07);
            canvas_.line({area_.left(), y - em_ / 2, days_.start - 0.4 * em_ - area_.left(), em_},
                         Qt::AlignRight | Qt::AlignVCenter, tickText(i * step, step), palette.quietText, Type::Small);
        }
        canvas_.stroke({days_.start, values.end}, {days_.start, values.start}, palette.axis, 0.07);
        canvas_.stroke({days_.start, values.start}, {days_.end, values.start}, palette.axis, 0.07);
    }

    void drawDayAxis() {
        const Palette& palette = canvas_.palette();
        for (const int tick : ticks_) {
            const double x = days_.at(tick);
            canvas_.stroke({x, bottom_}, {x, bottom_ + 0.2 * em_}, palette.axis, 0.07);
            canvas_.line({x - 1.5 * em_, bottom_ + 0.25 * em_, 3 * em_, em_}, Qt::AlignHCenter | Qt::AlignTop,
                         countText(tick), palette.quietText, Type::Small);
        }
        laneName(bottom_ + 0.25 * em_, StripWords::tr("day", "of the axis, counted from sticking"));
    }

    void drawRest() {
        const double top = bottom_ + kStripDayAxis * em_;
        const QRectF rest(area_.left(), top, area_.width(), std::max(1.2 * em_, area_.bottom() - top));
        if (picture_.panels.empty()) return drawEmptyPicture(canvas_, rest, picture_.emptyText);
        if (!hasLeftOut()) return;
        const auto leftOut = static_cast<int>(picture_.panels.size() - shownPanels_);
        canvas_.line(
            rest, Qt::AlignLeft | Qt::AlignTop,
            StripWords::tr("Left out for want of room: %1 more; the figures have them.").arg(countText(leftOut)),
            canvas_.palette().quietText, Type::Small);
    }

    Canvas& canvas_;
    QRectF area_;
    const StripPicture& picture_;
    double em_;
    Scale days_;
    QRectF labels_, curve_;
    std::vector<int> ticks_;
    std::vector<double> panelTops_;
    std::size_t shownPanels_{};
    double careTop_{}, photoTop_{}, panelHeight_{}, bottom_{};
};

}  // namespace

double stripHeightInEms(const StripPicture& picture) {
    const double care = picture.care.empty() ? 0 : kCareLines * kCareLine + 0.4;
    const double photos = picture.photos.empty() ? 0 : kPhotoLane;
    const double readings =
        picture.panels.empty() ? kEmptyNote
                               : static_cast<double>(picture.panels.size()) * (kUsualPanel + kStripCaption + kPanelGap);
    constexpr double head = 3;  // sentence and method
    return head + kStripCaption + kUsualCurve + care + photos + readings + kStripDayAxis;
}

void drawStripPicture(Canvas& canvas, const QRectF& area, const StripPicture& picture) {
    StripPainter(canvas, area, picture).paint();
}

}  // namespace plot
