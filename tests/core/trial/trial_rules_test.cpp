// SPDX-License-Identifier: MIT
#include "core/trial/trial_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/shelf_rules.h"
#include "tests/core/trial/trial_examples.h"
#include "tests/support/builders.h"

namespace {

using examples::trialOf;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> wordsOf(const core::Refusals& refusals) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : refusals) {
        EXPECT_FALSE(refusal.field.empty() || refusal.value.empty() || refusal.allowed.empty()) << refusal.sentence;
        sentences.push_back(refusal.sentence);
    }
    return sentences;
}

std::vector<std::string> faultsInTrial(const core::Trial& trial) {
    return wordsOf(core::faultsIn(trial, support::someShelves()));
}

/// Gel or nothing, dealt to the west bench.
core::Trial dealtTrialOfDoses() {
    core::Trial trial = trialOf(core::Factor::Treatment, 2, 6);
    trial.id = {905};
    trial.batches =
        core::allocateTrial(trial, examples::layoutOf({examples::roomOf(support::benchWest, 6, 10)}), 3).value();
    return trial;
}

TEST(TrialRules, TakeATrialThatIsOnlyNamedAndOneThatIsDealt) {
    core::Trial named;
    named.name = "As we always did";
    EXPECT_THAT(faultsInTrial(named), IsEmpty());
    EXPECT_THAT(faultsInTrial(dealtTrialOfDoses()), IsEmpty());
    EXPECT_THAT(core::faultsInDesign(dealtTrialOfDoses(), support::someShelves()), IsEmpty());
    EXPECT_THAT(wordsOf(core::faultsInDesign(named, support::someShelves())),
                ElementsAre("Factor is not given; method, treatment, medium or cutting is allowed.",
                            "Horizon day is not given; 1 to 3650 is allowed.",
                            "Per arm is not given; 1 to 100000 is allowed."));
}

TEST(TrialRules, RefuseArmsThatCannotBeCompared) {
    core::Trial trial = trialOf(core::Factor::Treatment, 1, 6);
    EXPECT_THAT(faultsInTrial(trial), ElementsAre("Arms are 1; 2 to 26 are allowed, or there is nothing to compare."));
    trial.arms.push_back(trial.arms.front());
    EXPECT_THAT(faultsInTrial(trial), ElementsAre("Treatment of arm 2 is \"Nothing\" once more; one that no other arm "
                                                  "has is allowed."));
    trial.arms.back() = {.medium = support::coirMix};
    EXPECT_THAT(faultsInTrial(trial),
                ElementsAre("Treatment of arm 2 is not given; one that this logbook has is allowed."));
    trial.arms.back() = {.treatment = support::weakGel, .medium = support::coirMix};
    EXPECT_THAT(faultsInTrial(trial),
                ElementsAre("Treatment of arm 2 is one of several things; nothing but its factor is allowed."));
    trial.factor.reset();
    EXPECT_THAT(faultsInTrial(trial),
                ElementsAre("Factor is not given; method, treatment, medium or cutting is allowed."));
}

TEST(TrialRules, RefuseWhatDoesNotGoTogether) {
    core::Trial trial = trialOf(core::Factor::Method, 2, 6);
    trial.blockedBy = core::BlockedBy::StationSide;
    EXPECT_THAT(
        faultsInTrial(trial),
        ElementsAre("Blocks is station sides, but a station has one method at a time; nothing, plant, stock plant "
                    "or session is allowed."));
    trial = trialOf(core::Factor::Treatment, 2, 6);
    trial.isCrossedOver = true;
    EXPECT_THAT(faultsInTrial(trial), ElementsAre("Crossed over is yes, but arms of this factor stand side by side at "
                                                  "each station; no is allowed."));
}

