// SPDX-License-Identifier: MIT
#include "core/planning/when.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/comparison/spread.h"
#include "tests/support/builders.h"

namespace {

using core::DaysRestOn;
using core::PlanDayKind;
using core::RootingDays;
using core::When;
using support::aBatch;
using testing::HasSubstr;

core::Date onDay(const char* iso) {
    return *core::dateFromIso(iso);
}

core::Shelves shelvesOf(const char* botanicalName, std::optional<int> limit) {
    core::Shelves shelves = support::someShelves();
    shelves.plants.front().botanicalName = botanicalName;
    shelves.plants.front().usualRootingDaysHigh = limit;
    return shelves;
}

core::PastRecords pastOfHebe(const core::Shelves& shelves, const std::vector<core::BatchRecord>& batches) {
    return core::pastRecordsOf(support::hebe, {}, shelves, batches, core::pooledSpreadOf(batches, 28, 0.95));
}

RootingDays rootingDays(const core::Shelves& shelves, const std::vector<core::BatchRecord>& batches) {
    return core::rootingDaysOf(pastOfHebe(shelves, batches), shelves, batches);
}

TEST(RootingDays, AreReadOffTheGrowersOwnCurve) {
    const core::Shelves shelves = shelvesOf("Hebe albicans", 35);
    // 20 stuck: 2 root by day 7, 8 more by 14, 8 more by 21, 2 more by 35.
    const std::vector<core::BatchRecord> batches{aBatch()
                                                     .stuck(20)
                                                     .looked(7, {.rooted = 2})
                                                     .looked(14, {.rooted = 8})
                                                     .looked(21, {.rooted = 8})
                                                     .looked(35, {.rooted = 2})
                                                     .build()};
    const RootingDays days = rootingDays(shelves, batches);
    EXPECT_EQ(days.restsOn, DaysRestOn::OwnCurve);
    EXPECT_EQ(days.middle, 14);
    EXPECT_EQ(days.upper, 21);
    EXPECT_NEAR(days.rootedInTime, 0.9, 1e-9);
    EXPECT_EQ(days.rooted, 20);
    EXPECT_EQ(days.batches, 1);
    EXPECT_EQ(days.inWords, "90 of 100 that root have by day 21, half by day 14: 20 rooted in 1 batch of your own.");
}

TEST(RootingDays, NeverGoBeyondTheHorizonThatTheNumberIsCountedAt) {
    const core::Shelves shelves = shelvesOf("Hebe albicans", 21);
    const std::vector<core::BatchRecord> batches{
        aBatch().stuck(40).looked(14, {.rooted = 12}).looked(21, {.rooted = 4}).looked(42, {.rooted = 20}).build()};
    const RootingDays days = rootingDays(shelves, batches);
    EXPECT_EQ(days.restsOn, DaysRestOn::OwnCurve);
    EXPECT_EQ(days.upper, 21);
    EXPECT_EQ(days.rootedInTime, 1);  // of those that root by day 21
}

TEST(RootingDays, RestOnWhatIsThereWhileRecordsAreFew) {
    const std::vector<core::BatchRecord> few{aBatch().stuck(9).looked(14, {.rooted = 9}).build()};
    const std::vector<core::BatchRecord> young{aBatch().stuck(40).looked(7, {.rooted = 15}).build()};
    EXPECT_EQ(rootingDays(shelvesOf("Hebe albicans", 35), few).restsOn, DaysRestOn::PlantsOwnLimit);
    EXPECT_EQ(rootingDays(shelvesOf("Hebe albicans", 35), few).upper, 35);
    EXPECT_EQ(rootingDays(shelvesOf("Hebe albicans", 35), young).restsOn, DaysRestOn::PlantsOwnLimit);
    const RootingDays table = rootingDays(shelvesOf("Lavandula angustifolia", {}), few);
    EXPECT_EQ(table.restsOn, DaysRestOn::ReferenceRange);
    EXPECT_EQ(table.upper, 42);
    EXPECT_EQ(table.middle, 31);
    EXPECT_EQ(table.rootedInTime, 1);
    EXPECT_EQ(table.inWords, "By the reference table 21 to 42 days to root (common practice, no source).");
    const RootingDays logbook = rootingDays(shelvesOf("Hebe albicans", {}), few);
    EXPECT_EQ(logbook.restsOn, DaysRestOn::LogbooksHorizon);
    EXPECT_EQ(logbook.upper, 28);
}

TEST(RootingDays, TakeTheDayOfAScoringForWhatItIs) {
    const RootingDays scored = rootingDays(shelvesOf("Lavandula dentata", {}), {});
    EXPECT_EQ(scored.upper, 60);
    EXPECT_EQ(scored.middle, 60);  // nobody knows since when
    EXPECT_THAT(scored.inWords, HasSubstr("scored on day 60"));
    EXPECT_FALSE(core::rootingDaysOf(*core::plantReferenceFor("Prunus domestica")).has_value());
}

RootingDays fourWeeks() {
    return {.restsOn = DaysRestOn::OwnCurve, .middle = 17, .upper = 28, .rootedInTime = 0.9, .inWords = {}};
}

When when(const core::WhenQuestion& question, core::Date today = onDay("2026-01-10")) {
    const auto answer = core::whenToStick(
        question, fourWeeks(), {.plantName = "Hebe albicans", .cuttings = 34, .firstCheckAfterDays = 7}, today);
    EXPECT_TRUE(answer.has_value());
    return *answer;
}

TEST(WhenToStick, CountsBackFromTheDayOfNeed) {
    const When answer = when({.needBy = onDay("2026-05-01"), .hardeningDays = 7, .pottingDays = 21});
    EXPECT_EQ(answer.stickBy, onDay("2026-03-06"));
    EXPECT_EQ(answer.marginDays, 11);
    const std::vector<std::pair<PlanDayKind, const char*>> wanted{{PlanDayKind::Stick, "2026-03-06"},
                                                                  {PlanDayKind::FirstCheck, "2026-03-13"},
                                                                  {PlanDayKind::PotOn, "2026-04-03"},
                                                                  {PlanDayKind::Harden, "2026-04-24"},
                                                                  {PlanDayKind::Ready, "2026-05-01"}};
    ASSERT_EQ(answer.days.size(), wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        EXPECT_EQ(answer.days[i].kind, wanted[i].first) << i;
        EXPECT_EQ(core::isoText(answer.days[i].on), wanted[i].second) << i;
    }
    EXPECT_EQ(answer.days.front().what, "Stick 34 cuttings of Hebe albicans");
    EXPECT_EQ(
        answer.answerInWords,
        "Stick by 2026-03-06 at the latest: 28 days to root, 21 of growing on, 7 of hardening, before 2026-05-01. "
        "Half of the cuttings have 11 days in hand.");
    EXPECT_EQ(answer.warning, "");
}

TEST(WhenToStick, LeavesOutDaysOfNoLength) {
    const When answer = when({.needBy = onDay("2026-05-01")});
    ASSERT_EQ(answer.days.size(), 3U);
    EXPECT_EQ(answer.days[0].kind, PlanDayKind::Stick);
    EXPECT_EQ(answer.days[1].kind, PlanDayKind::FirstCheck);
    EXPECT_EQ(answer.days[2].kind, PlanDayKind::Ready);
    EXPECT_EQ(answer.stickBy, onDay("2026-04-03"));
}

TEST(WhenToStick, CrossesLeapDaysAndYears) {
    EXPECT_EQ(when({.needBy = onDay("2028-03-14")}).stickBy, onDay("2028-02-15"));
    EXPECT_EQ(when({.needBy = onDay("2027-01-10"), .pottingDays = 30}).stickBy, onDay("2026-11-13"));
}

TEST(WhenToStick, SaysWhenTheDayHasGoneBy) {
    const When answer = when({.needBy = onDay("2026-05-01")}, onDay("2026-04-15"));
    EXPECT_EQ(answer.warning, "That day went by 12 days ago: stuck today, the plants would be ready on 2026-05-13.");
    EXPECT_EQ(when({.needBy = onDay("2026-05-01")}, onDay("2026-04-03")).warning, "");
}

TEST(WhenToStick, RefusesStaysThatCannotBe) {
    const auto answer = core::whenToStick({.needBy = onDay("2026-05-01"), .hardeningDays = -1, .pottingDays = 4000},
                                          fourWeeks(), core::PlanSubject{}, onDay("2026-01-01"));
    ASSERT_FALSE(answer.has_value());
    ASSERT_EQ(answer.error().size(), 2U);
    EXPECT_EQ(answer.error()[0].sentence, "Days of hardening is -1; 0 to 3650 is allowed.");
}

TEST(WhenToStick, TakesThePlantsOwnScheduleForTheFirstCheck) {
    core::Shelves shelves = shelvesOf("Hebe albicans", 35);
    shelves.facts.firstCheckAfterDays = 10;
    const core::PastRecords records = pastOfHebe(shelves, {});
    const auto answer = core::whenToStick({.needBy = onDay("2026-06-05")}, core::rootingDaysOf(records, shelves, {}),
                                          records, 20, shelves, onDay("2026-01-01"));
    ASSERT_TRUE(answer.has_value());
    EXPECT_EQ(answer->days[1].on, core::addDays(answer->stickBy, 10));
}

}  // namespace
