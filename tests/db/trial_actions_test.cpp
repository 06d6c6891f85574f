// SPDX-License-Identifier: MIT
#include "db/actions/trial_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/shelf_rules.h"
#include "db/actions/check_actions.h"
#include "db/actions/merge_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

constexpr core::Date planningDay{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(1)};
constexpr core::Date stuckDay{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(2)};
constexpr core::Date lookDay{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(9)};

/// Gel or nothing on two benches, in two sessions.
class TrialActions : public testing::Test {
  protected:
    TrialActions() {
        core::Records records = support::recordsOf({support::aBatch().at(support::benchWest).stuckOn(stuckDay)});
        EXPECT_TRUE(db::addRecords(logbook, std::move(records), "records", true));
    }

    static core::Trial design() {
        core::Trial trial;
        trial.name = "Gel or nothing";
        trial.question = "Does gel help hebe?";
        trial.horizonDay = 28;
        trial.factor = core::Factor::Treatment;
        trial.blockedBy = core::BlockedBy::Session;
        trial.margin = 0.2;
        trial.perArm = 12;
        trial.allocationSeed = 20260301;
        trial.arms = {{.treatment = support::nothing}, {.treatment = support::weakGel}};
        return trial;
    }

    core::TrialLayout benches() const {
        core::TrialLayout layout;
        const core::Shelves shelves = logbook.shelves();
        for (const core::StationId station : {support::benchWest, support::benchEast})
            layout.stations.push_back(db::roomAt(logbook, *core::find(shelves.stations, station)));
        layout.blocks = {{.plant = support::hebe, .stockPlant = support::hebeByTheGate}};
        layout.sessions = 2;
        return layout;
    }

    core::Trial planned() {
        const auto done = db::planTrial(logbook, design(), benches(), planningDay);
        if (done) return done->trial;
        ADD_FAILURE() << done.error().front().sentence;
        return {};
    }

    core::Trial stored(core::TrialId id) const {
        const core::Shelves shelves = logbook.shelves();
        const core::Trial* trial = core::find(shelves.trials, id);
        return trial == nullptr ? core::Trial{} : *trial;
    }

    db::TrialSessionDraft draftOf(const core::Trial& trial, int session) const {
        db::TrialSessionDraft draft;
        draft.trial = trial.id;
        draft.session.date = stuckDay;
        draft.batches = core::batchesToStick(trial, session, logbook.shelves());
        return draft;
    }

    core::Trial stuck() {
        const core::Trial trial = planned();
        const auto done = db::stickTrialSession(logbook, draftOf(trial, 1), lookDay);
        EXPECT_TRUE(done) << done.error().front().sentence;
        return stored(trial.id);
    }

    core::Trial checked() {
        const core::Trial trial = stuck();
        core::Check check;
        check.batch = trial.batches.front().batch;
        check.checkedOn = lookDay;
        check.rooted = 1;
        EXPECT_TRUE(db::recordChecks(logbook, {{.check = check, .closesBatch = false, .closeReason = {}}}, lookDay));
        return trial;
    }

    /// Undone, every table is as it was before, and redone as it became.
    void expectOneStep(const std::string& before) {
        const std::string after = support::tableDump(file);
        EXPECT_NE(before, after);
        EXPECT_THAT(db::verify(logbook, lookDay).faults, IsEmpty());
        ASSERT_TRUE(logbook.undo());
        EXPECT_EQ(support::tableDump(file), before);
        ASSERT_TRUE(logbook.redo());
        EXPECT_EQ(support::tableDump(file), after);
    }

