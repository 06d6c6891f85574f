// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_bootstrap.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <stdexcept>

#include "tests/stats/trays_and_strata.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using Trays = std::vector<stats::Tray>;

class TrayBootstrapReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(TrayBootstrapReference, GivesTheReferenceValue) {
    const auto probabilities = GetParam().inputs.at("probs").get<std::vector<double>>();
    const auto bootstrap = stats::trayBootstrap(traysIn(GetParam()), probabilities);
    const auto& quantiles = GetParam().expected.at("quantiles");
    ASSERT_EQ(bootstrap.quantiles.size(), quantiles.size());
    for (std::size_t i = 0; i < quantiles.size(); ++i)
        GetParam().expectNear("quantiles", bootstrap.quantiles[i], quantiles[i], std::to_string(i));
    GetParam().expect({{"mean", bootstrap.mean}, {"resamples", bootstrap.resamples}},
                      {"quantiles"});  // a list, compared above
}

INSTANTIATE_TEST_SUITE_P(Reference, TrayBootstrapReference,
                         testing::ValuesIn(support::referenceCases({"tray_bootstrap_exact"})), support::nameOfCase);

TEST(TrayBootstrap, IsWhatGoingThroughEveryDrawGives) {
    const Trays trays{{5, 7}, {0, 3}, {4, 4}, {2, 9}, {1, 7}};
    std::map<double, int> draws;
    double mean = 0;
    for (int draw = 0; draw < 3125; ++draw) {
        int successes = 0, trials = 0;
        for (int i = 0, rest = draw; i < 5; ++i, rest /= 5) {
            successes += trays[static_cast<std::size_t>(rest % 5)].successes;
            trials += trays[static_cast<std::size_t>(rest % 5)].trials;
        }
        const double rate = static_cast<double>(successes) / trials;
        ++draws[rate];
        mean += rate / 3125;
    }
    std::vector<double> probabilities, wanted;
    int cumulative = 0;
    for (const auto& [rate, count] : draws) {
        cumulative += count;
        probabilities.push_back((cumulative - 0.5) / 3125);
        wanted.push_back(rate);
    }
    const auto bootstrap = stats::trayBootstrap(trays, probabilities);
    EXPECT_NEAR(*bootstrap.mean, mean, 1e-13);
    EXPECT_EQ(bootstrap.quantiles, wanted);
    EXPECT_EQ(bootstrap.resamples, 126);
    support::prove({"trayBootstrap", "five trays", "all 3125 draws"}, *bootstrap.mean, mean);
}

TEST(TrayBootstrap, OfEqualTraysHasTheirPooledRateAsItsMean) {
    const Trays trays{{5, 20}, {12, 20}, {20, 20}, {9, 20}, {0, 20}, {3, 20}, {3, 20}};
    const std::vector<double> ends{0, 1};
    const auto bootstrap = stats::trayBootstrap(trays, ends);
    EXPECT_NEAR(*bootstrap.mean, 52 / 140.0, 1e-14);
    EXPECT_EQ(bootstrap.quantiles, (std::vector<double>{0, 1}));
}

TEST(TrayBootstrap, AnswersWithoutTraysAndSaysWhenTheyAreTooMany) {
    const std::vector<double> half{0.5};
    EXPECT_FALSE(stats::trayBootstrap(Trays{}, half).mean);
    EXPECT_EQ(stats::trayBootstrap(Trays{{0, 0}}, half).trays, 0);
    const auto one = stats::trayBootstrap(Trays{{0, 0}, {3, 4}}, half);
    EXPECT_EQ(one.quantiles, std::vector<double>{0.75});
    EXPECT_EQ(one.resamples, 1);
    Trays unlike;
    for (int i = 1, size = 1; i < 16; ++i, size = size * 3 + 1) unlike.push_back({size / 2, size});
    const auto many = stats::trayBootstrap(unlike, half);
    EXPECT_FALSE(many.mean);
    EXPECT_TRUE(many.quantiles.empty());
    EXPECT_EQ(many.trays, 15);
    EXPECT_EQ(many.resamples, 77'558'760);  // C(29, 15)
}

TEST(TrayBootstrap, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::trayBootstrap(Trays{{5, 4}}, std::vector<double>{}), std::domain_error);
    EXPECT_THROW((void)stats::trayBootstrap(Trays{{1, 4}}, std::vector<double>{1.1}), std::domain_error);
    EXPECT_THROW((void)stats::trayBootstrap(Trays{{1, 4}}, std::vector<double>{NAN}), std::domain_error);
}

}  // namespace
