// SPDX-License-Identifier: MIT
#include "stats/time_to_event/competing_risks_npmle.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <stdexcept>
#include <vector>

#include "stats/time_to_event/aalen_johansen.h"
#include "stats/time_to_event/curve_quantiles.h"
#include "stats/time_to_event/turnbull.h"
#include "tests/stats/simulated_batches.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::CumulativeIncidence;
using stats::Observation;
using stats::SeededRandom;
using stats::SupportInterval;
using Observations = std::vector<Observation>;

constexpr double kNever = std::numeric_limits<double>::infinity();

void expectCurve(const support::ReferenceCase& each, const std::vector<SupportInterval>& curve,
                 const nlohmann::json& want, const std::string& where) {
    ASSERT_EQ(curve.size(), want.at("mass").size()) << where;
    for (std::size_t i = 0; i < curve.size(); ++i) {
        each.expectNear("left", curve[i].left, want.at("left")[i], where);
        each.expectNear("right", curve[i].right, want.at("right")[i], where);
        each.expectNear("mass", curve[i].mass, want.at("mass")[i], where);
    }
}

double totalWeight(const Observations& observations) {
    double sum = 0;
    for (const Observation& one : observations) sum += one.weight;
    return sum;
}

class CompetingRisksReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(CompetingRisksReference, GivesTheReferenceValue) {
    const Observations observations = observationsIn(GetParam());
    const CumulativeIncidence estimate = stats::competingRisksNpmle(observations);
    expectCurve(GetParam(), estimate.cause1, GetParam().expected.at("cause1"), "cause 1");
    expectCurve(GetParam(), estimate.cause2, GetParam().expected.at("cause2"), "cause 2");
    GetParam().expectNear("p_inf", estimate.neither, GetParam().expected.at("p_inf"));
    GetParam().expectNear("loglik", estimate.logLikelihood, GetParam().expected.at("loglik"));
    EXPECT_TRUE(estimate.converged);
    EXPECT_LE(estimate.gap, 1e-10 * totalWeight(observations));
}

INSTANTIATE_TEST_SUITE_P(Reference, CompetingRisksReference, testing::ValuesIn(support::referenceCases({"npmle_cr"})),
                         support::nameOfCase);

class TurnbullReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(TurnbullReference, GivesTheReferenceValue) {
    const Observations observations = observationsIn(GetParam());
    const CumulativeIncidence estimate = stats::turnbull(observations);
    expectCurve(GetParam(), estimate.cause1, GetParam().expected, "curve");
    GetParam().expectNear("loglik", estimate.logLikelihood, GetParam().expected.at("loglik"));
    EXPECT_TRUE(estimate.cause2.empty());
    EXPECT_LE(estimate.gap, 1e-10 * totalWeight(observations));
}

INSTANTIATE_TEST_SUITE_P(Reference, TurnbullReference, testing::ValuesIn(support::referenceCases({"turnbull"})),
                         support::nameOfCase);

// --- an independent certificate: nothing of the estimate's own search for intervals is used ---

bool covers(const Observation& row, int cause, double left, double right) {
    const bool isExact = left == right;
    if (row.cause == 0) return isExact ? left > row.after : left >= row.after;
    if (row.cause != cause) return false;
    if (row.after == row.by) return isExact && left == row.by;
    return right <= row.by && (isExact ? left > row.after : left >= row.after);
}

double probabilityOf(const Observation& row, const CumulativeIncidence& estimate) {
    double sum = row.cause == 0 ? estimate.neither : 0;
    for (const SupportInterval& one : estimate.cause1) sum += covers(row, 1, one.left, one.right) ? one.mass : 0;
    for (const SupportInterval& one : estimate.cause2) sum += covers(row, 2, one.left, one.right) ? one.mass : 0;
    return sum;
}

// The largest directional derivative over every elementary interval and every exact day, for both causes and for
// neither.
double independentGap(const Observations& observations, const CumulativeIncidence& estimate) {
    std::set<double> days{0};
    for (const Observation& row : observations) {
        days.insert(row.after);
        if (std::isfinite(row.by)) days.insert(row.by);
    }
    const auto slope = [&](auto isCovered) {
        double sum = 0;
        for (const Observation& row : observations) {
            if (row.weight > 0 && isCovered(row)) sum += row.weight / probabilityOf(row, estimate);
        }
        return sum;
    };
    double steepest = slope([](const Observation& row) { return row.cause == 0; });
    for (const int cause : {1, 2}) {
        for (auto day = days.begin(); day != days.end(); ++day) {
            const double next = std::next(day) == days.end() ? *day + 1 : *std::next(day);
            steepest = std::max(steepest, slope([&](const auto& row) { return covers(row, cause, *day, *day); }));
            steepest = std::max(steepest, slope([&](const auto& row) { return covers(row, cause, *day, next); }));
        }
    }
    return steepest - totalWeight(observations);
}

