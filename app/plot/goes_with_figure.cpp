// SPDX-License-Identifier: MIT
#include "app/plot/goes_with_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class GoesWithFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(GoesWithFigure)

  public:
    GoesWithFigure(core::GoesWith answer, double level) : answer_(std::move(answer)), level_(level) {}

    QString sentence() const override {
        if (answer_.associations.empty()) return tr("What went with rooting: nothing to show yet");
        constexpr qsizetype mostNamed = 3;
        QStringList clear;
        for (const core::Association& each : answer_.associations)
            if (isClear(each))
                clear << (each.oddsRatio > 1 ? tr("%1 (better)") : tr("%1 (worse)")).arg(textOf(each.name));
        if (clear.isEmpty()) return tr("What went with rooting: nothing on record, clearly");
        const qsizetype more = clear.size() - mostNamed;
        if (more > 0)
            return tr("What went with rooting: %1; and %2 more")
                .arg(clear.mid(0, mostNamed).join(tr("; ")), countText(static_cast<int>(more)));
        return tr("What went with rooting: %1").arg(clear.join(tr("; ")));
    }

    QString method() const override {
        if (answer_.associations.empty()) return {};
        QString text = tr("Odds ratios of one logistic regression on all of these at once (Firth's), %1, %2. Thick: %3 "
                          "interval as counted.")
                           .arg(batchesText(answer_.batches), cuttingsText(answer_.cuttings), levelText(level_));
        if (hasSpread())
            text += u' ' + tr("Thin: allowing for the spread. Called clear: adjusted for all looked at (Holm).");
        return text;
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("On record"), tr("Batches"), tr("Odds ratio"), tr("As counted, low"),
                                       tr("As counted, high"), tr("p as counted"), tr("With spread, low"),
                                       tr("With spread, high"), tr("p with spread"), tr("p, adjusted")},
                          .rows = {}};
        for (const core::Association& each : answer_.associations)
            table.rows.push_back({textOf(each.name), countText(each.batches), ratioText(each.oddsRatio),
                                  ratioText(each.asCounted.low), ratioText(each.asCounted.high), pText(each.asCountedP),
                                  each.withSpread ? ratioText(each.withSpread->low) : QString(),
                                  each.withSpread ? ratioText(each.withSpread->high) : QString(),
                                  each.withSpreadP ? pText(*each.withSpreadP) : QString(),
                                  each.holmP ? pText(*each.holmP) : QString()});
        for (const std::string& name : answer_.cannotBeTold) {
            QStringList row{textOf(name), QString(), tr("can't be told from the rest")};
            while (row.size() < table.headings.size()) row << QString();
            table.rows.push_back(row);
        }
        return table;
    }

    QSizeF sizeInEms() const override {
        if (answer_.associations.empty()) return {54, 9};
        return {54, std::clamp(12 + 1.8 * static_cast<double>(answer_.associations.size()), 14.0, 60.0)};
    }

  private:
    // Adjusted for all that were looked at: of twenty things one would else seem clear by luck.
    bool isClear(const core::Association& each) const { return each.holmP && *each.holmP < 1 - level_; }
    bool hasSpread() const {
        return std::any_of(answer_.associations.begin(), answer_.associations.end(),
                           [](const core::Association& each) { return each.withSpread.has_value(); });
    }

    static IntervalRow rowOf(const core::Association& each) {
        const core::Limits shown = each.withSpread.value_or(each.asCounted);
        IntervalRow row{.name = textOf(each.name),
                        .isPlantName = false,
                        .counts = {countText(each.batches)},
                        .value = each.oddsRatio,
                        .thick = each.asCounted,
                        .thin = each.withSpread,
                        .mark = RowMark::Point,
                        .series = 0,
                        .weight = 1,
                        .figure = ratioText(each.oddsRatio, shown),
                        .hint = {}};
        row.hint = tr("%1: odds ratio %2\nas counted %3")
                       .arg(row.name, ratioText(each.oddsRatio), ratioText(each.oddsRatio, each.asCounted));
        if (each.withSpread)
            row.hint +=
                u'\n' + tr("with the spread between batches %1").arg(ratioText(each.oddsRatio, *each.withSpread));
        return row;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (answer_.associations.empty()) {
            const QString why =
                answer_.whyNot.empty() ? tr("There are no batches to look at yet.") : textOf(answer_.whyNot);
            return drawEmptyPicture(canvas, area, why);
        }
        IntervalRows rows{
            .nameHeading = tr("On record"),
            .countHeadings = {tr("batches")},
            .figureHeading = hasSpread() ? tr("odds ratio, with spread") : tr("odds ratio, as counted"),
            .rows = {},
            .pooled = {},
            .scale = RowScale::Ratio,
            .lowSide = tr("fewer root"),
            .highSide = tr("more root"),
            .remarks = {tr("Records, not an experiment: what went with rooting need not have caused it.")}};
        for (const core::Association& each : answer_.associations) rows.rows.push_back(rowOf(each));
        drawIntervalRows(canvas, area, rows);
    }

    core::GoesWith answer_;
    double level_{};
};

}  // namespace

std::shared_ptr<const Figure> goesWithFigure(const core::GoesWith& answer, double level) {
    return std::make_shared<GoesWithFigure>(answer, level);
}

}  // namespace plot
