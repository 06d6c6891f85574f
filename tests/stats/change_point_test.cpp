// SPDX-License-Identifier: MIT
#include "stats/surveillance/change_point.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <numeric>
#include <span>
#include <stdexcept>
#include <tuple>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Trays = std::vector<stats::Tray>;

void expectProven(const support::Proof& proof, double got, double want, double tolerance) {
    EXPECT_NEAR(got, want, tolerance) << proof.source;
    support::prove(proof, got, want);
}

// Counts of the seven batches and two correlations that SciPy had as well.
stats::PastBatches sevenBatches() {
    return {{{16, 20}, {14, 20}, {17, 20}, {15, 20}, {9, 18}, {11, 20}, {8, 20}}, {{0.02, 1}, {0.1, 2}}, {}};
}

TEST(ChangePoint, GivesWhatQuadratureDoesInSciPy) {
    // SciPy 1.10.1, a script of its own: scipy.stats.betabinom over asin(sqrt(rate)) by scipy.integrate.quad for every stretch of every
    // place; limits from 20 000 angles with numpy.interp and scipy.optimize.brentq.
    const support::Proof proof{"changePoint", "seven batches, two correlations", "SciPy 1.10.1 betabinom and quad"};
    const stats::ChangePoint turn = stats::changePoint(sevenBatches(), 0.95);
    expectProven(proof, turn.probability, 0.5990158680368473, 1e-10);
    const double places[] = {0.050104681170452456, 0.03944218992506966, 0.14552203541137704,
                             0.5080573914766762,   0.13408994157403087, 0.12278376044239367};
    ASSERT_EQ(turn.places.size(), 6U);
    for (std::size_t i = 0; i < 6; ++i) expectProven(proof, turn.places[i].probability, places[i], 1e-10);
    EXPECT_EQ(turn.mostLikely, 3U);
    expectProven(proof, turn.rates->before.mean, 0.7438440479818585, 1e-9);
    expectProven(proof, turn.rates->after.mean, 0.4956333912444678, 1e-9);
}

TEST(ChangePoint, HasLimitsWithinAHundredthOfTheirDistance) {
    // As above.
    const stats::TurnRates rates = *stats::changePoint(sevenBatches(), 0.95).rates;
    const auto expectLimits = [](const char* which, const stats::Interval& got, double low, double high) {
        EXPECT_NEAR(got.low, low, 0.01 * (high - low)) << which;
        EXPECT_NEAR(got.high, high, 0.01 * (high - low)) << which;
        const support::Proof proof{"changePoint", "seven batches, limits", "SciPy 1.10.1, 20 000 angles"};
        support::prove(proof, got.low, low);
        support::prove(proof, got.high, high);
    };
    expectLimits("before", rates.before.limits, 0.5776668676, 0.8798415658);
    expectLimits("after", rates.after.limits, 0.2582064285, 0.7017133303);
    expectLimits("change", rates.change.limits, -0.4869431913, 0.0327287013);
    EXPECT_NEAR(rates.chanceOfFall, 0.9626884082, 0.0005);
    EXPECT_NEAR(rates.change.mean, rates.after.mean - rates.before.mean, 1e-15);
}

// Simpson's rule over the rate itself, of the beta prior times every batch's probability.
double evidence(std::span<const stats::Tray> batches, double correlation, const stats::RatePrior& prior) {
    constexpr int pieces = 4000;
    const double constant =
        std::lgamma(prior.successes + prior.failures) - std::lgamma(prior.successes) - std::lgamma(prior.failures);
    double sum = 0;
    for (int i = 1; i < pieces; ++i) {
        const double rate = static_cast<double>(i) / pieces;
        double logHeight = constant + (prior.successes - 1) * std::log(rate) + (prior.failures - 1) * std::log1p(-rate);
        for (const stats::Tray& batch : batches)
            logHeight += stats::betaBinomialLogProbability(batch.successes, batch.trials, rate, correlation);
        sum += (i % 2 == 1 ? 4 : 2) * std::exp(logHeight);
    }
    return sum / (3 * pieces);
}

