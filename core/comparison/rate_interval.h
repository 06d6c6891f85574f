// SPDX-License-Identifier: MIT
// The intervals for one strike rate, as counted, that a grower can choose from.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/comparison/arm.h"

namespace core {

struct LogbookFacts;

enum class RateInterval { Wilson, WilsonContinuity, ClopperPearson, Jeffreys, AgrestiCoull, MidP };

inline constexpr std::array everyRateInterval{RateInterval::Wilson,         RateInterval::WilsonContinuity,
                                              RateInterval::ClopperPearson, RateInterval::Jeffreys,
                                              RateInterval::AgrestiCoull,   RateInterval::MidP};

/// As in files and on the command line: "wilson", "wilson_continuity", "clopper_pearson", "jeffreys", "agresti_coull", "mid_p".
[[nodiscard]] std::string_view wordFor(RateInterval interval);
/// For people: "Wilson", "Clopper and Pearson".
[[nodiscard]] std::string_view nameOf(RateInterval interval);
[[nodiscard]] std::optional<RateInterval> rateIntervalFrom(std::string_view word);
/// The one that the logbook sets; Wilson's while its word says nothing to us.
[[nodiscard]] RateInterval intervalOf(const LogbookFacts& facts);

/// Domain: 0 <= rooted <= assessed, 0 < level < 1. Nothing counted: 0 to 1.
[[nodiscard]] Limits rateLimits(RateInterval interval, int rooted, int assessed, double level);

}  // namespace core
