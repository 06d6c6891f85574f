// SPDX-License-Identifier: MIT
// Planned trials and plans, as a folder brings them: each fault is named with its file, its row and its column; older folders come in.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "db/actions/records_actions.h"
#include "db/exchange/import_folder.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using namespace std::chrono_literals;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;

constexpr const char* trialHeading = "trial,horizon_day,factor,blocked_by,measure,margin,per_arm,set_on";
constexpr const char* armHeading = "trial,arm";
constexpr const char* dealtHeading =
    "trial,number,session_number,station,block,species,cultivar,stock_plant,arm,stuck,positions,batch";
constexpr const char* changeHeading = "trial,changed_on,what,was,became,reason";
constexpr const char* planHeading =
    "species,cultivar,method,wanted,assurance,need_by,potted_live_percent,hardening_days,potting_days,note";

/// A trial of tub against tray, two batches dealt, one of them stuck.
class ImportTrials : public testing::Test {
  protected:
    ImportTrials() {
        write("plants.csv", {"species", "Hebe albicans"});
        write("stock_plants.csv", {"species,stock_plant", "Hebe albicans,by the gate"});
        write("methods.csv", {"method", "water", "tray"});
        write("stations.csv", {"station,method,rows,columns", "Tub,water,2,6", "Bench,tray,2,6"});
        write("batches.csv", {"batch,stuck_on,species,method,station,stuck,positions,trial,block",
                              "P1,2026-03-02,Hebe albicans,water,Tub,6,A1-A6,Tub or tray,first"});
        write("checks.csv", {"batch,checked_on,rooted", "P1,2026-03-09,2"});
        write("trials.csv", {trialHeading, "Tub or tray,28,method,plant,as good as,0.1,6,2026-03-01"});
        write("trial_arms.csv", {armHeading, "Tub or tray,tray", "Tub or tray,water"});
        write("trial_batches.csv",
              {dealtHeading, "Tub or tray,1,1,Tub,first,Hebe albicans,,by the gate,water,6,a1-a6,P1",
               "Tub or tray,2,1,Bench,first,,,,tray,6,,"});
        write("trial_changes.csv", {changeHeading, "Tub or tray,2026-03-10,horizon day,21,28,A cold week."});
        write("plans.csv", {planHeading, "Hebe albicans,,tray,40,0.9,2026-09-01,95,10,28,for the hedge"});
    }

    void write(const std::string& table, const std::vector<std::string>& lines) const {
        folder.write(table, support::rows(lines));
    }

    std::vector<std::string> faults() const {
        std::vector<std::string> found;
        for (const db::ImportFault& fault : db::readFolder(folder.path(), support::lateDay).faults)
            found.push_back(fault.file + ' ' + std::to_string(fault.row) + ' ' + fault.column + ": " + fault.reason);
        return found;
    }

    /// With this row in place of those that the table has.
    void expectFault(const std::string& table, const std::string& heading, const std::string& row,
                     const std::string& start) const {
        const std::string before = folder.read(table);
        write(table, {heading, row});
        EXPECT_THAT(faults(), ElementsAre(StartsWith(table + " 2 " + start))) << row;
        folder.write(table, before);
    }

    support::TemporaryFolder folder;
};

TEST_F(ImportTrials, ComeInWithArmsDealChangesAndPlans) {
    EXPECT_THAT(faults(), IsEmpty());
    core::Records records = db::readFolder(folder.path(), support::lateDay).records;
    const auto noon = [] { return std::chrono::sys_days{support::lateDay} + 12h; };
    auto logbook = db::Logbook::inMemory(support::factsOf("Trials"), {.clock = noon, .author = "R.O."});
    ASSERT_TRUE(db::addRecords(logbook, std::move(records), "import"));
    const core::Shelves shelves = logbook.shelves();
    ASSERT_EQ(shelves.trials.size(), 1U);
    const core::Trial& trial = shelves.trials.front();
    EXPECT_EQ(trial.factor, core::Factor::Method);
    EXPECT_EQ(trial.blockedBy, core::BlockedBy::Plant);
    EXPECT_EQ(trial.measure, core::TrialMeasure::AsGoodAs);
    ASSERT_EQ(trial.arms.size(), 2U);
    EXPECT_EQ(core::find(shelves.methods, trial.arms[0].method)->name, "tray");
    ASSERT_EQ(trial.batches.size(), 2U);
    EXPECT_EQ(trial.batches[0].arm, 1);
    EXPECT_EQ(trial.batches[0].positions, "A1-A6");
    EXPECT_EQ(logbook.batch(trial.batches[0].batch)->batch.code, "P1");
    EXPECT_FALSE(trial.batches[1].batch.isSet() || trial.batches[1].plant.isSet());
    ASSERT_EQ(trial.changes.size(), 1U);
    EXPECT_EQ(trial.changes.front().reason, "A cold week.");
    ASSERT_EQ(shelves.plans.size(), 1U);
    EXPECT_EQ(shelves.plans.front().pottedLivePercent, 95);
}

TEST_F(ImportTrials, AFolderOfTheSecondVersionHasThemOnlyNamed) {
    for (const char* table : {"trial_arms.csv", "trial_batches.csv", "trial_changes.csv", "plans.csv"})
        std::filesystem::remove(folder / table);
    write("trials.csv", {"trial,horizon_day,allocation_seed,note", "Tub or tray,28,7,as ever"});
    EXPECT_THAT(faults(), IsEmpty());
    const core::Records records = db::readFolder(folder.path(), support::lateDay).records;
    EXPECT_FALSE(records.shelves.trials.front().factor);
    EXPECT_EQ(records.shelves.trials.front().allocationSeed, 7U);
}

