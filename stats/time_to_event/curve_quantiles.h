// SPDX-License-Identifier: MIT
// Reading a curve that competing_risks_npmle.h gave: how many by which day, and by which day how many, as far as the
// checks can tell.
#pragma once

#include <optional>
#include <span>

#include "stats/time_to_event/competing_risks_npmle.h"

namespace stats {

/// Between the two, since mass inside (left, right] may already have come or not.
struct ShareBounds {
    double atLeast{};
    double atMost{};
};

/// Share that has had the event by the end of `day`. The two bounds are the same on a day on which every curve's
/// interval ends or starts.
[[nodiscard]] ShareBounds cumulativeShare(std::span<const SupportInterval> curve, double day);

/// The same with the mass inside an interval spread evenly over it: between the bounds. For areas under a curve, not
/// for show.
[[nodiscard]] double interpolatedShare(std::span<const SupportInterval> curve, double day);

/// Of everyone at the start, or of those that ever have the event (as far as was watched). Half of all stuck may never
/// root; half of those that root do so by some day. The two are never the same question.
enum class ShareOf { Everyone, ThoseWithTheEvent };

/// After the one day, by the other; equal where the day is known exactly.
struct QuantileDay {
    double after{};
    double by{};
    double interpolated{};  // linear inside; for comparison with programs that give one number
};

/// The first interval in which the cumulative mass reaches `target` (up to 1e-9).
///
/// Domain    0 < target <= 1, else std::domain_error.
/// Returns   absent when not reached. Not reached is not the last day.
/// Source    Hudgens, Satten and Longini (2001), Biometrics 57, 74-80.
[[nodiscard]] std::optional<QuantileDay> quantileDay(std::span<const SupportInterval> curve, double target, ShareOf of);

}  // namespace stats
