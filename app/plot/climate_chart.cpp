// SPDX-License-Identifier: MIT
#include "app/plot/climate_chart.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/plot/climate_text.h"
#include "app/plot/number_text.h"

namespace plot {

namespace {

struct ClimateChartWords {
    Q_DECLARE_TR_FUNCTIONS(ClimateChart)
};

}  // namespace

QString hoursText(double hours) {
    constexpr double few = 10;
    return ClimateChartWords::tr("%1 h", "hours").arg(decimalText(hours, hours < few && hours > 0 ? 1 : 0));
}

QString countedText(const ClimateChart& chart) {
    const int count = chart.figures ? chart.figures->readings : 0;
    if (chart.quantity == core::ClimateQuantity::DailyLight)
        return count == 1 ? ClimateChartWords::tr("1 whole day")
                          : ClimateChartWords::tr("%n whole days", nullptr, count);
    if (!core::measuredQuantityOf(chart.quantity))
        return count == 1 ? ClimateChartWords::tr("worked out at 1 moment")
                          : ClimateChartWords::tr("worked out at %n moments", nullptr, count);
    return count == 1 ? ClimateChartWords::tr("1 reading") : ClimateChartWords::tr("%n readings", nullptr, count);
}

QString coveredText(const core::LivedFigures& figures) {
    return ClimateChartWords::tr("%1 of the time covered").arg(shareText(figures.covered()));
}

QString outsideText(const ClimateChart& chart) {
    if (!chart.figures) return ClimateChartWords::tr("nothing known in this time");
    const core::LivedFigures& figures = *chart.figures;
    if (figures.isMeanOfReadings) return ClimateChartWords::tr("readings too far apart to tell hours");
    if (figures.hoursWithBand <= 0) return ClimateChartWords::tr("no band to set beside it");
    return ClimateChartWords::tr("%1 of %2 outside its band")
        .arg(hoursText(figures.hoursOutside()), hoursText(figures.hoursWithBand));
}

QString chartBandsText(const ClimateChart& chart) {
    QStringList parts;
    for (const BandStretch& stretch : chart.bands) {
        const QString part = ClimateChartWords::tr("%1 (%2, %3)", "a band, a stage, whose it is")
                                 .arg(bandText(stretch.band.band, stretch.band.quantity, chart.units),
                                      stageName(stretch.band.stage), ownerText(stretch.band.owner));
        if (!parts.contains(part)) parts << part;
    }
    if (parts.isEmpty()) return {};
    return ClimateChartWords::tr("good: %1").arg(parts.join(ClimateChartWords::tr(", then ", "between two bands")));
}

core::BandsInTime bandsInTime(const ClimateChart& chart) {
    core::BandsInTime bands;
    core::Moment reached = chart.from;
    for (const BandStretch& stretch : chart.bands) {
        if (stretch.from > reached || bands.pieces.empty()) bands.pieces.push_back({reached, {}});
        bands.pieces.push_back({stretch.from, stretch.band.band});
        reached = stretch.to;
    }
    if (!bands.pieces.empty() && reached < chart.to) bands.pieces.push_back({reached, {}});
    return bands;
}

}  // namespace plot
