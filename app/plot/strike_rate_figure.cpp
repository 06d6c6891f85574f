// SPDX-License-Identifier: MIT
#include "app/plot/strike_rate_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstddef>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class StrikeRateFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(StrikeRateFigure)

  public:
    explicit StrikeRateFigure(const core::Comparison& comparison)
        : arms_(comparison.arms),
          day_(comparison.horizonDay),
          level_(comparison.level),
          interval_(comparison.interval) {}

    QString sentence() const override {
        std::vector<const core::Arm*> known;
        for (const core::Arm& arm : arms_)
            if (arm.rate) known.push_back(&arm);
        if (known.empty()) return tr("Strike rate: nothing assessed yet");
        std::stable_sort(known.begin(), known.end(), [](auto* one, auto* other) { return *one->rate > *other->rate; });
        const core::Arm &best = *known.front(), &last = *known.back();
        if (known.size() == 1) return tr("By day %1, %2 rooted %3").arg(countText(day_), nameOf(best), rateText(best));
        if (known.size() == 2)
            return tr("By day %1, %2 rooted %3 and %4 %5")
                .arg(countText(day_), nameOf(best), rateText(best), nameOf(last), rateText(last));
        return tr("By day %1 the strike rate runs from %2 in %3 to %4 in %5")
            .arg(countText(day_), rateText(last), nameOf(last), rateText(best), nameOf(best));
    }

    QString method() const override {
        if (arms_.empty()) return {};
        const QString counted =
            tr("Rooted of those assessed at day %1. Thick: %2 interval, as counted (%3).")
                .arg(countText(day_), levelText(level_), QString::fromUtf8(core::nameOf(interval_)));
        return hasSpread() ? counted + u' ' + tr("Thin: allowing for the spread between batches.") : counted;
    }

    FigureTable table() const override {
        FigureTable table{
            .title = sentence(),
            .headings = {tr("Arm"), tr("Batches"), tr("Rooted"), tr("Assessed"), tr("Rate, %"), tr("As counted, low"),
                         tr("As counted, high"), tr("With spread, low"), tr("With spread, high")},
            .rows = {}};
        for (const core::Arm& arm : arms_)
            table.rows.push_back({nameOf(arm), countText(arm.batches), countText(arm.rooted), countText(arm.assessed),
                                  percent(arm.rate), percent(lowOf(arm.asCounted)), percent(highOf(arm.asCounted)),
                                  percent(lowOf(arm.withSpread)), percent(highOf(arm.withSpread))});
        return table;
    }

    QSizeF sizeInEms() const override {
        return {54, std::clamp(8.5 + 1.9 * static_cast<double>(arms_.size()), 11.0, 40.0)};
    }

  private:
    static QString percent(std::optional<double> share) { return share ? decimalText(100 * *share, 1) : QString(); }
    static std::optional<double> lowOf(const std::optional<core::Limits>& limits) {
        return limits ? std::optional(limits->low) : std::nullopt;
    }
    static std::optional<double> highOf(const std::optional<core::Limits>& limits) {
        return limits ? std::optional(limits->high) : std::nullopt;
    }
    bool hasSpread() const {
        return std::any_of(arms_.begin(), arms_.end(), [](const core::Arm& arm) { return arm.withSpread.has_value(); });
    }

    IntervalRow rowOf(const core::Arm& arm, std::size_t series) const {
        IntervalRow row{.name = nameOf(arm),
                        .isPlantName = false,
                        .counts = {countText(arm.batches)},
                        .value = arm.rate,
                        .thick = arm.asCounted,
                        .thin = arm.withSpread,
                        .mark = RowMark::Series,
                        .series = series,
                        .weight = 1,
                        .figure = rateText(arm),
                        .hint = {}};
        if (!arm.rate) row.thick.reset(), row.thin.reset();
        row.hint = tr("%1: %2").arg(row.name, row.figure);
        if (row.thick) row.hint += u'\n' + tr("as counted %1").arg(limitsText(*row.thick));
        if (row.thin) row.hint += u'\n' + tr("with the spread between batches %1").arg(limitsText(*row.thin));
        return row;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (arms_.empty()) return drawEmptyPicture(canvas, area, tr("No batches to compare yet."));
        IntervalRows rows{.nameHeading = tr("Arm"),
                          .countHeadings = {tr("batches")},
                          .figureHeading = tr("rooted of assessed"),
                          .rows = {},
                          .pooled = {},
                          .scale = RowScale::Share,
                          .lowSide = {},
                          .highSide = {},
                          .remarks = {}};
        for (std::size_t i = 0; i < arms_.size(); ++i) rows.rows.push_back(rowOf(arms_[i], i));
        drawIntervalRows(canvas, area, rows);
    }

    std::vector<core::Arm> arms_;
    int day_{};
    double level_{};
    core::RateInterval interval_{};
};

}  // namespace

std::shared_ptr<const Figure> strikeRateFigure(const core::Comparison& comparison) {
    return std::make_shared<StrikeRateFigure>(comparison);
}

}  // namespace plot
