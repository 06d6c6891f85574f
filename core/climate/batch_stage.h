// SPDX-License-Identifier: MIT
// In which stage a batch is on a day, as far as its records tell.
#pragma once

#include <vector>

#include "core/climate/own_band.h"
#include "core/records.h"

namespace core {

/// Before the first rooted cutting is found a batch is before roots; from that day on it has first roots; from the day on which half of
/// those stuck are rooted its roots are filling. It is hardening from the day on which nothing is undecided any more or it was closed by
/// hand, where anything rooted: what roots is then taken to leave the humid air. One that is over with nothing rooted stays before roots.
///
/// Roots are there before they are found, and batches differ more than days do: the stages are a guide for bands, not an observation.
/// The half and the end are common practice, no source.
[[nodiscard]] Stage stageOf(const Batch& batch, const Tally& tally);
/// At the end of the day.
[[nodiscard]] Stage stageOn(const BatchRecord& record, Date day);

struct StageFrom {
    Date from{};
    Stage stage{Stage::BeforeRoots};

    bool operator==(const StageFrom&) const = default;
};
/// All of them in order; the first from the day of sticking.
[[nodiscard]] std::vector<StageFrom> stagesOf(const BatchRecord& record);

}  // namespace core
