// SPDX-License-Identifier: MIT
#include "core/causes/trial_proposal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/causes/suspect_examples.h"

namespace {

using examples::coldNorthTub;
using examples::SuspectBench;
using examples::suspectNamed;
using testing::HasSubstr;

TEST(TrialProposals, TakeAMethodThatIsOnTheShelvesAlready) {
    SuspectBench bench = coldNorthTub();
    bench.shelves.methods.push_back({.id = {399}, .name = "aerated water, warmed"});
    const auto proposal = suspectNamed(bench.suspects(), "cold solution")->trial;
    ASSERT_TRUE(proposal.has_value());
    EXPECT_TRUE(proposal->isReady());
    EXPECT_EQ(proposal->trial.arms[1].method, core::MethodId{399});
    bench.shelves.methods.back().isRetired = true;
    const auto fresh = suspectNamed(bench.suspects(), "cold solution")->trial;
    EXPECT_EQ(fresh->methodToAdd->name, "aerated water, warmed 2");
    EXPECT_FALSE(fresh->methodToAdd->id.isSet());
}

TEST(TrialProposals, AreDecidedOnThePlantsDayHoweverEarlyThePoorBatchCameToItsEnd) {
    SuspectBench bench = coldNorthTub();
    core::BatchRecord& asked = bench.batches.front();
    asked.checks.front().checkedOn = core::addDays(asked.batch.stuckOn, 20);
    const core::Suspects found = bench.suspects();
    const core::Suspect* cold = suspectNamed(found, "cold solution");
    ASSERT_NE(cold, nullptr);
    ASSERT_TRUE(cold->trial.has_value());
    EXPECT_EQ(cold->trial->trial.horizonDay, 35);
}

TEST(TrialProposals, AreFilledInForTheDialog) {
    SuspectBench bench = coldNorthTub();
    const auto proposal = suspectNamed(bench.suspects(), "cold solution")->trial;
    ASSERT_TRUE(proposal.has_value());
    const core::Trial& trial = proposal->trial;
    EXPECT_EQ(trial.factor, core::Factor::Method);
    EXPECT_EQ(trial.horizonDay, 35);
    EXPECT_EQ(trial.margin, 0.2);
    ASSERT_EQ(trial.arms.size(), 2u);
    EXPECT_EQ(trial.arms[0].method, support::aeratedWater);
    EXPECT_FALSE(trial.arms[1].method.isSet());
    EXPECT_EQ(proposal->methodToAdd->name, "aerated water, warmed");
    EXPECT_EQ(proposal->plant, support::hebe);
    EXPECT_THAT(trial.question, HasSubstr("Hebe albicans"));
    EXPECT_THAT(trial.name, HasSubstr("aerated water, warmed or not"));
    bench.shelves.trials.push_back(trial);
    EXPECT_NE(suspectNamed(bench.suspects(), "cold solution")->trial->trial.name, trial.name);
}

}  // namespace
