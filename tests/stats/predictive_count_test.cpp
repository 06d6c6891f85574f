// SPDX-License-Identifier: MIT
#include "stats/planning/predictive_count.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <limits>
#include <numbers>
#include <stdexcept>
#include <utility>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

class CountForKnownRate : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(CountForKnownRate, GivesTheReferenceValue) {
    const auto& each = GetParam();
    const auto answer = stats::countForKnownRate(each.count("k"), each.number("p"), each.number("assurance"));
    each.expect({{"n", answer.count}, {"achieved", answer.achieved}});
}

INSTANTIATE_TEST_SUITE_P(Reference, CountForKnownRate, testing::ValuesIn(support::referenceCases({"plan_known"})),
                         support::nameOfCase);

class CountForPastRecords : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(CountForPastRecords, GivesTheReferenceValue) {
    const auto& each = GetParam();
    const auto answer =
        stats::countForPastRecords(each.count("k"), each.count("x"), each.count("n0"), each.number("assurance"));
    each.expect({{"n", answer.count}, {"achieved", answer.achieved}});
}

INSTANTIATE_TEST_SUITE_P(Reference, CountForPastRecords, testing::ValuesIn(support::referenceCases({"plan_uncertain"})),
                         support::nameOfCase);

// Probability of a count by gamma functions, as textbooks have it; a + b infinite is the binomial with a / (a + b) = mean.
double byGammas(int x, int n, double mean, double correlation) {
    const double ways = std::lgamma(n + 1.0) - std::lgamma(x + 1.0) - std::lgamma(n - x + 1.0);
    if (mean == 0 || mean == 1) return x == n * mean ? 1 : 0;
    if (correlation == 0) return std::exp(ways + x * std::log(mean) + (n - x) * std::log1p(-mean));
    const double sum = (1 - correlation) / correlation, a = mean * sum, b = (1 - mean) * sum;
    return std::exp(ways + std::lgamma(a + x) + std::lgamma(b + n - x) - std::lgamma(sum + n) + std::lgamma(sum) -
                    std::lgamma(a) - std::lgamma(b));
}

double tailByGammas(int wanted, int n, double mean, double correlation) {
    double sum = 0;
    for (int x = n; x >= wanted; --x) sum += byGammas(x, n, mean, correlation);
    return sum;
}

// Counts up one by one, summing the upper tail.
int enumeratedCount(int wanted, double mean, double correlation, double assurance) {
    int n = wanted;
    while (tailByGammas(wanted, n, mean, correlation) < assurance) ++n;
    return n;
}

TEST(CountForKnownRateAndRecords, AreThoseOfEnumerationInAThousandRandomCases) {
    stats::SeededRandom random(20260214);
    std::cout << "[ seed 20260214 ]\n";
    for (int run = 0; run < 1000; ++run) {
        const int wanted = 1 + static_cast<int>(random.below(30)), trials = 3 + static_cast<int>(random.below(40));
        const int successes = 1 + static_cast<int>(random.below(static_cast<std::uint64_t>(trials)));
        const double assurance = 0.5 + 0.4 * random.uniform(), rate = 0.2 + 0.8 * random.uniform();
        const double livesOn = random.below(2) == 0 ? 1 : 0.6 + 0.4 * random.uniform(), usable = rate * livesOn;
        const auto known = stats::countForKnownRate(wanted, rate, assurance, livesOn);
        ASSERT_EQ(known.count, enumeratedCount(wanted, usable, 0, assurance)) << run;
        const double knownTail = tailByGammas(wanted, *known.count, usable, 0);
        ASSERT_NEAR(*known.achieved, knownTail, 1e-11) << run;
        support::prove({"countForKnownRate", "1000 random cases", "sums by gamma functions, count by count"},
                       *known.achieved, knownTail);
        const double mean = (successes + 0.5) / (trials + 1);
        if (mean < 0.15) continue;  // thousands to count through
        const auto past = stats::countForPastRecords(wanted, successes, trials, assurance);
        ASSERT_EQ(past.count, enumeratedCount(wanted, mean, 1 / (trials + 2.0), assurance)) << run;
        const double pastTail = tailByGammas(wanted, *past.count, mean, 1 / (trials + 2.0));
        ASSERT_NEAR(*past.achieved, pastTail, 1e-10) << run;
        support::prove({"countForPastRecords", "1000 random cases", "sums by gamma functions, count by count"},
                       *past.achieved, pastTail);
    }
}

