// SPDX-License-Identifier: MIT
#include "stats/time_to_event/speed_shape.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "tests/stats/speed_cases.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::SpeedShape;

TEST(SpeedShape, GivesTheSharesOfOtherSoftware) {
    // R 4.2.2: pweibull(12, exp(-lS), exp(mu)), plnorm(12, mu, exp(lS)), plogis((log(12) - mu) / exp(lS)) at mu = 2.6,
    // log sigma = -1.1.
    const std::pair<SpeedShape, double> table[] = {{SpeedShape::Weibull, 0.50721516554343726},
                                                   {SpeedShape::LogNormal, 0.3647617200063264},
                                                   {SpeedShape::LogLogistic, 0.41441109974750601}};
    for (const auto& [shape, want] : table) {
        const double got = stats::speedShare(shape, {.mu = 2.6, .logSigma = -1.1}, 12);
        EXPECT_NEAR(got, want, 1e-14);
        support::prove(
            {"speedShare", "day 12 at mu 2.6, log sigma -1.1, three shapes", "R 4.2.2 pweibull, plnorm, plogis"}, got,
            want);
    }
}

TEST(SpeedShape, QuantilesInvertTheShares) {
    stats::SeededRandom random(41);
    for (int run = 0; run < 3000; ++run) {
        const SpeedShape shape = everySpeedShape[random.below(3)];
        const stats::SpeedParameters parameters{.mu = 6 * random.uniform() - 1, .logSigma = 4 * random.uniform() - 3};
        const double share = 0.001 + 0.998 * random.uniform(), day = stats::speedQuantile(shape, parameters, share);
        const double back = stats::speedShare(shape, parameters, day);
        ASSERT_NEAR(back, share, 1e-12);
        support::prove({"speedQuantile", "random shares", "its inverse"}, back, share);
        const double w = stats::standardSpeedQuantile(shape, share);
        ASSERT_NEAR(std::log(day), parameters.mu + std::exp(parameters.logSigma) * w, 1e-12);
        support::prove({"standardSpeedQuantile", "random shares", "log day = mu + sigma W"},
                       (std::log(day) - parameters.mu) / std::exp(parameters.logSigma), w);
    }
}

TEST(SpeedShape, StartsAtZeroEndsAtOneAndNeverFalls) {
    for (const SpeedShape shape : everySpeedShape) {
        const stats::SpeedParameters parameters{.mu = 2, .logSigma = -0.5};
        EXPECT_EQ(stats::speedShare(shape, parameters, 0), 0);
        EXPECT_EQ(stats::speedShare(shape, parameters, INFINITY), 1);
        double before = 0;
        for (double day = 0.5; day < 60; day += 0.5) {
            const double share = stats::speedShare(shape, parameters, day);
            EXPECT_GE(share, before);
            before = share;
        }
        EXPECT_TRUE(std::isfinite(stats::speedQuantile(shape, {.mu = 1e5, .logSigma = 3}, 0.9)));
        EXPECT_GT(stats::speedQuantile(shape, {.mu = -1e5, .logSigma = 3}, 0.9), 0);
        EXPECT_EQ(stats::speedShare(shape, {.mu = 0, .logSigma = -1e5}, 2), 1) << "a jump at day 1";
    }
}

TEST(SpeedShape, RefusesWhatIsNoShareOrDay) {
    const stats::SpeedParameters parameters{.mu = 2, .logSigma = -1};
    for (const double share : {0.0, 1.0, -0.1, std::nan("")}) {
        EXPECT_THROW((void)stats::speedQuantile(SpeedShape::Weibull, parameters, share), std::domain_error);
        EXPECT_THROW((void)stats::standardSpeedQuantile(SpeedShape::Weibull, share), std::domain_error);
    }
    EXPECT_THROW((void)stats::speedShare(SpeedShape::Weibull, parameters, -1), std::domain_error);
    EXPECT_THROW((void)stats::speedShare(SpeedShape::Weibull, parameters, std::nan("")), std::domain_error);
    EXPECT_THROW((void)stats::speedShare(SpeedShape::Weibull, {.mu = INFINITY}, 3), std::domain_error);
    EXPECT_THROW((void)stats::speedQuantile(SpeedShape::Weibull, {.mu = 0, .logSigma = NAN}, 0.5), std::domain_error);
}

}  // namespace
