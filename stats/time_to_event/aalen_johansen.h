// SPDX-License-Identifier: MIT
// Cumulative incidence of two competing events whose days are known exactly. Checks seldom allow that:
// competing_risks_npmle.h is the one to use; this is what it turns into when they do, and the oracle in its test.
#pragma once

#include <span>
#include <vector>

namespace stats {

struct ExactDay {
    double day{};
    int cause{};  // 0 withdrawn, 1 or 2 the event
    double weight{1.0};
};

/// After the events of one day.
struct IncidenceStep {
    double day{};
    double atRisk{};  // just before
    double events1{};
    double events2{};
    double share1{};
    double share2{};
    double eventFree{};
    double variance1{};  // of share1, delta method
    double variance2{};
};

/// Aalen and Johansen's estimate, one step for each day with an event; events come before withdrawals on the same
/// day.
///
/// Domain    day >= 0 and finite, cause 0, 1 or 2, weight >= 0 and finite; else std::domain_error. No rows is
///           allowed.
/// Returns   empty without events.
/// Assumes   withdrawal has nothing to do with what would have happened.
/// Accuracy  1e-9 relative. The variances are the delta method's, as survival::survfit gives them; cmprsk::cuminc's
///           Aalen-type ones differ by 1 to 30 % in samples of 40, and both are legitimate.
/// Source    Aalen and Johansen (1978), Scand. J. Stat. 5, 141-150.
[[nodiscard]] std::vector<IncidenceStep> aalenJohansen(std::span<const ExactDay> rows);

}  // namespace stats
