// SPDX-License-Identifier: MIT
#include "stats/planning/non_inferiority_power.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "stats/planning/sample_size.h"
#include "stats/two_proportions/non_inferiority.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/accuracy_ledger.h"

namespace {

double summedPower(const stats::PlannedArms& arms, double margin, double level) {
    long double sum = 0;
    for (const auto& table : enumeration::tablesOf(arms.trials1, arms.trials2))
        if (stats::nonInferiority(table, margin, level).isShown)
            sum += enumeration::binomial(arms.trials1, table.successes1, static_cast<long double>(arms.rate1)) *
                   enumeration::binomial(arms.trials2, table.successes2, static_cast<long double>(arms.rate2));
    return static_cast<double>(sum);
}

TEST(NonInferiorityPower, SumsTheTablesThatShowIt) {
    for (const auto& arms :
         {stats::PlannedArms{9, 7, 0.8, 0.8}, {5, 12, 0.9, 0.6}, {24, 24, 0.7, 0.7}, {11, 11, 0, 1}, {18, 20, 1, 1}}) {
        for (const double margin : {0.05, 0.1, 0.25}) {
            for (const double level : {0.8, 0.95}) {
                const double got = stats::nonInferiorityPower(arms, margin, level);
                const double want = summedPower(arms, margin, level);
                EXPECT_NEAR(got, want, 1e-12) << arms.trials1 << " " << margin << " " << level;
                support::prove({"nonInferiorityPower", "arms of 5 to 24", "the test itself on every table"}, got, want);
            }
        }
    }
}

TEST(NonInferiorityPower, RisesWithTheMarginAndIsSmallWhereTheFirstIsWorseByIt) {
    EXPECT_LT(stats::nonInferiorityPower({40, 40, 0.7, 0.7}, 0.1, 0.95),
              stats::nonInferiorityPower({40, 40, 0.7, 0.7}, 0.2, 0.95));
    EXPECT_LT(stats::nonInferiorityPower({40, 40, 0.5, 0.7}, 0.2, 0.95), 0.04);
    EXPECT_EQ(stats::nonInferiorityPower({0, 40, 0.5, 0.7}, 0.2, 0.95), 0);
}

TEST(NonInferiorityPower, GivesTheNumberPerArmOfASearchThroughEveryNumber) {
    for (const double rate : {0.05, 0.6, 0.95, 1.0}) {
        const stats::SampleSizeQuestion question{
            .rate1 = rate, .rate2 = rate, .test = stats::PlannedTest::NonInferiority, .mostPerArm = 110, .margin = 0.2};
        std::optional<int> searched;
        int enough = 0;
        for (int perArm = 1; perArm <= question.mostPerArm + 5 && !searched; ++perArm) {
            enough = stats::nonInferiorityPower({perArm, perArm, rate, rate}, 0.2, 0.95) >= 0.8 ? enough + 1 : 0;
            if (enough == 6) searched = perArm - 5;
        }
        ASSERT_TRUE(searched) << rate;
        EXPECT_EQ(stats::sampleSize(question).independentPerArm, searched) << rate;
    }
    EXPECT_FALSE(
        stats::sampleSize({.rate1 = 0.5, .rate2 = 0.7, .test = stats::PlannedTest::NonInferiority, .margin = 0.2})
            .independentPerArm)
        << "an arm that is worse by the margin is not as good";
}

TEST(NonInferiorityPower, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::nonInferiorityPower({9, 9, 0.5, 1.5}, 0.1, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::nonInferiorityPower({9, 1001, 0.5, 0.5}, 0.1, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::nonInferiorityPower({9, 9, 0.5, 0.5}, 0, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::nonInferiorityPower({9, 9, 0.5, 0.5}, 0.1, 1), std::domain_error);
    EXPECT_THROW((void)stats::sampleSize({.test = stats::PlannedTest::NonInferiority}), std::domain_error);
}

}  // namespace
