// SPDX-License-Identifier: MIT
#include "stats/two_proportions/conditional_odds_ratio.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/hypergeometric.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

// Of the largest probability; what is left out is far below the tails that an interval asks for.
constexpr double oddsRatioCutoff = 1e-25;

struct ConditionalTable {
    TwoCounts counts;

    [[nodiscard]] CountProbabilities at(double logOdds) const {
        return hypergeometricProbabilities(counts.trials1, counts.trials2, counts.successes1 + counts.successes2,
                                           logOdds, oddsRatioCutoff);
    }
    [[nodiscard]] double mean(double logOdds) const {
        const CountProbabilities law = at(logOdds);
        double sum = 0;
        for (std::size_t i = 0; i < law.probabilities.size(); ++i)
            sum += law.probabilities[i] * (law.first + static_cast<double>(i) - counts.successes1);
        return sum;  // less the observed count, so that nothing cancels at the root
    }
    [[nodiscard]] double observedOrFewer(double logOdds) const {
        const CountProbabilities law = at(logOdds);
        double sum = 0;
        for (std::size_t i = 0; i < law.probabilities.size(); ++i)
            if (law.first + static_cast<int>(i) <= counts.successes1) sum += law.probabilities[i];
        return sum;
    }
    [[nodiscard]] double observedOrMore(double logOdds) const {
        const CountProbabilities law = at(logOdds);
        double sum = 0;
        for (std::size_t i = law.probabilities.size(); i-- > 0;)
            if (law.first + static_cast<int>(i) >= counts.successes1) sum += law.probabilities[i];
        return sum;
    }
};

// `rising` increases with the log odds from below to above zero.
double oddsAtRoot(const std::function<double(double)>& rising) {
    double reach = 1;
    while (rising(-reach) > 0 || rising(reach) < 0) reach *= 2;
    return std::exp(bracketedRoot(rising, -reach, reach, 1e-13));
}

}  // namespace

RatioEstimate conditionalOddsRatio(const TwoCounts& counts, double level) {
    requireTwoCounts("conditionalOddsRatio", counts);
    requireLevel("conditionalOddsRatio", level);
    constexpr double infinity = std::numeric_limits<double>::infinity();
    const int successes = counts.successes1 + counts.successes2;
    const int smallest = std::max(0, successes - counts.trials2);
    const int largest = std::min(counts.trials1, successes);
    if (smallest == largest) return {.estimate = {}, .limits = {.low = 0, .high = infinity}};
    const ConditionalTable table{counts};
    const double tail = (1 - level) / 2;
    const bool isSmallest = counts.successes1 == smallest;
    const bool isLargest = counts.successes1 == largest;
    RatioEstimate result;
    result.estimate = isSmallest  ? 0
                      : isLargest ? infinity
                                  : oddsAtRoot([&](double logOdds) { return table.mean(logOdds); });
    result.limits.low =
        isSmallest ? 0 : oddsAtRoot([&](double logOdds) { return table.observedOrMore(logOdds) - tail; });
    result.limits.high =
        isLargest ? infinity : oddsAtRoot([&](double logOdds) { return tail - table.observedOrFewer(logOdds); });
    return result;
}

}  // namespace stats
