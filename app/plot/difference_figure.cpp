// SPDX-License-Identifier: MIT
#include "app/plot/difference_figure.h"

#include <QCoreApplication>
#include <cstddef>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class DifferenceFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(DifferenceFigure)

  public:
    DifferenceFigure(const core::Comparison& comparison, int pair)
        : day_(comparison.horizonDay), level_(comparison.level) {
        const core::Pair* found = pairAt(comparison, pair);
        if (!found) {
            reason_ = nothingToCompare(comparison);
            return;
        }
        pair_ = *found;
        first_ = nameOf(comparison.arms[static_cast<std::size_t>(pair_.first)]);
        second_ = nameOf(comparison.arms[static_cast<std::size_t>(pair_.second)]);
        if (!pair_.difference)
            reason_ =
                tr("One of %1 and %2 has no cutting assessed at day %3 yet.").arg(first_, second_, countText(day_));
    }

    QString sentence() const override {
        if (!reason_.isEmpty()) return tr("How sure: nothing to compare yet");
        const core::PairDifference& difference = *pair_.difference;
        const core::Limits limits = difference.withSpread.value_or(difference.miettinenNurminen);
        const bool isInside = limits.low <= difference.value && difference.value <= limits.high;
        const QString value = differenceText(isInside ? difference.value : difference.valueWithSpread());
        const QString fits = differenceLimitsText(limits);
        if (value == differenceText(0))
            return tr("%1 and %2 rooted equally; anything from %3 fits these records")
                .arg(capitalised(first_), second_, fits);
        return tr("%1 rooted %2 than %3; anything from %4 fits these records")
            .arg(capitalised(first_), value, second_, fits);
    }

    QString method() const override {
        if (!reason_.isEmpty()) return {};
        const QString counted =
            tr("Difference at day %1 in points of 100 assessed. Thick: %2 interval as counted, Miettinen and Nurminen.")
                .arg(countText(day_), levelText(level_));
        return pair_.difference->withSpread
                   ? counted + u' ' + tr("Thin: allowing for the spread, guarded t interval on batch rates.")
                   : counted;
    }

    FigureTable table() const override {
        FigureTable table{
            .title = sentence(),
            .headings = {tr("%1 minus %2").arg(first_, second_), tr("Points of 100"), tr("Low"), tr("High")},
            .rows = {}};
        if (!pair_.difference) return table;
        const auto add = [&](const QString& name, double value, const core::Limits& limits) {
            table.rows.push_back({name, points(value), points(limits.low), points(limits.high)});
        };
        const core::PairDifference& difference = *pair_.difference;
        add(tr("as counted"), difference.value, difference.miettinenNurminen);
        if (difference.withSpread)
            add(tr("allowing for the spread between batches"), difference.valueWithSpread(), *difference.withSpread);
        return table;
    }

    QSizeF sizeInEms() const override { return {54, 12}; }

  private:
    static QString points(double difference) { return decimalText(100 * difference, 1); }

    QStringList remarks() const {
        QStringList remarks;
        if (pair_.verdict == core::Verdict::CannotTellMethodFromStation)
            remarks << tr(
                "Caution: one station an arm. What the method does and what the station does cannot be told apart.");
        else if (pair_.verdict == core::Verdict::TooFewBatches)
            remarks << tr(
                "Caution: too few batches to see how much batches differ. The true interval is wider than the counts "
                "say.");
        return remarks;
    }

    static IntervalRow rowOf(const QString& name, double value, const core::Limits& limits) {
        IntervalRow row{.name = name,
                        .isPlantName = false,
                        .counts = {},
                        .value = value,
                        .thick = {},
                        .thin = {},
                        .mark = RowMark::Point,
                        .series = 0,
                        .weight = 1,
                        .figure = pointsText(value, limits),
                        .hint = {}};
        row.hint = tr("%1: %2 points of 100").arg(name, row.figure);
        return row;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (!reason_.isEmpty()) return drawEmptyPicture(canvas, area, reason_);
        IntervalRows rows{.nameHeading = tr("Interval"),
                          .countHeadings = {},
                          .figureHeading = tr("more of 100"),
                          .rows = {},
                          .pooled = {},
                          .scale = RowScale::Difference,
                          .lowSide = tr("%1 more", "an arm, at its side of zero").arg(second_),
                          .highSide = tr("%1 more", "an arm, at its side of zero").arg(first_),
                          .remarks = remarks()};
        const core::PairDifference& difference = *pair_.difference;
        rows.rows.push_back(rowOf(tr("as counted"), difference.value, difference.miettinenNurminen));
        rows.rows.back().thick = difference.miettinenNurminen;
        if (difference.withSpread) {
            rows.rows.push_back(rowOf(tr("with batch spread"), difference.valueWithSpread(), *difference.withSpread));
            rows.rows.back().thin = difference.withSpread;
        }
        drawIntervalRows(canvas, area, rows);
    }

    int day_{};
    double level_{};
    core::Pair pair_;
    QString first_, second_, reason_;
};

}  // namespace

std::shared_ptr<const Figure> differenceFigure(const core::Comparison& comparison, int pair) {
    return std::make_shared<DifferenceFigure>(comparison, pair);
}

}  // namespace plot
