// SPDX-License-Identifier: MIT
#include "app/plot/strike_chart_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/chart_picture.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class StrikeChartFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(StrikeChartFigure)

  public:
    StrikeChartFigure(core::StrikeChart chart, QString thisBatch, std::optional<core::TurningPoint> turn)
        : chart_(std::move(chart)), thisBatch_(std::move(thisBatch)), turn_(std::move(turn)) {
        if (turn_ && !turn_->isCalled()) turn_.reset();
    }

    QString sentence() const override {
        if (!isThereAnything()) return tr("Batch by batch: nothing assessed yet");
        const QString all = turn_ ? tr("%1; a turn at about %2", "how many batches lie outside; a batch's code")
                                        .arg(outside(), textOf(turn_->likeliest.code))
                                  : outside();
        const auto found = std::find_if(chart_.batches.begin(), chart_.batches.end(),
                                        [&](const auto& batch) { return textOf(batch.code) == thisBatch_; });
        if (thisBatch_.isEmpty() || found == chart_.batches.end()) return capitalised(all);
        return tr("%1: %2; %3", "a batch, where it lies, how many lie outside").arg(thisBatch_, placeOf(*found), all);
    }

    QString method() const override {
        if (!isThereAnything()) return {};
        const QString limits =
            tr("Batches of this plant by this method, at the horizon. Limits: beta-binomial, likeness within "
               "batches "
               "%1; luck and spread alone put %2 in 1000 outside. Dashed: all of them together.")
                .arg(decimalText(chart_.correlation, 2), decimalText(1000 * chart_.falseAlarmRate, 1));
        if (!turn_) return limits;
        return limits + u' ' +
               tr("Turn: %1 that there was one, a half beforehand; limits %2.", "a chance, a level")
                   .arg(chanceText(turn_->chance), levelText(turn_->level));
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Batch"), tr("Stuck on"), tr("Rooted"), tr("Assessed"), tr("Rate, %"),
                                       tr("Low limit, %"), tr("High limit, %"), tr("Signal")},
                          .rows = {}};
        if (!isThereAnything()) return table;
        for (const core::ChartedBatch& batch : chart_.batches)
            table.rows.push_back({textOf(batch.code), shortDateText(batch.stuckOn), countText(batch.rooted),
                                  countText(batch.assessed), batch.rate ? percent(*batch.rate) : QString(),
                                  batch.rate ? percent(batch.limits.low) : QString(),
                                  batch.rate ? percent(batch.limits.high) : QString(), signalText(batch.signal)});
        if (turn_) addTurn(table);
        return table;
    }

    QSizeF sizeInEms() const override { return {54, 20}; }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }
    bool isThereAnything() const { return chart_.centre.has_value() && !chart_.batches.empty(); }

    static QString signalText(core::ChartSignal signal) {
        switch (signal) {
            case core::ChartSignal::Inside:
                return tr("inside");
            case core::ChartSignal::Below:
                return tr("below");
            case core::ChartSignal::Above:
                return tr("above");
            case core::ChartSignal::NothingKnown:
                return tr("nothing known");
        }
        return {};
    }

    static QString placeOf(const core::ChartedBatch& batch) {
        const QString rate = percentText(batch.rooted, batch.assessed);
        switch (batch.signal) {
            case core::ChartSignal::Inside:
                return tr("%1, within its limits").arg(rate);
            case core::ChartSignal::Below:
                return tr("%1, fewer than luck would explain").arg(rate);
            case core::ChartSignal::Above:
                return tr("%1, more than luck would explain").arg(rate);
            case core::ChartSignal::NothingKnown:
                return tr("nothing assessed at the horizon yet");
        }
        return {};
    }

    void addTurn(FigureTable& table) const {
        const auto row = [&](const QString& what, const core::TurnRate& rate, const QString& where) {
            table.rows.push_back(
                {what, {}, {}, {}, percent(rate.rate), percent(rate.limits.low), percent(rate.limits.high), where});
        };
        row(tr("before the turn"), turn_->before, tr("first after it: %1").arg(textOf(turn_->likeliest.code)));
        row(tr("after the turn"), turn_->after,
            turn_->earliest.id == turn_->latest.id
                ? tr("no other at %1").arg(levelText(turn_->level))
                : tr("or %1 to %2").arg(textOf(turn_->earliest.code), textOf(turn_->latest.code)));
    }

    QString outside() const {
        int known = 0, outside = 0;
        for (const core::ChartedBatch& batch : chart_.batches) {
            known += batch.rate ? 1 : 0;
            outside += batch.signal == core::ChartSignal::Below || batch.signal == core::ChartSignal::Above ? 1 : 0;
        }
        if (outside == 0) return tr("none of %1 lies outside its limits").arg(batchesText(known));
        return tr("%1 of %2 outside their limits").arg(countText(outside), batchesText(known));
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (isThereAnything())
            drawChartPicture(canvas, area, chart_, thisBatch_, turn_ ? &*turn_ : nullptr);
        else
            drawEmptyPicture(canvas, area,
                             tr("Nothing is known yet of the fate of this plant's batches by this method."));
    }

    core::StrikeChart chart_;
    QString thisBatch_;
    std::optional<core::TurningPoint> turn_;
};

}  // namespace

std::shared_ptr<const Figure> strikeChartFigure(const core::StrikeChart& chart, const QString& thisBatch,
                                                const std::optional<core::TurningPoint>& turn) {
    return std::make_shared<StrikeChartFigure>(chart, thisBatch, turn);
}

}  // namespace plot
