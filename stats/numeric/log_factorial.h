// SPDX-License-Identifier: MIT
#pragma once

namespace stats {

/// Natural logarithm of n!.
///
/// Domain    n >= 0; else std::domain_error.
/// Accuracy  within 4e-16 relative: a table that is summed in long double up to 1023, Stirling's series above.
[[nodiscard]] double logFactorial(int n);

/// Natural logarithm of the number of ways to choose `chosen` of `things`.
///
/// Domain    0 <= chosen <= things; else std::domain_error.
/// Accuracy  the difference of three log factorials: absolute error about 2e-16 times the logarithm of things!.
[[nodiscard]] double logChoose(int things, int chosen);

}  // namespace stats
