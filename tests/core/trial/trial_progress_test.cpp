// SPDX-License-Identifier: MIT
#include "core/trial/trial_progress.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "tests/support/builders.h"

namespace {

using core::TrialStage;

/// Two tubs and two benches, one session, one batch of twelve each; stuck on the sticking day unless `stuck` is fewer.
class TrialUnderWay : public testing::Test {
  protected:
    TrialUnderWay() : shelves_(support::someShelves()) {
        trial_ = shelves_.trials.front();
        trial_.factor = core::Factor::Method;
        trial_.arms = {{.method = support::aeratedWater}, {.method = support::mediaTray}};
        trial_.horizonDay = 28;
        trial_.perArm = 24;
        trial_.blockedBy = core::BlockedBy::Session;
        int number = 0;
        for (const core::StationId station : stations_)
            trial_.batches.push_back({.number = ++number,
                                      .session = 1,
                                      .station = station,
                                      .block = "session 1",
                                      .arm = number > 2 ? 1 : 0,
                                      .stuck = 12,
                                      .positions = "A1-A10, B1-B2"});
    }

    void stick(int batches) {
        for (int batch = 0; batch < batches; ++batch) {
            core::BatchRecord record = support::aBatch().stuck(12).at(stations_[static_cast<std::size_t>(batch)]);
            record.batch.trial = trial_.id;
            record.batch.block = "session 1";
            trial_.batches[static_cast<std::size_t>(batch)].batch = record.batch.id;
            records_.push_back(record);
        }
    }

    /// Each batch was looked at so many days after; the tubs root 9, the benches 3.
    void look(int afterDays) {
        for (std::size_t batch = 0; batch < records_.size(); ++batch) {
            core::Check check = support::aCheck(core::addDays(support::stickingDay(), afterDays),
                                                {.rooted = batch < 2 ? 9 : 3, .lost = 1});
            check.batch = records_[batch].batch.id;
            records_[batch].checks = {check};
        }
    }

    core::TrialProgress on(int day) {
        std::vector<core::BatchLine> lines;
        for (const core::BatchRecord& record : records_)
            lines.push_back({record.batch, core::tallyOf(record.batch, record.checks)});
        return core::progressOf(trial_, shelves_, lines, core::addDays(support::stickingDay(), day));
    }