double sumOf(const CumulativeIncidence& estimate) {
    double sum = estimate.neither;
    for (const SupportInterval& one : estimate.cause1) sum += one.mass;
    for (const SupportInterval& one : estimate.cause2) sum += one.mass;
    return sum;
}

TEST(CompetingRisksNpmle, IsCertifiedByEveryIntervalThereIs) {
    SeededRandom random(41);
    for (int run = 0; run < 60; ++run) {
        BatchRecipe recipe{.cuttings = 5 + 3 * (run % 5), .checks = 3 + run % 6, .lossPerDay = run % 3 == 0 ? 0 : 0.03};
        recipe.daysAreWhole = run % 2 == 0;
        Observations observations = joined(simulatedBatches(1 + run % 7, recipe, random));
        if (run % 4 == 0) observations.push_back({.after = 10, .by = 10, .cause = 1, .weight = 2});
        if (run % 4 == 1) observations.push_back({.after = 0, .by = 12, .cause = 2, .weight = 0.5});
        const CumulativeIncidence estimate = stats::competingRisksNpmle(observations);
        ASSERT_TRUE(estimate.converged) << run;
        EXPECT_LE(independentGap(observations, estimate), 1e-7 * totalWeight(observations)) << run;
        EXPECT_NEAR(sumOf(estimate), 1, 1e-8) << run;
    }
}

TEST(CompetingRisksNpmle, IsTurnbullsWhenNothingIsLost) {
    SeededRandom random(42);
    const Observations observations = joined(simulatedBatches(6, {.lossPerDay = 0}, random));
    const CumulativeIncidence joint = stats::competingRisksNpmle(observations), single = stats::turnbull(observations);
    ASSERT_EQ(joint.cause1.size(), single.cause1.size());
    for (std::size_t i = 0; i < joint.cause1.size(); ++i) EXPECT_EQ(joint.cause1[i].mass, single.cause1[i].mass);
    EXPECT_TRUE(joint.cause2.empty());
}

TEST(CompetingRisksNpmle, IsAalenAndJohansensWhenDaysAreExact) {
    SeededRandom random(43);
    for (int run = 0; run < 20; ++run) {
        std::vector<stats::ExactDay> days;
        Observations observations;
        for (int i = 0; i < 40; ++i) {
            const double day = 5 + static_cast<double>(random.below(25));
            const int cause = static_cast<int>(random.below(3));
            days.push_back({.day = day, .cause = cause});
            observations.push_back({.after = day, .by = cause == 0 ? kNever : day, .cause = cause, .weight = 1});
        }
        const CumulativeIncidence estimate = stats::competingRisksNpmle(observations);
        for (const stats::IncidenceStep& step : stats::aalenJohansen(days)) {
            EXPECT_NEAR(stats::cumulativeShare(estimate.cause1, step.day).atLeast, step.share1, 1e-7);
            EXPECT_NEAR(stats::cumulativeShare(estimate.cause2, step.day).atMost, step.share2, 1e-7);
        }
    }
}

TEST(CompetingRisksNpmle, OfOneBatchWithoutWithdrawalsIsTheShareCounted) {
    // 24 stuck; 6 rooted by day 7, 9 more by day 14, 2 lost by day 14, 7 undecided: nothing to estimate but shares.
    const Observations observations{{0, 7, 1, 6}, {7, 14, 1, 9}, {7, 14, 2, 2}, {14, INFINITY, 0, 7}};
    const CumulativeIncidence estimate = stats::competingRisksNpmle(observations);
    EXPECT_NEAR(stats::cumulativeShare(estimate.cause1, 7).atLeast, 6.0 / 24, 1e-12);
    EXPECT_NEAR(stats::cumulativeShare(estimate.cause1, 14).atLeast, 15.0 / 24, 1e-12);
    EXPECT_NEAR(stats::cumulativeShare(estimate.cause2, 14).atLeast, 2.0 / 24, 1e-12);
    EXPECT_NEAR(estimate.neither, 7.0 / 24, 1e-12);
}