// P(wanted or more) in trays filled one after another: Simpson's rule over the angle, trays by plain convolution, and of
// each number that rooted the binomial tail of those that live on.
double chanceInTrays(int wanted, int count, const stats::PastBatches& past, int traySize, double livesOn = 1) {
    constexpr int steps = 120;
    double above = 0, all = 0;
    for (int i = 1; i < steps; ++i) {
        const double rate = std::pow(std::sin(i * std::numbers::pi / 2 / steps), 2);
        double weight = i % 2 == 1 ? 4 : 2;
        const double correlation = past.spread[0].correlation;
        for (const auto& batch : past.batches) weight *= byGammas(batch.successes, batch.trials, rate, correlation);
        std::vector<double> law{1};
        for (int left = count; left > 0; left -= traySize) {
            const int size = std::min(left, traySize);
            std::vector<double> next(law.size() + static_cast<std::size_t>(size));
            for (int x = 0; x <= size; ++x) {
                const double each = byGammas(x, size, rate, correlation);
                for (std::size_t s = 0; s < law.size(); ++s) next[s + static_cast<std::size_t>(x)] += law[s] * each;
            }
            law = next;
        }
        for (std::size_t s = 0; s < law.size(); ++s) {
            all += weight * law[s];
            if (s >= static_cast<std::size_t>(wanted))
                above += weight * law[s] * tailByGammas(wanted, static_cast<int>(s), livesOn, 0);
        }
    }
    return above / all;
}

stats::PastBatches randomPast(stats::SeededRandom& random) {
    stats::PastBatches past{.batches = {},
                            .spread = stats::knownCorrelation(random.below(4) == 0 ? 0 : 0.3 * random.uniform()),
                            .prior = {}};
    for (std::uint64_t i = 0; i <= random.below(4); ++i) {
        const int trials = 4 + static_cast<int>(random.below(16));
        past.batches.push_back({1 + random.binomial(trials - 2, 0.3 + 0.6 * random.uniform()), trials});
    }
    return past;
}

TEST(CountForPastBatches, IsThatOfEnumerationInRandomCases) {
    stats::SeededRandom random(20260215);
    std::cout << "[ seed 20260215 ]\n";
    for (int run = 0; run < 1000; ++run) {
        const auto past = randomPast(random);
        const int wanted = 1 + static_cast<int>(random.below(8)), traySize = 1 + static_cast<int>(random.below(12));
        const double assurance = 0.5 + 0.35 * random.uniform();
        const auto answer = stats::countForPastBatches(wanted, past, traySize, assurance);
        ASSERT_TRUE(answer.count) << run;
        if (*answer.count > 80) continue;  // the slow way would take too long
        const double chance = chanceInTrays(wanted, *answer.count, past, traySize);
        ASSERT_NEAR(*answer.achieved, chance, 1e-8) << run;
        ASSERT_GE(*answer.achieved, assurance) << run;
        // One fewer isn't enough, and one more never makes it less likely.
        ASSERT_LT(chanceInTrays(wanted, *answer.count - 1, past, traySize), assurance) << run;
        support::prove({"countForPastBatches", "random records", "Simpson's rule and plain convolution"},
                       *answer.achieved, chance);
        const double forward = stats::assuranceOfCount(wanted, *answer.count, past, traySize);
        ASSERT_NEAR(forward, chance, 1e-8) << run;
        support::prove({"assuranceOfCount", "random records", "Simpson's rule and plain convolution"}, forward, chance);
    }
}

