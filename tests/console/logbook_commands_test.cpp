// SPDX-License-Identifier: MIT
// create, demo, export, due, verify, backup and history, as one would use them one after another.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

struct DemoScene {
    support::TemporaryFolder folder;
    std::string log = folder / "demo.strikebook";

    DemoScene() {
        const support::Ran ran = run({"demo", log, "--batches", "30", "--seed", "2", "--json"});
        EXPECT_EQ(ran.status, 0) << ran.err;
        EXPECT_EQ(ran.json()["batches"], 30);
    }
};

TEST(CreateCommand, MakesALogbookNamedAfterItsFile) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook";
    const support::Ran ran = run({"create", log, "--json"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["name"], "bench");
    EXPECT_EQ(run({"verify", log}).status, 0);
    EXPECT_THAT(run({"due", log}).out, HasSubstr("Nothing is due"));
    EXPECT_EQ(run({"compare", log}).status, 0);
}

TEST(CreateCommand, LeavesAFileThatIsThereAlone) {
    const support::TemporaryFolder folder;
    folder.write("bench.strikebook", "my words");
    EXPECT_EQ(run({"create", folder / "bench.strikebook"}).status, 1);
    EXPECT_EQ(run({"demo", folder / "bench.strikebook"}).status, 1);
    EXPECT_EQ(folder.read("bench.strikebook"), "my words");
}

TEST(DemoCommand, GivesTheSameRecordsForTheSameSeed) {
    const DemoScene one, other;
    ASSERT_EQ(run({"export", one.log, one.folder / "out"}).status, 0);
    ASSERT_EQ(run({"export", other.log, other.folder / "out"}).status, 0);
    EXPECT_EQ(one.folder.read("out/batches.csv"), other.folder.read("out/batches.csv"));
    EXPECT_EQ(one.folder.read("out/checks.csv"), other.folder.read("out/checks.csv"));
}

TEST(DemoCommand, SaysWhatIsAllowed) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook";
    EXPECT_THAT(run({"demo", log, "--batches", "0"}).err,
                HasSubstr("--batches is \"0\"; a whole number from 1 to 100000"));
    EXPECT_THAT(run({"demo", log, "--seed", "-1"}).err, HasSubstr("--seed is \"-1\""));
    EXPECT_THAT(run({"demo", log, "--on", "soon"}).err, HasSubstr("--on is \"soon\""));
    EXPECT_THAT(run({"demo", log, "--on", "2026-07-01"}).err, HasSubstr("to today (2026-06-30)"));
    EXPECT_FALSE(std::filesystem::exists(log));
}

TEST(ExportCommand, GivesTheSameFolderFromACopy) {
    const DemoScene scene;
    const std::string copy = scene.folder / "copy.strikebook";
    ASSERT_EQ(run({"export", scene.log, scene.folder / "first"}).status, 0);
    ASSERT_EQ(run({"import", copy, scene.folder / "first"}).status, 0);
    ASSERT_EQ(run({"export", copy, scene.folder / "second"}).status, 0);
    for (const auto& entry : std::filesystem::directory_iterator(scene.folder / "first")) {
        const std::string name = entry.path().filename().string();
        EXPECT_EQ(scene.folder.read("first/" + name), scene.folder.read("second/" + name)) << name;
    }
    const support::Ran again = run({"export", scene.log, scene.folder / "first"});
    EXPECT_EQ(again.status, 1);
    EXPECT_THAT(again.err, HasSubstr("has something in it"));
}

TEST(DueCommand, ListsEachDueBatchWithWhereItsCuttingsAre) {
    const DemoScene scene;
    const nlohmann::json json = run({"due", scene.log, "--json"}).json();
    EXPECT_EQ(json["on"], "2026-06-30");
    ASSERT_FALSE(json["due"].empty());
    for (const nlohmann::json& due : json["due"]) {
        EXPECT_GE(due["days_overdue"].get<int>(), 0);
        EXPECT_GT(due["undecided"].get<int>(), 0);
        EXPECT_EQ(due["stuck"].get<int>(), due["rooted"].get<int>() + due["lost"].get<int>() +
                                               due["withdrawn"].get<int>() + due["undecided"].get<int>());
    }
    const std::string text = run({"due", scene.log}).out;
    EXPECT_THAT(text, HasSubstr(json["due"][0]["batch"].get<std::string>()));
    EXPECT_TRUE(run({"due", scene.log, "--on", "1900-01-01", "--json"}).json()["due"].empty());
    EXPECT_EQ(run({"due", scene.log, "--on", "30.6.2026"}).status, 2);
}

