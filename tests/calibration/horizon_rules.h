// SPDX-License-Identifier: MIT
// Ways to count rooted of assessed at the horizon where looks don't fall on it. The program's own is the first; the others are
// candidates, measured beside it.
#pragma once

#include <array>
#include <optional>
#include <span>

#include "stats/numeric/seeded_random.h"
#include "tests/calibration/season.h"
#include "tests/calibration/tally.h"

namespace calibration {

/// Rooted of assessed in one batch. Nothing where the rule leaves the batch out.
using HorizonRule = std::optional<stats::Tray> (*)(int stuck, std::span<const core::Look> looks);

struct NamedRule {
    const char* name{};
    HorizonRule count{};
};
[[nodiscard]] std::span<const NamedRule> horizonRules();

/// The curve at the horizon is no count of a batch, so it stands apart.
inline constexpr const char* curveAtHorizon = "rooted-by-day curve at the horizon";

/// Kinds of season that this is about.
struct HorizonScene {
    const char* name{};
    std::array<int, 2> lookEvery{};
    double openShare{};
};
[[nodiscard]] std::span<const HorizonScene> horizonScenes();

/// For each rule in a scene of equal arms: the error of the second arm's rate, the error of the difference, whether the interval with
/// spread covers, whether the guarded t test says that they differ. The cell counts scenes as trays.
void judgeHorizonRules(const Season& season, const Cell& cell, Tally& tally);

}  // namespace calibration