    template <class Result>
    std::vector<std::string> sentencesOf(const Result& result, const std::string& before) const {
        EXPECT_EQ(support::tableDump(file), before) << "a refusal writes nothing";
        std::vector<std::string> sentences;
        if (!result)
            for (const core::Refusal& refusal : result.error()) sentences.push_back(refusal.sentence);
        return sentences;
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "trial.strikebook";
    db::Logbook logbook = db::Logbook::create(file, support::someShelves().facts, support::testOptions());
};

TEST_F(TrialActions, PlanningWritesWhatTheSeedDealsAndTheDay) {
    const auto preview = core::allocateTrial(design(), benches(), *design().allocationSeed);
    ASSERT_TRUE(preview);
    const std::string before = support::tableDump(file);
    const auto done = db::planTrial(logbook, design(), benches(), planningDay);
    ASSERT_TRUE(done) << done.error().front().sentence;
    EXPECT_EQ(done->trial.batches, *preview);
    EXPECT_EQ(done->trial.setOn, planningDay);
    EXPECT_EQ(stored(done->trial.id), done->trial);
    EXPECT_EQ(logbook.wordsToUndo(), "new trial Gel or nothing");
    expectOneStep(before);
}

TEST_F(TrialActions, PlanningAddsWhatAnArmNamesAndTheShelvesLackInTheSameStep) {
    core::Shelves made;
    made.treatments.resize(1);
    made.treatments.front().id.value = db::newId();
    made.treatments.front().name = "weak gel, new lot";
    core::Trial trial = design();
    trial.arms[0] = {.treatment = made.treatments.front().id};
    const std::string before = support::tableDump(file);
    const auto done = db::planTrial(logbook, trial, benches(), planningDay, made);
    ASSERT_TRUE(done) << done.error().front().sentence;
    const core::Shelves shelves = logbook.shelves();
    ASSERT_NE(core::find(shelves.treatments, made.treatments.front().id), nullptr);
    EXPECT_EQ(core::nameOf(stored(done->trial.id).arms[0], core::Factor::Treatment, shelves), "weak gel, new lot");
    EXPECT_EQ(logbook.wordsToUndo(), "new trial Gel or nothing");
    expectOneStep(before);
}

TEST_F(TrialActions, PlanningRefusesWithWhatItNeedsAndAddsNothing) {
    core::Shelves made;
    made.treatments.resize(1);
    made.treatments.front().id.value = db::newId();
    made.treatments.front().name = " ";
    core::Trial trial = design();
    trial.arms[0] = {.treatment = made.treatments.front().id};
    const std::string before = support::tableDump(file);
    EXPECT_THAT(sentencesOf(db::planTrial(logbook, trial, benches(), planningDay, made), before),
                Contains(StartsWith("Name is blank")));
    made.treatments.front().name = "weak gel, new lot";
    core::TrialLayout layout = benches();
    layout.sessions = 1;
    EXPECT_THAT(sentencesOf(db::planTrial(logbook, trial, layout, planningDay, made), before),
                ElementsAre("Sessions is 1; 2 to 50 is allowed."));
}

TEST_F(TrialActions, PlanningDrawsASeedWhereNoneIsGiven) {
    core::Trial trial = design();
    trial.allocationSeed.reset();
    const auto done = db::planTrial(logbook, trial, benches(), planningDay);
    ASSERT_TRUE(done);
    ASSERT_TRUE(done->trial.allocationSeed);
    EXPECT_EQ(core::allocateTrial(trial, benches(), *done->trial.allocationSeed).value(), done->trial.batches);
}

TEST_F(TrialActions, PlanningRefusesWithEveryReasonOnce) {
    core::Trial trial = design();
    trial.name = " ";
    trial.horizonDay.reset();
    trial.arms.pop_back();
    core::TrialLayout layout = benches();
    layout.sessions = 1;
    const std::string before = support::tableDump(file);
    EXPECT_THAT(
        sentencesOf(db::planTrial(logbook, trial, layout, planningDay), before),
        ElementsAre(StartsWith("Name is blank"), "Arms are 1; 2 to 26 are allowed, or there is nothing to compare.",
                    "Horizon day is not given; 1 to 3650 is allowed.", "Sessions is 1; 2 to 50 is allowed."));
}

TEST_F(TrialActions, PlanningRefusesPlacesThatAreTakenAndStationsThatAreTooSmall) {
    const core::TrialLayout layout = benches();
    core::BatchRecord taker = support::aBatch().at(support::benchEast).stuckOn(stuckDay).standing("A1-A3");
    db::SessionDraft draft;
    draft.session.date = stuckDay;
    taker.batch.id = {};
    taker.batch.code = "";
    taker.batch.session = {};
    draft.batches = {taker.batch};
    ASSERT_TRUE(db::stickSession(logbook, draft, lookDay));
    const std::string before = support::tableDump(file);
    EXPECT_THAT(
        sentencesOf(db::planTrial(logbook, design(), layout, planningDay), before),
        ElementsAre("Free places at Bench east are A1-A3, which are not free any more; places that are free now "
                    "are allowed."));
    core::Trial large = design();
    large.perArm = 500;
    EXPECT_THAT(sentencesOf(db::planTrial(logbook, large, benches(), planningDay), before),
                ElementsAre(StartsWith("Per arm is 500, but the stations have room for ")));
}

TEST_F(TrialActions, ChangingIsFreeBeforeTheFirstCheckAndDatesTheTrialAnew) {
    core::Trial trial = stuck();
    trial.horizonDay = 35;
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::changeTrial(logbook, trial, "", stuckDay));
    EXPECT_EQ(stored(trial.id).horizonDay, 35);
    EXPECT_EQ(stored(trial.id).setOn, stuckDay);
    EXPECT_THAT(stored(trial.id).changes, IsEmpty());
    expectOneStep(before);
}

