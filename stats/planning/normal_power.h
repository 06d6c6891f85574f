// SPDX-License-Identifier: MIT
// Power and number per arm by the normal approximation: a first guess. exact_power.h has the answer for small arms.
#pragma once

#include <optional>

namespace stats {

/// Power of the two-sided test of two rates at level alpha, by the normal approximation, `trials` in each arm.
///
/// Counts only rejections in the right direction. At 10 to 60 per arm it is off by several hundredths either way, and
/// most where a rate is near 0 or 1.
///
/// Domain    trials > 0 and finite, not necessarily whole; 0 <= rate <= 1; 0 < alpha < 1; else std::domain_error.
/// Returns   a probability; alpha / 2 when the rates are equal; for rates 0 and 1, which have no variance, 1 or 0.
/// Assumes   independent trials, many of them.
/// Accuracy  1e-13.
/// Source    Fleiss (1981), Statistical Methods for Rates and Proportions, ch. 3; as R's power.prop.test with strict =
///           FALSE.
[[nodiscard]] double normalPower(double trials, double rate1, double rate2, double alpha);

/// The number per arm, not rounded, at which normalPower() is the power wanted.
///
/// Domain    as normalPower(); 0 < power < 1; else std::domain_error.
/// Returns   no number when the rates are equal, or power is so low (at most alpha / 2) that no trial is needed.
[[nodiscard]] std::optional<double> trialsForNormalPower(double power, double rate1, double rate2, double alpha);

}  // namespace stats
