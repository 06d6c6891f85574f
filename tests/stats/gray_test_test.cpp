// SPDX-License-Identifier: MIT
#include "stats/time_to_event/gray_test.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/numeric/seeded_random.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::ExactDay;
using Arms = std::vector<std::vector<ExactDay>>;

class GrayReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(GrayReference, GivesTheReferenceValue) {
    const auto& inputs = GetParam().inputs;
    Arms arms(2);
    for (std::size_t i = 0; i < inputs.at("time").size(); ++i) {
        arms.at(inputs.at("group")[i].get<std::size_t>() - 1)
            .push_back({.day = inputs.at("time")[i], .cause = inputs.at("cause")[i]});
    }
    const auto& want = GetParam().expected;
    for (std::size_t i = 0; i < want.at("cause").size(); ++i) {
        const auto test = stats::grayTest(arms, want.at("cause")[i].get<int>());
        GetParam().expectNear("chi2", test.statistic, want.at("chi2")[i]);
        GetParam().expectNear("df", test.degreesOfFreedom, want.at("df")[i]);
        GetParam().expectNear("p", test.p, want.at("p")[i]);
    }
}

INSTANTIATE_TEST_SUITE_P(Reference, GrayReference, testing::ValuesIn(support::referenceCases({"gray_test"})),
                         support::nameOfCase);

Arms randomArms(std::size_t arms, int each, stats::SeededRandom& random, double later = 0) {
    Arms result(arms);
    for (std::size_t arm = 0; arm < arms; ++arm) {
        for (int i = 0; i < each; ++i) {
            const double day = std::ceil(10 * random.gamma(2) + (arm == 0 ? later : 0));
            result[arm].push_back({.day = day, .cause = static_cast<int>(random.below(3))});
        }
    }
    return result;
}

TEST(GrayTest, DoesNotCareForTheOrderOfArmsNorForTheUnitOfTime) {
    stats::SeededRandom random(53);
    for (int run = 0; run < 50; ++run) {
        Arms arms = randomArms(3, 20, random);
        const double before = *stats::grayTest(arms, 1).statistic;
        std::swap(arms[0], arms[2]);
        for (auto& arm : arms) {
            for (ExactDay& row : arm) row.day *= 3;
        }
        ASSERT_NEAR(*stats::grayTest(arms, 1).statistic, before, 1e-9 * (1 + before));
    }
}

TEST(GrayTest, SwapsItsCausesWhenTheySwap) {
    stats::SeededRandom random(54);
    Arms arms = randomArms(2, 30, random);
    const double before = *stats::grayTest(arms, 1).statistic;
    for (auto& arm : arms) {
        for (ExactDay& row : arm) row.cause = (3 - row.cause) % 3;
    }
    EXPECT_NEAR(*stats::grayTest(arms, 2).statistic, before, 1e-12);
}

TEST(GrayTest, RejectsAboutAsOftenAsItsLevelSaysAndMoreWhenArmsDiffer) {
    stats::SeededRandom random(55);
    constexpr int kRuns = 1000;
    int equal = 0, different = 0;
    for (int run = 0; run < kRuns; ++run) {
        equal += *stats::grayTest(randomArms(2, 40, random), 1).p <= 0.1 ? 1 : 0;
        different += *stats::grayTest(randomArms(2, 40, random, 15), 1).p <= 0.1 ? 1 : 0;
    }
    EXPECT_NEAR(equal / 1000.0, 0.1, 3 * std::sqrt(0.09 / kRuns));
    EXPECT_GT(different, 3 * equal);
}

TEST(GrayTest, CountsAWeightAsThatManyRows) {
    const Arms gathered{{{3, 1, 4}, {5, 2, 2}, {7, 1, 1}}, {{4, 1, 2}, {5, 2, 3}, {9, 0, 2}}};
    Arms single(2);
    for (std::size_t arm = 0; arm < 2; ++arm) {
        for (const ExactDay& row : gathered[arm]) {
            for (int i = 0; i < row.weight; ++i) single[arm].push_back({row.day, row.cause});
        }
    }
    EXPECT_NEAR(*stats::grayTest(gathered, 1).statistic, *stats::grayTest(single, 1).statistic, 1e-12);
}

TEST(GrayTest, HasNothingToSayWhereTheVarianceIsSingular) {
    EXPECT_FALSE(stats::grayTest({}, 1).statistic);
    EXPECT_FALSE(stats::grayTest(Arms{{{3, 1}, {4, 2}}}, 1).statistic) << "one arm";
    EXPECT_FALSE(stats::grayTest(Arms{{{3, 1}, {4, 2}}, {}}, 1).statistic) << "an arm without anyone";
    EXPECT_FALSE(stats::grayTest(Arms{{{3, 2}, {4, 2}}, {{3, 2}, {6, 0}}}, 1).p) << "no event of the cause";
}

TEST(GrayTest, RefusesRowsThatCannotBe) {
    for (const ExactDay& row : {ExactDay{-1, 1}, {INFINITY, 1}, {1, 3}, {1, 1, 0.5}}) {
        EXPECT_THROW((void)stats::grayTest(Arms{{row}}, 1), std::domain_error);
    }
    EXPECT_THROW((void)stats::grayTest(Arms{}, 0), std::domain_error);
    EXPECT_THROW((void)stats::grayTest(Arms{}, 3), std::domain_error);
}

}  // namespace
