// SPDX-License-Identifier: MIT
#include "stats/planning/exact_power.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <stdexcept>
#include <utility>

#include "stats/two_proportions/boschloo_test.h"
#include "stats/two_proportions/fisher_test.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::BoschlooKind;
using stats::FisherSide;

stats::PlannedArms armsPlannedIn(const support::ReferenceCase& each) {
    return {each.count("n1"), each.count("n2"), each.number("p1"), each.number("p2")};
}

class FisherPower : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(FisherPower, GivesTheReferenceValue) {
    const auto alternative = GetParam().inputs.at("alternative").get<std::string>();
    const FisherSide side = alternative == "less"      ? FisherSide::Less
                            : alternative == "greater" ? FisherSide::Greater
                                                       : FisherSide::TwoSided;
    const auto power = stats::fisherPower(armsPlannedIn(GetParam()), GetParam().number("alpha"), side);
    GetParam().expect({{"power", power.power}, {"size", power.size}});
    EXPECT_EQ(stats::fisherPowerAlone(armsPlannedIn(GetParam()), GetParam().number("alpha"), side), power.power);
}

INSTANTIATE_TEST_SUITE_P(Reference, FisherPower, testing::ValuesIn(support::referenceCases({"power_fisher"})),
                         support::nameOfCase);

class BoschlooPower : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(BoschlooPower, GivesTheReferenceValue) {
    const auto named = GetParam().inputs.at("kind").get<std::string>();
    const BoschlooKind kind = named == "less"      ? BoschlooKind::Less
                              : named == "greater" ? BoschlooKind::Greater
                              : named == "minlike" ? BoschlooKind::Minlike
                                                   : BoschlooKind::Central;
    const auto power = stats::boschlooPower(armsPlannedIn(GetParam()), GetParam().number("alpha"), kind);
    GetParam().expect({{"power", power.power}, {"size", power.size}});
    EXPECT_EQ(stats::boschlooPowerAlone(armsPlannedIn(GetParam()), GetParam().number("alpha"), kind), power.power);
}

INSTANTIATE_TEST_SUITE_P(Reference, BoschlooPower, testing::ValuesIn(support::referenceCases({"power_boschloo"})),
                         support::nameOfCase);

double enumeratedPower(const stats::PlannedArms& arms, const std::function<double(const stats::TwoCounts&)>& p,
                       double alpha) {
    long double sum = 0;
    for (const auto& table : enumeration::tablesOf(arms.trials1, arms.trials2))
        if (p(table) <= alpha * (1 + 1e-10))
            sum += enumeration::binomial(arms.trials1, table.successes1, static_cast<long double>(arms.rate1)) *
                   enumeration::binomial(arms.trials2, table.successes2, static_cast<long double>(arms.rate2));
    return static_cast<double>(sum);
}

TEST(ExactPower, SumsTheTablesThatEachTestRejects) {
    for (const auto& arms : {stats::PlannedArms{9, 7, 0.3, 0.8}, {5, 12, 0.9, 0.2}, {11, 11, 0.55, 0.5}}) {
        for (const double alpha : {0.01, 0.05, 0.1, 0.4}) {
            const auto check = [&](const char* function, double got, const auto& p) {
                const double want = enumeratedPower(arms, p, alpha);
                EXPECT_NEAR(got, want, 1e-12) << function << " " << alpha;
                support::prove({function, "arms of 5 to 12", "the test itself on every table"}, got, want);
            };
            using Table = stats::TwoCounts;
            check("fisherPower", stats::fisherPower(arms, alpha, FisherSide::TwoSided).power,
                  [](const Table& table) { return stats::fisherTest(table).twoSided; });
            check("fisherPowerAlone", stats::fisherPowerAlone(arms, alpha, FisherSide::Less),
                  [](const Table& table) { return stats::fisherTest(table).less; });
            check("fisherPower", stats::fisherPower(arms, alpha, FisherSide::Greater).power,
                  [](const Table& table) { return stats::fisherTest(table).greater; });
            check("boschlooPower", stats::boschlooPower(arms, alpha, BoschlooKind::Central).power,
                  [](const Table& table) { return stats::boschlooTest(table).central; });
            check("boschlooPower", stats::boschlooPower(arms, alpha, BoschlooKind::Minlike).power,
                  [](const Table& table) { return stats::boschlooTest(table).minlike; });
            check("boschlooPowerAlone", stats::boschlooPowerAlone(arms, alpha, BoschlooKind::Less),
                  [](const Table& table) { return stats::boschlooTest(table).less; });
            check("boschlooPower", stats::boschlooPower(arms, alpha, BoschlooKind::Greater).power,
                  [](const Table& table) { return stats::boschlooTest(table).greater; });
        }
    }
}