TEST_F(ImportTrials, FaultsOfTrialsAreNamed) {
    expectFault("trials.csv", trialHeading, "Tub or tray,28,luck,plant,,,,", "factor: \"luck\" is not known here;");
    expectFault("trials.csv", trialHeading, "Tub or tray,28,method,bed,,,,", "blocked_by: \"bed\" is not known here;");
    expectFault("trials.csv", trialHeading, "Tub or tray,28,method,,best,,,", "measure: \"best\" is not known here;");
    expectFault("trials.csv", trialHeading, "Tub or tray,28,method,,,1.5,,", "margin: Margin is 1.5;");
    expectFault("trials.csv", trialHeading, "Tub or tray,28,method,,,,0,", "per_arm: Per arm is 0;");
    expectFault("trials.csv", trialHeading, "Tub or tray,28,method,,as good as,,,", "margin: Margin is not given, but");
    expectFault("trials.csv", trialHeading, "Tub or tray,28,method,,,,,2026-02-30", "set_on: ");
}

TEST_F(ImportTrials, FaultsOfArmsAreNamed) {
    std::filesystem::remove(folder / "trial_batches.csv");
    write("trial_arms.csv", {armHeading, "Tub or tray,mist"});
    EXPECT_THAT(faults(), ElementsAre(StartsWith("trial_arms.csv 2 arm: \"mist\" is no method of this folder")));
    write("trial_arms.csv", {armHeading, "Tub or bed,tray"});
    EXPECT_THAT(faults(), ElementsAre(StartsWith("trial_arms.csv 2 trial: No trial \"Tub or bed\" is in trials.csv.")));
    write("trial_arms.csv", {armHeading, "Tub or tray,tray"});
    EXPECT_THAT(faults(), ElementsAre(StartsWith("trials.csv 2 : Arms are 1;")));
    std::filesystem::remove(folder / "trial_arms.csv");
    EXPECT_THAT(faults(), ElementsAre(StartsWith("trials.csv 2 : Arms are 0;")));
}

TEST_F(ImportTrials, FaultsOfTheDealAreNamed) {
    const auto expect = [this](const std::string& row, const std::string& start) {
        expectFault("trial_batches.csv", dealtHeading, row, start);
    };
    expect("Tub or bed,1,1,Tub,,,,,water,6,,", "trial: No trial ");
    expect("Tub or tray,1,1,Pond,,,,,water,6,,", "station: No station \"Pond\" is in stations.csv.");
    expect("Tub or tray,1,1,Tub,,Salvia,,,water,6,,", "species: No plant ");
    expect("Tub or tray,1,1,Tub,,Hebe albicans,,old one,water,6,,", "stock_plant: No stock plant \"old one\" ");
    expect("Tub or tray,1,1,Tub,,,,,mist,6,,", "arm: No arm \"mist\" of this trial is in trial_arms.csv.");
    expect("Tub or tray,1,1,Tub,,,,,water,6,,P9", "batch: No batch \"P9\" is in batches.csv.");
    expect("Tub or tray,many,1,Tub,,,,,water,6,,", "number: ");
    expect("Tub or tray,1,1,Tub,,,,,water,,,", "stuck: ");
    write("trial_batches.csv",
          {dealtHeading, "Tub or tray,1,0,Tub,,,,,water,6,A1-A5,", "Tub or tray,1,1,Tub,,,,,water,6,,"});
    EXPECT_THAT(faults(), ElementsAre(StartsWith("trials.csv 2 : Dealt batch 1: Session is 0; 1 to 50 is allowed."),
                                      StartsWith("trials.csv 2 : Dealt batch 1: Positions is \"A1-A5\"; a list of 6"),
                                      StartsWith("trials.csv 2 : Number is 1; a number of 1 or more, each once")));
}

TEST_F(ImportTrials, FaultsOfChangesAndPlansAreNamed) {
    expectFault("trial_changes.csv", changeHeading, "Tub or bed,2026-03-10,margin,,,why", "trial: No trial ");
    expectFault("trial_changes.csv", changeHeading, "Tub or tray,soon,margin,,,why", "changed_on: ");
    write("trial_changes.csv", {changeHeading, "Tub or tray,2026-03-10,margin,0.1,0.2, "});
    EXPECT_THAT(faults(), ElementsAre(StartsWith("trials.csv 2 : Reason is blank, but the trial was changed")));
    std::filesystem::remove(folder / "trial_changes.csv");
    expectFault("plans.csv", planHeading, "Salvia,,tray,40,0.9,,95,10,28,", "species: No plant ");
    expectFault("plans.csv", planHeading, "Hebe albicans,,mist,40,0.9,,95,10,28,", "method: No method \"mist\" ");
    expectFault("plans.csv", planHeading, "Hebe albicans,,tray,0,0.9,,95,10,28,", "wanted: Wanted is 0;");
    expectFault("plans.csv", planHeading, "Hebe albicans,,tray,40,1,,95,10,28,", "assurance: Assurance is 1;");
    expectFault("plans.csv", planHeading, "Hebe albicans,,tray,40,0.9,,101,10,28,",
                "potted_live_percent: Of 100 potted, live is 101;");
    expectFault("plans.csv", planHeading, "Hebe albicans,,tray,40,0.9,,95,9999,28,",
                "hardening_days: Days of hardening is 9999;");
    expectFault("plans.csv", planHeading, "Hebe albicans,,tray,40,0.9,soon,95,10,28,", "need_by: ");
}

}  // namespace
