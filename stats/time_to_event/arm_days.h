// SPDX-License-Identifier: MIT
// Exact days of several arms, gathered by day. Only for log_rank_test.h and gray_test.h.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "stats/numeric/square_matrix.h"
#include "stats/time_to_event/aalen_johansen.h"

namespace stats {

/// One day with an event of any cause.
struct ArmsOnDay {
    std::vector<double> atRisk;                 // just before, one an arm
    std::vector<std::array<double, 3>> counts;  // of cause 0, 1, 2
    [[nodiscard]] double all(std::size_t cause) const;
    [[nodiscard]] double allAtRisk() const;
};

/// In order of day. Checks the domain for `function`.
[[nodiscard]] std::vector<ArmsOnDay> armsByDay(std::string_view function, std::span<const std::vector<ExactDay>> arms);

/// u' V^-1 u; absent where V is singular, an element of its diagonal below 1e-12 of `scale` counting as 0.
[[nodiscard]] std::optional<double> quadraticForm(const std::vector<double>& u, const SquareMatrix& v, double scale);

}  // namespace stats
