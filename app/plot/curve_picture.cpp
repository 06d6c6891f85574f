// SPDX-License-Identifier: MIT
#include "app/plot/curve_picture.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <set>

#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/count_rows.h"
#include "app/plot/curve_panel.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct CurveWords {
    Q_DECLARE_TR_FUNCTIONS(CurvePicture)
};

// All in ems.
constexpr double kCaption = 1.15;
constexpr double kLossCaption = 1.6;
constexpr double kDayAxis = 1.35;
constexpr double kLeastMain = 5.4;
constexpr double kComfortableMain = 12.0;
constexpr double kLeastLoss = 2.4;
constexpr double kMostLoss = 7.0;

double lastShare(const std::vector<core::DayShare>& shares) {
    return shares.empty() ? 0 : shares.back().share;
}

bool hasLosses(const CurvePicture& picture) {
    return std::any_of(picture.curves.begin(), picture.curves.end(),
                       [](const Curve& curve) { return lastShare(curve.lost) > 0; });
}

double highestLoss(const CurvePicture& picture) {
    double most = 0;
    for (const Curve& curve : picture.curves)
        for (const core::DayShare& look : curve.lost) most = std::max(most, look.band ? look.band->high : look.share);
    return most <= 0.25 ? 0.25 : most <= 0.5 ? 0.5 : 1.0;
}

class CurvePainter {
  public:
    CurvePainter(Canvas& canvas, const QRectF& area, const CurvePicture& picture)
        : canvas_(canvas), area_(area), picture_(picture) {
        makePanels();
        chooseRows();
        placeColumns();
        placeLines();
    }

    void paint() {
        drawShareAxis(main_, CurveWords::tr("rooted, of those stuck"));
        if (hasLoss_) drawShareAxis(loss_, CurveWords::tr("lost, of those stuck"));
        drawDayAxis();
        drawHorizon();
        drawPanel(canvas_, main_);
        if (hasLoss_) drawPanel(canvas_, loss_);
        const double top = days().bottom() + kDayAxis * canvas_.em();
        drawCountRows(canvas_, {area_.left(), top, main_.plot.right() - area_.left(), area_.bottom() - top}, picture_,
                      rows_, main_.days, ticks_);
        addHints();
    }

  private:
    const QRectF& days() const { return hasLoss_ ? loss_.plot : main_.plot; }

    void makePanels() {
        main_.hasTints = loss_.hasTints = hasTints(picture_);
        for (const Curve& curve : picture_.curves) {
            const QString share = shareText(curve.counted.value_or(lastShare(curve.rooted)));
            main_.curves.push_back(
                {.shares = curve.rooted,
                 .series = curve.series,
                 .label = curve.name,
                 .detail = CurveWords::tr("%1 of %2", "a share and of how many").arg(share, countText(curve.stuck)),
                 .shortly = CurveWords::tr("%1 %2", "a share and an arm").arg(share, curve.name)});
            if (!curve.lost.empty())
                loss_.curves.push_back({.shares = curve.lost,
                                        .series = curve.series,
                                        .label = CurveWords::tr("%1 lost").arg(shareText(lastShare(curve.lost))),
                                        .detail = {},
                                        .shortly = {}});
        }
    }

    // What there is no room for goes: first the rows by three, then the losses, then the rows.
    void chooseRows() {
        const double em = canvas_.em(), room = area_.height() / em - kCaption - kDayAxis;
        const auto left = [&](RowsShape shape) { return room - countRowsHeight(canvas_, picture_, shape) / em; };
        hasLoss_ = hasLosses(picture_);
        const double loss = hasLoss_ ? kLossCaption + kLeastLoss : 0;
        rows_ = RowsShape::ThreeLinesAnArm;
        if (left(rows_) - loss - 1.5 >= kComfortableMain) return;
        rows_ = RowsShape::OneLineAnArm;
        if (left(rows_) - loss >= kLeastMain) return;
        hasLoss_ = false;
        if (left(rows_) >= kLeastMain) return;
        rows_ = RowsShape::None;
    }

