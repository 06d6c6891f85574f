// SPDX-License-Identifier: MIT
#include "app/plot/speed_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstddef>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class SpeedFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(SpeedFigure)

  public:
    explicit SpeedFigure(const core::Comparison& comparison) : arms_(comparison.arms), level_(comparison.level) {}

    QString sentence() const override {
        std::vector<const core::Arm*> known;
        for (const core::Arm& arm : arms_)
            if (bestOf(arm)) known.push_back(&arm);
        if (known.empty()) return tr("Who roots and how fast: no curve can be fitted yet");
        std::stable_sort(known.begin(), known.end(),
                         [](auto* one, auto* other) { return bestOf(*one)->medianDay < bestOf(*other)->medianDay; });
        const core::Arm &fast = *known.front(), &slow = *known.back();
        if (known.size() == 1)
            return tr("Of those that root, half have rooted by %1 in %2").arg(medianText(fast), nameOf(fast));
        if (known.size() == 2)
            return tr("Of those that root, half have rooted by %1 in %2 and by %3 in %4")
                .arg(medianText(fast), nameOf(fast), medianText(slow), nameOf(slow));
        return tr("When half of those that root have rooted runs from %1 in %2 to %3 in %4")
            .arg(medianText(fast), nameOf(fast), medianText(slow), nameOf(slow));
    }

    QString method() const override {
        if (!hasFit()) return {};
        QString text =
            tr("Mixture-cure fit, the best of three shapes; %1 intervals. Thick: as counted.").arg(levelText(level_));
        if (isByBatch()) text += u' ' + tr("Thin: allowing for the spread between batches.");
        return text + u' ' + tr("Where it and the steps differ, believe the steps.");
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Arm"), tr("Stuck"), tr("Shape"), tr("Roots in the end, %"), tr("Low"),
                                       tr("High"), tr("Median day of those"), tr("Low"), tr("High"), tr("Intervals"),
                                       tr("Akaike's criterion"), tr("Why there is none")},
                          .rows = {}};
        for (const core::Arm& arm : arms_) {
            for (const core::FittedSpeed& fit : arm.speed.fits) table.rows.push_back(rowOf(arm, fit));
            if (!bestOf(arm)) {
                QStringList row{nameOf(arm), countText(arm.stuck)};
                while (row.size() + 1 < table.headings.size()) row << QString();
                table.rows.push_back(row << whyNot(arm));
            }
        }
        return table;
    }

    QSizeF sizeInEms() const override {
        if (!hasFit()) return {54, 9};
        const double reasonLines = 1.4 * static_cast<double>(reasons().size());
        return {54, std::clamp(10.5 + 4.2 * static_cast<double>(arms_.size()) + reasonLines, 15.0, 44.0)};
    }

  private:
    static const core::FittedSpeed* bestOf(const core::Arm& arm) {
        return arm.speed.fits.empty() ? nullptr : &arm.speed.fits.front();
    }
    static QString medianText(const core::Arm& arm) { return tr("day %1").arg(amountText(bestOf(arm)->medianDay)); }
    static QString percent(double share) { return decimalText(100 * share, 1); }

    static QString whyNot(const core::Arm& arm) {
        return arm.speed.whyNot.empty() ? tr("not worked out") : textOf(arm.speed.whyNot);
    }

    static QStringList rowOf(const core::Arm& arm, const core::FittedSpeed& fit) {
        const std::optional<core::Limits>& share = fit.rootingShareLimits;
        return {nameOf(arm),
                countText(arm.stuck),
                textOf(fit.shape),
                percent(fit.rootingShare),
                share ? percent(share->low) : QString(),
                share ? percent(share->high) : QString(),
                decimalText(fit.medianDay, 1),
                decimalText(fit.medianDayLimits.low, 1),
                decimalText(fit.medianDayLimits.high, 1),
                fit.isByBatch ? tr("allowing for the spread") : tr("as counted"),
                decimalText(fit.akaike, 1),
                QString()};
    }

    bool hasFit() const { return std::any_of(arms_.begin(), arms_.end(), bestOf); }
    bool isByBatch() const {
        return std::any_of(arms_.begin(), arms_.end(),
                           [](const core::Arm& arm) { return bestOf(arm) && bestOf(arm)->isByBatch; });
    }

    // One line an arm without a curve would fill the figure, so arms with the same reason share a line.
    QStringList reasons() const {
        std::vector<std::pair<QString, QStringList>> armsByReason;
        for (const core::Arm& arm : arms_) {
            if (bestOf(arm)) continue;
            const QString reason = whyNot(arm);
            const auto found = std::find_if(armsByReason.begin(), armsByReason.end(),
                                            [&](const auto& each) { return each.first == reason; });
            if (found == armsByReason.end())
                armsByReason.push_back({reason, {nameOf(arm)}});
            else
                found->second << nameOf(arm);
        }
        QStringList sentences;
        for (const auto& [reason, arms] : armsByReason)
            sentences << tr("No curve for %1: %2.", "arms, reason").arg(arms.join(tr(", ")), reason);
        return sentences;
    }

    IntervalRow rowOf(const core::Arm& arm, std::size_t series, RowScale scale) const {
        IntervalRow row{.name = nameOf(arm),
                        .isPlantName = false,
                        .counts = {countText(arm.stuck)},
                        .value = {},
                        .thick = {},
                        .thin = {},
                        .mark = RowMark::Series,
                        .series = series,
                        .weight = 1,
                        .figure = QStringLiteral("–"),
                        .hint = {}};
        const core::FittedSpeed* fit = bestOf(arm);
        row.hint = fit ? tr("%1: %2 curve").arg(row.name, textOf(fit->shape))
                       : tr("%1: %2", "arm, reason").arg(row.name, whyNot(arm));
        if (!fit) return row;
        const bool isShare = scale == RowScale::Share;
        const std::optional<core::Limits> limits = isShare ? fit->rootingShareLimits : fit->medianDayLimits;
        row.value = isShare ? fit->rootingShare : fit->medianDay;
        (fit->isByBatch ? row.thin : row.thick) = limits;
        row.figure = isShare ? shareText(*row.value) : amountText(*row.value);
        if (limits)
            row.figure = tr("%1 (%2)", "a figure and its interval")
                             .arg(row.figure, isShare ? limitsText(*limits) : daysText(*limits));
        row.hint += u'\n' + row.figure;
        return row;
    }

    static QString daysText(const core::Limits& limits) {
        return tr("%1 to %2", "days").arg(amountText(limits.low), amountText(limits.high));
    }

    IntervalRows rowsOf(RowScale scale) const {
        IntervalRows rows{
            .nameHeading = scale == RowScale::Share ? tr("Share that roots in the end") : tr("Median day of those"),
            .countHeadings = {tr("stuck")},
            .figureHeading = scale == RowScale::Share ? tr("of those stuck") : tr("day"),
            .rows = {},
            .pooled = {},
            .scale = scale,
            .lowSide = {},
            .highSide = {},
            .remarks = {}};
        for (std::size_t i = 0; i < arms_.size(); ++i) rows.rows.push_back(rowOf(arms_[i], i, scale));
        return rows;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (arms_.empty()) return drawEmptyPicture(canvas, area, tr("No batches to compare yet."));
        if (!hasFit()) return drawEmptyPicture(canvas, area, reasons().join(u' '));
        const double gap = 0.5 * canvas.em();
        const IntervalRows shares = rowsOf(RowScale::Share);
        IntervalRows days = rowsOf(RowScale::Day);
        days.remarks = reasons();
        const double half = area.top() + 0.44 * (area.height() - gap);
        const double end = drawIntervalRows(canvas, QRectF(area.topLeft(), QPointF(area.right(), half)), shares);
        drawIntervalRows(canvas, QRectF(QPointF(area.left(), end + gap), area.bottomRight()), days);
    }

    std::vector<core::Arm> arms_;
    double level_{};
};

}  // namespace

std::shared_ptr<const Figure> speedFigure(const core::Comparison& comparison) {
    return std::make_shared<SpeedFigure>(comparison);
}

}  // namespace plot
