// SPDX-License-Identifier: MIT
#include "stats/overdispersion/rate_law.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "stats/proportion/jeffreys_interval.h"
#include "tests/stats/drawn_rates.h"

namespace {

TEST(RateLaw, HasJeffreyssIntervalWhereBatchesDoNotDiffer) {
    for (const auto& [successes, trials] : {simulated::Counts{18, 24}, {1, 20}, {40, 96}}) {
        const stats::Interval got = stats::RateLaw("test", simulated::ratesOf(successes, trials)).interval(0.95);
        const stats::Interval want = stats::jeffreysInterval(successes, trials, 0.95);
        EXPECT_NEAR(got.low, want.low, 2e-4) << successes << " of " << trials;
        EXPECT_NEAR(got.high, want.high, 2e-4) << successes << " of " << trials;
    }
}

TEST(RateLaw, QuantilesAreTheSharesBelowTurnedRound) {
    const stats::RateLaw law("test", simulated::ratesOf(30, 60, 0.15));
    double before = 0;
    for (double share = 0.01; share < 1; share += 0.07) {
        const double rate = law.quantile(share);
        EXPECT_GT(rate, before);
        EXPECT_NEAR(law.below(rate), share, 1e-9);
        before = rate;
    }
    EXPECT_NEAR(law.quantile(1), 1, 1e-12);
    EXPECT_GE(law.quantile(0), 0);
}

TEST(RateLaw, IsWiderWhereBatchesDiffer) {
    const stats::Interval alike = stats::RateLaw("test", simulated::ratesOf(30, 60)).interval(0.9);
    const stats::Interval unlike = stats::RateLaw("test", simulated::ratesOf(30, 60, 0.15)).interval(0.9);
    EXPECT_LT(unlike.low, alike.low);
    EXPECT_GT(unlike.high, alike.high);
}

TEST(RateLaw, RefusesWhatIsNoLaw) {
    EXPECT_THROW(stats::RateLaw("test", {}), std::domain_error);
    EXPECT_THROW(stats::RateLaw("test", {{0, 0, 1}}), std::domain_error);
    EXPECT_THROW(stats::RateLaw("test", {{0.5, 0, 0.4}}), std::domain_error);
    EXPECT_THROW((void)stats::RateLaw("test", {{0.5, 0, 1}}).interval(1), std::domain_error);
}

}  // namespace