TEST(CountForPastBatches, WithLossesAfterPottingIsThatOfEnumerationInRandomCases) {
    stats::SeededRandom random(20260217);
    std::cout << "[ seed 20260217 ]\n";
    for (int run = 0; run < 300; ++run) {
        const auto past = randomPast(random);
        const int wanted = 1 + static_cast<int>(random.below(8)), traySize = 1 + static_cast<int>(random.below(12));
        const double assurance = 0.5 + 0.35 * random.uniform(), livesOn = 0.5 + 0.5 * random.uniform();
        const auto answer = stats::countForPastBatches(wanted, past, traySize, assurance, livesOn);
        ASSERT_TRUE(answer.count) << run;
        if (*answer.count > 60) continue;  // the slow way would take too long
        const double chance = chanceInTrays(wanted, *answer.count, past, traySize, livesOn);
        ASSERT_NEAR(*answer.achieved, chance, 1e-8) << run;
        ASSERT_LT(chanceInTrays(wanted, *answer.count - 1, past, traySize, livesOn), assurance) << run;
        support::prove({"countForPastBatches", "random records and losses", "binomial tails over plain convolution"},
                       *answer.achieved, chance);
    }
}

TEST(CountForPastBatches, WithEveryCuttingInATrayOfItsOwnTakesLossesAsALowerRate) {
    // One cutting a tray: the posterior of the rate is Beta(12.5, 8.5), and rate * 0.8 is the chance of each.
    const stats::PastBatches past{{{12, 20}}, stats::knownCorrelation(0), {}};
    for (const int count : {20, 40, 60}) {
        constexpr int steps = 4000;
        double above = 0, all = 0;
        for (int i = 0; i < steps; ++i) {
            const double rate = (i + 0.5) / steps;
            const double weight = std::exp(11.5 * std::log(rate) + 7.5 * std::log1p(-rate));
            all += weight;
            above += weight * tailByGammas(15, count, 0.8 * rate, 0);
        }
        EXPECT_NEAR(stats::assuranceOfCount(15, count, past, 1, 0.8), above / all, 1e-8) << count;
        support::prove({"assuranceOfCount", "12 of 20, four in five live on", "binomial tails over the beta posterior"},
                       stats::assuranceOfCount(15, count, past, 1, 0.8), above / all);
    }
}

TEST(CountForPastBatches, IsExactWithAnyPriorWhereTraysDoNotDiffer) {
    // The posterior is a beta distribution then, and the count of the next batches beta-binomial.
    for (const stats::RatePrior prior : {stats::RatePrior{0.7, 3.3}, {0.55, 0.6}, {7.4, 2.6}, {9.5, 0.5}, {0.5, 0.9}})
        for (const auto& [successes, trials] : {std::pair{0, 0}, {3, 10}, {18, 20}}) {
            const stats::PastBatches past{{{successes, trials}}, stats::knownCorrelation(0), prior};
            const double a = prior.successes + successes, b = prior.failures + trials - successes;
            for (const int count : {12, 25, 60}) {
                const double chance = tailByGammas(10, count, a / (a + b), 1 / (a + b + 1));
                const double got = stats::assuranceOfCount(10, count, past, 7);
                EXPECT_NEAR(got, chance, 1e-8) << a << " " << b << " " << count;
                support::prove({"assuranceOfCount", "priors of any numbers", "beta-binomial by gamma functions"}, got,
                               chance);
            }
        }
}

TEST(AssuranceOfCounts, IsThatOfEachCountAlone) {
    const stats::PastBatches past{{{12, 20}, {15, 20}, {9, 20}}, stats::pooledSpread({}).law, {7.4, 2.6}};
    for (const double livesOn : {1.0, 0.85}) {
        std::vector<int> counts;
        for (int count = 0; count <= 90; count += 1 + count / 8) counts.push_back(count);
        const std::vector<double> chances = stats::assuranceOfCounts(24, counts, past, 20, livesOn);
        ASSERT_EQ(chances.size(), counts.size());
        for (std::size_t i = 0; i < counts.size(); ++i) {
            const double alone = stats::assuranceOfCount(24, counts[i], past, 20, livesOn);
            EXPECT_NEAR(chances[i], alone, 1e-9) << counts[i];
            support::prove({"assuranceOfCounts", "a curve to 90 cuttings", "each count alone"}, chances[i], alone);
            EXPECT_GE(chances[i], (i > 0 ? chances[i - 1] : 0) - 1e-12) << counts[i];
        }
    }
    EXPECT_TRUE(stats::assuranceOfCounts(24, {}, past, 20).empty());
    EXPECT_EQ(stats::assuranceOfCounts(0, std::vector<int>{0, 5}, past, 20), (std::vector<double>{1, 1}));
    EXPECT_EQ(stats::assuranceOfCounts(9, std::vector<int>{3, 5}, past, 20), (std::vector<double>{0, 0}));
}

