// SPDX-License-Identifier: MIT
#include "app/console/dose_output.h"

#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

namespace {

std::string bestWord(core::BestDose best) {
    switch (best) {
        case core::BestDose::TooFewDoses:
            return "too_few_doses";
        case core::BestDose::NoCurve:
            return "no_curve";
        case core::BestDose::Inside:
            return "inside";
        case core::BestDose::NoTop:
            return "no_top";
        case core::BestDose::BelowLowest:
            return "below_lowest";
        case core::BestDose::AboveHighest:
            return "above_highest";
    }
    return {};
}

Json pointsJson(const std::vector<core::DosePoint>& points) {
    Json list = Json::array();
    for (const core::DosePoint& point : points)
        list.push_back({{"dose", figure(point.milligramsPerLitre)},
                        {"batches", point.batches},
                        {"rooted", point.rooted},
                        {"assessed", point.assessed},
                        {"rate", figure(point.rate)},
                        {"as_counted", limits(point.asCounted)}});
    return list;
}

}  // namespace

Json dosesJson(const std::vector<core::DoseSeries>& all) {
    Json list = Json::array();
    for (const core::DoseSeries& series : all)
        list.push_back({{"auxin", series.auxin},
                        {"unit", series.isPowder ? "mg/kg" : "mg/L"},
                        {"points", pointsJson(series.points)},
                        {"trend_p", figure(series.trendP)},
                        {"batch_trend_p", figure(series.batchTrendP)},
                        {"trend_per_step", figure(series.trendPerStep)},
                        {"best", bestWord(series.best)},
                        {"estimator", series.isFirth ? "firth" : "maximum_likelihood"},
                        {"best_dose", figure(series.bestMilligrams)},
                        {"best_rate", figure(series.bestRate)},
                        {"best_dose_as_counted", limits(series.asCounted)},
                        {"best_dose_with_spread", limits(series.withSpread)},
                        {"in_words", series.inWords}});
    return list;
}

void printDoses(const std::vector<core::DoseSeries>& all, std::ostream& out) {
    for (const core::DoseSeries& series : all) {
        out << '\n' << filled(tr("Doses of %1"), {series.auxin}) << '\n';
        TextTable table({{filled("  %1", {series.isPowder ? "mg/kg" : "mg/L"}), TextTable::Align::Right},
                         {tr("strike rate"), TextTable::Align::Left},
                         {tr("as counted"), TextTable::Align::Left},
                         {tr("batches"), TextTable::Align::Right}});
        for (const core::DosePoint& point : series.points)
            table.addRow({plot::amountText(point.milligramsPerLitre).toStdString(),
                          plot::percentText(point.rooted, point.assessed).toStdString(),
                          plot::limitsText(point.asCounted).toStdString(), std::to_string(point.batches)});
        table.printTo(out);
        out << "  "
            << filled(tr("trend over the order of doses: as counted %1 (Cochran-Armitage); on batch rates %2"),
                      {plot::pText(series.trendP).toStdString(), series.batchTrendP
                                                                     ? plot::pText(*series.batchTrendP).toStdString()
                                                                     : tr("too few batches, or none that differ")})
            << "\n  " << series.inWords << '\n';
    }
}

}  // namespace console
