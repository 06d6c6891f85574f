// SPDX-License-Identifier: MIT
#include "stats/cost/cost_per_success.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "stats/two_proportions/probability_of_superiority.h"
#include "tests/stats/drawn_rates.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using simulated::ratesOf;

TEST(ChanceCheaper, IsTheProbabilityOfTheBetterRateWhereTrialsCostTheSame) {
    for (const int successes : {3, 9, 15, 20}) {
        const double got = stats::chanceCheaper({.perTrial = 0.6, .rates = ratesOf(successes, 20)},
                                                {.perTrial = 0.6, .rates = ratesOf(11, 24)});
        const double want = stats::probabilityOfSuperiority({successes, 20, 11, 24});
        EXPECT_NEAR(got, want, 1e-4) << successes << " of 20";
        support::prove({"chanceCheaper", "trials that cost the same", "probabilityOfSuperiority(), by quadrature"}, got,
                       want);
    }
}

TEST(ChanceCheaper, AgreesWithAMillionDraws) {
    // A dear way at 0.82 a cutting that rooted 33 of 40, a cheap one at 0.55 that rooted 22 of 40; and one that was hardly tried.
    for (const int tried : {40, 4}) {
        const int rooted = tried * 33 / 40;
        const double got = stats::chanceCheaper({.perTrial = 0.82, .rates = ratesOf(rooted, tried)},
                                                {.perTrial = 0.55, .rates = ratesOf(22, 40)});
        const double drawn =
            simulated::shareOf(simulated::drawnRates({rooted, tried}, {22, 40}),
                               [](const simulated::Rates& rates) { return 0.82 / rates.first < 0.55 / rates.second; });
        EXPECT_NEAR(got, drawn, simulated::fourErrors(drawn) + 1e-4) << rooted << " of " << tried;
    }
}

TEST(ChanceCheaper, AllowsForBatchesThatDiffer) {
    const auto certain =
        stats::chanceCheaper({.perTrial = 1, .rates = ratesOf(60, 80)}, {.perTrial = 1, .rates = ratesOf(40, 80)});
    const auto spread = stats::chanceCheaper({.perTrial = 1, .rates = ratesOf(60, 80, 0.2)},
                                             {.perTrial = 1, .rates = ratesOf(40, 80, 0.2)});
    EXPECT_GT(certain, 0.99);
    EXPECT_LT(spread, certain);
    EXPECT_GT(spread, 0.5);
}

TEST(ChanceCheaper, IsPlainWhereOneCostsNothing) {
    const auto rates = ratesOf(5, 10);
    EXPECT_DOUBLE_EQ(stats::chanceCheaper({.perTrial = 0, .rates = rates}, {.perTrial = 0.5, .rates = rates}), 1);
    EXPECT_DOUBLE_EQ(stats::chanceCheaper({.perTrial = 0.5, .rates = rates}, {.perTrial = 0, .rates = rates}), 0);
    EXPECT_DOUBLE_EQ(stats::chanceCheaper({.perTrial = 0, .rates = rates}, {.perTrial = 0, .rates = rates}), 0.5);
}

TEST(ChanceCheaper, RefusesWhatIsOutsideItsDomain) {
    const auto rates = ratesOf(5, 10);
    EXPECT_THROW((void)stats::chanceCheaper({.perTrial = -1, .rates = rates}, {.perTrial = 1, .rates = rates}),
                 std::domain_error);
    EXPECT_THROW((void)stats::chanceCheaper({.perTrial = 1, .rates = {}}, {.perTrial = 1, .rates = rates}),
                 std::domain_error);
    EXPECT_THROW((void)stats::chanceCheaper({.perTrial = 1, .rates = {{0.5, 0, 0.7}}}, {.perTrial = 1, .rates = rates}),
                 std::domain_error);
}

}  // namespace
