// SPDX-License-Identifier: MIT
// What stands at each position of a station: whose it is and what was found there, from the records. The window's map and the printed one
// both show this.
#pragma once

#include <QString>
#include <optional>
#include <set>
#include <vector>

#include "app/plot/mark_keys.h"
#include "app/plot/position_map.h"
#include "core/batch/position_rules.h"
#include "core/records.h"

namespace plot {

/// What is known of one position.
struct PlaceContent {
    bool isBlocked{};
    core::BatchId batch{};  // unset: free
    QString code{};
    QString plant{};
    core::Date stuckOn{};
    std::optional<core::Finding> finding{};
    core::Date foundOn{};
    bool isOther{};   // not of the batch in focus
    bool isMarked{};  // by the look in progress
};

struct StationMap {
    core::Station station{};
    bool isRound{true};
    std::vector<MarkKey> keys{};
    std::vector<PlaceContent> contents{};  // row by row

    [[nodiscard]] const PlaceContent& at(core::Position position) const;
    [[nodiscard]] MapPlace placeAt(core::Position position) const;
    /// What positionMapFigure() paints.
    [[nodiscard]] PositionMap picture() const;
};

/// `focus` unset: all batches alike. `marked` are positions that a look in progress has decided; they carry no day. The focus' cuttings
/// come first where several batches have had a position, then those that still stand there; who stands there no more is left out where
/// there is a focus.
[[nodiscard]] StationMap stationMap(const core::Station& station, const std::vector<core::BatchRecord>& records,
                                    core::BatchId focus, const core::Shelves& shelves,
                                    const std::set<core::Position>& marked = {});

}  // namespace plot
