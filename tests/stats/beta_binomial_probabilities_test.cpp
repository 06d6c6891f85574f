// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial_probabilities.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <stdexcept>

#include "stats/overdispersion/beta_binomial.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/accuracy_ledger.h"

namespace {

TEST(BetaBinomialProbabilities, AreThoseOfSciPy) {
    // scipy.stats.betabinom.pmf, SciPy 1.10.1.
    struct Known {
        int trials;
        double mean, correlation;
        int successes;
        double probability;
    };
    constexpr Known table[] = {{20, 0.6, 0.1, 0, 0.0002610509132728194},    {20, 0.6, 0.1, 6, 0.03293395014426779},
                               {20, 0.6, 0.1, 20, 0.006635145847440173},    {7, 0.05, 0.4, 0, 0.8558953270889437},
                               {7, 0.05, 0.4, 7, 0.00408125523186189},      {5, 0.5, 0.9, 1, 0.030691964285714295},
                               {200, 0.85, 0.01, 66, 4.373745937680071e-19}};
    for (const Known& each : table) {
        const double got = stats::betaBinomialProbabilities(each.trials, each.mean,
                                                            each.correlation)[static_cast<std::size_t>(each.successes)];
        EXPECT_NEAR(got, each.probability, 1e-11 * each.probability) << each.trials << " " << each.successes;
        support::prove({"betaBinomialProbabilities", "chosen laws of 5 to 200 trials", "SciPy 1.10.1 betabinom"}, got,
                       each.probability);
    }
}

TEST(BetaBinomialProbabilities, AreThoseOfTheLikelihood) {
    for (const double mean : {0.03, 0.5, 0.8}) {
        for (const double correlation : {0.0, 0.01, 0.3, 0.97}) {
            const auto law = stats::betaBinomialProbabilities(31, mean, correlation);
            for (int x = 0; x <= 31; ++x) {
                const double want = stats::betaBinomialLogProbability(x, 31, mean, correlation);
                const double got = std::log(law[static_cast<std::size_t>(x)]);
                EXPECT_NEAR(got, want, 1e-11);
                support::prove({"betaBinomialLogProbability", "laws of 31 trials", "ratios of neighbouring counts"},
                               got, want);
            }
        }
    }
}

TEST(BetaBinomialProbabilities, AreBinomialWithoutCorrelation) {
    const auto law = stats::betaBinomialProbabilities(17, 0.35, 0);
    for (int x = 0; x <= 17; ++x)
        EXPECT_NEAR(law[static_cast<std::size_t>(x)], static_cast<double>(enumeration::binomial(17, x, 0.35L)), 1e-15);
}

TEST(BetaBinomialProbabilities, HaveTheMeanAndVarianceOfTheirLaw) {
    for (const int trials : {1, 2, 40, 3000}) {
        for (const double correlation : {0.0, 0.05, 0.6}) {
            const auto law = stats::betaBinomialProbabilities(trials, 0.7, correlation);
            double sum = 0, mean = 0, square = 0;
            for (std::size_t x = 0; x < law.size(); ++x) {
                sum += law[x];
                mean += law[x] * static_cast<double>(x);
            }
            for (std::size_t x = 0; x < law.size(); ++x) square += law[x] * std::pow(static_cast<double>(x) - mean, 2);
            const double variance = trials * 0.7 * 0.3 * (1 + (trials - 1) * correlation);
            EXPECT_NEAR(sum, 1, 1e-12);
            EXPECT_NEAR(mean / trials, 0.7, 1e-11);
            EXPECT_NEAR(square / variance, 1, 1e-9);
        }
    }
}

TEST(BetaBinomialProbabilities, AnswerAtTheEdges) {
    EXPECT_EQ(stats::betaBinomialProbabilities(0, 0.3, 0.2), std::vector<double>{1});
    EXPECT_EQ(stats::betaBinomialProbabilities(0, 0.3, 1), std::vector<double>{1});
    EXPECT_EQ(stats::betaBinomialProbabilities(2, 0, 0.2), (std::vector<double>{1, 0, 0}));
    EXPECT_EQ(stats::betaBinomialProbabilities(2, 1, 0.2), (std::vector<double>{0, 0, 1}));
    const auto together = stats::betaBinomialProbabilities(2, 0.75, 1);
    EXPECT_EQ(together, (std::vector<double>{0.25, 0, 0.75}));
    for (const double mean : {1e-300, 1e-16, 1 - 1e-16})
        for (const double correlation : {1e-300, 1e-16, 0.5, 1 - 1e-16}) {
            const auto law = stats::betaBinomialProbabilities(60, mean, correlation);
            EXPECT_NEAR(std::accumulate(law.begin(), law.end(), 0.0), 1, 1e-12) << mean << " " << correlation;
        }
}

TEST(BetaBinomialProbabilities, RefuseWhatIsNoLaw) {
    EXPECT_THROW((void)stats::betaBinomialProbabilities(-1, 0.5, 0.1), std::domain_error);
    EXPECT_THROW((void)stats::betaBinomialProbabilities(3, 1.5, 0.1), std::domain_error);
    EXPECT_THROW((void)stats::betaBinomialProbabilities(3, 0.5, NAN), std::domain_error);
}

}  // namespace