TEST_F(TrialActions, ChangingAfterTheFirstCheckNeedsAReasonAndIsWrittenDown) {
    core::Trial trial = checked();
    trial.horizonDay = 35;
    trial.measure = core::TrialMeasure::AsGoodAs;
    const std::string before = support::tableDump(file);
    EXPECT_THAT(
        sentencesOf(db::changeTrial(logbook, trial, " ", lookDay), before),
        ElementsAre(StartsWith("Reason is not given, but batches of this trial have been checked, so a change of "
                               "its horizon day, measure needs one;")));
    ASSERT_TRUE(db::changeTrial(logbook, trial, "A cold week.", lookDay));
    const core::Trial after = stored(trial.id);
    EXPECT_EQ(after.horizonDay, 35);
    EXPECT_EQ(after.setOn, planningDay) << "it was set before the first check; the change says the rest";
    ASSERT_EQ(after.changes.size(), 2U);
    EXPECT_EQ(after.changes[0],
              (core::TrialChange{
                  .changedOn = lookDay, .what = "horizon day", .was = "28", .became = "35", .reason = "A cold week."}));
    EXPECT_EQ(after.changes[1].what, "measure");
    EXPECT_EQ(after.changes[1].became, "as good as");
    expectOneStep(before);
}

TEST_F(TrialActions, NothingGetsRoundTheReason) {
    core::Trial trial = checked();
    const std::string before = support::tableDump(file);
    trial.horizonDay = 35;
    EXPECT_THAT(sentencesOf(db::keep(logbook, trial), before), ElementsAre(StartsWith("Reason is not given")))
        << "not by the shelves";
    trial.horizonDay = 28;
    trial.changes = {{.changedOn = lookDay, .what = "margin", .was = "0.1", .became = "0.2", .reason = "made up"}};
    trial.setOn = core::addDays(planningDay, -99);
    trial.batches.front().stuck = 1;
    ASSERT_TRUE(db::changeTrial(logbook, trial, "", lookDay));
    EXPECT_EQ(support::tableDump(file), before) << "what was dealt, dated and changed is not the caller's to say";
    EXPECT_THAT(sentencesOf(db::remove(logbook, trial.id), before), ElementsAre(HasSubstr("is used by records")));
    EXPECT_THAT(sentencesOf(db::allocateAgain(logbook, stored(trial.id), benches(), lookDay), before),
                ElementsAre(HasSubstr("can't be dealt again, since batches of it are stuck")));
}

TEST_F(TrialActions, TheShelvesFormChangesANameWithoutAReason) {
    core::Trial trial = checked();
    trial.name = "Gel or none";
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::keep(logbook, trial));
    EXPECT_EQ(stored(trial.id).name, "Gel or none");
    EXPECT_EQ(stored(trial.id).batches, trial.batches);
    expectOneStep(before);
}

