// SPDX-License-Identifier: MIT
// The climate of one station over a span, read from the logbook and worked out: a chart of each quantity that has values. Takes as long as
// there are samples; a window asks for it away from its own thread.
#pragma once

#include <optional>
#include <vector>

#include "app/plot/climate_chart.h"
#include "core/comparison/condition_features.h"

namespace db {
class Logbook;
}

namespace plot {

struct ChartsQuestion {
    core::StationId station{};
    std::optional<core::Moment> from{};  // nothing: from the first reading or sample on, ten years at most
    core::Moment to{};
    core::BatchId batch{};                        // whose bands are drawn, as its stages follow each other
    core::Stage stage{core::Stage::BeforeRoots};  // where no batch is given: of this stage, in general

    bool operator==(const ChartsQuestion&) const = default;
};

/// In the order of core::allClimateQuantities(); none where nothing is known.
[[nodiscard]] std::vector<ClimateChart> stationCharts(const db::Logbook& logbook, const core::Shelves& shelves,
                                                      const ChartsQuestion& question);

/// What is measured at a station, with as much before and after as lines need to reach the ends.
[[nodiscard]] core::MeasuredValues measuredAt(const db::Logbook& logbook, core::StationId station, core::Moment from,
                                              core::Moment to);
/// What a batch lived through until `now` or its end, whichever comes first. Nothing without a station.
[[nodiscard]] std::vector<core::LivedQuantity> livedThroughOf(const db::Logbook& logbook,
                                                              const core::BatchRecord& record,
                                                              const core::Shelves& shelves, core::Date today,
                                                              core::Moment now);
/// The climate of every station over all that was ever read there, to be set beside what rooted.
[[nodiscard]] core::ConditionsOnRecord conditionsOnRecord(const db::Logbook& logbook, const core::Shelves& shelves);
/// When a day begins here.
[[nodiscard]] core::Moment dayStart(core::Date day);

}  // namespace plot
