// SPDX-License-Identifier: MIT
#include "app/plot/loss_by_month_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plot/axis.h"
#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"
#include "app/plot/loss_words.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct MonthWords {
    Q_DECLARE_TR_FUNCTIONS(LossByMonthFigure)
};

// In ems.
constexpr double kMonthCaption = 1.3;
constexpr double kMonthAxisLines = 2.3;  // below the plot: month, counts
constexpr double kWidestMonth = 7;       // a few months don't need the whole width
constexpr double kLeastReach = 0.1;      // of the axis of shares

class MonthPainter {
  public:
    MonthPainter(Canvas& canvas, const QRectF& area, const core::Losses& losses)
        : canvas_(canvas), area_(area), months_(losses.months) {
        place();
    }

    void paint() {
        drawRates();
        for (const core::MonthOfLosses& month : months_) drawMonth(month);
        drawMonthAxis();
    }

  private:
    void place() {
        const double em = canvas_.em();
        double reach = kLeastReach;
        for (const core::MonthOfLosses& month : months_)
            if (month.count.rate) reach = std::max({reach, *month.count.rate, month.count.asCounted.high});
        const double gutter =
            std::max(canvas_.widthOf(shareText(1), Type::Small), canvas_.widthOf(countHeading(), Type::Small)) +
            0.6 * em;
        plot_ = area_.adjusted(gutter, kMonthCaption * em, -0.5 * em, -kMonthAxisLines * em);
        if (plot_.height() < 2 * em) plot_.setHeight(2 * em);
        const int places = slotOf(months_.back().month) + 1;
        plot_.setWidth(std::min(plot_.width(), kWidestMonth * em * places));
        slot_ = plot_.width() / places;
        shares_ = {
            .low = 0, .high = std::min(1.0, std::ceil(reach * 10) / 10), .start = plot_.bottom(), .end = plot_.top()};
    }

    static QString countHeading() { return MonthWords::tr("lost of", "heading of counts under a month"); }
    // Calendar months from the first on: one in which nothing stood leaves its place free.
    int slotOf(std::chrono::year_month month) const {
        return static_cast<int>((month - months_.front().month).count());
    }
    double leftOf(const core::MonthOfLosses& month) const { return plot_.left() + slot_ * slotOf(month.month); }

    void drawRates() {
        const double em = canvas_.em();
        const Palette& palette = canvas_.palette();
        const int most = std::max(2, static_cast<int>(plot_.height() / (1.3 * em)) + 1);
        for (const double tick : shareTicks(shares_.high, most)) {
            const double y = shares_.at(tick);
            canvas_.stroke({plot_.left(), y}, {plot_.right(), y}, palette.grid, 0.06);
            canvas_.line({area_.left(), y - em / 2, plot_.left() - 0.4 * em - area_.left(), em},
                         Qt::AlignRight | Qt::AlignVCenter, shareText(tick), palette.quietText, Type::Small);
        }
        canvas_.stroke(plot_.topLeft(), plot_.bottomLeft(), palette.axis, 0.07);
        canvas_.stroke(plot_.bottomLeft(), plot_.bottomRight(), palette.axis, 0.07);
        canvas_.line({plot_.left(), area_.top(), area_.right() - plot_.left(), em}, Qt::AlignLeft | Qt::AlignTop,
                     MonthWords::tr("found lost in the month, of the cuttings that stood in it"), palette.quietText,
                     Type::Small);
    }

    void drawMonth(const core::MonthOfLosses& month) {
        const core::LossCount& count = month.count;
        const double em = canvas_.em(), middle = leftOf(month) + slot_ / 2;
        canvas_.hint({leftOf(month), plot_.top(), slot_, plot_.height()}, hintOf(month));
        if (!count.rate) return;
        const SeriesLook& look = canvas_.palette().look(0);
        const double half = std::min(0.36 * slot_, 1.2 * em);
        const QRectF bar(QPointF(middle - half, shares_.at(*count.rate)), QPointF(middle + half, plot_.bottom()));
        QPainterPath edge;
        edge.addRect(bar);
        canvas_.fill(bar, look.box);
        canvas_.stroke(edge, look.line, 0.07);
        const double end = std::min(0.24 * em, half);
        const double low = shares_.at(count.asCounted.low),
                     high = shares_.at(std::min(count.asCounted.high, shares_.high));
        canvas_.stroke({middle, low}, {middle, high}, canvas_.palette().text, 0.1);
        for (const double y : {low, high})
            canvas_.stroke({middle - end, y}, {middle + end, y}, canvas_.palette().text, 0.1);
    }

