// SPDX-License-Identifier: MIT
// Which questions the stations at hand can't answer, and what could: common practice of experiments, no source of our own needed. Cuttings of
// one station share its water, its warmth and its mishaps, so a station counts rather than a cutting where arms stand apart.
#pragma once

#include <string>
#include <vector>

#include "core/records.h"
#include "core/trial/allocate_trial.h"

namespace core {

/// Plain sentences; none when nothing stands against it. Domain: as allocateTrial().
[[nodiscard]] std::vector<std::string> stationAdvice(const Trial& design, const TrialLayout& layout,
                                                     const Shelves& shelves);

}  // namespace core
