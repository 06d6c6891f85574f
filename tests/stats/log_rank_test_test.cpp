// SPDX-License-Identifier: MIT
#include "stats/time_to_event/log_rank_test.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "stats/strata/cochran_mantel_haenszel_test.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::ExactDay;
using Arms = std::vector<std::vector<ExactDay>>;

class LogRankReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(LogRankReference, GivesTheReferenceValue) {
    const auto& inputs = GetParam().inputs;
    Arms arms(2);
    for (std::size_t i = 0; i < inputs.at("time").size(); ++i) {
        arms.at(inputs.at("group")[i].get<std::size_t>() - 1)
            .push_back({.day = inputs.at("time")[i], .cause = inputs.at("status")[i]});
    }
    const auto test = stats::logRankTest(arms);
    const auto& want = GetParam().expected;
    for (std::size_t arm = 0; arm < 2; ++arm) {
        GetParam().expectNear("observed", test.observed[arm], want.at("observed")[arm]);
        GetParam().expectNear("expected", test.expected[arm], want.at("expected")[arm]);
        // Printed in Cox and Oakes (1984) to two decimals, from memory.
        EXPECT_NEAR(test.expected[arm], GetParam().published.at("expected")[arm].get<double>(), 0.0051);
    }
    EXPECT_NEAR(*test.statistic, GetParam().published.at("chi2").get<double>(), 0.0051);
    GetParam().expectNear("chi2", test.statistic, want.at("chi2"));
    GetParam().expectNear("df", test.degreesOfFreedom, want.at("df"));
    GetParam().expectNear("p", test.p, want.at("p"));
}

INSTANTIATE_TEST_SUITE_P(Reference, LogRankReference, testing::ValuesIn(support::referenceCases({"logrank"})),
                         support::nameOfCase);

Arms threeArms() {
    return {{{3, 1}, {3, 1}, {5, 0}, {6, 1}, {6, 1}, {8, 1}, {9, 0}},
            {{2, 1}, {4, 1}, {4, 0}, {6, 1}, {7, 1}, {7, 1}, {10, 1}},
            {{1, 1}, {3, 1}, {5, 1}, {5, 0}, {8, 1}, {11, 1}, {12, 1}}};
}

TEST(LogRankTest, AgreesWithSurvdiffOnThreeArms) {
    // R 4.2.2 survival 3.5.3 survdiff.
    const auto test = stats::logRankTest(threeArms());
    const double expected[] = {4.715815105947, 4.798991797676, 7.485193096377};
    for (std::size_t arm = 0; arm < 3; ++arm) EXPECT_NEAR(test.expected[arm], expected[arm], 1e-11);
    EXPECT_NEAR(*test.statistic, 0.835826936576, 1e-11);
    EXPECT_NEAR(*test.p, 0.658419200100, 1e-11);
    EXPECT_EQ(test.degreesOfFreedom, 2);
    support::prove({"logRankTest", "three arms with ties", "R 4.2.2 survival 3.5.3 survdiff"}, *test.statistic,
                   0.835826936576);
}

TEST(LogRankTest, OfTwoArmsIsTheTestOfManyTables) {
    // Each day with an event is a table of arm against event: Cochran, Mantel and Haenszel without correction.
    stats::SeededRandom random(52);
    for (int run = 0; run < 200; ++run) {
        Arms arms(2);
        for (int i = 0; i < 24; ++i) {
            arms[random.below(2)].push_back(
                {.day = 1.0 + static_cast<double>(random.below(9)), .cause = random.below(4) > 0 ? 1 : 0});
        }
        std::vector<stats::Stratum> tables;
        for (int day = 1; day <= 9; ++day) {
            int atRisk[2]{}, events[2]{};
            for (std::size_t arm = 0; arm < 2; ++arm) {
                for (const ExactDay& row : arms[arm]) {
                    atRisk[arm] += row.day >= day ? 1 : 0;
                    events[arm] += row.day == day && row.cause == 1 ? 1 : 0;
                }
            }
            tables.push_back(
                {.successes1 = events[0], .trials1 = atRisk[0], .successes2 = events[1], .trials2 = atRisk[1]});
        }
        const auto test = stats::logRankTest(arms);
        const auto other = stats::cochranMantelHaenszelTest(tables);
        ASSERT_EQ(test.statistic.has_value(), other.chiSquare.has_value());
        if (test.statistic) {
            ASSERT_NEAR(*test.statistic, *other.chiSquare, 1e-10);
        }
    }
}

TEST(LogRankTest, DoesNotCareForTheOrderOfArms) {
    Arms arms = threeArms();
    const double before = *stats::logRankTest(arms).statistic;
    std::swap(arms[0], arms[2]);
    EXPECT_NEAR(*stats::logRankTest(arms).statistic, before, 1e-12);
    arms.emplace_back();
    EXPECT_NEAR(*stats::logRankTest(arms).statistic, before, 1e-12) << "an empty arm does not count";
    EXPECT_EQ(stats::logRankTest(arms).degreesOfFreedom, 2);
}

TEST(LogRankTest, HasNothingToSayWhereNoTwoArmsMeet) {
    EXPECT_FALSE(stats::logRankTest({}).statistic);
    EXPECT_FALSE(stats::logRankTest(Arms{{{3, 1}}, {}}).p);
    EXPECT_FALSE(stats::logRankTest(Arms{{{3, 0}}, {{5, 0}}}).statistic) << "no event";
    EXPECT_FALSE(stats::logRankTest(Arms{{{3, 0}}, {{5, 1}, {6, 1}}}).statistic) << "arm 1 had left before";
}

TEST(LogRankTest, RefusesRowsThatCannotBe) {
    for (const ExactDay& row : {ExactDay{-1, 1}, {NAN, 1}, {1, 2}, {1, 1, 0.5}, {1, 1, -1}}) {
        EXPECT_THROW((void)stats::logRankTest(Arms{{row}}), std::domain_error);
    }
}

}  // namespace
