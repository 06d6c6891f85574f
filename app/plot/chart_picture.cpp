// SPDX-License-Identifier: MIT
#include "app/plot/chart_picture.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>
#include <vector>

#include "app/plot/arm_words.h"
#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct ChartWords {
    Q_DECLARE_TR_FUNCTIONS(ChartPicture)
};

constexpr double kChartCaption = 1.3;    // ems above the plot
constexpr double kTurnKey = 1.2;         // ems more where a turn has its key there
constexpr double kChartAxisLines = 3.3;  // below it: dates, counts, codes
constexpr double kMostSlot = 7.0;        // a few batches don't need the whole width
constexpr double kSmallestRest = 6;      // for the label of the centre

class ChartPainter {
  public:
    ChartPainter(Canvas& canvas, const QRectF& area, const core::StrikeChart& chart, const QString& thisBatch,
                 const core::TurningPoint* turn)
        : canvas_(canvas), area_(area), chart_(chart), thisBatch_(thisBatch), turn_(turn) {
        place();
    }

    void paint() {
        drawThisBatch();
        if (turn_ != nullptr) drawTurnStretch();
        drawLimits();
        if (turn_ != nullptr) drawTurn();
        drawShareAxis();
        drawCentre();
        for (std::size_t i = 0; i < chart_.batches.size(); ++i) drawBatch(i);
        drawSignals();
        drawBatchAxis();
    }

  private:
    void place() {
        const double em = canvas_.em();
        const double gutter =
            std::max(canvas_.widthOf(shareText(1), Type::Small), canvas_.widthOf(countHeading(), Type::Small)) +
            0.6 * em;
        const double rest = std::max(kSmallestRest * em, canvas_.widthOf(centreText(), Type::Bold) + 0.6 * em);
        const double caption = kChartCaption + (turn_ != nullptr ? kTurnKey : 0);
        plot_ = area_.adjusted(gutter, caption * em, -std::min(rest, 0.3 * area_.width()), -kChartAxisLines * em);
        if (plot_.height() < 2 * em) plot_.setHeight(2 * em);
        const auto count = static_cast<double>(chart_.batches.size());
        plot_.setWidth(std::min(plot_.width(), kMostSlot * em * count));
        slot_ = plot_.width() / count;
        const double edge = 0.5 * em;  // so that marks at none and all stay clear of the axis
        shares_ = {.low = 0, .high = 1, .start = plot_.bottom() - edge, .end = plot_.top() + edge};
    }

    double leftOf(std::size_t batch) const { return plot_.left() + slot_ * static_cast<double>(batch); }
    double middleOf(std::size_t batch) const { return leftOf(batch) + slot_ / 2; }
    QString centreText() const { return shareText(*chart_.centre); }
    static QString countHeading() { return ChartWords::tr("rooted of", "heading of counts under a batch"); }
    bool isThis(const core::ChartedBatch& batch) const {
        return !thisBatch_.isEmpty() && textOf(batch.code) == thisBatch_;
    }

    void drawThisBatch() {
        for (std::size_t i = 0; i < chart_.batches.size(); ++i)
            if (isThis(chart_.batches[i]))
                canvas_.fill(QRectF(leftOf(i), plot_.top(), slot_, plot_.height()), canvas_.palette().margin);
    }

    // Batches differ in size, so their limits differ: steps, not lines. Where nothing is known there are none.
    void drawLimits() {
        const SeriesLook& look = canvas_.palette().look(0);
        QPainterPath band, edges, overlap;  // the last: with the stretch of a turn
        for (std::size_t i = 0; i < chart_.batches.size(); ++i) {
            const core::ChartedBatch& batch = chart_.batches[i];
            if (!batch.rate) continue;
            const double low = shares_.at(batch.limits.low), high = shares_.at(batch.limits.high);
            const QRectF between(QPointF(leftOf(i), high), QPointF(leftOf(i) + slot_, low));
            band.addRect(between);
            if (turn_ != nullptr) overlap.addRect(between & turnStretch());
            const bool isJoined = i > 0 && chart_.batches[i - 1].rate;
            for (const auto& [y, share] : {std::pair(low, false), std::pair(high, true)}) {
                const core::Limits before = isJoined ? chart_.batches[i - 1].limits : batch.limits;
                edges.moveTo(leftOf(i), shares_.at(share ? before.high : before.low));
                edges.lineTo(leftOf(i), y);
                edges.lineTo(leftOf(i) + slot_, y);
            }
        }
        canvas_.fill(band, look.band);
        canvas_.fill(overlap, canvas_.palette().overlap);
        canvas_.stroke(edges, look.line, 0.09);
    }

    // Where on the axis of batches a turn lies that has this batch for the first one after it: halfway to the one before.
    double turnAt(const core::TurnBatch& turn) const {
        const auto found = std::ranges::find(chart_.batches, turn.id, &core::ChartedBatch::id);
        return found == chart_.batches.end() ? plot_.left()
                                             : leftOf(static_cast<std::size_t>(found - chart_.batches.begin()));
    }
    double turnFrom() const { return std::max(plot_.left(), turnAt(turn_->earliest) - slot_ / 2); }
    double turnTo() const { return turnAt(turn_->latest) + slot_ / 2; }

