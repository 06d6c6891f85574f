// SPDX-License-Identifier: MIT
#include "stats/numeric/hypergeometric.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"

namespace {

TEST(Hypergeometric, AgreesWithCountingArrangements) {
    for (const double logOdds : {0.0, 1.5, -4.0}) {
        for (int successes = 0; successes <= 20; ++successes) {
            const auto law = stats::hypergeometricProbabilities(8, 12, successes, logOdds);
            long double all = 0;
            const auto tables = enumeration::tablesOf(8, 12, successes);
            const auto weightOf = [logOdds](const stats::TwoCounts& table) {
                return enumeration::ways(8, table.successes1) * enumeration::ways(12, table.successes2) *
                       std::exp(static_cast<long double>(logOdds) * table.successes1);
            };
            for (const auto& table : tables) all += weightOf(table);
            ASSERT_EQ(law.probabilities.size(), tables.size());
            EXPECT_EQ(law.first, tables.front().successes1);
            for (std::size_t i = 0; i < tables.size(); ++i)
                EXPECT_NEAR(law.probabilities[i] / static_cast<double>(weightOf(tables[i]) / all), 1, 1e-13);
        }
    }
}

TEST(Hypergeometric, KeepsToTheRunAboveItsCutoff) {
    const auto law = stats::hypergeometricProbabilities(500000, 500000, 600000, 0, 1e-20);
    EXPECT_LT(law.probabilities.size(), 6000u);
    EXPECT_GT(law.first, 295000);
    double sum = 0, mean = 0;
    for (std::size_t i = 0; i < law.probabilities.size(); ++i) {
        sum += law.probabilities[i];
        mean += law.probabilities[i] * (law.first + static_cast<double>(i));
    }
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_NEAR(mean, 300000, 1e-6);
}

TEST(Hypergeometric, HasOneValueAtTheEnds) {
    for (const int successes : {0, 20}) {
        const auto law = stats::hypergeometricProbabilities(8, 12, successes);
        EXPECT_EQ(law.probabilities, std::vector<double>{1});
        EXPECT_EQ(law.first, successes == 0 ? 0 : 8);
    }
    EXPECT_EQ(stats::hypergeometricProbabilities(0, 12, 5).probabilities, std::vector<double>{1});
}

TEST(Hypergeometric, RefusesImpossibleCounts) {
    EXPECT_THROW(static_cast<void>(stats::hypergeometricProbabilities(3, 4, 8)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::hypergeometricProbabilities(-3, 4, 1)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::hypergeometricProbabilities(3, -4, 1)), std::domain_error);
}

}  // namespace
