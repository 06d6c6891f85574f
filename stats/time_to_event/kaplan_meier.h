// SPDX-License-Identifier: MIT
// Share without the event by day, when days are known exactly and nothing competes with it. With cuttings both seldom
// hold: competing_risks_npmle.h is the one to use; this one is for comparison with other programs.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/interval.h"
#include "stats/time_to_event/aalen_johansen.h"

namespace stats {

/// After the events of one day.
struct SurvivalStep {
    double day{};
    double atRisk{};  // just before
    double events{};
    double survival{1.0};
    std::optional<double> standardError;  // Greenwood; absent where survival is 0
    std::optional<Interval> limits;       // formed on the scale of log(-log); absent where survival is 0 or 1
};

/// Kaplan and Meier's estimate, one step for each day with an event; events come before withdrawals on the same day.
///
/// Domain    as aalenJohansen(), and no cause 2; 0 < level < 1; else std::domain_error. No rows is allowed.
/// Returns   empty without events. A survival below 1e-12 of the one before counts as 0. One that is 1 to all digits
///           has no limits.
/// Assumes   withdrawal has nothing to do with what would have happened.
/// Accuracy  1e-12 relative.
/// Source    Kaplan and Meier (1958), J. Am. Stat. Assoc. 53, 457-481; Kalbfleisch and Prentice (2002), The Statistical
///           Analysis of Failure Time Data, 2nd ed., section 1.4.
[[nodiscard]] std::vector<SurvivalStep> kaplanMeier(std::span<const ExactDay> rows, double level = 0.95);

}  // namespace stats