    QRectF turnStretch() const { return {turnFrom(), plot_.top(), turnTo() - turnFrom(), plot_.height()}; }

    void drawTurnStretch() {
        canvas_.fill(turnStretch(), canvas_.palette().look(2).band);
        canvas_.hint(turnStretch(), turnText());
    }

    // Its edges and levels lie over the limits' tint; the key above says what they are, with the figures.
    void drawTurn() {
        const SeriesLook& look = canvas_.palette().look(2);
        for (const double x : {turnFrom(), turnTo()})
            canvas_.stroke({x, plot_.top()}, {x, plot_.bottom()}, look.line, 0.1, Qt::DotLine);
        const double before = shares_.at(turn_->before.rate), after = shares_.at(turn_->after.rate);
        const double at = turnAt(turn_->likeliest);
        canvas_.stroke({plot_.left(), before}, {at, before}, look.line, 0.16, Qt::DashDotLine);
        canvas_.stroke({at, after}, {plot_.right(), after}, look.line, 0.16, Qt::DashDotLine);
        const double em = canvas_.em();
        canvas_.line({plot_.left(), area_.top() + kTurnKey * em, area_.right() - plot_.left(), em},
                     Qt::AlignLeft | Qt::AlignTop, turnText(), look.text, Type::Small);
    }

    QString turnText() const {
        return ChartWords::tr("turn between the dotted lines; dash-dotted: %1 before (%2), %3 after (%4)",
                              "rate, its limits, rate, its limits")
            .arg(shareText(turn_->before.rate), limitsText(turn_->before.limits), shareText(turn_->after.rate),
                 limitsText(turn_->after.limits));
    }

    void drawShareAxis() {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        const int most = std::max(2, static_cast<int>(plot_.height() / (1.3 * em)) + 1);
        for (const double tick : shareTicks(1, most)) {
            const double y = shares_.at(tick);
            canvas_.stroke({plot_.left() - 0.25 * em, y}, {plot_.left(), y}, palette.axis, 0.07);
            canvas_.line({area_.left(), y - em / 2, plot_.left() - 0.4 * em - area_.left(), em},
                         Qt::AlignRight | Qt::AlignVCenter, shareText(tick), palette.quietText, Type::Small);
        }
        canvas_.stroke(plot_.topLeft(), plot_.bottomLeft(), palette.axis, 0.07);
        canvas_.stroke(plot_.bottomLeft(), plot_.bottomRight(), palette.axis, 0.07);
        canvas_.line({plot_.left(), area_.top(), area_.right() - plot_.left(), em}, Qt::AlignLeft | Qt::AlignTop,
                     ChartWords::tr("rooted, of those assessed; batches in order of sticking"), palette.quietText,
                     Type::Small);
    }

    void drawCentre() {
        const double em = canvas_.em(), y = shares_.at(*chart_.centre);
        const Palette& palette = canvas_.palette();
        canvas_.stroke({plot_.left(), y}, {plot_.right(), y}, palette.text, 0.1, Qt::DashLine);
        const double line = canvas_.lineHeight(Type::Plain), small = canvas_.lineHeight(Type::Small);
        const double top = std::clamp(y - line / 2, plot_.top(), plot_.bottom() - line - small);
        const QRectF label(plot_.right() + 0.4 * em, top, area_.right() - plot_.right() - 0.4 * em, line);
        canvas_.line(label, Qt::AlignLeft | Qt::AlignVCenter, centreText(), palette.text, Type::Bold);
        int rooted = 0, assessed = 0;
        for (const core::ChartedBatch& batch : chart_.batches) rooted += batch.rooted, assessed += batch.assessed;
        canvas_.line({label.left(), label.bottom(), label.width(), small}, Qt::AlignLeft | Qt::AlignTop,
                     ChartWords::tr("%1 of %2", "rooted of assessed").arg(countText(rooted), countText(assessed)),
                     palette.quietText, Type::Small);
    }

    static bool isSignal(const core::ChartedBatch& batch) {
        return batch.signal == core::ChartSignal::Below || batch.signal == core::ChartSignal::Above;
    }

    void drawBatch(std::size_t i) {
        const core::ChartedBatch& batch = chart_.batches[i];
        const Palette& palette = canvas_.palette();
        canvas_.hint({leftOf(i), plot_.top(), slot_, plot_.height()}, hintOf(batch));
        if (!batch.rate) return;
        const QPointF at(middleOf(i), shares_.at(*batch.rate));
        const SeriesLook& look = palette.look(isSignal(batch) ? 1 : 0);
        const Marker marker = isSignal(batch) ? Marker::Diamond : Marker::Disc;
        const double size = isSignal(batch) ? 0.9 : 0.6;
        canvas_.marker(at, marker, size + 0.2, palette.paper);
        canvas_.marker(at, marker, size, look.line);
    }

