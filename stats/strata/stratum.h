// SPDX-License-Identifier: MIT
// One stratum of a stratified comparison of two arms: one species, one session, one block.
#pragma once

#include <span>
#include <string_view>

namespace stats {

struct Stratum {
    int successes1{};
    int trials1{};
    int successes2{};
    int trials2{};
};

/// Both arms have trials, and there are successes as well as failures: without either the stratum says nothing about a
/// ratio of odds.
[[nodiscard]] bool isInformative(const Stratum& stratum);

/// std::domain_error that names the function, the stratum and the value unless 0 <= successes <= trials in both arms of
/// each.
void requireStrata(std::string_view function, std::span<const Stratum> strata);

}  // namespace stats
