// SPDX-License-Identifier: MIT
// What a batch lived through at its station: of each quantity the mean, the extremes and the hours outside the band of its stage, in its
// first days and in all.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/climate/stage_bands.h"
#include "core/climate/station_climate.h"

namespace core {

/// Of one quantity over one stretch of time. Nothing is made up for times without readings: they are not in the mean, and neither in the
/// hours inside nor in those outside a band.
struct LivedFigures {
    double hours{};         // of the stretch
    double hoursCovered{};  // of which readings tell, on straight lines between them: see longestGapOf()
    int readings{};         // in the stretch; of the light of a day, well covered days
    double mean{};          // over the time covered; where none is, of the readings
    bool isMeanOfReadings{};
    double lowest{};  // of the readings
    double highest{};
    double hoursWithBand{};  // covered, and a band is known for the stage
    double hoursBelow{};
    double hoursAbove{};
    std::optional<double> degreeDays{};  // of temperatures, above the logbook's base, over the time covered

    [[nodiscard]] double hoursOutside() const { return hoursBelow + hoursAbove; }
    [[nodiscard]] double covered() const { return hours > 0 ? hoursCovered / hours : 0; }
    bool operator==(const LivedFigures&) const = default;
};

inline constexpr std::array firstDays{3, 7, 14};

struct LivedQuantity {
    ClimateQuantity quantity{};
    std::array<std::optional<LivedFigures>, firstDays.size()> first{};  // nothing: not so old yet, or nothing read
    LivedFigures all{};

    bool operator==(const LivedQuantity&) const = default;
};

/// A stretch of time with the bands that hold in it, in order; the first from its beginning.
struct BandsInTime {
    struct Piece {
        Moment from{};
        std::optional<Band> band{};
    };
    std::vector<Piece> pieces{};
};

/// Nothing where there is no reading in it and no line through it.
///
/// Domain    values in order of time; `to` later than `from`, by ten years at most.
/// Accuracy  exact for the straight lines, as core/climate/over_time.h.
[[nodiscard]] std::optional<LivedFigures> figuresOver(std::span<const TimedValue> values, ClimateQuantity quantity,
                                                      const BandsInTime& bands, Moment from, Moment to,
                                                      double degreeDayBase);
/// The same of the light of days: whole, well covered ones. Hours are those of the days.
[[nodiscard]] std::optional<LivedFigures> figuresOverDays(std::span<const LightOfDay> days, const BandsInTime& bands,
                                                          Moment from, Moment to);

/// The batch's bands of one quantity as they follow each other in time.
[[nodiscard]] BandsInTime bandsInTime(const Shelves& shelves, const BatchRecord& record, ClimateQuantity quantity,
                                      const DayStart& dayStart);

/// From the beginning of the day of sticking to `until`, by ten years at most. Quantities of which nothing is known are left out.
/// `climate` is that of its station over that time at least.
[[nodiscard]] std::vector<LivedQuantity> livedThrough(const BatchRecord& record, const Shelves& shelves,
                                                      const StationClimate& climate, Moment until,
                                                      const DayStart& dayStart);

}  // namespace core
