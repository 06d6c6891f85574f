// SPDX-License-Identifier: MIT
#include "stats/time_to_event/log_rank_test.h"

#include <algorithm>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/arm_days.h"

namespace stats {
namespace {

void addEvents(LogRankTest& test, SquareMatrix& variance, const ArmsOnDay& day) {
    const double n = day.allAtRisk(), events = day.all(1);
    if (events == 0) return;
    const double spread = n > 1 ? events * (n - events) / (n - 1) : 0;
    for (std::size_t i = 0; i < variance.size; ++i) {
        test.observed[i] += day.counts[i][1];
        test.expected[i] += events * day.atRisk[i] / n;
        for (std::size_t j = 0; j < variance.size; ++j) {
            variance.at(i, j) += spread * (day.atRisk[i] / n) * ((i == j ? 1 : 0) - day.atRisk[j] / n);
        }
    }
}

}  // namespace

LogRankTest logRankTest(std::span<const std::vector<ExactDay>> arms) {
    for (const auto& arm : arms) {
        for (const ExactDay& row : arm) {
            if (row.cause == 2) throwDomainError("logRankTest", "cause", row.cause, "0 or 1");
        }
    }
    LogRankTest test{.observed = std::vector<double>(arms.size()),
                     .expected = std::vector<double>(arms.size()),
                     .statistic = {},
                     .p = {}};
    SquareMatrix variance = zeroMatrix(arms.size());
    for (const ArmsOnDay& day : armsByDay("logRankTest", arms)) addEvents(test, variance, day);
    std::vector<std::size_t> counted;
    for (std::size_t arm = 0; arm < arms.size(); ++arm) {
        if (test.expected[arm] > 0) counted.push_back(arm);
    }
    if (counted.empty()) return test;
    // The differences sum to 0: the last arm says nothing new.
    counted.pop_back();
    test.degreesOfFreedom = static_cast<int>(counted.size());
    std::vector<double> surplus;
    SquareMatrix kept = zeroMatrix(counted.size());
    double all = 0;
    for (const double arm : test.observed) all += arm;
    for (std::size_t i = 0; i < counted.size(); ++i) {
        surplus.push_back(test.observed[counted[i]] - test.expected[counted[i]]);
        for (std::size_t j = 0; j < counted.size(); ++j) kept.at(i, j) = variance.at(counted[i], counted[j]);
    }
    test.statistic = quadraticForm(surplus, kept, all);
    if (test.statistic) test.p = chiSquareTail(std::max(0.0, *test.statistic), test.degreesOfFreedom);
    return test;
}

}  // namespace stats
