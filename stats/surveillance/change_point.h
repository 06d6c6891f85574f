// SPDX-License-Identifier: MIT
// Did the rate turn at some batch? One turn at the most, batches in order of time. A single batch that is out of the
// ordinary: predictive_tail.h. Limits for each batch while nothing turns: control_limits.h.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "stats/interval.h"
#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

/// Between two batches with trials that follow each other.
struct TurnPlace {
    std::size_t lastBefore{};  // their places in the list given
    std::size_t firstAfter{};
    double probability{};  // if there was a turn; all sum to 1
    bool isCredible{};     // among the places that hold the turn at the level asked for, if there was one
};

struct TurnRate {
    double mean{};
    Interval limits;  // equal tails
};

/// If there was a turn: over all places and correlations, each by its weight, so not knowing where is part of it.
struct TurnRates {
    TurnRate before;
    TurnRate after;
    TurnRate change;        // after less before, -1 to 1
    double chanceOfFall{};  // P(after < before)
};

struct ChangePoint {
    double probability{};            // that there was a turn
    std::vector<TurnPlace> places;   // in order of time; none with fewer than two batches that have trials
    std::size_t mostLikely{};        // of places
    std::optional<TurnRates> rates;  // absent without places
};

/// No turn against one: between which batches, with which rates on either side, and how likely at all.
///
/// Without a turn all batches are beta-binomial about one rate; with one, about a rate before and another after it, each
/// from `inOrder.prior`, and each place between two batches equally likely beforehand. The correlation is the same
/// throughout; `inOrder.spread` says how likely each is before these batches are counted: learn it from other ones
/// (pooledSpread() of the other plants and methods), since spread learnt from batches that turned hides the turn.
///
/// The credible places are the likeliest ones, as many as it takes to reach `level`; they need not follow each other.
///
/// Simulated, batches of 20 whose rate falls from 75 % to 45 % halfway, spread learnt from five other plants with three
/// batches each: per cent of histories in which a turn is found at probability 0.95 or more, and in which the credible
/// places at 95 % hold it:
///
///     true correlation    0          0.05       0.1        0.2
///     6 + 6 batches       59 (100)   31 (98)    14 (94)    13 (95)
///     12 + 12 batches     98 (100)   74 (96)    53 (96)    39 (95)
///
/// Without a turn, rates 30, 60 and 90 %: 0, 0, 0 and 1 of 100 are called one.
///
/// Domain    as requirePastBatches(), with batches in order of time; at most 20 000 trials in a batch; 0 < level < 1;
///           0 < chanceOfTurn < 1; else std::domain_error. Batches without trials are left out, but count as places of
///           the list.
/// Returns   fewer than two batches with trials: probability 0, no places, no rates.
/// Assumes   one turn at the most, at once; batches independent given rates and correlation. A slow decline is found as
///           a turn near its middle.
/// Accuracy  probabilities and means within 1e-9, 1e-6 with a prior that is not Jeffreys's; limits within 0.01 of their
///           distance. 200 batches of 20 take about 30 ms; the time grows as the number of batches to the power 1.5.
/// Source    Smith (1975), Biometrika 62, 407-416 (from memory), whose binomial case this is with spread counted;
///           steps: ratePosterior().
[[nodiscard]] ChangePoint changePoint(const PastBatches& inOrder, double level, double chanceOfTurn = 0.5);

}  // namespace stats