    void placeColumns() {
        const double em = canvas_.em();
        double gutter = canvas_.widthOf(shareText(1), Type::Small) + 0.6 * em;
        gutter = std::max(gutter, countRowsGutter(canvas_, picture_, rows_));
        gutter = std::min(gutter, 0.34 * area_.width());
        double labels = 0;
        for (const PanelCurve& curve : main_.curves)
            labels = std::max(
                {labels, canvas_.widthOf(curve.label, Type::Bold), canvas_.widthOf(curve.detail, Type::Small)});
        for (const PanelCurve& curve : loss_.curves) labels = std::max(labels, canvas_.widthOf(curve.label));
        labels = std::min(labels + 0.2 * em, 0.26 * area_.width());
        const double right = area_.right() - labels, bars = (endBarsWidth(main_.curves) + 0.4) * em;
        main_.plot = QRectF(area_.left() + gutter, 0, right - bars - area_.left() - gutter, 0);
        main_.labels = QRectF(right, 0, labels, 0);
        const int last = lastTickFor(static_cast<int>(std::ceil(lastDayOf(picture_))));
        const int most = static_cast<int>(main_.plot.width() / (2.6 * em)) + 1;
        ticks_ = weekTicks(last, most);
        const double end = std::max(static_cast<double>(last), lastDayOf(picture_));
        main_.days = {.low = 0, .high = end, .start = main_.plot.left(), .end = main_.plot.right()};
        loss_.days = main_.days;
        moveLabels(labels);
    }

    // Where all curves end long before the axis does, the labels stand at their ends, not across the picture.
    void moveLabels(double width) {
        const double em = canvas_.em();
        double last = 0;
        for (const Curve& curve : picture_.curves)
            if (!curve.rooted.empty()) last = std::max(last, curve.rooted.back().day);
        const double left = main_.days.at(last) + (endBarsWidth(main_.curves) + 1.0) * em;
        const double limit = picture_.horizonDay ? main_.days.at(*picture_.horizonDay) : main_.plot.right();
        if (left + width < limit - 0.5 * em) main_.labels.moveLeft(left);
    }

    void placeLines() {
        const double em = canvas_.em();
        double room = area_.height() - (kCaption + kDayAxis) * em - countRowsHeight(canvas_, picture_, rows_);
        const double loss = hasLoss_ ? std::clamp(0.25 * (room / em - kLossCaption), kLeastLoss, kMostLoss) * em : 0;
        if (hasLoss_) room -= loss + kLossCaption * em;
        placePanel(main_, area_.top() + kCaption * em, std::max(room, 2 * em), 1.0);
        if (hasLoss_) placePanel(loss_, main_.plot.bottom() + kLossCaption * em, loss, highestLoss(picture_));
    }

    void placePanel(Panel& panel, double top, double height, double high) {
        panel.plot = QRectF(main_.plot.left(), top, main_.plot.width(), height);
        panel.labels =
            QRectF(main_.labels.left(), top - 0.4 * canvas_.em(), main_.labels.width(), height + 0.7 * canvas_.em());
        panel.shares = {.low = 0, .high = high, .start = panel.plot.bottom(), .end = panel.plot.top()};
    }

    void drawShareAxis(const Panel& panel, const QString& caption) {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        const int most = std::max(2, static_cast<int>(panel.plot.height() / (1.3 * em)) + 1);
        for (const double tick : shareTicks(panel.shares.high, most)) {
            const double y = panel.shares.at(tick);
            canvas_.stroke({panel.plot.left(), y}, {panel.plot.right(), y}, palette.grid, 0.06);
            canvas_.line({area_.left(), y - em / 2, panel.plot.left() - 0.4 * em - area_.left(), em},
                         Qt::AlignRight | Qt::AlignVCenter, shareText(tick), palette.quietText, Type::Small);
        }
        const double right = &panel == &main_ ? captionEnd() : panel.plot.right();
        canvas_.line({panel.plot.left(), panel.plot.top() - kCaption * em, right - panel.plot.left(), em},
                     Qt::AlignLeft | Qt::AlignTop, caption, palette.quietText, Type::Small);
    }