TEST(ChangePoint, GivesWhatEveryPlaceByItselfGives) {
    const stats::PastBatches past{{{18, 24}, {30, 40}, {6, 12}, {3, 10}, {11, 30}, {0, 5}},
                                  {{0.0, 1}, {0.07, 3}, {0.3, 1}},
                                  {.successes = 6, .failures = 4}};
    const std::span<const stats::Tray> all(past.batches);
    double none = 0;
    std::vector<double> turned(all.size() - 1);
    for (const stats::WeightedCorrelation& each : past.spread) {
        none += each.weight * evidence(all, each.correlation, past.prior);
        for (std::size_t k = 1; k < all.size(); ++k)
            turned[k - 1] += each.weight * evidence(all.first(k), each.correlation, past.prior) *
                             evidence(all.subspan(k), each.correlation, past.prior) /
                             static_cast<double>(turned.size());
    }
    const double sum = std::accumulate(turned.begin(), turned.end(), 0.0);
    const support::Proof proof{"changePoint", "six unequal batches, a prior of one's own",
                               "Simpson's rule, each place by itself"};
    const stats::ChangePoint answer = stats::changePoint(past, 0.9, 0.25);
    expectProven(proof, answer.probability, 0.25 * sum / (0.25 * sum + 0.75 * none), 1e-8);
    for (std::size_t k = 0; k < turned.size(); ++k)
        expectProven(proof, answer.places[k].probability, turned[k] / sum, 1e-8);
}

TEST(ChangePoint, SumsTheClosedFormWhereBatchesDoNotDiffer) {
    // Two batches without spread: beta functions alone.
    const auto logBeta = [](double a, double b) { return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b); };
    const auto evidenceOf = [&](int x, int n) { return std::exp(logBeta(x + 0.5, n - x + 0.5) - logBeta(0.5, 0.5)); };
    const stats::PastBatches past{{{19, 20}, {4, 20}}, stats::knownCorrelation(0), {}};
    const double turned = evidenceOf(19, 20) * evidenceOf(4, 20), none = evidenceOf(23, 40);
    const stats::ChangePoint turn = stats::changePoint(past, 0.95);
    expectProven({"changePoint", "two batches without spread", "closed form"}, turn.probability,
                 turned / (turned + none), 1e-10);
    expectProven({"changePoint", "two batches without spread", "closed form"}, turn.rates->before.mean, 19.5 / 21,
                 1e-10);
    expectProven({"changePoint", "two batches without spread", "closed form"}, turn.rates->after.mean, 4.5 / 21, 1e-10);
}

stats::Tray drawn(int trials, double rate, double correlation, stats::SeededRandom& random) {
    if (correlation == 0) return {random.binomial(trials, rate), trials};
    const double sum = (1 - correlation) / correlation;
    return {random.binomial(trials, random.beta(rate * sum, (1 - rate) * sum)), trials};
}

// `batches` of 20, those from `turnAt` on about another rate; the spread learnt from five other plants.
stats::ChangePoint simulatedTurn(std::size_t batches, std::size_t turnAt, double before, double after,
                                 double correlation, stats::SeededRandom& random) {
    Trays counts;
    for (std::size_t i = 0; i < batches; ++i)
        counts.push_back(drawn(20, i < turnAt ? before : after, correlation, random));
    std::vector<Trays> others(5);
    for (Trays& group : others) {
        const double rate = 0.2 + 0.7 * random.uniform();
        for (int i = 0; i < 3; ++i) group.push_back(drawn(20, rate, correlation, random));
    }
    return stats::changePoint({counts, stats::pooledSpread(others).law, {}}, 0.95);
}

TEST(ChangePoint, SeldomCallsATurnWhereThereIsNone) {
    stats::SeededRandom random(20261126);
    std::cout << "[ seed 20261126 ]\n";
    constexpr int runs = 200;
    for (const double correlation : {0.0, 0.1, 0.2}) {
        int called = 0;
        for (int run = 0; run < runs; ++run) {
            const double rate = 0.3 + 0.3 * (run % 3);
            called += simulatedTurn(12, 12, rate, rate, correlation, random).probability >= 0.95 ? 1 : 0;
        }
        std::cout << "[ no turn, correlation " << correlation << ": called in " << called << " of " << runs << " ]\n";
        EXPECT_LE(called, runs / 20);
    }
}

