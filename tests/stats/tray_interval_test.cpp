// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_interval.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/proportion/wilson_interval.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using Trays = std::vector<stats::Tray>;

class TrayIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(TrayIntervalReference, GivesTheReferenceValue) {
    const auto interval = stats::trayInterval(traysIn(GetParam()), GetParam().number("conf"));
    EXPECT_EQ(interval.includesTrayVariation, GetParam().expected.at("tray_variation_included").get<bool>());
    GetParam().expect({{"estimate", interval.estimate},
                       {"lower", interval.limits.low},
                       {"upper", interval.limits.high},
                       {"n_star", interval.effectiveTrials}},
                      {"tray_variation_included"});  // a bool, compared above
}

INSTANTIATE_TEST_SUITE_P(Reference, TrayIntervalReference,
                         testing::ValuesIn(support::referenceCases({"tray_interval"})), support::nameOfCase);

TEST(TrayInterval, IsNeverNarrowerThanWilsonsOnThePooledCounts) {
    stats::SeededRandom random(5);
    for (int run = 0; run < 500; ++run) {
        Trays trays;
        int successes = 0, trials = 0;
        for (int i = 0; i < 4; ++i) {
            trays.push_back({random.binomial(15, random.beta(4, 3)), 15});
            successes += trays.back().successes;
            trials += 15;
        }
        const auto wide = stats::trayInterval(trays, 0.9).limits,
                   narrow = stats::wilsonInterval(successes, trials, 0.9);
        ASSERT_LE(wide.low, narrow.low + 1e-12);
        ASSERT_GE(wide.high, narrow.high - 1e-12);
    }
}

TEST(TrayInterval, CoversAboutAsOftenAsItsCommentSays) {
    stats::SeededRandom random(17);
    constexpr int kRuns = 2000;
    int covered = 0;
    for (int run = 0; run < kRuns; ++run) {
        Trays trays;
        for (int i = 0; i < 4; ++i) trays.push_back({random.binomial(20, random.beta(0.6 * 9, 0.4 * 9)), 20});
        const auto limits = stats::trayInterval(trays, 0.95).limits;
        covered += limits.low <= 0.6 && 0.6 <= limits.high ? 1 : 0;
    }
    EXPECT_NEAR(covered / static_cast<double>(kRuns), 0.957, 0.015);  // three standard errors
}

TEST(TrayInterval, TurnsAroundWhenSuccessAndFailureSwap) {
    const auto there = stats::trayInterval(Trays{{4, 20}, {19, 24}, {11, 16}}, 0.95);
    const auto back = stats::trayInterval(Trays{{16, 20}, {5, 24}, {5, 16}}, 0.95);
    EXPECT_NEAR(there.limits.low, 1 - back.limits.high, 1e-12);
    EXPECT_NEAR(there.limits.high, 1 - back.limits.low, 1e-12);
}

TEST(TrayInterval, OfNoTrialsIsEverything) {
    const auto interval = stats::trayInterval(Trays{{0, 0}}, 0.95);
    EXPECT_FALSE(interval.estimate);
    EXPECT_EQ(interval.limits.low, 0);
    EXPECT_EQ(interval.limits.high, 1);
    EXPECT_FALSE(interval.includesTrayVariation);
}

TEST(TrayInterval, RefusesCountsAndLevelsThatCannotBe) {
    EXPECT_THROW((void)stats::trayInterval(Trays{{10, 9}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::trayInterval(Trays{{1, 9}}, 0), std::domain_error);
}

}  // namespace
