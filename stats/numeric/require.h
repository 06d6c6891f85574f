// SPDX-License-Identifier: MIT
// The contracts that the functions of this library check first. A broken one is the caller's mistake and throws
// std::domain_error with the name of the function, the argument and its value.
#pragma once

#include <string_view>

namespace stats {

/// Throws std::domain_error "function: what, got value, must be allowed".
[[noreturn]] void throwDomainError(std::string_view function, std::string_view argument, double value,
                                   std::string_view allowed);

/// Domain: 0 <= successes <= trials.
void requireCounts(std::string_view function, int successes, int trials);
/// Domain: 0 < level < 1.
void requireLevel(std::string_view function, double level);

}  // namespace stats