TEST(ChangePoint, FindsADropOfThirtyPoints) {
    stats::SeededRandom random(20261127);
    std::cout << "[ seed 20261127 ]\n";
    constexpr int runs = 200;
    // The header's table: 59 and 31 of 100, with twice as many batches 98 and 74.
    for (const auto& [half, correlation, least] :
         {std::tuple(std::size_t{6}, 0.0, 0.4), {6, 0.05, 0.15}, {12, 0.0, 0.9}, {12, 0.05, 0.6}}) {
        int called = 0, held = 0;
        for (int run = 0; run < runs; ++run) {
            const stats::ChangePoint turn = simulatedTurn(2 * half, half, 0.75, 0.45, correlation, random);
            called += turn.probability >= 0.95 ? 1 : 0;
            held += turn.places[half - 1].isCredible ? 1 : 0;
        }
        std::cout << "[ " << half << " + " << half << " batches of 20, 75 % to 45 %, correlation " << correlation
                  << ": called in " << called << ", place held in " << held << " of " << runs << " ]\n";
        EXPECT_GE(called, least * runs);
        EXPECT_GE(held, 0.92 * runs);
    }
}

struct FromThePrior {
    bool isTurned{};
    std::size_t turnAt{};
    double before{}, after{};
    stats::ChangePoint answer;
};

// Everything drawn from what changePoint() believes beforehand.
FromThePrior fromThePrior(stats::SeededRandom& random) {
    constexpr std::size_t batches = 8;
    const std::vector<stats::WeightedCorrelation> spread{{0.02, 1}, {0.1, 2}, {0.25, 1}};
    const double u = random.uniform(), correlation = u < 0.25 ? 0.02 : u < 0.75 ? 0.1 : 0.25;
    FromThePrior drawnCase{.isTurned = random.uniform() < 0.5,
                           .turnAt = 1 + static_cast<std::size_t>(random.below(batches - 1)),
                           .before = random.beta(0.5, 0.5),
                           .after = random.beta(0.5, 0.5),
                           .answer = {}};
    Trays counts;
    for (std::size_t i = 0; i < batches; ++i)
        counts.push_back(drawn(8 + static_cast<int>(random.below(20)),
                               drawnCase.isTurned && i >= drawnCase.turnAt ? drawnCase.after : drawnCase.before,
                               correlation, random));
    drawnCase.answer = stats::changePoint({counts, spread, {}}, 0.9);
    return drawnCase;
}

TEST(ChangePoint, IsRightAsOftenAsItSaysWhereAllComesFromThePrior) {
    stats::SeededRandom random(20261128);
    std::cout << "[ seed 20261128 ]\n";
    constexpr int runs = 3000;
    double said = 0, variance = 0;
    int turned = 0, placeHeld = 0, beforeHeld = 0, afterHeld = 0, changeHeld = 0;
    for (int run = 0; run < runs; ++run) {
        const FromThePrior one = fromThePrior(random);
        const double p = one.answer.probability;
        said += p, variance += p * (1 - p), turned += one.isTurned ? 1 : 0;
        if (!one.isTurned) continue;
        const stats::TurnRates& rates = *one.answer.rates;
        const auto holds = [](const stats::Interval& limits, double x) {
            return limits.low <= x && x <= limits.high ? 1 : 0;
        };
        placeHeld += one.answer.places[one.turnAt - 1].isCredible ? 1 : 0;
        beforeHeld += holds(rates.before.limits, one.before);
        afterHeld += holds(rates.after.limits, one.after);
        changeHeld += holds(rates.change.limits, one.after - one.before);
    }
    const double error = std::sqrt(0.9 * 0.1 / turned);
    std::cout << "[ " << turned << " turns, " << said << " foretold; at 90 %: place " << placeHeld << ", before "
              << beforeHeld << ", after " << afterHeld << ", change " << changeHeld << " ]\n";
    EXPECT_NEAR(said, turned, 4 * std::sqrt(variance));
    // A set of places is whole, so it holds the turn rather more often.
    EXPECT_GE(placeHeld, (0.9 - 4 * error) * turned);
    for (const int held : {beforeHeld, afterHeld, changeHeld}) EXPECT_NEAR(held, 0.9 * turned, 4 * error * turned);
    support::proveWithin(
        {"changePoint", "3000 histories drawn from the prior", "turns foretold, as a share of histories"},
        std::abs(said - turned) / runs);
}

