// SPDX-License-Identifier: MIT
#include "app/plot/batch_strip_bands.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/plot/axis.h"
#include "app/plot/climate_text.h"

namespace plot {

namespace {

struct StripBandWords {
    Q_DECLARE_TR_FUNCTIONS(BatchStripFigure)
};

}  // namespace

QString goodBandsText(const std::vector<core::BandFrom>& bands, core::Quantity quantity,
                      const core::DisplayUnits& units) {
    QStringList parts;
    for (const core::BandFrom& piece : bands) {
        if (!piece.band) continue;
        const QString text = bandNumbers(piece.band->band, core::climateQuantityOf(quantity), units);
        if (parts.isEmpty() || parts.back() != text) parts << text;
    }
    if (parts.isEmpty()) return {};
    return StripBandWords::tr("good: %1").arg(parts.join(StripBandWords::tr(", then ", "between two bands")));
}

std::vector<StripBand> stripBands(const std::vector<core::BandFrom>& bands,
                                  const std::vector<const core::Reading*>& readings, core::Date stuckOn, int lastDay,
                                  const core::DisplayUnits& units) {
    std::vector<StripBand> shown;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        if (!bands[i].band || readings.empty()) continue;
        const core::Quantity quantity = readings.front()->quantity;
        const core::Band band =
            drawnBand(bands[i].band->band, core::climateQuantityOf(quantity), [&](double& low, double& high) {
                for (const core::Reading* reading : readings) {
                    low = std::min(low, reading->value);
                    high = std::max(high, reading->value);
                }
            });
        const bool isLast = i + 1 == bands.size();
        shown.push_back({.fromDay = static_cast<double>(i == 0 ? 0 : core::daysBetween(stuckOn, bands[i].from)),
                         .toDay = static_cast<double>(isLast ? lastTickFor(lastDay)
                                                             : core::daysBetween(stuckOn, bands[i + 1].from)),
                         .low = core::shownValue(band.low, quantity, units),
                         .high = core::shownValue(band.high, quantity, units)});
    }
    return shown;
}

}  // namespace plot