TEST(AssuranceOfCounts, LosesNothingOverManyTraysAndLosses) {
    // 500 wanted of 800 in trays of 20: trays summed without their law being followed beyond 500.
    const stats::PastBatches past{{{170, 200}}, stats::knownCorrelation(0), {}};
    const double mean = 170.5 / 201;
    const auto chances = stats::assuranceOfCounts(500, std::vector<int>{560, 600, 700}, past, 20);
    for (const auto& [place, count] : {std::pair{0U, 560}, {1U, 600}, {2U, 700}}) {
        const double chance = tailByGammas(500, count, mean, 1 / 202.0);
        EXPECT_NEAR(chances[place], chance, 1e-9);
        support::prove({"assuranceOfCounts", "500 wanted, 170 of 200", "beta-binomial by gamma functions"},
                       chances[place], chance);
    }
}

TEST(CountForPastBatches, IsThatOfAdaptiveIntegration) {
    // scipy.integrate.quad over convolved scipy.stats.betabinom, SciPy 1.10.1, counting up.
    const std::vector<stats::Tray> three{{12, 20}, {15, 20}, {9, 20}};
    struct Known {
        std::vector<stats::Tray> batches;
        double correlation;
        int wanted, traySize, count;
        double achieved;
    };
    const Known table[] = {{three, 0.1, 10, 8, 26, 0.9133463922127304},
                           {three, 0.1, 24, 20, 60, 0.9025108267362544},
                           {{{3, 10}}, 0.25, 10, 8, 93, 0.9000797459819434},
                           {three, 0.02, 10, 8, 23, 0.9180362714150558},
                           {three, 0.02, 24, 20, 52, 0.9099358058227127}};
    for (const Known& each : table) {
        const stats::PastBatches past{each.batches, stats::knownCorrelation(each.correlation), {}};
        const auto answer = stats::countForPastBatches(each.wanted, past, each.traySize, 0.9);
        EXPECT_EQ(answer.count, each.count);
        EXPECT_NEAR(*answer.achieved, each.achieved, 1e-10);
        support::prove({"countForPastBatches", "one and three batches", "SciPy 1.10.1 betabinom and quad"},
                       *answer.achieved, each.achieved);
    }
}

TEST(CountForPastBatches, IsThatOfPastRecordsWhenTraysDoNotDiffer) {
    for (const int traySize : {1, 7, 20, 500}) {
        const stats::PastBatches past{{{8, 20}, {11, 15}}, stats::knownCorrelation(0), {}};
        const auto answer = stats::countForPastBatches(24, past, traySize, 0.9);
        const auto records = stats::countForPastRecords(24, 19, 35, 0.9);
        EXPECT_EQ(answer.count, records.count) << traySize;
        EXPECT_NEAR(*answer.achieved, *records.achieved, 1e-11) << traySize;
    }
}

TEST(CountForPastBatches, AsksForMoreWhenTraysDifferMoreOrAreLarger) {
    const auto count = [](double correlation, int traySize) {
        const stats::PastBatches past{{{12, 20}, {13, 20}, {11, 20}}, stats::knownCorrelation(correlation), {}};
        return stats::countForPastBatches(24, past, traySize, 0.9).count.value();
    };
    EXPECT_LT(count(0, 20), count(0.05, 20));
    EXPECT_LT(count(0.05, 20), count(0.2, 20));
    EXPECT_LT(count(0.1, 5), count(0.1, 30));
}

