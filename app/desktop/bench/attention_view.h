// SPDX-License-Identifier: MIT
// What on the bench is out of the ordinary, in words: batches that do worse than earlier ones, and readings outside their bands. Each row
// names the place where it is dealt with.
#pragma once

#include <QString>
#include <span>
#include <vector>

#include "core/climate/band_warning.h"
#include "core/climate/reading.h"
#include "core/comparison/behind.h"
#include "core/records.h"

namespace desktop {

struct AttentionRow {
    core::BatchId batch;  // one of these two is set
    core::StationId station;
    QString subject;  // a batch's code, a station's name
    QString why;
    QString detail;  // the whole story, for the tooltip
};

/// `readings` hold the newest of each station and quantity; those of stations that hold nothing are left out, and those that are too old
/// to say how things are. Judged by the bands of the stages of what stands there: the strictest warns.
[[nodiscard]] std::vector<AttentionRow> attentionRows(std::span<const core::BehindThePast> behind,
                                                      std::span<const core::Reading> readings,
                                                      std::span<const core::BatchLine> lines,
                                                      const core::Shelves& shelves, core::Moment now);

/// "EC 0.45 mS/cm, pH 6.1, solution 21.0 °C"; empty when nothing was read. `isOutside`: one of them is outside a band of what stands there.
struct ReadingsGlance {
    QString text;
    QString detail;  // with days and bands
    bool isOutside{};
};
[[nodiscard]] ReadingsGlance readingsGlance(const core::Station& station, std::span<const core::Reading> readings,
                                            std::span<const core::Standing> standing, const core::Shelves& shelves);

}  // namespace desktop