TEST(TrialRules, NeedAMarginWhereOneIsToBeAsGoodAsAnother) {
    core::Trial trial = trialOf(core::Factor::Method, 2, 6);
    trial.measure = core::TrialMeasure::AsGoodAs;
    EXPECT_THAT(faultsInTrial(trial), ElementsAre("Margin is not given, but what is as good as another needs one; more "
                                                  "than 0 and less than 1 is allowed."));
    trial.margin = 1;
    EXPECT_THAT(faultsInTrial(trial), ElementsAre("Margin is 1; more than 0 and less than 1 is allowed."));
    trial.margin = 0.1;
    EXPECT_THAT(faultsInTrial(trial), IsEmpty());
}

TEST(TrialRules, RefuseADealThatIsNotOfThisLogbook) {
    core::Trial trial = dealtTrialOfDoses();
    core::TrialBatch& first = trial.batches.front();
    first.station = {1};
    first.arm = 2;
    first.session = 51;
    first.positions = "A1-A2";
    first.plant = support::hebe;
    first.stockPlant = support::deutziaInThePotYard;
    trial.batches.back().number = 1;
    EXPECT_THAT(
        faultsInTrial(trial),
        ElementsAre("Dealt batch 1: Session is 51; 1 to 50 is allowed.", "Dealt batch 1: Arm is 2; 0 to 1 is allowed.",
                    "Dealt batch 1: Station has the id 1, which this logbook does not have; one that this logbook "
                    "has is allowed.",
                    "Dealt batch 1: Stock plant has the id 202, which this logbook does not have; one that this "
                    "logbook has is allowed.",
                    "Dealt batch 1: Positions is \"A1-A2\"; a list of 6 such as A1-A6, B2 is allowed.",
                    "Number is 1; a number of 1 or more, each once, is allowed."));
}

class TrialChangeRules : public testing::Test {
  protected:
    std::vector<std::string> faults(bool wasChecked, const std::string& reason = {}) const {
        return wordsOf(core::faultsInChange(before, after, wasChecked, reason, support::someShelves()));
    }

    core::Trial before = dealtTrialOfDoses();
    core::Trial after = before;
};

TEST_F(TrialChangeRules, LetEverythingThatJudgesBeChangedBeforeTheFirstCheck) {
    after.horizonDay = 35;
    after.measure = core::TrialMeasure::AsGoodAs;
    after.margin = 0.1;
    after.isBlinded = true;
    EXPECT_THAT(faults(false), IsEmpty());
}

TEST_F(TrialChangeRules, NeedAReasonAfterTheFirstCheck) {
    after.horizonDay = 35;
    after.margin = 0.25;
    EXPECT_THAT(
        faults(true),
        ElementsAre("Reason is not given, but batches of this trial have been checked, so a change of its horizon "
                    "day, margin needs one; a few words are allowed, and the trial's report prints them."));
    EXPECT_EQ(faults(true, " \n").size(), 1U);
    EXPECT_THAT(faults(true, "A cold spell held everything up by a week."), IsEmpty());
    EXPECT_THAT(faults(true, "\x01"), ElementsAre(testing::StartsWith("Reason")));
}

TEST_F(TrialChangeRules, NeedNoReasonForItsNameAndNote) {
    after.name = "Gel or none";
    after.note = "on the west bench";
    after.question = "Does gel help?";
    EXPECT_THAT(faults(true), IsEmpty());
}

TEST_F(TrialChangeRules, KeepWhatWasDealtAsItWasDealt) {
    after.factor = core::Factor::Method;
    after.blockedBy = core::BlockedBy::Session;
    after.perArm = 7;
    EXPECT_THAT(
        faults(false),
        ElementsAre("Factor is method, but cuttings were dealt with treatment; only treatment is allowed, or deal "
                    "again.",
                    "Arms is not set, not set, but cuttings were dealt with Nothing, IBA gel 1000; only Nothing, "
                    "IBA gel 1000 is allowed, or deal again.",
                    "Blocks is session, but cuttings were dealt with nothing; only nothing is allowed, or deal "
                    "again.",
                    "Per arm is 7, but cuttings were dealt with 6; only 6 is allowed, or deal again."));
    before.batches.clear();
    EXPECT_THAT(faults(false), IsEmpty());
}

