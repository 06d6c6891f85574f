// SPDX-License-Identifier: MIT
// One pooled answer over several species, sessions or blocks: the odds ratio and the difference of two rates after
// Mantel and Haenszel. Whether the strata agree with each other is the question of breslow_day_tarone_test.h; whether
// there is a difference at all that of cochran_mantel_haenszel_test.h.
#pragma once

#include <optional>
#include <span>

#include "stats/interval.h"
#include "stats/strata/stratum.h"

namespace stats {

struct PooledOddsRatio {
    std::optional<double> estimate;  // may be infinite; absent without an informative stratum
    Interval limits;                 // high may be infinite
    std::optional<double> standardErrorOfLog;
};

/// Mantel and Haenszel's odds ratio, arm 1 over arm 2, with the interval of Robins, Breslow and Greenland.
///
/// sum(a d / N) / sum(b c / N), a and b being successes and failures of arm 1, c and d of arm 2. Holds for few large
/// strata as well as for many thin ones. A stratum with an empty arm, or with nothing but successes or failures, adds
/// nothing.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error. No strata at all is allowed.
/// Returns   no informative stratum: no estimate, limits [0, infinity]. Discordance in one direction only: 0 or
///           infinity, same limits.
/// Assumes   independent trials; one odds ratio in all strata.
/// Accuracy  1e-9 relative against R's mantelhaen.test.
/// Source    Mantel and Haenszel (1959), J. Natl. Cancer Inst. 22, 719-748; Robins, Breslow and Greenland (1986),
///           Biometrics 42, 311-323.
[[nodiscard]] PooledOddsRatio mantelHaenszelOddsRatio(std::span<const Stratum> strata, double level);

struct PooledDifference {
    std::optional<double> estimate;  // absent where no stratum has trials in both arms
    Interval limits{-1.0, 1.0};      // clipped to [-1, 1]
    Interval unclippedLimits{-1.0, 1.0};
    std::optional<double> standardError;
};

/// Mantel and Haenszel's difference of two rates, arm 1 minus arm 2, with Sato's variance.
///
/// sum((a n2 - c n1) / N) / sum(n1 n2 / N). A stratum with an empty arm adds nothing; one with nothing but failures
/// (or successes) says "no difference here" and pulls the pooled difference towards 0.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error. No strata at all is allowed.
/// Returns   no stratum with both arms: no estimate, limits [-1, 1]. Sato's variance can be 0 (all failed in both
///           arms, say); then the limits meet in the estimate, which is no proof of equality: show Miettinen and
///           Nurminen's interval beside it.
/// Assumes   independent trials; one difference in all strata.
/// Accuracy  1e-9 relative against metafor's rma.mh.
/// Source    Greenland and Robins (1985), Biometrics 41, 55-68; Sato (1989), Biometrics 45, 1323-1324.
[[nodiscard]] PooledDifference mantelHaenszelDifference(std::span<const Stratum> strata, double level);

}  // namespace stats