TEST(CompetingRisksNpmle, DoesNotCareHowRowsAreGatheredOrOrdered) {
    SeededRandom random(44);
    const Observations gathered = joined(simulatedBatches(4, {.cuttings = 12}, random));
    Observations single;
    for (const Observation& row : gathered) {
        for (int i = 0; i < static_cast<int>(row.weight); ++i) single.push_back({row.after, row.by, row.cause, 1});
    }
    random.shuffle(std::span<Observation>(single));
    const CumulativeIncidence one = stats::competingRisksNpmle(gathered), other = stats::competingRisksNpmle(single);
    ASSERT_EQ(one.cause1.size(), other.cause1.size());
    for (std::size_t i = 0; i < one.cause1.size(); ++i) EXPECT_NEAR(one.cause1[i].mass, other.cause1[i].mass, 1e-9);
}

TEST(CompetingRisksNpmle, ChangesPlacesWhenTheCausesDo) {
    SeededRandom random(45);
    Observations observations = joined(simulatedBatches(5, {.lossPerDay = 0.03}, random));
    const CumulativeIncidence there = stats::competingRisksNpmle(observations);
    for (Observation& row : observations) row.cause = row.cause == 0 ? 0 : 3 - row.cause;
    const CumulativeIncidence back = stats::competingRisksNpmle(observations);
    ASSERT_EQ(there.cause1.size(), back.cause2.size());
    for (std::size_t i = 0; i < there.cause1.size(); ++i) EXPECT_NEAR(there.cause1[i].mass, back.cause2[i].mass, 1e-8);
    EXPECT_NEAR(there.neither, back.neither, 1e-8);
}

TEST(CompetingRisksNpmle, AnswersWithoutObservationsAndForOne) {
    EXPECT_EQ(stats::competingRisksNpmle(Observations{}).neither, 1);
    EXPECT_EQ(stats::competingRisksNpmle(Observations{{0, 7, 1, 0}}).neither, 1);
    const CumulativeIncidence watched = stats::competingRisksNpmle(Observations{{5, INFINITY, 0, 3}});
    EXPECT_EQ(watched.neither, 1);
    EXPECT_TRUE(watched.cause1.empty());
    const CumulativeIncidence rooted = stats::competingRisksNpmle(Observations{{3, 5, 1, 3}});
    ASSERT_EQ(rooted.cause1.size(), 1U);
    EXPECT_EQ(rooted.cause1[0].mass, 1);
    EXPECT_EQ(rooted.neither, 0);
    EXPECT_EQ(stats::competingRisksNpmle(Observations{{0, 0, 2, 1}}).cause2.at(0).right, 0);
}

TEST(CompetingRisksNpmle, PutsWhoeverIsLeftIntoALastIntervalThatOutlivesEveryWatch) {
    const CumulativeIncidence estimate = stats::competingRisksNpmle(Observations{{7, INFINITY, 0, 5}, {14, 21, 1, 1}});
    EXPECT_EQ(estimate.neither, 0);
    EXPECT_NEAR(estimate.cause1.at(0).mass, 1, 1e-12);
}

TEST(CompetingRisksNpmle, ManagesAThousandDistinctDays) {
    SeededRandom random(46);
    Observations observations;
    for (int i = 0; i < 1000; ++i) {
        const double after = 30 * random.uniform();
        const int cause = static_cast<int>(random.below(3));
        observations.push_back({after, cause == 0 ? kNever : after + 5 * random.uniform(), cause, 1});
    }
    const CumulativeIncidence estimate = stats::competingRisksNpmle(observations);
    EXPECT_TRUE(estimate.converged);
    EXPECT_NEAR(sumOf(estimate), 1, 1e-7);
}

TEST(CompetingRisksNpmle, StopsWhenAsked) {
    SeededRandom random(47);
    std::stop_source source;
    source.request_stop();
    const Observations observations = joined(simulatedBatches(9, {}, random));
    EXPECT_FALSE(stats::competingRisksNpmle(observations, source.get_token()).converged);
}

TEST(CompetingRisksNpmle, RefusesObservationsThatCannotBe) {
    for (const Observation& row : {Observation{7, 3, 1, 1},
                                   {-1, 3, 1, 1},
                                   {0, INFINITY, 1, 1},
                                   {0, 5, 0, 1},
                                   {0, 5, 3, 1},
                                   {0, 5, 1, -1},
                                   {NAN, 5, 1, 1},
                                   {0, NAN, 2, 1},
                                   {0, 5, 1, INFINITY}}) {
        EXPECT_THROW((void)stats::competingRisksNpmle(Observations{row}), std::domain_error);
    }
    EXPECT_THROW((void)stats::turnbull(Observations{{0, 5, 2, 1}}), std::domain_error);
}

}  // namespace
