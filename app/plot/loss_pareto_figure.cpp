// SPDX-License-Identifier: MIT
#include "app/plot/loss_pareto_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/loss_words.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class LossParetoFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(LossParetoFigure)

  public:
    explicit LossParetoFigure(core::Losses losses) : losses_(std::move(losses)) {}

    QString sentence() const override {
        if (losses_.rows.empty()) return tr("Losses by cause: nothing was lost");
        const core::LossRow& most = losses_.rows.front();
        return tr("Of all lost, %1 to %2", "share with counts, cause").arg(shareOf(most), causeText(most));
    }

    QString method() const override {
        if (losses_.rows.empty()) return {};
        QString text =
            tr("%1 found lost, in %2. Bars: share of all lost; thick: %3 interval as counted (Wilson).")
                .arg(cuttingsText(losses_.lost), batchesText(losses_.batchesWithLosses), levelText(losses_.level));
        if (hasSpread()) text += u' ' + tr("Thin: allowing for batches that lose together.");
        return text + u' ' + tr("Dots and line: running share.");
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Cause"), tr("Cuttings"), tr("Batches"), tr("Share of lost, %"),
                                       tr("As counted, low"), tr("As counted, high"), tr("With spread, low"),
                                       tr("With spread, high"), tr("Running share, %")},
                          .rows = {}};
        for (const core::LossRow& row : losses_.rows)
            table.rows.push_back({causeText(row), countText(row.loss.count), countText(row.batches), percent(row.share),
                                  percent(row.asCounted.low), percent(row.asCounted.high),
                                  row.withSpread ? percent(row.withSpread->low) : QString(),
                                  row.withSpread ? percent(row.withSpread->high) : QString(),
                                  percent(row.runningShare)});
        return table;
    }

    QSizeF sizeInEms() const override {
        if (losses_.rows.empty()) return {54, 9};
        return {54, std::clamp(8 + 1.9 * static_cast<double>(losses_.rows.size()), 13.0, 40.0)};
    }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }
    static QString causeText(const core::LossRow& row) { return lossCauseText(row.cause, row.loss.cause); }
    QString shareOf(const core::LossRow& row) const { return percentText(row.share, row.loss.count, losses_.lost); }
    bool hasSpread() const {
        return std::ranges::any_of(losses_.rows, [](const core::LossRow& row) { return row.withSpread.has_value(); });
    }

    IntervalRow rowOf(const core::LossRow& row) const {
        IntervalRow drawn{.name = causeText(row),
                          .isPlantName = false,
                          .counts = {countText(row.batches), shareText(row.runningShare)},
                          .value = row.share,
                          .thick = row.asCounted,
                          .thin = row.withSpread,
                          .mark = RowMark::Bar,
                          .series = 0,
                          .weight = 1,
                          .figure = shareOf(row),
                          .hint = {},
                          .running = row.runningShare};
        drawn.hint = tr("%1: %2 in %3\nas counted %4", "cause, share with counts, batches, limits")
                         .arg(drawn.name, drawn.figure, batchesText(row.batches), limitsText(row.asCounted));
        if (row.withSpread)
            drawn.hint += u'\n' + tr("allowing for batches that lose together %1").arg(limitsText(*row.withSpread));
        drawn.hint += u'\n' + tr("with those above it %1 of all lost").arg(shareText(row.runningShare));
        return drawn;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (losses_.rows.empty()) return drawEmptyPicture(canvas, area, nothingLostText(losses_));
        IntervalRows rows{.nameHeading = tr("Lost to"),
                          .countHeadings = {tr("batches"), tr("running share")},
                          .figureHeading = tr("of all lost"),
                          .rows = {},
                          .pooled = {},
                          .scale = RowScale::Share,
                          .lowSide = {},
                          .highSide = {},
                          .remarks = {}};
        for (const core::LossRow& row : losses_.rows) rows.rows.push_back(rowOf(row));
        drawIntervalRows(canvas, area, rows);
    }

    core::Losses losses_;
};

}  // namespace

std::shared_ptr<const Figure> lossParetoFigure(const core::Losses& losses) {
    return std::make_shared<LossParetoFigure>(losses);
}

}  // namespace plot