TEST(ChangePoint, LooksTheSameBackwardsAndUpsideDown) {
    const stats::PastBatches there = sevenBatches();
    stats::PastBatches back = there, over = there;
    std::ranges::reverse(back.batches);
    for (stats::Tray& batch : over.batches) batch.successes = batch.trials - batch.successes;
    const auto seen = stats::changePoint(there, 0.9), backwards = stats::changePoint(back, 0.9);
    const auto upside = stats::changePoint(over, 0.9);
    EXPECT_NEAR(seen.probability, backwards.probability, 1e-10);
    EXPECT_NEAR(seen.probability, upside.probability, 1e-10);
    EXPECT_NEAR(seen.rates->before.mean, backwards.rates->after.mean, 1e-10);
    EXPECT_NEAR(seen.rates->change.limits.low, -backwards.rates->change.limits.high, 1e-3);
    EXPECT_NEAR(seen.rates->change.limits.low, -upside.rates->change.limits.high, 1e-3);
    EXPECT_NEAR(seen.rates->chanceOfFall, 1 - upside.rates->chanceOfFall, 1e-3);
}

TEST(ChangePoint, HasTheFewestPlacesThatReachTheLevel) {
    for (const double level : {0.3, 0.8, 0.99}) {
        double inside = 0, leastInside = 1, mostOutside = 0;
        for (const stats::TurnPlace& place : stats::changePoint(sevenBatches(), level).places) {
            if (place.isCredible) inside += place.probability, leastInside = std::min(leastInside, place.probability);
            if (!place.isCredible) mostOutside = std::max(mostOutside, place.probability);
        }
        EXPECT_GE(inside, level);
        EXPECT_LT(inside - leastInside, level);
        EXPECT_GE(leastInside, mostOutside);
    }
}

TEST(ChangePoint, KeepsThePlacesOfBatchesAmongEmptyOnes) {
    const auto turn =
        stats::changePoint({{{0, 0}, {19, 20}, {0, 0}, {2, 20}}, stats::knownCorrelation(0.05), {}}, 0.95);
    ASSERT_EQ(turn.places.size(), 1U);
    EXPECT_EQ(turn.places[0].lastBefore, 1U);
    EXPECT_EQ(turn.places[0].firstAfter, 3U);
    EXPECT_NEAR(turn.places[0].probability, 1, 1e-12);
}

TEST(ChangePoint, HasNothingToSayOfFewerThanTwoBatches) {
    for (const Trays& batches : {Trays{}, {{3, 9}}, {{0, 0}, {3, 9}, {0, 0}}}) {
        const auto turn = stats::changePoint({batches, stats::knownCorrelation(0.1), {}}, 0.95);
        EXPECT_EQ(turn.probability, 0);
        EXPECT_TRUE(turn.places.empty());
        EXPECT_FALSE(turn.rates);
    }
}

TEST(ChangePoint, AnswersAtTheEdges) {
    for (const Trays& batches : {Trays{{0, 20}, {0, 20}, {0, 20}}, {{20, 20}, {0, 20}}, {{1, 1}, {0, 1}, {1, 1}}}) {
        for (const double correlation : {0.0, 0.999}) {
            const auto turn = stats::changePoint({batches, stats::knownCorrelation(correlation), {}}, 0.95);
            EXPECT_TRUE(turn.probability > 0 && turn.probability < 1);
            EXPECT_TRUE(turn.rates->change.limits.low < turn.rates->change.limits.high);
        }
    }
}

TEST(ChangePoint, RefusesWhatCannotBe) {
    const std::vector<stats::WeightedCorrelation> spread = stats::knownCorrelation(0.1);
    EXPECT_THROW((void)stats::changePoint({{{3, 2}}, spread, {}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::changePoint({{{3, 20'001}}, spread, {}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::changePoint({{{1, 2}}, {}, {}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::changePoint({{{1, 2}}, spread, {}}, 1), std::domain_error);
    EXPECT_THROW((void)stats::changePoint({{{1, 2}}, spread, {}}, 0.95, 0), std::domain_error);
    EXPECT_THROW((void)stats::changePoint({{{1, 2}}, spread, {}}, 0.95, 1), std::domain_error);
}

}  // namespace
