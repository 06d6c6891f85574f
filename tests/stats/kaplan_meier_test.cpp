// SPDX-License-Identifier: MIT
#include "stats/time_to_event/kaplan_meier.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/competing_risks_npmle.h"
#include "stats/time_to_event/curve_quantiles.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::ExactDay;
using stats::SurvivalStep;
using Days = std::vector<ExactDay>;

class KaplanMeierReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(KaplanMeierReference, GivesTheReferenceValue) {
    const auto& inputs = GetParam().inputs;
    Days rows;
    for (std::size_t i = 0; i < inputs.at("time").size(); ++i) {
        rows.push_back({.day = inputs.at("time")[i], .cause = inputs.at("status")[i]});
    }
    const auto steps = stats::kaplanMeier(rows, GetParam().number("conf"));
    const auto& want = GetParam().expected;
    ASSERT_EQ(steps.size(), want.at("time").size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const auto near = [&](const char* field, std::optional<double> got) {
            GetParam().expectNear(field, got, want.at(field)[i]);
        };
        const auto& limits = steps[i].limits;
        near("time", steps[i].day);
        near("n_risk", steps[i].atRisk);
        near("n_event", steps[i].events);
        near("surv", steps[i].survival);
        near("se_surv", steps[i].standardError);
        near("lower_loglog", limits ? std::optional(limits->low) : std::nullopt);
        near("upper_loglog", limits ? std::optional(limits->high) : std::nullopt);
        // Freireich et al. (1963) as printed in Cox and Oakes (1984): three decimals, from memory.
        const auto& printed = GetParam().published;
        if (printed.is_null()) continue;
        EXPECT_NEAR(steps[i].survival, printed.at("surv")[i].get<double>(), 0.00051);
        EXPECT_NEAR(*steps[i].standardError, printed.at("se_surv")[i].get<double>(), 0.00051);
    }
}

INSTANTIATE_TEST_SUITE_P(Reference, KaplanMeierReference, testing::ValuesIn(support::referenceCases({"km"})),
                         support::nameOfCase);

TEST(KaplanMeier, OfUnwithdrawnRowsIsTheBinomialShare) {
    Days rows;
    for (int i = 1; i <= 20; ++i) rows.push_back({.day = i * 1.0, .cause = 1});
    const auto steps = stats::kaplanMeier(rows);
    for (int i = 1; i < 20; ++i) {
        const SurvivalStep& step = steps[static_cast<std::size_t>(i) - 1];
        const double left = 1 - i / 20.0;
        EXPECT_NEAR(step.survival, left, 1e-14);
        EXPECT_NEAR(*step.standardError, std::sqrt(left * (1 - left) / 20), 1e-14);
        support::prove({"kaplanMeier", "twenty rows, none withdrawn", "the binomial share"}, step.survival, left);
    }
    EXPECT_EQ(steps.back().survival, 0);
    EXPECT_FALSE(steps.back().standardError || steps.back().limits) << "nothing is left to be unsure of";
}

TEST(KaplanMeier, IsTheNonparametricEstimateOfExactDays) {
    stats::SeededRandom random(51);
    for (int run = 0; run < 100; ++run) {
        Days rows;
        std::vector<stats::Observation> observations;
        for (int i = 0; i < 15; ++i) {
            const double day = 1.0 + static_cast<double>(random.below(12));
            const bool isEvent = random.below(3) > 0;
            rows.push_back({.day = day, .cause = isEvent ? 1 : 0});
            const double by = isEvent ? day : std::numeric_limits<double>::infinity();
            observations.push_back({day, by, isEvent ? 1 : 0});
        }
        const auto curve = stats::competingRisksNpmle(observations).cause1;
        for (const SurvivalStep& step : stats::kaplanMeier(rows)) {
            ASSERT_NEAR(step.survival, 1 - stats::cumulativeShare(curve, step.day).atLeast, 1e-8);
        }
    }
}

TEST(KaplanMeier, CountsAWeightAsThatManyRowsAndIsEmptyWithoutEvents) {
    const auto gathered = stats::kaplanMeier(Days{{3, 1, 2}, {5, 0, 1}, {7, 1, 1}, {9, 0, 2}});
    const auto single = stats::kaplanMeier(Days{{3, 1}, {3, 1}, {5, 0}, {7, 1}, {9, 0}, {9, 0}});
    ASSERT_EQ(gathered.size(), single.size());
    EXPECT_NEAR(*gathered.back().standardError, *single.back().standardError, 1e-15);
    EXPECT_TRUE(stats::kaplanMeier({}).empty());
    EXPECT_TRUE(stats::kaplanMeier(Days{{4, 0, 3}}).empty());
}

TEST(KaplanMeier, RefusesRowsThatCannotBe) {
    for (const ExactDay& row : {ExactDay{-1, 1}, {NAN, 1}, {1, 2}, {1, 1, -1}}) {
        EXPECT_THROW((void)stats::kaplanMeier(Days{row}), std::domain_error);
    }
    EXPECT_THROW((void)stats::kaplanMeier({}, 0), std::domain_error);
}

}  // namespace