TEST(BackupCommand, WritesACopyThatVerifies) {
    const DemoScene scene;
    const std::string copy = scene.folder / "copy.strikebook";
    EXPECT_EQ(run({"backup", scene.log, copy}).status, 0);
    EXPECT_EQ(run({"verify", copy, "--json"}).json(), run({"verify", scene.log, "--json"}).json());
    EXPECT_EQ(run({"backup", scene.log, copy}).status, 1);  // never over a file that is there
}

TEST(HistoryCommand, TakesBackAndDoesAgain) {
    const DemoScene scene;
    const nlohmann::json entry = run({"history", scene.log, "--json"}).json()["history"][0];
    EXPECT_EQ(entry["author"], "R.O.");
    EXPECT_EQ(entry["at"], "2026-06-30T12:00:00Z");
    EXPECT_EQ(entry["kind"], "action");
    EXPECT_EQ(run({"history", scene.log, "--undo", "--json"}).json()["undone"], entry["words"]);
    EXPECT_EQ(run({"history", scene.log, "--undo"}).status, 1);
    EXPECT_EQ(run({"history", scene.log, "--redo"}).status, 0);
    EXPECT_EQ(run({"history", scene.log, "--redo"}).status, 1);
    EXPECT_EQ(run({"history", scene.log, "--json"}).json()["history"].size(), 3U);
    EXPECT_EQ(run({"history", scene.log, "--newest", "1", "--json"}).json()["history"].size(), 1U);
    EXPECT_THAT(run({"history", scene.log}).out, HasSubstr("taken back"));
    EXPECT_EQ(run({"history", scene.log, "--undo", "--redo"}).status, 2);
}

TEST(Console, SaysInOneSentenceWhyAFileIsNoLogbook) {
    const support::TemporaryFolder folder;
    folder.write("text.strikebook", "Dear diary, today I stuck 24 cuttings.");
    for (const std::string command : {"due", "compare", "verify", "history"}) {
        const support::Ran ran = run({command, folder / "text.strikebook"});
        EXPECT_EQ(ran.status, 1);
        EXPECT_EQ(std::ranges::count(ran.err, '\n'), 1) << ran.err;
        EXPECT_EQ(run({command, folder / "missing.strikebook"}).status, 1);
    }
    EXPECT_EQ(folder.read("text.strikebook"), "Dear diary, today I stuck 24 cuttings.");
    EXPECT_FALSE(std::filesystem::exists(folder / "missing.strikebook"));
}

TEST(Console, ReadsALogbookThatMayNotBeWritten) {
    const DemoScene scene;
    const std::string before = scene.folder.read("demo.strikebook");
    std::filesystem::permissions(scene.log, std::filesystem::perms::owner_read);
    EXPECT_EQ(run({"due", scene.log}).status, 0);
    EXPECT_EQ(run({"compare", scene.log}).status, 0);
    EXPECT_EQ(run({"export", scene.log, scene.folder / "out"}).status, 0);
    EXPECT_EQ(scene.folder.read("demo.strikebook"), before);
}

TEST(Console, AsksForANameWhereOneIsEmpty) {
    const DemoScene scene;
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"create", ""}, std::vector<std::string>{"demo", ""},
          std::vector<std::string>{"due", ""}, std::vector<std::string>{"export", scene.log, ""},
          std::vector<std::string>{"backup", scene.log, ""}}) {
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 1) << words.front();
        EXPECT_THAT(ran.err, HasSubstr("name")) << words.front();
        EXPECT_EQ(std::ranges::count(ran.err, '\n'), 1) << ran.err;
    }
}

TEST(VerifyCommand, CountsOneAsOne) {
    const DemoScene scene;
    EXPECT_THAT(run({"verify", scene.log}).out, HasSubstr(", 1 step of history."));
}

}  // namespace