TEST_F(TrialChangeRules, SayWhatWasAndWhatItBecame) {
    before.horizonDay.reset();
    after.horizonDay = 35;
    after.margin = 0.25;
    const auto changes =
        core::changesBetween(before, after, support::someShelves(), support::today(), "It was never set.");
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_EQ(changes[0], (core::TrialChange{.changedOn = support::today(),
                                             .what = "horizon day",
                                             .was = "not set",
                                             .became = "35",
                                             .reason = "It was never set."}));
    EXPECT_EQ(changes[1].became, "0.25");
    EXPECT_THAT(core::changesBetween(before, before, support::someShelves(), support::today(), ""), IsEmpty());
}

TEST(TrialSticking, FillsInWhatWasDealt) {
    core::Trial trial = dealtTrialOfDoses();
    trial.batches.front().batch = {77};
    const auto planned = core::batchesToStick(trial, 1, support::someShelves());
    ASSERT_EQ(planned.size(), 1U) << "one is stuck already";
    EXPECT_EQ(planned.front().number, 2);
    const core::Batch& batch = planned.front().batch;
    EXPECT_EQ(batch.trial, trial.id);
    EXPECT_EQ(batch.station, support::benchWest);
    EXPECT_EQ(batch.method, support::mediaTray) << "the station's";
    EXPECT_EQ(batch.treatment, support::weakGel);
    EXPECT_EQ(batch.stuck, 6);
    EXPECT_EQ(batch.positions, trial.batches.back().positions);
    EXPECT_THAT(core::batchesToStick(trial, 2, support::someShelves()), IsEmpty());
}

TEST(TrialSticking, RefusesABatchThatIsNotAsDealt) {
    const core::Trial trial = dealtTrialOfDoses();
    core::PlannedBatch planned = core::batchesToStick(trial, 1, support::someShelves()).front();
    EXPECT_THAT(core::faultsInSticking(planned, trial, support::someShelves()), IsEmpty());
    planned.batch.plant = support::hebe;  // the grower's to say
    EXPECT_THAT(core::faultsInSticking(planned, trial, support::someShelves()), IsEmpty());
    planned.batch.treatment = support::weakGel;
    planned.batch.station = support::benchEast;
    planned.batch.stuck = 5;
    planned.batch.positions = "A1-A5";
    planned.batch.block = "1";
    EXPECT_THAT(
        wordsOf(core::faultsInSticking(planned, trial, support::someShelves())),
        ElementsAre("Station is Bench east, but Bench west was dealt; only Bench west is allowed.",
                    "Treatment is IBA gel 1000, but Nothing was dealt; only Nothing is allowed.",
                    "Stuck is 5, but 6 was dealt; only 6 is allowed.", testing::StartsWith("Positions is A1-A5, but "),
                    "Block is \"1\", but \"\" was dealt; only \"\" is allowed."));
    planned.number = 3;
    EXPECT_THAT(
        wordsOf(core::faultsInSticking(planned, trial, support::someShelves())),
        ElementsAre("Dealt batch is 3, which the trial does not have; one that is still to be stuck is allowed."));
}

TEST(TrialSticking, CrossedOverTheArmGivesTheMethod) {
    auto [trial, layout] = examples::crossedOver(2, 2);
    layout.stations = examples::fourRooms();
    trial.batches = core::allocateTrial(trial, layout, 5).value();
    for (const core::PlannedBatch& planned : core::batchesToStick(trial, 1, support::someShelves()))
        EXPECT_EQ(planned.batch.method,
                  trial.arms[static_cast<std::size_t>(trial.batches[static_cast<std::size_t>(planned.number - 1)].arm)]
                      .method);
}

}  // namespace