TEST(ExactPower, HasASizeThatAFineGridOfRatesReaches) {
    const auto power = stats::boschlooPower({8, 10, 0.3, 0.8}, 0.05, BoschlooKind::Central);
    const double grid = enumeration::largestProbability(
        8, 10, [](const auto& table) { return stats::boschlooTest(table).central <= 0.05; });
    EXPECT_NEAR(power.size, grid, 1e-6);
    EXPECT_GE(power.size, grid - 1e-12);
}

TEST(ExactPower, CountsATableWhosePIsAlphaToTheLastDigit) {
    // Of 3 and 3 the outermost table has p = 1/20 one-sided. At rates 0 and 1 it is sure to come.
    EXPECT_EQ(stats::fisherPower({3, 3, 0, 1}, 0.05, FisherSide::Less).power, 1);
    EXPECT_EQ(stats::fisherPower({3, 3, 0, 1}, 0.0499, FisherSide::Less).power, 0);
}

TEST(ExactPower, TurnsLessIntoGreaterWhenTheArmsSwap) {
    const stats::PlannedArms arms{14, 9, 0.35, 0.7}, swapped{9, 14, 0.7, 0.35};
    EXPECT_NEAR(stats::boschlooPower(arms, 0.05, BoschlooKind::Less).power,
                stats::boschlooPower(swapped, 0.05, BoschlooKind::Greater).power, 1e-13);
    EXPECT_NEAR(stats::boschlooPower(arms, 0.05, BoschlooKind::Central).size,
                stats::boschlooPower(swapped, 0.05, BoschlooKind::Central).size, 1e-9);
}

TEST(ExactPower, OfBoschlooIsNeverBelowFishers) {
    for (int trials = 1; trials <= 25; ++trials) {
        const stats::PlannedArms arms{trials, trials + 3, 0.4, 0.8};
        const auto boschloo = stats::boschlooPower(arms, 0.05, BoschlooKind::Minlike);
        const auto fisher = stats::fisherPower(arms, 0.05, FisherSide::TwoSided);
        EXPECT_GE(boschloo.power, fisher.power - 1e-14);
        EXPECT_LE(boschloo.size, 0.05 + 1e-9);
        EXPECT_LE(fisher.size, boschloo.size + 1e-12);
    }
}

TEST(ExactPower, OfEqualArmsIsNeverBelowFishersEitherWhenEachSideIsHeldAlone) {
    for (const auto& [rate1, rate2] : {std::pair{0.4, 0.8}, {0.05, 0.3}, {0.9, 0.97}, {0.5, 0.55}})
        for (int trials = 1; trials <= 40; ++trials)
            for (const double alpha : {0.01, 0.05}) {
                const stats::PlannedArms arms{trials, trials, rate1, rate2};
                EXPECT_GE(stats::boschlooPowerAlone(arms, alpha, BoschlooKind::Central),
                          stats::fisherPowerAlone(arms, alpha, FisherSide::TwoSided) - 1e-14)
                    << trials;
            }
}

TEST(ExactPower, AnswersAtTheEdges) {
    EXPECT_EQ(stats::fisherPower({0, 9, 0.2, 0.5}, 0.05, FisherSide::TwoSided).power, 0);
    EXPECT_EQ(stats::boschlooPower({9, 0, 0.2, 0.5}, 0.05, BoschlooKind::Central).size, 0);
    EXPECT_EQ(stats::boschlooPower({1, 1, 0, 1}, 0.05, BoschlooKind::Central).power, 0);
    EXPECT_EQ(stats::boschlooPower({30, 30, 0, 1}, 0.05, BoschlooKind::Central).power, 1);
    // Tables rarer than any double under one common rate are still counted: both arms far out.
    EXPECT_NEAR(stats::fisherPower({700, 700, 0.0005, 0.9995}, 0.05, FisherSide::TwoSided).power, 1, 1e-12);
    EXPECT_NEAR(stats::fisherPower({700, 700, 0.9995, 0.0005}, 0.05, FisherSide::Greater).power, 1, 1e-12);
}

TEST(ExactPower, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::fisherPower({-1, 2, 0.1, 0.2}, 0.05, FisherSide::Less), std::domain_error);
    EXPECT_THROW((void)stats::fisherPower({1001, 2, 0.1, 0.2}, 0.05, FisherSide::Less), std::domain_error);
    EXPECT_THROW((void)stats::fisherPowerAlone({1, 2, NAN, 0.2}, 0.05, FisherSide::Less), std::domain_error);
    EXPECT_THROW((void)stats::boschlooPower({1, 2, 0.1, 1.2}, 0.05, BoschlooKind::Less), std::domain_error);
    EXPECT_THROW((void)stats::boschlooPowerAlone({1, 2, 0.1, 0.2}, 0, BoschlooKind::Less), std::domain_error);
}

}  // namespace
