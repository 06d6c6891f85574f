// SPDX-License-Identifier: MIT
// One quantity at one station over a span of time, with everything that its figure shows.
#pragma once

#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "core/climate/lived_through.h"
#include "core/climate/stage_bands.h"
#include "core/climate/station_climate.h"

namespace plot {

/// Where a band holds.
struct BandStretch {
    core::Moment from{};
    core::Moment to{};
    core::StageBand band{};
};

struct ClimateChart {
    core::ClimateQuantity quantity{};
    QString station;
    core::Moment from{};
    core::Moment to{};
    std::shared_ptr<const std::vector<core::TimedValue>> values{};  // of DailyLight none: it has days
    std::vector<core::TimedValue> byHand{};                         // those of them that a person read
    std::vector<core::LightOfDay> days{};                           // of DailyLight
    std::vector<BandStretch> bands{};
    std::vector<core::Care> care{};
    std::optional<core::LivedFigures> figures{};
    core::DisplayUnits units{};
};

/// "5 readings", "4 days"; and "outside its band in 3.5 of 48 h that readings cover" and the like, as one sentence.
[[nodiscard]] QString countedText(const ClimateChart& chart);
[[nodiscard]] QString outsideText(const ClimateChart& chart);
/// "34 % of the time covered"
[[nodiscard]] QString coveredText(const core::LivedFigures& figures);
/// "good: 0.50 to 1.00 mS/cm, first roots, the trade's"; several stages one after the other.
[[nodiscard]] QString chartBandsText(const ClimateChart& chart);
/// The stretches as figures are worked out with; between them nothing holds.
[[nodiscard]] core::BandsInTime bandsInTime(const ClimateChart& chart);
[[nodiscard]] QString hoursText(double hours);  // "0.4 h", "37 h"

}  // namespace plot