    void drawDayAxis() {
        const double em = canvas_.em(), bottom = days().bottom();
        const Palette& palette = canvas_.palette();
        for (const QRectF& plot : {main_.plot, days()})
            canvas_.stroke({plot.left(), plot.bottom()}, {plot.right(), plot.bottom()}, palette.axis, 0.07);
        for (const int tick : ticks_) {
            const double x = main_.days.at(tick);
            canvas_.stroke({x, bottom}, {x, bottom + 0.2 * em}, palette.axis, 0.07);
            canvas_.line({x - 1.5 * em, bottom + 0.25 * em, 3 * em, em}, Qt::AlignHCenter | Qt::AlignTop,
                         countText(tick), palette.quietText, Type::Small);
        }
        canvas_.line({area_.left(), bottom + 0.25 * em, main_.plot.left() - 0.9 * em - area_.left(), em},
                     Qt::AlignRight | Qt::AlignTop, CurveWords::tr("day", "of the axis, counted from sticking"),
                     palette.quietText, Type::Small);
    }

    QString horizonText() const { return CurveWords::tr("horizon, day %1").arg(countText(*picture_.horizonDay)); }

    double horizonLeft() const {
        const double width = canvas_.widthOf(horizonText(), Type::Small), middle = main_.days.at(*picture_.horizonDay);
        return std::clamp(middle - width / 2, main_.plot.left(), area_.right() - width);
    }

    double captionEnd() const { return picture_.horizonDay ? horizonLeft() - canvas_.em() : area_.right(); }

    void drawHorizon() {
        if (!picture_.horizonDay) return;
        const double x = main_.days.at(*picture_.horizonDay), em = canvas_.em();
        const Palette& palette = canvas_.palette();
        canvas_.stroke({x, main_.plot.top()}, {x, days().bottom()}, palette.axis, 0.08);
        canvas_.line({horizonLeft(), main_.plot.top() - kCaption * em, canvas_.widthOf(horizonText(), Type::Small), em},
                     Qt::AlignLeft | Qt::AlignTop, horizonText(), palette.quietText, Type::Small);
    }

    static QString hintLine(const Curve& curve, double day) {
        const auto upTo = [day](const std::vector<core::DayShare>& shares) -> const core::DayShare* {
            const core::DayShare* found = nullptr;
            for (const core::DayShare& look : shares)
                if (look.day <= day) found = &look;
            return found;
        };
        const core::DayShare* rooted = upTo(curve.rooted);
        if (!rooted) return CurveWords::tr("%1: not looked at yet").arg(curve.name);
        QString text =
            CurveWords::tr("%1: %2 of %3 rooted").arg(curve.name, shareText(rooted->share), countText(curve.stuck));
        if (rooted->band) text += CurveWords::tr(" (%1)", "an interval").arg(limitsText(*rooted->band));
        if (const core::DayShare* lost = upTo(curve.lost))
            text += CurveWords::tr(", %1 lost").arg(shareText(lost->share));
        return text;
    }

    // One hint a day of looking, in a strip that reaches half way to its neighbours.
    void addHints() {
        std::set<double> looked;
        for (const Curve& curve : picture_.curves)
            for (const core::DayShare& look : curve.rooted) looked.insert(look.day);
        double left = main_.plot.left();
        for (auto day = looked.begin(); day != looked.end(); ++day) {
            const auto next = std::next(day);
            const double right = next == looked.end() ? main_.plot.right() : main_.days.at((*day + *next) / 2);
            QStringList lines{dayText(*day)};
            for (const Curve& curve : picture_.curves) lines << hintLine(curve, *day);
            canvas_.hint({left, main_.plot.top(), right - left, days().bottom() - main_.plot.top()}, lines.join(u'\n'));
            left = right;
        }
    }

    Canvas& canvas_;
    QRectF area_;
    const CurvePicture& picture_;
    Panel main_, loss_;
    bool hasLoss_{};
    RowsShape rows_{};
    std::vector<int> ticks_;
};

}  // namespace

bool hasTints(const CurvePicture& picture) {
    return picture.curves.size() <= 2;
}

double lastDayOf(const CurvePicture& picture) {
    double last = picture.horizonDay.value_or(7);
    for (const Curve& curve : picture.curves)
        for (const core::DayShare& look : curve.rooted) last = std::max(last, look.day);
    return last;
}

void drawCurvePicture(Canvas& canvas, const QRectF& area, const CurvePicture& picture) {
    CurvePainter(canvas, area, picture).paint();
}

}  // namespace plot