TEST(CountForPastBatches, ShrinksToTheBandWhileRecordsAreFew) {
    const auto count = [](stats::RatePrior prior, int times) {
        stats::PastBatches past{{}, stats::knownCorrelation(0.05), prior};
        for (int i = 0; i < times; ++i) past.batches.push_back({6, 20});
        return stats::countForPastBatches(12, past, 20, 0.9).count.value();
    };
    const stats::RatePrior good = stats::ratePriorOfBand(0.8, 0.95);
    EXPECT_LT(count(good, 0), 30);
    EXPECT_LT(count(good, 1), count({}, 1));
    EXPECT_LT(count({}, 40) - count(good, 40), (count({}, 1) - count(good, 1)) / 4);
}

TEST(CountToStick, HasItsEdgesAndItsCap) {
    const stats::PastBatches none{{{0, 40}, {0, 40}}, stats::knownCorrelation(0.01), {}};
    EXPECT_EQ(stats::countForPastBatches(0, none, 20, 0.9).count, 0);
    EXPECT_EQ(stats::countForPastBatches(0, none, 20, 0.9).achieved, 1);
    EXPECT_FALSE(stats::countForPastBatches(50, none, 20, 0.99).count);
    EXPECT_FALSE(stats::countForPastBatches(50, none, 20, 0.99).achieved);
    EXPECT_FALSE(stats::countForPastRecords(10, 0, 100, 0.9999).count);
    EXPECT_FALSE(stats::countForKnownRate(2'000'000, 0.9, 0.9).count);
    EXPECT_FALSE(stats::countForKnownRate(10, 1e-9, 0.9).count);
    EXPECT_EQ(stats::assuranceOfCount(0, 0, none, 20), 1);
    EXPECT_EQ(stats::assuranceOfCount(3, 2, none, 20), 0);
    // All that are needed is one of one, with all past ones rooted.
    const stats::PastBatches all{{{200, 200}}, stats::knownCorrelation(0), {}};
    EXPECT_EQ(stats::countForPastBatches(1, all, 1'000'000, 0.9).count, 1);
}

TEST(CountToStick, RefusesWhatCannotBe) {
    const stats::PastBatches past{{{3, 5}}, stats::knownCorrelation(0.1), {}};
    EXPECT_THROW((void)stats::countForKnownRate(-1, 0.5, 0.9), std::domain_error);
    EXPECT_THROW((void)stats::countForKnownRate(1, 1.5, 0.9), std::domain_error);
    EXPECT_THROW((void)stats::countForKnownRate(1, 0.5, 1), std::domain_error);
    EXPECT_THROW((void)stats::countForPastRecords(1, 3, 2, 0.9), std::domain_error);
    EXPECT_THROW((void)stats::countForPastRecords(1, 1, 2, NAN), std::domain_error);
    EXPECT_THROW((void)stats::countForPastBatches(1, past, 0, 0.9), std::domain_error);
    EXPECT_THROW((void)stats::countForPastBatches(10'001, past, 5, 0.9), std::domain_error);
    EXPECT_THROW((void)stats::countForPastBatches(1, {{}, {}, {}}, 5, 0.9), std::domain_error);
    EXPECT_THROW((void)stats::assuranceOfCount(1, 20'001, past, 5), std::domain_error);
    EXPECT_THROW((void)stats::assuranceOfCount(1, -1, past, 5), std::domain_error);
    for (const double livesOn : {0.0, -0.1, 1.1, std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_THROW((void)stats::countForKnownRate(1, 0.5, 0.9, livesOn), std::domain_error);
        EXPECT_THROW((void)stats::countForPastBatches(1, past, 5, 0.9, livesOn), std::domain_error);
        EXPECT_THROW((void)stats::assuranceOfCounts(1, std::vector<int>{3}, past, 5, livesOn), std::domain_error);
    }
    EXPECT_THROW((void)stats::assuranceOfCounts(1, std::vector<int>{3, 2}, past, 5), std::domain_error);
}

}  // namespace
