// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_permutation_test.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/numeric/label_arrangements.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::SeededRandom;
using Trays = std::vector<stats::Tray>;

class TrayPermutationReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(TrayPermutationReference, GivesTheReferenceValue) {
    const auto arms = armsIn(GetParam());
    SeededRandom random(1);
    const auto test = stats::trayPermutationTest(arms.at(0), arms.at(1), random);
    EXPECT_TRUE(test.isExact);
    GetParam().expect({{"statistic", test.statistic}, {"allocations", test.allocations}, {"p", test.p}});
}

INSTANTIATE_TEST_SUITE_P(Reference, TrayPermutationReference,
                         testing::ValuesIn(support::referenceCases({"tray_permutation"})), support::nameOfCase);

// By bit patterns and whole numbers, without tolerances.
double bruteForceP(const Trays& first, const Trays& second) {
    Trays all = first;
    all.insert(all.end(), second.begin(), second.end());
    const auto distance = [&all](unsigned pattern) {
        long long x1 = 0, n1 = 0, x2 = 0, n2 = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            ((pattern >> i & 1U) != 0 ? x1 : x2) += all[i].successes;
            ((pattern >> i & 1U) != 0 ? n1 : n2) += all[i].trials;
        }
        return std::pair(std::abs(x1 * n2 - x2 * n1), n1 * n2);
    };
    const auto [observed, scale] = distance((1U << first.size()) - 1);
    double asLarge = 0, count = 0;
    for (unsigned pattern = 0; pattern < 1U << all.size(); ++pattern) {
        if (static_cast<std::size_t>(std::popcount(pattern)) != first.size()) continue;
        const auto [value, own] = distance(pattern);
        asLarge += value * scale >= observed * own ? 1 : 0;
        ++count;
    }
    return asLarge / count;
}

TEST(TrayPermutationTest, AgreesWithCountingInWholeNumbers) {
    SeededRandom random(23);
    for (int run = 0; run < 30; ++run) {
        Trays first, second;
        for (int i = 0; i < 3; ++i) first.push_back({random.binomial(6, 0.5), 6});
        for (int i = 0; i < 5; ++i) second.push_back({random.binomial(4 + i, 0.5), 4 + i});
        EXPECT_NEAR(stats::trayPermutationTest(first, second, random).p, bruteForceP(first, second), 1e-14);
    }
}

TEST(TrayPermutationTest, DrawsWhereThereAreTooManyAndSaysSo) {
    const Trays first{{15, 20}, {17, 20}, {12, 18}, {16, 20}}, second{{9, 20}, {12, 20}, {7, 16}, {11, 20}};
    SeededRandom random(1), again(1);
    const auto exact = stats::trayPermutationTest(first, second, random);
    const auto drawn = stats::trayPermutationTest(first, second, random, 10, 20'000);
    EXPECT_FALSE(drawn.isExact);
    EXPECT_EQ(drawn.drawn, 20'000);
    EXPECT_NEAR(drawn.p, exact.p, 5 * std::sqrt(exact.p / 20'000));
    EXPECT_EQ(stats::trayPermutationTest(first, second, again, 10, 20'000).p, drawn.p);
}

TEST(TrayPermutationTest, HasTheSmallestPThatTheNumberOfTraysAllows) {
    SeededRandom random(1);
    EXPECT_NEAR(stats::trayPermutationTest(Trays(3, {9, 9}), Trays(3, {0, 9}), random).p, 0.1, 1e-15);
    EXPECT_EQ(stats::trayPermutationTest(Trays(3, {4, 9}), Trays(3, {4, 9}), random).p, 1);
}

TEST(TrayPermutationTest, AnswersWhereAnArmIsEmptyAndStopsWhenAsked) {
    SeededRandom random(1);
    EXPECT_FALSE(stats::trayPermutationTest(Trays{}, Trays{{3, 9}}, random).statistic);
    EXPECT_EQ(stats::trayPermutationTest(Trays{{0, 0}}, Trays{{3, 9}}, random).p, 1);
    std::stop_source source;
    source.request_stop();
    EXPECT_TRUE(
        stats::trayPermutationTest(Trays(9, {4, 9}), Trays(9, {5, 9}), random, 1e6, 10, source.get_token()).wasStopped);
}

TEST(TrayPermutationTest, RefusesCountsThatCannotBe) {
    SeededRandom random(1);
    EXPECT_THROW((void)stats::trayPermutationTest(Trays{{10, 9}}, Trays{{1, 2}}, random), std::domain_error);
    EXPECT_THROW((void)stats::trayPermutationTest(Trays{{1, 9}}, Trays{{1, 2}}, random, 0, 0), std::domain_error);
}

TEST(LabelArrangements, VisitsEachArrangementOnce) {
    const std::vector<char> isFirst{1, 0, 0, 1, 0, 1};
    const std::vector<int> stratum{7, 7, 7, 2, 2, 9};
    stats::LabelArrangements arrangements(isFirst, stratum);
    EXPECT_EQ(arrangements.count(), 3 * 2 * 1);
    std::vector<std::vector<char>> seen;
    do {
        seen.push_back(arrangements.labels());
    } while (arrangements.advance());
    EXPECT_EQ(seen.size(), 6U);
    std::sort(seen.begin(), seen.end());
    EXPECT_EQ(std::unique(seen.begin(), seen.end()), seen.end());
    for (const auto& labels : seen) {
        EXPECT_EQ(labels[0] + labels[1] + labels[2], 1);
        EXPECT_EQ(labels[3] + labels[4], 1);
        EXPECT_EQ(labels[5], 1);
    }
    EXPECT_EQ(arrangements.labels(), (std::vector<char>{1, 0, 0, 1, 0, 1})) << "back at the start";
}

TEST(LabelArrangements, CountsBeyondWhatFitsAWholeNumber) {
    std::vector<char> isFirst(200, 0);
    std::fill(isFirst.begin(), isFirst.begin() + 100, 1);
    EXPECT_NEAR(stats::LabelArrangements(isFirst, std::vector<int>(200, 0)).count() / 9.0548514656103281e58, 1, 1e-12);
    EXPECT_THROW(stats::LabelArrangements(isFirst, std::vector<int>(3, 0)), std::domain_error);
}

}  // namespace
