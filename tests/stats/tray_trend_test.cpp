// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_trend.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/overdispersion/tray_t_test.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using ScoredTrays = std::vector<stats::ScoredTray>;

const ScoredTrays rising{{0, {3, 10}}, {0, {5, 20}},  {0, {4, 16}},  {1, {9, 20}},
                         {1, {8, 20}}, {2, {12, 20}}, {2, {15, 20}}, {2, {13, 18}}};

TEST(TrayTrend, GivesWhatRsLinearModelDoes) {
    // R 4.2, summary(lm(rate ~ score)) and confint(level = 0.9).
    const auto trend = stats::trayTrend(rising, 0.9);
    const support::Proof proof{
        .function = "trayTrend", .source = "eight trays at three scores", .independent = "R 4.2 lm, scipy linregress"};
    const auto expect = [&proof](double got, double want) {
        EXPECT_NEAR(got, want, 1e-13);
        support::prove(proof, got, want);
    };
    expect(*trend.slope, 0.2120370370370371);
    expect(*trend.standardError, 0.02355809831760665);
    expect(*trend.p, 0.0001052318596828215);
    expect(trend.limits->low, 0.1662594049398232);
    expect(trend.limits->high, 0.2578146691342511);
    EXPECT_NEAR(*trend.t, 9.0006007351861132, 1e-11);
    EXPECT_EQ(trend.degreesOfFreedom, 6);
}

TEST(TrayTrend, AtTwoScoresIsTheTTest) {
    const std::vector<stats::Tray> first{{8, 20}, {6, 17}, {11, 20}, {7, 20}}, second{{12, 20}, {15, 20}, {9, 18}};
    ScoredTrays trays;
    for (const auto& tray : first) trays.push_back({3, tray});
    for (const auto& tray : second) trays.push_back({5, tray});
    const auto trend = stats::trayTrend(trays);
    const auto test = stats::trayTTest(second, first);
    EXPECT_NEAR(*trend.slope, *test.difference / 2, 1e-15);
    EXPECT_NEAR(*trend.t, *test.t, 1e-12);
    EXPECT_NEAR(*trend.p, *test.p, 1e-14);
}

TEST(TrayTrend, DoesNotCareForTheUnitOfTheScore) {
    ScoredTrays scaled = rising;
    for (auto& each : scaled) each.score = -1e6 * each.score + 7;
    EXPECT_NEAR(*stats::trayTrend(scaled).t, -*stats::trayTrend(rising).t, 1e-9);
    EXPECT_NEAR(*stats::trayTrend(scaled).slope * -1e6, *stats::trayTrend(rising).slope, 1e-13);
}

TEST(TrayTrend, IsAbsentWhereItCannotBeSeen) {
    EXPECT_FALSE(stats::trayTrend(ScoredTrays{}).slope);
    EXPECT_FALSE(stats::trayTrend(ScoredTrays{{1, {3, 9}}, {1, {4, 9}}, {2, {0, 0}}}).slope);
    const auto twoTrays = stats::trayTrend(ScoredTrays{{1, {3, 9}}, {2, {6, 9}}});
    EXPECT_NEAR(*twoTrays.slope, 1.0 / 3, 1e-15);
    EXPECT_FALSE(twoTrays.standardError);
    const auto onTheLine = stats::trayTrend(ScoredTrays{{1, {3, 9}}, {2, {6, 9}}, {3, {9, 9}}});
    EXPECT_EQ(onTheLine.standardError, 0);
    EXPECT_FALSE(onTheLine.t);
    EXPECT_FALSE(onTheLine.limits);
}

TEST(TrayTrend, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::trayTrend(ScoredTrays{{1, {10, 9}}}), std::domain_error);
    EXPECT_THROW((void)stats::trayTrend(ScoredTrays{{NAN, {1, 9}}}), std::domain_error);
    EXPECT_THROW((void)stats::trayTrend(ScoredTrays{{1e101, {1, 9}}}), std::domain_error);
    EXPECT_THROW((void)stats::trayTrend(ScoredTrays{{1, {1, 9}}}, 1), std::domain_error);
}

}  // namespace
