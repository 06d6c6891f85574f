// SPDX-License-Identifier: MIT
#include "stats/surveillance/control_limits.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using stats::ChartSignal;
using Trays = std::vector<stats::Tray>;

double probabilityOf(int low, int high, int trials, double mean, double correlation) {
    double sum = 0;
    for (int x = low; x <= high; ++x) sum += std::exp(stats::betaBinomialLogProbability(x, trials, mean, correlation));
    return sum;
}

TEST(ControlChart, HasLimitsThatLeaveHalfTheAlarmsOnEitherSide) {
    const Trays batches{{14, 20}, {3, 6}, {30, 48}, {1, 1}, {9, 12}};
    for (const double correlation : {0.0, 0.1, 0.4}) {
        for (const double alarms : {0.0027, 0.05, 0.3}) {
            const auto chart = stats::controlChart(batches, {.correlation = correlation, .falseAlarmRate = alarms});
            for (std::size_t i = 0; i < batches.size(); ++i) {
                const int trials = batches[i].trials;
                const auto& point = chart.points[i];
                EXPECT_LE(probabilityOf(0, point.fewest - 1, trials, *chart.centre, correlation), alarms / 2 + 1e-12);
                EXPECT_GT(probabilityOf(0, point.fewest, trials, *chart.centre, correlation), alarms / 2 - 1e-12);
                EXPECT_LE(probabilityOf(point.most + 1, trials, trials, *chart.centre, correlation),
                          alarms / 2 + 1e-12);
                EXPECT_GT(probabilityOf(point.most, trials, trials, *chart.centre, correlation), alarms / 2 - 1e-12);
            }
        }
    }
}

TEST(ControlChart, HasTheQuantilesOfSciPy) {
    // scipy.stats.binom(20, 0.6) and betabinom(20, 5.4, 3.6), SciPy 1.10.1: ppf(0.00135) and ppf(0.99865).
    const Trays one{{12, 20}};
    const auto binomial = stats::controlChart(one, {.correlation = 0, .centre = 0.6}).points[0];
    EXPECT_EQ(binomial.fewest, 5);
    EXPECT_EQ(binomial.most, 18);
    const auto spread = stats::controlChart(one, {.correlation = 0.1, .centre = 0.6}).points[0];
    EXPECT_EQ(spread.fewest, 1);
    EXPECT_EQ(spread.most, 20);
    const support::Proof proof{"controlChart", "limits of a batch of 20", "SciPy 1.10.1 binom and betabinom"};
    support::prove(proof, binomial.fewest, 5);
    support::prove(proof, spread.most, 20);
}

TEST(ControlChart, HasThePooledRateAsItsCentreWithoutSpread) {
    const auto chart = stats::controlChart(Trays{{14, 20}, {3, 6}, {30, 48}}, {});
    EXPECT_NEAR(*chart.centre, 47.0 / 74, 1e-12);
    support::prove({"controlChart", "centre of three batches", "pooled rate"}, *chart.centre, 47.0 / 74);
}

TEST(ControlChart, HasTheMostLikelyMeanAsItsCentre) {
    const Trays batches{{14, 20}, {1, 6}, {40, 48}, {2, 9}};
    const auto fit = stats::fitBetaBinomial(batches);
    ASSERT_GT(*fit.correlation, 0.01);
    const auto chart = stats::controlChart(batches, {.correlation = *fit.correlation});
    EXPECT_NEAR(*chart.centre, *fit.mean, 1e-7);
    support::prove({"controlChart", "centre of four batches", "beta-binomial fit"}, *chart.centre, *fit.mean);
}

TEST(ControlChart, FindsTheBatchThatIsOut) {
    Trays batches(12, {15, 20});
    batches.push_back({2, 20});
    batches.push_back({0, 0});
    const auto chart = stats::controlChart(batches, {.correlation = 0.02});
    EXPECT_EQ(chart.points[12].signal, ChartSignal::Below);
    EXPECT_EQ(chart.points[13].signal, ChartSignal::NoTrials);
    EXPECT_FALSE(chart.points[13].rate);
    for (std::size_t i = 0; i < 12; ++i) EXPECT_EQ(chart.points[i].signal, ChartSignal::Inside);
    EXPECT_EQ(stats::controlChart(Trays{{20, 20}}, {.centre = 0.5}).points[0].signal, ChartSignal::Above);
}

TEST(ControlChart, GivesNoMoreAlarmsThanSet) {
    stats::SeededRandom random(20260219);
    std::cout << "[ seed 20260219 ]\n";
    int alarms = 0, points = 0;
    for (int run = 0; run < 400; ++run) {
        Trays batches;
        for (int i = 0; i < 10; ++i) {
            const int trials = 10 + static_cast<int>(random.below(30));
            batches.push_back({random.binomial(trials, random.beta(0.7 * 9, 0.3 * 9)), trials});
        }
        for (const auto& point : stats::controlChart(batches, {.correlation = 0.1, .falseAlarmRate = 0.05}).points) {
            alarms += point.signal == ChartSignal::Inside ? 0 : 1;
            ++points;
        }
    }
    // Simulated with more: 0.020. The standard error here is 0.003.
    EXPECT_LT(static_cast<double>(alarms) / points, 0.03);
}

TEST(ControlChart, AnswersWhenAllOrNoneSucceeded) {
    const auto all = stats::controlChart(Trays{{20, 20}, {6, 6}}, {});
    EXPECT_EQ(all.centre, 1);
    EXPECT_LT(all.points[0].fewest, 20);
    EXPECT_EQ(all.points[0].most, 20);
    const auto none = stats::controlChart(Trays{{0, 20}}, {});
    EXPECT_EQ(none.centre, 0);
    EXPECT_EQ(none.points[0].signal, ChartSignal::Inside);
    EXPECT_FALSE(stats::controlChart(Trays{}, {}).centre);
    EXPECT_FALSE(stats::controlChart(Trays{{0, 0}}, {}).centre);
    EXPECT_EQ(stats::controlChart(Trays{{3, 4}}, {.centre = 0.0}).points[0].signal, ChartSignal::Above);
}

TEST(ControlChart, TurnsAroundWhenSuccessAndFailureSwap) {
    const auto chart = stats::controlChart(Trays{{14, 20}, {3, 6}}, {.correlation = 0.1});
    const auto swapped = stats::controlChart(Trays{{6, 20}, {3, 6}}, {.correlation = 0.1});
    for (std::size_t i = 0; i < 2; ++i) {
        const int trials = i == 0 ? 20 : 6;
        EXPECT_EQ(chart.points[i].fewest, trials - swapped.points[i].most);
        EXPECT_EQ(chart.points[i].most, trials - swapped.points[i].fewest);
    }
}

TEST(ControlChart, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::controlChart(Trays{{3, 2}}, {}), std::domain_error);
    EXPECT_THROW((void)stats::controlChart(Trays{{3, 2'000'000}}, {}), std::domain_error);
    EXPECT_THROW((void)stats::controlChart(Trays{}, {.correlation = 1}), std::domain_error);
    EXPECT_THROW((void)stats::controlChart(Trays{}, {.falseAlarmRate = 0}), std::domain_error);
    EXPECT_THROW((void)stats::controlChart(Trays{}, {.centre = 1.5}), std::domain_error);
}

}  // namespace
