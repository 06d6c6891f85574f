// SPDX-License-Identifier: MIT
#include "app/plot/dose_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/canvas.h"
#include "app/plot/dose_picture.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class DoseFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(DoseFigure)

  public:
    DoseFigure(core::DoseSeries series, double level) : series_(std::move(series)), level_(level) {}

    QString sentence() const override {
        if (series_.points.empty()) return tr("Doses: nothing assessed yet");
        return tr("%1: %2", "an auxin, and what is known of its best dose").arg(textOf(series_.auxin), best());
    }

    QString method() const override {
        if (series_.points.empty()) return {};
        QString text = tr("Rooted of those assessed; bars: Wilson's %1 interval, as counted.").arg(levelText(level_));
        if (series_.curve.empty()) return text;
        text += u' ' + (series_.isFirth ? tr("Curve: logistic on log dose and its square (Firth's).")
                                        : tr("Curve: logistic on log dose and its square."));
        text += u' ' + (hasSpreadBand() ? tr("Band: %1, allowing for the spread between batches.")
                                        : tr("Band: %1, as counted."))
                           .arg(levelText(level_));
        return series_.bestMilligrams ? text + u' ' + tr("Best dose: Fieller's interval.") : text;
    }

    FigureTable table() const override {
        FigureTable table{
            .title = sentence(),
            .headings = {tr("What"), series_.isPowder ? tr("Dose, mg/kg") : tr("Dose, mg/L"), tr("Batches"),
                         tr("Rooted"), tr("Assessed"), tr("Rate, %"), tr("Low"), tr("High"), tr("Interval")},
            .rows = {}};
        for (const core::DosePoint& point : series_.points)
            table.rows.push_back({point.milligramsPerLitre > 0 ? tr("dose") : tr("untreated"),
                                  doseAmount(point.milligramsPerLitre), countText(point.batches),
                                  countText(point.rooted), countText(point.assessed), percent(point.rate),
                                  percent(point.asCounted.low), percent(point.asCounted.high), tr("as counted")});
        addBest(table);
        for (const core::DoseCurvePoint& point : series_.curve) {
            const core::Limits& band = point.withSpread ? *point.withSpread : point.asCounted;
            table.rows.push_back({tr("fitted curve"), doseAmount(point.milligramsPerLitre), QString(), QString(),
                                  QString(), percent(point.rate), percent(band.low), percent(band.high),
                                  point.withSpread ? tr("with spread") : tr("as counted")});
        }
        return table;
    }

    QSizeF sizeInEms() const override { return {54, 24}; }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }

    bool hasSpreadBand() const {
        return std::any_of(series_.curve.begin(), series_.curve.end(),
                           [](const core::DoseCurvePoint& point) { return point.withSpread.has_value(); });
    }

    QString best() const {
        switch (series_.best) {
            case core::BestDose::TooFewDoses:
                return tr("too few doses for a curve");
            case core::BestDose::NoCurve:
                return series_.whyNoCurve.empty() ? tr("no curve can be drawn")
                                                  : tr("no curve, since %1").arg(textOf(series_.whyNoCurve));
            case core::BestDose::Inside:
                break;
            case core::BestDose::NoTop:
                return tr("the curve has no top among these doses");
            case core::BestDose::BelowLowest:
                return tr("the curve is highest at the lowest dose tried, or below it");
            case core::BestDose::AboveHighest:
                return tr("the curve is highest at the highest dose tried, or above it");
        }
        if (!series_.bestMilligrams || !series_.bestRate) return tr("no curve can be drawn");
        if (!bestDoseLimits(series_)) return tr("where the top of the curve lies can't be told from these batches");
        const QString top = tr("best near %1, where about %2 of 100 would root")
                                .arg(doseText(series_, *series_.bestMilligrams),
                                     countText(static_cast<int>(std::lround(100 * *series_.bestRate))));
        const auto limits = bestDoseLimits(series_);
        return limits ? tr("%1; anything from %2 to %3 fits these records")
                            .arg(top, doseAmount(limits->low), doseText(series_, limits->high))
                      : tr("%1, but no dose can be excluded").arg(top);
    }

    void addBest(FigureTable& table) const {
        if (!series_.bestMilligrams) return;
        table.rows.push_back({tr("best dose"), doseAmount(*series_.bestMilligrams), QString(), QString(), QString(),
                              series_.bestRate ? percent(*series_.bestRate) : QString(), QString(), QString(),
                              QString()});
        const auto add = [&](const std::optional<core::Limits>& limits, const QString& kind) {
            if (!limits) return;
            for (const auto& [name, dose] :
                 {std::pair(tr("best dose, low"), limits->low), std::pair(tr("best dose, high"), limits->high)})
                table.rows.push_back(
                    {name, doseAmount(dose), QString(), QString(), QString(), QString(), QString(), QString(), kind});
        };
        add(series_.asCounted, tr("as counted"));
        add(series_.withSpread, tr("with spread"));
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (series_.points.empty())
            drawEmptyPicture(canvas, area, tr("No cutting of these doses is assessed yet."));
        else
            drawDosePicture(canvas, area, series_);
    }

    core::DoseSeries series_;
    double level_{};
};

}  // namespace

std::shared_ptr<const Figure> doseFigure(const core::DoseSeries& series, double level) {
    return std::make_shared<DoseFigure>(series, level);
}

}  // namespace plot
