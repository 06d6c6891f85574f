// SPDX-License-Identifier: MIT
#include "stats/time_to_event/aalen_johansen.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

#include "tests/support/reference_cases.h"

namespace {

using stats::ExactDay;
using stats::IncidenceStep;

class AalenJohansenReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(AalenJohansenReference, GivesTheReferenceValue) {
    std::vector<ExactDay> rows;
    for (std::size_t i = 0; i < GetParam().inputs.at("time").size(); ++i) {
        rows.push_back({.day = GetParam().inputs.at("time")[i], .cause = GetParam().inputs.at("cause")[i]});
    }
    const std::vector<IncidenceStep> steps = stats::aalenJohansen(rows);
    const auto& want = GetParam().expected;
    ASSERT_EQ(steps.size(), want.at("time").size());
    // var1_cmprsk and var2_cmprsk are another estimator's, given there for information.
    const std::pair<const char*, double IncidenceStep::*> fields[] = {{"time", &IncidenceStep::day},
                                                                      {"n_risk", &IncidenceStep::atRisk},
                                                                      {"d1", &IncidenceStep::events1},
                                                                      {"d2", &IncidenceStep::events2},
                                                                      {"cif1", &IncidenceStep::share1},
                                                                      {"cif2", &IncidenceStep::share2},
                                                                      {"event_free", &IncidenceStep::eventFree},
                                                                      {"var1_delta", &IncidenceStep::variance1},
                                                                      {"var2_delta", &IncidenceStep::variance2}};
    for (const auto& [name, member] : fields) {
        for (std::size_t i = 0; i < steps.size(); ++i) GetParam().expectNear(name, steps[i].*member, want.at(name)[i]);
    }
}

INSTANTIATE_TEST_SUITE_P(Reference, AalenJohansenReference,
                         testing::ValuesIn(support::referenceCases({"aalen_johansen"})), support::nameOfCase);

TEST(AalenJohansen, OfUnwithdrawnRowsIsTheBinomialShare) {
    std::vector<ExactDay> rows;
    for (int i = 0; i < 20; ++i) rows.push_back({.day = 1.0 + i, .cause = i % 4 == 0 ? 2 : 1});
    for (const IncidenceStep& step : stats::aalenJohansen(rows)) {
        double share1 = 0;
        for (const ExactDay& row : rows) share1 += row.day <= step.day && row.cause == 1 ? 0.05 : 0;
        EXPECT_NEAR(step.share1, share1, 1e-14);
        EXPECT_NEAR(step.variance1, share1 * (1 - share1) / 20, 1e-14);
        EXPECT_NEAR(step.share1 + step.share2 + step.eventFree, 1, 1e-14);
    }
}

TEST(AalenJohansen, CountsAWeightAsThatManyRows) {
    const std::vector<ExactDay> gathered{{3, 1, 2}, {5, 0, 1}, {7, 2, 3}, {9, 0, 2}};
    const std::vector<ExactDay> single{{3, 1}, {3, 1}, {5, 0}, {7, 2}, {7, 2}, {7, 2}, {9, 0}, {9, 0}};
    const auto one = stats::aalenJohansen(gathered), other = stats::aalenJohansen(single);
    ASSERT_EQ(one.size(), other.size());
    EXPECT_NEAR(one.back().share2, other.back().share2, 1e-15);
    EXPECT_NEAR(one.back().variance2, other.back().variance2, 1e-15);
}

TEST(AalenJohansen, IsEmptyWithoutEvents) {
    EXPECT_TRUE(stats::aalenJohansen({}).empty());
    EXPECT_TRUE(stats::aalenJohansen(std::vector<ExactDay>{{3, 0}, {4, 1, 0}}).empty());
}

TEST(AalenJohansen, RefusesRowsThatCannotBe) {
    for (const ExactDay& row : {ExactDay{-1, 1}, {NAN, 1}, {INFINITY, 0}, {1, 3}, {1, 1, -2}, {1, 1, NAN}}) {
        EXPECT_THROW((void)stats::aalenJohansen(std::vector<ExactDay>{row}), std::domain_error);
    }
}

}  // namespace
