// SPDX-License-Identifier: MIT
#include "stats/planning/sample_size.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <stdexcept>
#include <utility>

#include "stats/numeric/seeded_random.h"
#include "stats/planning/exact_power.h"
#include "stats/two_proportions/boschloo_test.h"
#include "stats/two_proportions/fisher_test.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::PlannedTest;
using stats::SampleSizeQuestion;

double exactPower(const SampleSizeQuestion& question, int perArm) {
    const stats::PlannedArms arms{perArm, perArm, question.rate1, question.rate2};
    return question.test == PlannedTest::Fisher
               ? stats::fisherPowerAlone(arms, question.alpha, stats::FisherSide::TwoSided)
               : stats::boschlooPowerAlone(arms, question.alpha, stats::BoschlooKind::Central);
}

// By the definition, through every number from one.
std::optional<int> plainSearch(const SampleSizeQuestion& question) {
    int enough = 0;
    for (int perArm = 1; perArm <= question.mostPerArm + 5; ++perArm) {
        enough = exactPower(question, perArm) >= question.power ? enough + 1 : 0;
        if (enough == 6) return perArm - 5;
    }
    return std::nullopt;
}

double enumeratedPower(const SampleSizeQuestion& question, int perArm) {
    long double power = 0;
    for (const auto& table : enumeration::tablesOf(perArm, perArm)) {
        const double p = question.test == PlannedTest::Fisher ? stats::fisherTest(table).twoSided
                                                              : stats::boschlooTest(table).central;
        if (p <= question.alpha * (1 + 1e-10))
            power += enumeration::binomial(perArm, table.successes1, static_cast<long double>(question.rate1)) *
                     enumeration::binomial(perArm, table.successes2, static_cast<long double>(question.rate2));
    }
    return static_cast<double>(power);
}

int enumeratedPerArm(const SampleSizeQuestion& question) {
    for (int perArm = 1, enough = 0;; ++perArm) {
        enough = enumeratedPower(question, perArm) >= question.power ? enough + 1 : 0;
        if (enough == 6) return perArm - 5;
    }
}

TEST(SampleSize, IsThatOfASearchThroughEveryNumber) {
    stats::SeededRandom random(20260216);
    std::cout << "[ seed 20260216 ]\n";
    int found = 0;
    for (int run = 0; run < 60; ++run) {
        SampleSizeQuestion question{.rate1 = 0.02 + 0.96 * random.uniform(),
                                    .rate2 = 0.02 + 0.96 * random.uniform(),
                                    .alpha = random.below(2) == 0 ? 0.05 : 0.01,
                                    .power = 0.4 + 0.55 * random.uniform(),
                                    .test = run % 4 == 0 ? PlannedTest::Boschloo : PlannedTest::Fisher,
                                    .designEffect = 1,
                                    .mostPerArm = run % 4 == 0 ? 40 : 90};
        const auto size = stats::sampleSize(question);
        ASSERT_EQ(size.independentPerArm, plainSearch(question)) << run;
        found += size.independentPerArm ? 1 : 0;
        if (size.independentPerArm)
            support::prove({"sampleSize", "random questions up to 90 per arm", "every number from one"},
                           *size.independentPerArm, *plainSearch(question));
    }
    EXPECT_GT(found, 25);
}

TEST(SampleSize, HasThePowerAndKeepsItForFiveMore) {
    const SampleSizeQuestion question{.rate1 = 0.5, .rate2 = 0.75};
    const auto size = stats::sampleSize(question);
    // 0.8105 at 60 per arm: the reference case power-boschloo-central-60-0.5-0.75.
    EXPECT_EQ(size.independentPerArm, 60);
    EXPECT_NEAR(*size.achieved, 0.810483811659927, 1e-10);
    EXPECT_NEAR(*size.normalPerArm, 57.7, 0.05);
    EXPECT_LT(exactPower(question, 59), 0.8);
    for (int more = 0; more <= 5; ++more) EXPECT_GE(exactPower(question, 60 + more), 0.8);
}

TEST(SampleSize, ForEightyInAHundredIsThatOfEveryNumberEnumerated) {
    // Tables of every number per arm, each test on each of them; kept for five more is part of the definition.
    for (const auto& [rate1, rate2] : {std::pair{0.3, 0.8}, {0.5, 0.9}, {0.4, 0.95}, {0.1, 0.5}})
        for (const PlannedTest test : {PlannedTest::Fisher, PlannedTest::Boschloo}) {
            if (test == PlannedTest::Boschloo && rate2 - rate1 < 0.5) continue;  // thousands of tables to maximise over
            const SampleSizeQuestion question{.rate1 = rate1, .rate2 = rate2, .test = test, .mostPerArm = 60};
            const auto size = stats::sampleSize(question);
            ASSERT_TRUE(size.independentPerArm);
            const int enumerated = enumeratedPerArm(question);
            EXPECT_EQ(*size.independentPerArm, enumerated) << rate1 << " " << rate2;
            support::prove(
                {"sampleSize", "four pairs of rates, power 0.8", "the test itself on every table of every number"},
                *size.independentPerArm, enumerated);
        }
}

TEST(SampleSize, IsMultipliedByTheDesignEffect) {
    const double effect = stats::designEffectOfTrays(20, 0.1);
    EXPECT_NEAR(effect, 2.9, 1e-14);
    support::prove({"designEffectOfTrays", "trays of 20, correlation 0.1", "by hand"}, effect, 2.9);
    EXPECT_EQ(stats::designEffectOfTrays(1, 0.5), 1);
    const auto size = stats::sampleSize({.rate1 = 0.5, .rate2 = 0.75, .designEffect = effect});
    EXPECT_EQ(size.independentPerArm, 60);
    EXPECT_EQ(size.perArm, 174);
}

TEST(SampleSize, SaysWhenThereIsNone) {
    const auto equal = stats::sampleSize({.rate1 = 0.5, .rate2 = 0.5});
    EXPECT_FALSE(equal.independentPerArm);
    EXPECT_FALSE(equal.perArm);
    EXPECT_FALSE(equal.normalPerArm);
    const auto tooMany = stats::sampleSize({.rate1 = 0.5, .rate2 = 0.501});
    EXPECT_FALSE(tooMany.independentPerArm);
    EXPECT_GT(*tooMany.normalPerArm, 1e6);
    const auto capped = stats::sampleSize({.rate1 = 0.5, .rate2 = 0.75, .mostPerArm = 30});
    EXPECT_FALSE(capped.independentPerArm);
    const auto huge = stats::sampleSize({.rate1 = 0, .rate2 = 1, .designEffect = 1e300});
    EXPECT_TRUE(huge.independentPerArm);
    EXPECT_FALSE(huge.perArm);
}

TEST(SampleSize, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::sampleSize({.rate1 = 0.1, .rate2 = 1.4}), std::domain_error);
    EXPECT_THROW((void)stats::sampleSize({.rate1 = 0.1, .rate2 = 0.4, .power = 1}), std::domain_error);
    EXPECT_THROW((void)stats::sampleSize({.rate1 = 0.1, .rate2 = 0.4, .designEffect = 0.5}), std::domain_error);
    EXPECT_THROW((void)stats::sampleSize({.rate1 = 0.1, .rate2 = 0.4, .mostPerArm = 901}), std::domain_error);
    EXPECT_THROW((void)stats::designEffectOfTrays(0, 0.1), std::domain_error);
    EXPECT_THROW((void)stats::designEffectOfTrays(5, NAN), std::domain_error);
}

}  // namespace