    static QString hintOf(const core::MonthOfLosses& month) {
        return MonthWords::tr("%1: %2 lost, in %3\nas counted %4", "month, share with counts, batches, limits")
            .arg(monthText(month.month), lossRateText(month.count), batchesText(month.count.batches),
                 limitsText(month.count.asCounted));
    }

    // As many months and counts as there is room for, from the newest back.
    void drawMonthAxis() {
        const double em = canvas_.em(), bottom = plot_.bottom();
        const Palette& palette = canvas_.palette();
        double free = area_.right();
        for (auto month = months_.rbegin(); month != months_.rend(); ++month) {
            const QString name = shortMonthText(month->month), counts = countsOf(month->count);
            const double width =
                std::max(canvas_.widthOf(name, Type::Small), canvas_.widthOf(counts, Type::Small)) + 0.2 * em;
            const double middle = leftOf(*month) + slot_ / 2;
            const double left = std::clamp(middle - width / 2, plot_.left() - 0.4 * em, area_.right() - width);
            if (left + width > free) continue;
            free = left - 0.5 * em;
            canvas_.stroke({middle, bottom}, {middle, bottom + 0.2 * em}, palette.axis, 0.07);
            canvas_.line({left, bottom + 0.25 * em, width, em}, Qt::AlignHCenter | Qt::AlignTop, name,
                         palette.quietText, Type::Small);
            canvas_.line({left, bottom + 1.25 * em, width, em}, Qt::AlignHCenter | Qt::AlignTop, counts, palette.text,
                         Type::Small);
        }
        canvas_.line({area_.left(), bottom + 1.25 * em, plot_.left() - 0.6 * em - area_.left(), em},
                     Qt::AlignRight | Qt::AlignTop, countHeading(), palette.quietText, Type::Small);
    }

    static QString countsOf(const core::LossCount& count) {
        return MonthWords::tr("%1 of %2", "lost of those that stood")
            .arg(countText(count.lost), countText(count.stood));
    }

    Canvas& canvas_;
    QRectF area_;
    const std::vector<core::MonthOfLosses>& months_;
    QRectF plot_;
    double slot_{};
    Scale shares_;
};

class LossByMonthFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(LossByMonthFigure)

  public:
    explicit LossByMonthFigure(core::Losses losses) : losses_(std::move(losses)) {}

    QString sentence() const override {
        if (losses_.months.empty()) return tr("Losses by month: no cuttings stood");
        const auto worst = std::ranges::max_element(
            losses_.months, {}, [](const core::MonthOfLosses& month) { return month.count.rate.value_or(0); });
        if (worst->count.lost == 0) return tr("Losses by month: nothing was lost in any");
        return losses_.months.size() == 1 ? tr("Lost in %1: %2", "month, share with counts")
                                                .arg(monthText(worst->month), lossRateText(worst->count))
                                          : tr("The largest share was lost in %1: %2", "month, share with counts")
                                                .arg(monthText(worst->month), lossRateText(worst->count));
    }

    QString method() const override {
        if (losses_.months.empty()) return {};
        return tr("By the day of the check that found the loss, of the cuttings that stood undecided in the month. "
                  "Line: %1 interval as counted (Wilson).")
            .arg(levelText(losses_.level));
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Month"), tr("Batches"), tr("Lost"), tr("Stood"), tr("Rate, %"),
                                       tr("As counted, low"), tr("As counted, high")},
                          .rows = {}};
        for (const core::LossRow& row : losses_.rows) table.headings << lossCauseText(row.cause, row.loss.cause);
        for (const core::MonthOfLosses& month : losses_.months) {
            const core::LossCount& count = month.count;
            QStringList row{monthText(month.month), countText(count.batches), countText(count.lost),
                            countText(count.stood)};
            row << (count.rate ? percent(*count.rate) : QString());
            row << (count.rate ? percent(count.asCounted.low) : QString());
            row << (count.rate ? percent(count.asCounted.high) : QString());
            for (const int lost : count.byCause) row << countText(lost);
            table.rows.push_back(row);
        }
        return table;
    }

    QSizeF sizeInEms() const override { return {54, losses_.months.empty() ? 9.0 : 17.0}; }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (losses_.months.empty()) return drawEmptyPicture(canvas, area, nothingLostText(losses_));
        MonthPainter(canvas, area, losses_).paint();
    }

    core::Losses losses_;
};

}  // namespace

std::shared_ptr<const Figure> lossByMonthFigure(const core::Losses& losses) {
    return std::make_shared<LossByMonthFigure>(losses);
}

}  // namespace plot
