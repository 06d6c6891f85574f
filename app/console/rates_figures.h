// SPDX-License-Identifier: MIT
// Everything that `rates` says of two or more arms of plain counts, as a value.
#pragma once

#include <optional>
#include <vector>

#include "stats/interval.h"
#include "stats/two_proportions/two_counts.h"

namespace console {

struct Counts {
    int rooted{};
    int stuck{};
};

struct RateFigures {
    Counts counts;
    std::optional<double> rate;  // absent when nothing was stuck
    stats::Interval wilson, wilsonContinuity, clopperPearson, jeffreys, agrestiCoull;
};

struct PairFigures {
    int first{};
    int second{};
    std::optional<double> difference;
    stats::Interval newcombe, miettinenNurminen;
    stats::RatioEstimate riskRatio;
    stats::RatioEstimate oddsRatio;
    double fisher{1}, fisherMid{1};
    std::optional<double> boschloo, barnard;  // absent where the arms are too large to count through in good time
    double probabilityFirstBetter{};
};

struct RatesFigures {
    double level{};
    std::vector<RateFigures> arms;
    std::vector<PairFigures> pairs;  // every two arms
};

/// The largest two arms together of which Boschloo's and Barnard's tests are worked out; their time grows with the square.
inline constexpr int mostForExactTests = 4000;

[[nodiscard]] RatesFigures ratesFigures(const std::vector<Counts>& arms, double level);

}  // namespace console
