// SPDX-License-Identifier: MIT
#include "stats/numeric/seeded_random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <stdexcept>
#include <vector>

#include "stats/numeric/distribution_tails.h"

namespace {

using stats::SeededRandom;

TEST(SeededRandomNext, GivesTheOutputsThatTheAuthorsCodeGivesFromState1234) {
    // From memory of the test vectors in use for xoshiro256** (state 1, 2, 3, 4).
    SeededRandom random(SeededRandom::State{1, 2, 3, 4});
    for (const std::uint64_t want : {11520ULL, 0ULL, 1509978240ULL, 1215971899390074240ULL, 1216172134540287360ULL,
                                     607988272756665600ULL, 16172922978634559625ULL, 8476171486693032832ULL}) {
        EXPECT_EQ(random.next(), want);
    }
}

TEST(SeededRandomSeed, FillsTheStateWithSplitmix64) {
    // From memory of the published outputs of splitmix64 for seed 1234567.
    const SeededRandom::State want{6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
                                   4593380528125082431U};
    EXPECT_EQ(SeededRandom(1234567).state(), want);
}

TEST(SeededRandomDistributions, GiveTheseVeryValuesOnEveryMachine) {
    SeededRandom random(20260101);
    EXPECT_EQ(random.uniform(), 0x1.5f8a38101fadap-2);
    EXPECT_EQ(random.below(1000), 43U);
    EXPECT_EQ(random.normal(), -0x1.11bdaddd7b7b7p-3);
    EXPECT_EQ(random.gamma(2.5), 0x1.7ffbb069a8692p+2);
    EXPECT_EQ(random.gamma(0.3, 2), 0x1.1e81f37293527p-1);
    EXPECT_EQ(random.beta(6, 2), 0x1.acc9bf29765b3p-1);
    EXPECT_EQ(random.binomial(24, 0.7), 16);
    EXPECT_EQ(random.binomial(100'000, 0.3), 30113);
}

TEST(PortableLog, IsTheLibrarysWithinItsComment) {
    SeededRandom random(1);
    for (int i = 0; i < 100'000; ++i) {
        const double x = std::ldexp(0.5 + random.uniform() / 2, static_cast<int>(random.below(2000)) - 1000);
        ASSERT_NEAR(stats::portableLog(x), std::log(x), 2e-15 * std::abs(std::log(x)) + 1e-16) << x;
    }
    EXPECT_EQ(stats::portableLog(1), 0);
    for (const double x : {0.999999, 1.000001, 0.9, 1.1, 5e-324, 1.7e308}) {
        EXPECT_NEAR(stats::portableLog(x), std::log(x), 2e-15 * std::abs(std::log(x))) << x;
    }
}

TEST(PortableExp, IsTheLibrarysWithinItsComment) {
    SeededRandom random(2);
    for (int i = 0; i < 100'000; ++i) {
        const double x = 1400 * random.uniform() - 700;
        ASSERT_NEAR(stats::portableExp(x) / std::exp(x), 1, 2e-15) << x;
    }
    EXPECT_EQ(stats::portableExp(0), 1);
    EXPECT_EQ(stats::portableExp(-800), 0);
    EXPECT_EQ(stats::portableExp(-INFINITY), 0);
    EXPECT_TRUE(std::isinf(stats::portableExp(INFINITY)));
}

double chiSquareAgainst(const std::vector<double>& counts, const std::vector<double>& expected) {
    double sum = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) sum += std::pow(counts[i] - expected[i], 2) / expected[i];
    return sum;
}

TEST(SeededRandomBelow, IsEvenlySpread) {
    SeededRandom random(3);
    std::vector<double> counts(7, 0);
    for (int i = 0; i < 70'000; ++i) ++counts[random.below(7)];
    EXPECT_GT(stats::chiSquareTail(chiSquareAgainst(counts, std::vector<double>(7, 10'000)), 6), 1e-4);
    EXPECT_EQ(random.below(1), 0U);
}

TEST(SeededRandomBinomial, HasTheBinomialProbabilities) {
    for (const auto& [trials, p] : {std::pair{9, 0.3}, {40, 0.5}, {90, 0.93}, {24, 0.02}}) {
        SeededRandom random(4);
        constexpr int kDraws = 60'000;
        std::map<int, double> seen;
        for (int i = 0; i < kDraws; ++i) ++seen[random.binomial(trials, p)];
        // Counts expected fewer than ten times go to one cell.
        std::vector<double> counts{0}, expected{0};
        for (int k = 0; k <= trials; ++k) {
            const double mean =
                kDraws * std::exp(std::lgamma(trials + 1.0) - std::lgamma(k + 1.0) - std::lgamma(trials - k + 1.0) +
                                  k * std::log(p) + (trials - k) * std::log1p(-p));
            if (mean < 10) {
                counts[0] += seen[k];
                expected[0] += mean;
            } else {
                counts.push_back(seen[k]);
                expected.push_back(mean);
            }
        }
        const int cells = static_cast<int>(counts.size());
        EXPECT_GT(stats::chiSquareTail(chiSquareAgainst(counts, expected), cells - 1), 1e-4) << trials << " " << p;
    }
}

struct Moments {
    double mean{}, variance{};
};

template <class Draw>
Moments momentsOf(Draw draw) {
    constexpr int kDraws = 200'000;
    double sum = 0, squares = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double x = draw();
        sum += x;
        squares += x * x;
    }
    return {.mean = sum / kDraws, .variance = squares / kDraws - sum / kDraws * (sum / kDraws)};
}

TEST(SeededRandomDistributions, HaveTheirMomentsWithinFiveStandardErrors) {
    SeededRandom random(5);
    const auto expectMoments = [](const Moments& got, double mean, double variance, const char* what) {
        EXPECT_NEAR(got.mean, mean, 5 * std::sqrt(variance / 200'000)) << what;
        EXPECT_NEAR(got.variance / variance, 1, 0.05) << what;
    };
    expectMoments(momentsOf([&] { return random.uniform(); }), 0.5, 1.0 / 12, "uniform");
    expectMoments(momentsOf([&] { return random.normal(3, 2); }), 3, 4, "normal");
    expectMoments(momentsOf([&] { return random.gamma(0.4, 3); }), 1.2, 3.6, "gamma, small shape");
    expectMoments(momentsOf([&] { return random.gamma(7, 0.5); }), 3.5, 1.75, "gamma");
    expectMoments(momentsOf([&] { return random.beta(0.5, 0.2); }), 0.5 / 0.7, 0.1 / (0.49 * 1.7), "beta, small");
    expectMoments(momentsOf([&] { return random.beta(6, 2); }), 0.75, 12.0 / (64 * 9), "beta");
}

TEST(SeededRandomNormal, FillsTheQuartersOfTheNormalDistribution) {
    SeededRandom random(6);
    std::vector<double> counts(4, 0);
    for (int i = 0; i < 40'000; ++i) {
        const double x = random.normal();
        ++counts[x < -0.6744897501960817 ? 0 : x < 0 ? 1 : x < 0.6744897501960817 ? 2 : 3];
    }
    EXPECT_GT(stats::chiSquareTail(chiSquareAgainst(counts, std::vector<double>(4, 10'000)), 3), 1e-4);
}

TEST(SeededRandomShuffle, GivesEachOrderEquallyOften) {
    SeededRandom random(7);
    std::map<std::array<int, 4>, double> seen;
    for (int i = 0; i < 24'000; ++i) {
        std::array<int, 4> order{0, 1, 2, 3};
        random.shuffle(std::span<int>(order));
        ++seen[order];
    }
    std::vector<double> counts;
    for (const auto& [order, count] : seen) counts.push_back(count);
    ASSERT_EQ(counts.size(), 24U);
    EXPECT_GT(stats::chiSquareTail(chiSquareAgainst(counts, std::vector<double>(24, 1000)), 23), 1e-4);
}

TEST(SeededRandomDistributions, StayInsideAtTheirEdges) {
    SeededRandom random(8);
    EXPECT_EQ(random.binomial(0, 0.5), 0);
    EXPECT_EQ(random.binomial(500, 0), 0);
    EXPECT_EQ(random.binomial(500, 1), 500);
    for (int i = 0; i < 20'000; ++i) {
        const double tiny = random.beta(1e-3, 1e-3), lopsided = random.beta(1e-5, 1e5);
        ASSERT_TRUE(tiny >= 0 && tiny <= 1);
        ASSERT_TRUE(lopsided >= 0 && lopsided <= 1);
        ASSERT_TRUE(std::isfinite(random.gamma(1e-4)));
        const int large = random.binomial(2'000'000'000, 0.999999);
        ASSERT_TRUE(large >= 0 && large <= 2'000'000'000);
    }
}

TEST(SeededRandom, RefusesParametersThatCannotBe) {
    SeededRandom random(9);
    EXPECT_THROW(SeededRandom(SeededRandom::State{}), std::domain_error);
    EXPECT_THROW((void)random.below(0), std::domain_error);
    EXPECT_THROW((void)random.binomial(-1, 0.5), std::domain_error);
    EXPECT_THROW((void)random.binomial(3, 1.5), std::domain_error);
    EXPECT_THROW((void)random.binomial(3, NAN), std::domain_error);
    EXPECT_THROW((void)random.normal(0, -1), std::domain_error);
    EXPECT_THROW((void)random.gamma(0), std::domain_error);
    EXPECT_THROW((void)random.gamma(1, NAN), std::domain_error);
    EXPECT_THROW((void)random.beta(1, 0), std::domain_error);
    EXPECT_THROW((void)random.beta(INFINITY, 1), std::domain_error);
}

}  // namespace