TEST_F(TrialActions, DealingAgainTakesAnotherDesign) {
    core::Trial trial = planned();
    trial.arms = {{.treatment = support::weakGel}, {.treatment = support::nothing}};
    trial.perArm = 6;
    trial.allocationSeed = 5;
    const std::string before = support::tableDump(file);
    const auto done = db::allocateAgain(logbook, trial, benches(), stuckDay);
    ASSERT_TRUE(done) << done.error().front().sentence;
    EXPECT_EQ(stored(trial.id), done->trial);
    EXPECT_EQ(done->trial.setOn, stuckDay);
    int cuttings = 0;
    for (const core::TrialBatch& dealt : done->trial.batches) cuttings += dealt.stuck;
    EXPECT_EQ(cuttings, 12);
    expectOneStep(before);
}

TEST_F(TrialActions, StickingPutsEachBatchWhereTheMapSays) {
    const core::Trial trial = planned();
    const std::string before = support::tableDump(file);
    const auto done = db::stickTrialSession(logbook, draftOf(trial, 1), lookDay);
    ASSERT_TRUE(done) << done.error().front().sentence;
    const core::Trial after = stored(trial.id);
    std::size_t written = 0;
    for (const core::TrialBatch& dealt : after.batches) {
        EXPECT_EQ(dealt.batch.isSet(), dealt.session == 1);
        if (!dealt.batch.isSet()) continue;
        const core::Batch batch = logbook.batch(dealt.batch)->batch;
        EXPECT_EQ(batch, done->batches[written++]);
        EXPECT_EQ(batch.positions, dealt.positions);
        EXPECT_EQ(batch.stuck, dealt.stuck);
        EXPECT_EQ(batch.block, "session 1");
        EXPECT_EQ(batch.trial, trial.id);
        EXPECT_EQ(batch.plant, support::hebe);
        EXPECT_EQ(batch.treatment, trial.arms[static_cast<std::size_t>(dealt.arm)].treatment);
        EXPECT_EQ(batch.stuckOn, stuckDay);
    }
    EXPECT_EQ(written, done->batches.size());
    EXPECT_EQ(written, 4U);
    EXPECT_EQ(logbook.wordsToUndo(), "session of 2026-03-02, 4 batches of trial Gel or nothing");
    expectOneStep(before);
}

TEST_F(TrialActions, StickingRefusesWhatWasNotDealt) {
    const core::Trial trial = planned();
    db::TrialSessionDraft draft = draftOf(trial, 1);
    draft.batches[0].batch.stuck = 99;
    draft.batches[1].batch.treatment = {};
    draft.batches.push_back(draftOf(trial, 2).batches.front());
    const std::string before = support::tableDump(file);
    EXPECT_THAT(sentencesOf(db::stickTrialSession(logbook, draft, lookDay), before),
                ElementsAre(StartsWith("Dealt batch 1: Stuck is 99, but 3 was dealt;"),
                            StartsWith("Dealt batch 2: Treatment is not given, but IBA gel 1000 was dealt;"),
                            StartsWith("Dealt batch 5: Session is 2, but others are of session 1;")));
    draft = draftOf(trial, 1);
    draft.batches[1] = draft.batches[0];
    EXPECT_THAT(sentencesOf(db::stickTrialSession(logbook, draft, lookDay), before),
                Contains(HasSubstr("Dealt batch is 1 once more; each once is allowed.")));
    draft = draftOf(trial, 1);
    draft.session.date = core::addDays(lookDay, 1);
    EXPECT_THAT(sentencesOf(db::stickTrialSession(logbook, draft, lookDay), before),
                ElementsAre(HasSubstr("in the future")));
    draft.trial = {1};
    EXPECT_THAT(sentencesOf(db::stickTrialSession(logbook, draft, lookDay), before), ElementsAre(HasSubstr("Trial")));
    draft.batches.clear();
    draft.trial = trial.id;
    EXPECT_FALSE(db::stickTrialSession(logbook, draft, lookDay));
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(TrialActions, SomeOfASessionCanBeStuckAnotherDay) {
    const core::Trial trial = planned();
    db::TrialSessionDraft draft = draftOf(trial, 1);
    draft.batches.resize(1);
    ASSERT_TRUE(db::stickTrialSession(logbook, draft, lookDay));
    db::TrialSessionDraft rest = draftOf(stored(trial.id), 1);
    EXPECT_EQ(rest.batches.size(), 3U);
    ASSERT_TRUE(db::stickTrialSession(logbook, rest, lookDay));
    EXPECT_THAT(draftOf(stored(trial.id), 1).batches, IsEmpty());
}

TEST_F(TrialActions, ABatchThatIsDeletedCanBeStuckAgain) {
    const core::Trial trial = stuck();
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::deleteBatch(logbook, trial.batches.front().batch));
    const auto again = draftOf(stored(trial.id), 1);
    ASSERT_EQ(again.batches.size(), 1U);
    EXPECT_EQ(again.batches.front().batch.positions, trial.batches.front().positions);
    expectOneStep(before);
}

