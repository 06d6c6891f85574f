// SPDX-License-Identifier: MIT
#include "core/planning/plan_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "tests/support/builders.h"

namespace {

using testing::ElementsAre;

core::Plan soundPlan() {
    core::Plan plan;
    plan.plant = support::hebe;
    plan.wanted = 40;
    return plan;
}

std::vector<std::string> planFaults(const core::Plan& plan) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(plan, support::someShelves()))
        sentences.push_back(refusal.sentence);
    return sentences;
}

TEST(PlanRules, TakeAPlanWithAndWithoutADay) {
    core::Plan plan = soundPlan();
    EXPECT_THAT(planFaults(plan), testing::IsEmpty());
    plan.method = support::mediaTray;
    plan.needBy = core::Date{std::chrono::year(2020) / 5 / 1};  // late, not wrong
    plan.pottedLivePercent = 0.5;
    plan.hardeningDays = plan.pottingDays = 3650;
    EXPECT_THAT(planFaults(plan), testing::IsEmpty());
}

TEST(PlanRules, RefuseABlankPlanWithEveryReason) {
    core::Plan plan;
    plan.assurance = 1;
    plan.pottedLivePercent = 0;
    plan.method = {77};
    plan.needBy = core::Date{std::chrono::year(2026) / 2 / 30};
    plan.hardeningDays = -1;
    plan.pottingDays = 3651;
    plan.note = std::string(5000, 'n');
    EXPECT_THAT(
        planFaults(plan),
        ElementsAre("Plant is not given; one that this logbook has is allowed.",
                    "Method has the id 77, which this logbook does not have; one that this logbook has is allowed.",
                    "Wanted is 0; 1 to 10000 is allowed.", "Assurance is 1; more than 0 and less than 1 is allowed.",
                    testing::StartsWith("Needed by is 2026-02-30, which is no day of the calendar;"),
                    "Of 100 potted, live is 0; more than 0 and up to 100 is allowed.",
                    "Days of hardening is -1; 0 to 3650 is allowed.",
                    "Days of growing on is 3651; 0 to 3650 is allowed.", testing::StartsWith("Note has ")));
}

TEST(PlanRules, RefuseFiguresThatAreNone) {
    for (const double figure :
         {0.0, -0.5, 1.0, 200.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        core::Plan plan = soundPlan();
        plan.assurance = figure;
        EXPECT_EQ(planFaults(plan).size(), 1U) << figure;
    }
    core::Plan plan = soundPlan();
    plan.pottedLivePercent = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(planFaults(plan).size(), 1U);
}

}  // namespace