    const std::vector<core::StationId> stations_{support::tubNorth, support::tubSouth, support::benchWest,
                                                 support::benchEast};
    core::Shelves shelves_;
    core::Trial trial_;
    std::vector<core::BatchRecord> records_;
};

TEST_F(TrialUnderWay, IsPlannedUntilABatchIsStuckAndWatchedOnceAllAre) {
    EXPECT_EQ(on(0).stage, TrialStage::Planned);
    EXPECT_EQ(on(0).inWords, "4 batches in 1 session are to be stuck; none is yet.");
    stick(3);
    EXPECT_EQ(on(2).stage, TrialStage::Sticking);
    EXPECT_FALSE(on(40).decidedOn) << "a session is still to come: whoever compares now has peeked";
    records_.clear();
    stick(4);
    EXPECT_EQ(on(27).stage, TrialStage::Watched);
    EXPECT_EQ(on(27).decidedOn, core::addDays(support::stickingDay(), 28));
    EXPECT_EQ(on(28).stage, TrialStage::Decided);
}

TEST_F(TrialUnderWay, CountsEachArmAndBlockSoFarAndComparesNothing) {
    stick(4);
    look(14);
    const core::TrialProgress progress = on(20);
    ASSERT_EQ(progress.arms.size(), 2u);
    EXPECT_EQ(progress.arms[0].name, "aerated water");
    EXPECT_EQ(progress.arms[0].stuck, 24);
    EXPECT_EQ(progress.arms[0].rooted, 18);
    EXPECT_EQ(progress.arms[1].rooted, 6);
    EXPECT_EQ(progress.arms[1].undecided, 16);
    EXPECT_EQ(progress.armsByBlock.size(), 2u);
    EXPECT_EQ(progress.armsByBlock[0].block, "session 1");
    EXPECT_EQ(
        progress.inWords,
        "48 cuttings stuck in 4 batches: 24 rooted, 4 lost, 20 undecided, all arms together. No comparison is made "
        "before the last batch is at its day 28, in 8 days.");
}

TEST_F(TrialUnderWay, SaysWhenNobodyHasLookedSinceTheHorizon) {
    stick(4);
    look(14);
    EXPECT_NE(on(30).inWords.find("4 were not looked at since"), std::string::npos) << on(30).inWords;
    look(28);
    EXPECT_EQ(on(30).batchesLookedAtAtHorizon, 4);
    EXPECT_NE(on(30).inWords.find("was looked at then or later"), std::string::npos) << on(30).inWords;
}

TEST_F(TrialUnderWay, NamesNoArmBeforeTheHorizonWhereItIsBlinded) {
    trial_.isBlinded = true;
    EXPECT_TRUE(on(0).isTold) << "whoever sticks it has to know";
    stick(4);
    look(14);
    const core::TrialProgress blind = on(20);
    EXPECT_FALSE(blind.isTold);
    std::vector<std::string> names;
    for (const core::ArmCounts& counts : blind.arms) {
        names.push_back(counts.name);
        EXPECT_EQ(counts.arm, -1);
    }
    EXPECT_EQ(names, (std::vector<std::string>{"arm A", "arm B"}));
    for (const core::ArmCounts& counts : blind.armsByBlock) EXPECT_TRUE(counts.name.starts_with("arm "));
    EXPECT_TRUE(on(28).isTold);
    EXPECT_EQ(on(28).arms[0].name, "aerated water");
}

TEST(ArmsBehindLetters, AreInAnyOrderByTheSeedAloneAndEachOrderAsOften) {
    core::Trial trial;
    trial.arms.resize(3);
    std::map<std::vector<int>, int> seen;
    constexpr int seeds = 6000;
    for (std::uint32_t seed = 0; seed < seeds; ++seed) {
        trial.allocationSeed = seed;
        const std::vector<int> letters = core::armsBehindLetters(trial);
        EXPECT_EQ(letters, core::armsBehindLetters(trial));
        ++seen[letters];
    }
    ASSERT_EQ(seen.size(), 6u);
    double chiSquare = 0;
    for (const auto& [order, count] : seen) chiSquare += (count - 1000.0) * (count - 1000.0) / 1000.0;
    EXPECT_LT(chiSquare, 20.5) << "the 99.9th percentile of five degrees of freedom";
}

TEST_F(TrialUnderWay, HasAResultOfItsOwnBatchesAtItsHorizon) {
    stick(4);
    look(28);
    std::vector<core::BatchRecord> all = records_;
    all.push_back(support::aBatch().at(support::benchWest).looked(28, {.rooted = 24}));
    shelves_.trials = {trial_};
    const core::Comparison result = core::trialResult(trial_, shelves_, all).value();
    EXPECT_EQ(result.horizonDay, 28);
    EXPECT_EQ(result.factor, core::Factor::Method);
    ASSERT_EQ(result.arms.size(), 2u);
    EXPECT_EQ(result.arms[0].stuck + result.arms[1].stuck, 48) << "the batch outside is not in it";
    EXPECT_FALSE(result.pairs.front().firstAsGood);
    trial_.measure = core::TrialMeasure::AsGoodAs;
    trial_.margin = 0.1;
    EXPECT_TRUE(core::trialResult(trial_, shelves_, all).value().pairs.front().firstAsGood);
}

TEST_F(TrialUnderWay, SaysWhatItDoesNotShowAndWhatToTryNext) {
    stick(4);
    look(28);
    shelves_.trials = {trial_};
    const core::Comparison result = core::trialResult(trial_, shelves_, records_).value();
    const auto says = [](const std::vector<std::string>& sentences, const std::string& words) {
        return std::ranges::any_of(sentences, [&](const auto& one) { return one.find(words) != std::string::npos; });
    };
    EXPECT_TRUE(says(core::whatNext(trial_, on(28), &result), "three batches or more"));
    EXPECT_TRUE(says(core::whatNext(trial_, on(20), nullptr), "Look at every batch on day 28"));
    EXPECT_TRUE(says(core::notShownBy(trial_, on(28), &result), "other plants, stations or seasons"));
    EXPECT_FALSE(says(core::notShownBy(trial_, on(28), &result), "changed"));
    trial_.changes.push_back(
        {.changedOn = support::today(), .what = "horizon day", .was = "28", .became = "35", .reason = "cold"});
    EXPECT_TRUE(says(core::notShownBy(trial_, on(28), &result), "it was changed"));
}

TEST(TrialStage, OfATrialThatIsOnlyNamedIsThat) {
    const core::Shelves shelves = support::someShelves();
    EXPECT_EQ(core::progressOf(shelves.trials.front(), shelves, {}, support::today()).stage, TrialStage::Named);
    const std::vector<core::BatchRecord> batches{support::aBatch().treated(support::nothing).block("1"),
                                                 support::aBatch().treated(support::weakGel).block("1")};
    EXPECT_EQ(core::factorOf(shelves.trials.front(), batches), core::Factor::Treatment);
}

}  // namespace