TEST_F(TrialActions, PlacesOfALaterSessionAreDealtAgainAroundWhatStandsThere) {
    const core::Trial trial = stuck();
    db::SessionDraft taker;
    taker.session.date = stuckDay;
    const core::TrialBatch& first = *std::ranges::find(trial.batches, 2, &core::TrialBatch::session);
    core::Batch batch = core::batchesToStick(trial, 2, logbook.shelves()).front().batch;
    batch.trial = {};
    taker.batches = {batch};
    ASSERT_TRUE(db::stickSession(logbook, taker, lookDay)) << "somebody else took " << first.positions;
    const std::string before = support::tableDump(file);
    EXPECT_THAT(sentencesOf(db::stickTrialSession(logbook, draftOf(trial, 2), lookDay), before),
                Contains(HasSubstr(", where cuttings of ")));
    const auto done = db::placeAgain(logbook, trial.id, 2);
    ASSERT_TRUE(done) << done.error().front().sentence;
    EXPECT_EQ(stored(trial.id), done->trial);
    expectOneStep(before);
    EXPECT_TRUE(db::stickTrialSession(logbook, draftOf(stored(trial.id), 2), lookDay));
    EXPECT_FALSE(db::placeAgain(logbook, trial.id, 1)) << "it is stuck";
    EXPECT_FALSE(db::placeAgain(logbook, {5}, 1));
}

TEST_F(TrialActions, APlannedTrialIsDeletedWithItsDeal) {
    const core::Trial trial = planned();
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::remove(logbook, trial.id));
    EXPECT_EQ(stored(trial.id), core::Trial{});
    expectOneStep(before);
}

TEST_F(TrialActions, WhatATrialNamesIsNotRemoved) {
    (void)planned();
    for (const auto& result : {db::remove(logbook, support::weakGel), db::remove(logbook, support::benchEast),
                               db::remove(logbook, support::hebeByTheGate)})
        ASSERT_FALSE(result);
    EXPECT_THAT(db::remove(logbook, support::benchEast).error().front().sentence, HasSubstr("is used by records"));
}

TEST_F(TrialActions, MergingKeepsArmsApartAndFollowsStations) {
    const core::Trial trial = planned();
    std::string before = support::tableDump(file);
    EXPECT_THAT(
        sentencesOf(db::mergeTreatments(logbook, support::weakGel, support::nothing), before),
        ElementsAre("Trial Gel or nothing: Treatment of arm 2 is \"Nothing\" once more; one that no other arm has "
                    "is allowed."));
    ASSERT_TRUE(db::mergeStations(logbook, support::benchEast, support::benchWest));
    for (const core::TrialBatch& dealt : stored(trial.id).batches) EXPECT_EQ(dealt.station, support::benchWest);
    expectOneStep(before);
    before = support::tableDump(file);
    core::Plant plant;
    plant.botanicalName = "Veronica albicans";
    ASSERT_TRUE(db::keep(logbook, plant));
    before = support::tableDump(file);
    const core::Shelves shelves = logbook.shelves();
    const auto veronica = std::ranges::find(shelves.plants, plant.botanicalName, &core::Plant::botanicalName);
    ASSERT_TRUE(db::mergePlants(logbook, support::hebe, veronica->id));
    for (const core::TrialBatch& dealt : stored(trial.id).batches) EXPECT_EQ(dealt.plant, veronica->id);
    expectOneStep(before);
}

}  // namespace
