// SPDX-License-Identifier: MIT
#include "db/actions/plan_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/merge_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/shelf_actions.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class PlanActions : public testing::Test {
  protected:
    PlanActions() { EXPECT_TRUE(db::addRecords(logbook, support::recordsOf({}), "records", true)); }

    static core::Plan hedge() {
        core::Plan plan;
        plan.plant = support::hebe;
        plan.method = support::mediaTray;
        plan.wanted = 40;
        plan.assurance = 0.85;
        plan.needBy = core::Date{std::chrono::year(2026) / 9 / 1};
        plan.pottedLivePercent = 92.5;
        plan.hardeningDays = 10;
        plan.pottingDays = 28;
        plan.note = "for the hedge";
        return plan;
    }

    std::vector<core::Plan> plans() const { return logbook.shelves().plans; }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "plans.strikebook";
    db::Logbook logbook = db::Logbook::create(file, support::someShelves().facts, support::testOptions());
};

TEST_F(PlanActions, APlanIsKeptChangedAndRemovedEachInOneStep) {
    const std::string start = support::tableDump(file);
    ASSERT_TRUE(db::keep(logbook, hedge()));
    EXPECT_EQ(logbook.wordsToUndo(), "new plan for 40 Hebe albicans");
    ASSERT_EQ(plans().size(), 1U);
    core::Plan plan = plans().front();
    core::Plan asGiven = hedge();
    asGiven.id = plan.id;
    EXPECT_EQ(plan, asGiven);

    plan.method = {};
    plan.needBy.reset();
    plan.wanted = 60;
    ASSERT_TRUE(db::keep(logbook, plan));
    EXPECT_EQ(plans(), std::vector{plan});
    ASSERT_TRUE(db::remove(logbook, plan.id));
    EXPECT_TRUE(plans().empty());
    const std::string end = support::tableDump(file);
    for (int step = 0; step < 3; ++step) ASSERT_TRUE(logbook.undo());
    EXPECT_EQ(support::tableDump(file), start);
    for (int step = 0; step < 3; ++step) ASSERT_TRUE(logbook.redo());
    EXPECT_EQ(support::tableDump(file), end);
}

TEST_F(PlanActions, ABadPlanIsRefusedAndNothingWritten) {
    core::Plan plan = hedge();
    plan.wanted = 0;
    plan.plant = {};
    const std::string before = support::tableDump(file);
    const auto done = db::keep(logbook, plan);
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error(), ElementsAre(testing::Field(&core::Refusal::field, "Plant"),
                                          testing::Field(&core::Refusal::field, "Wanted")));
    plan = hedge();
    plan.id = {5};
    EXPECT_THAT(db::keep(logbook, plan).error().front().sentence, HasSubstr("not in the logbook any more"));
    EXPECT_THAT(db::remove(logbook, core::PlanId{5}).error().front().sentence,
                HasSubstr("not in the logbook any more"));
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(PlanActions, TheSoonestNeededComesFirstAndThoseWithoutADayLast) {
    core::Plan late = hedge(), never = hedge();
    late.needBy = core::Date{std::chrono::year(2026) / 12 / 1};
    never.needBy.reset();
    for (const core::Plan& plan : {never, late, hedge()}) ASSERT_TRUE(db::keep(logbook, plan));
    ASSERT_EQ(plans().size(), 3U);
    EXPECT_EQ(plans()[0].needBy, hedge().needBy);
    EXPECT_EQ(plans()[1].needBy, late.needBy);
    EXPECT_FALSE(plans()[2].needBy);
}

TEST_F(PlanActions, WhatAPlanNamesIsNotRemovedAndFollowsAMerge) {
    ASSERT_TRUE(db::keep(logbook, hedge()));
    EXPECT_FALSE(db::remove(logbook, support::mediaTray));
    EXPECT_FALSE(db::remove(logbook, support::hebe));
    ASSERT_TRUE(db::mergePlants(logbook, support::hebe, support::deutzia));
    EXPECT_EQ(plans().front().plant, support::deutzia);
    ASSERT_TRUE(logbook.undo());
    EXPECT_EQ(plans().front().plant, support::hebe);
}

}  // namespace