    QString hintOf(const core::ChartedBatch& batch) const {
        const QString head = ChartWords::tr("%1, stuck %2").arg(textOf(batch.code), shortDateText(batch.stuckOn));
        if (!batch.rate) return head + u'\n' + ChartWords::tr("nothing assessed yet");
        return head + u'\n' + percentText(batch.rooted, batch.assessed) + u'\n' +
               ChartWords::tr("luck and spread alone: %1").arg(limitsText(batch.limits));
    }

    // Beside its mark; one that would hide another is left to the table.
    void drawSignals() {
        const double em = canvas_.em(), line = canvas_.lineHeight(Type::Small);
        std::vector<QRectF> taken;
        for (std::size_t i = 0; i < chart_.batches.size(); ++i) {
            const core::ChartedBatch& batch = chart_.batches[i];
            if (!isSignal(batch) || !batch.rate) continue;
            const bool isBelow = batch.signal == core::ChartSignal::Below;
            const QString text = (isBelow ? ChartWords::tr("%1: fewer", "a batch with fewer rooted than luck explains")
                                          : ChartWords::tr("%1: more", "a batch with more rooted than luck explains"))
                                     .arg(textOf(batch.code));
            const double width = canvas_.widthOf(text, Type::Small) + 0.1 * em, y = shares_.at(*batch.rate);
            for (const QRectF& label : placesBeside({middleOf(i), y}, {width, line}, isBelow)) {
                const bool isFree = std::none_of(taken.begin(), taken.end(),
                                                 [&](const QRectF& other) { return other.intersects(label); });
                if (!isFree || !plot_.contains(label)) continue;
                canvas_.fill(label, canvas_.palette().paper);
                canvas_.line(label, Qt::AlignHCenter | Qt::AlignTop, text, canvas_.palette().look(1).text, Type::Small);
                taken.push_back(label);
                break;
            }
        }
    }

    // Right, left, then away from the limits, then towards them.
    std::array<QRectF, 4> placesBeside(const QPointF& mark, const QSizeF& size, bool isBelow) const {
        const double away = 0.7 * canvas_.em();
        const double left =
            std::clamp(mark.x() - size.width() / 2, plot_.left(), std::max(plot_.left(), plot_.right() - size.width()));
        const QRectF under({left, mark.y() + away}, size), over({left, mark.y() - away - size.height()}, size);
        const double top = std::clamp(mark.y() - size.height() / 2, plot_.top(), plot_.bottom() - size.height());
        return {QRectF({mark.x() + away, top}, size), QRectF({mark.x() - away - size.width(), top}, size),
                isBelow ? under : over, isBelow ? over : under};
    }

    // As many dates and counts as there is room for, the batch of this page always among them.
    void drawBatchAxis() {
        const double em = canvas_.em(), bottom = plot_.bottom();
        std::vector<std::size_t> order;
        for (std::size_t i = 0; i < chart_.batches.size(); ++i)
            if (isThis(chart_.batches[i])) order.push_back(i);
        for (std::size_t i = 0; i < chart_.batches.size(); ++i)
            if (!isThis(chart_.batches[i])) order.push_back(i);
        std::vector<QRectF> taken;
        for (const std::size_t i : order) {
            const core::ChartedBatch& batch = chart_.batches[i];
            const QStringList lines{shortDateText(batch.stuckOn),
                                    ChartWords::tr("%1 of %2", "rooted of assessed")
                                        .arg(countText(batch.rooted), countText(batch.assessed)),
                                    isThis(batch) ? textOf(batch.code) : QString()};
            double width = 0;
            for (const QString& text : lines) width = std::max(width, canvas_.widthOf(text, Type::Small) + 0.1 * em);
            const double left = std::clamp(middleOf(i) - width / 2, plot_.left() - 0.4 * em, area_.right() - width);
            const QRectF label(left - 0.3 * em, bottom, width + 0.6 * em, kChartAxisLines * em);
            if (std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) { return other.intersects(label); }))
                continue;
            taken.push_back(label);
            drawAxisLabel(middleOf(i), {left, bottom + 0.25 * em, width, em}, lines);
        }
        canvas_.line({area_.left(), bottom + 1.25 * em, plot_.left() - 0.6 * em - area_.left(), em},
                     Qt::AlignRight | Qt::AlignTop, countHeading(), canvas_.palette().quietText, Type::Small);
    }

    void drawAxisLabel(double middle, QRectF line, const QStringList& lines) {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        canvas_.stroke({middle, plot_.bottom()}, {middle, plot_.bottom() + 0.2 * em}, palette.axis, 0.07);
        for (const QString& text : lines) {
            if (!text.isEmpty())
                canvas_.line(line, Qt::AlignHCenter | Qt::AlignTop, text,
                             &text == &lines.front() ? palette.quietText : palette.text, Type::Small);
            line.translate(0, em);
        }
    }

    Canvas& canvas_;
    QRectF area_;
    const core::StrikeChart& chart_;
    QString thisBatch_;
    const core::TurningPoint* turn_;
    QRectF plot_;
    double slot_{};
    Scale shares_;
};

}  // namespace

void drawChartPicture(Canvas& canvas, const QRectF& area, const core::StrikeChart& chart, const QString& thisBatch,
                      const core::TurningPoint* turn) {
    ChartPainter(canvas, area, chart, thisBatch, turn).paint();
}

}  // namespace plot
