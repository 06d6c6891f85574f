// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

/// A scratch folder with a logbook's name and an exchange folder in it.
struct ImportScene {
    support::TemporaryFolder folder;
    std::string log = folder / "bench.strikebook";
    std::string tables = folder / "tables";

    explicit ImportScene(const std::string& batchRows = "A1,2026-03-02,Hebe albicans,media tray,24\r\n",
                         const std::string& checkRows = "A1,2026-03-09,3\r\n") {
        std::filesystem::create_directory(tables);
        folder.write("tables/batches.csv", "batch,stuck_on,species,method,stuck\r\n" + batchRows);
        folder.write("tables/checks.csv", "batch,checked_on,rooted\r\n" + checkRows);
    }
};

TEST(ImportCommand, MakesALogbookWhereThereIsNone) {
    const ImportScene scene;
    const support::Ran ran = run({"import", scene.log, scene.tables});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Made the logbook"));
    EXPECT_THAT(ran.out, HasSubstr("1 batch"));
    EXPECT_EQ(run({"verify", scene.log, "--json"}).json()["checks"], 1);
}

TEST(ImportCommand, AddsToALogbookThatIsThere) {
    const ImportScene scene;
    ASSERT_EQ(run({"import", scene.log, scene.tables}).status, 0);
    scene.folder.write("tables/batches.csv",
                       "batch,stuck_on,species,method,stuck\r\nA2,2026-03-03,Hebe albicans,media tray,12\r\n");
    scene.folder.write("tables/checks.csv", "batch,checked_on,rooted\r\n");
    const nlohmann::json json = run({"import", scene.log, scene.tables, "--json"}).json();
    EXPECT_EQ(json["is_new"], false);
    EXPECT_EQ(json["batches"], 1);
    EXPECT_EQ(run({"verify", scene.log, "--json"}).json()["batches"], 2);
}

TEST(ImportCommand, RefusesCodesThatAreTakenAndWritesNothing) {
    const ImportScene scene;
    ASSERT_EQ(run({"import", scene.log, scene.tables}).status, 0);
    const std::string before = scene.folder.read("bench.strikebook");
    const support::Ran ran = run({"import", scene.log, scene.tables});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("batches.csv, row 2, column batch: The batch \"A1\" is in the logbook already"));
    EXPECT_EQ(scene.folder.read("bench.strikebook"), before);
}

TEST(ImportCommand, ListsEachFaultWithItsPlaceAndWritesNothing) {
    std::string batches, checks;
    for (int i = 1; i <= 50; ++i) {
        batches += "A" + std::to_string(i) + ",2026-02-30,Hebe albicans,media tray,-" + std::to_string(i) + "\r\n";
        checks += "Z" + std::to_string(i) + ",2026-03-09,3\r\n";
    }
    const ImportScene scene(batches, checks);
    const support::Ran missing = run({"import", scene.log, scene.tables});
    EXPECT_EQ(missing.status, 1);
    EXPECT_FALSE(std::filesystem::exists(scene.log));  // nothing was made
    EXPECT_EQ(std::ranges::count(missing.err, '\n'), 100 + 2);
    EXPECT_THAT(missing.err, HasSubstr("batches.csv, row 51, column stuck: "));
    EXPECT_THAT(missing.err, HasSubstr("And more"));

    ASSERT_EQ(run({"create", scene.log}).status, 0);
    const std::string before = scene.folder.read("bench.strikebook");
    const support::Ran there = run({"import", scene.log, scene.tables, "--json"});
    EXPECT_EQ(there.status, 1);
    EXPECT_EQ(there.json()["imported"], false);
    EXPECT_EQ(there.json()["more_faults"], true);
    ASSERT_EQ(there.json()["faults"].size(), 100U);
    const nlohmann::json first = there.json()["faults"][0];
    EXPECT_EQ(first["file"], "batches.csv");
    EXPECT_EQ(first["row"], 2);
    EXPECT_EQ(first["column"], "stuck_on");
    EXPECT_EQ(scene.folder.read("bench.strikebook"), before);
}

TEST(ImportCommand, KeepsInventedRecordsOutOfARealLogbook) {
    const ImportScene scene;
    const std::string demo = scene.folder / "demo.strikebook", exported = scene.folder / "exported";
    ASSERT_EQ(run({"demo", demo, "--batches", "5"}).status, 0);
    ASSERT_EQ(run({"export", demo, exported}).status, 0);
    ASSERT_EQ(run({"create", scene.log}).status, 0);
    const support::Ran ran = run({"import", scene.log, exported});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("invented"));
    EXPECT_EQ(run({"verify", scene.log, "--json"}).json()["batches"], 0);
}

TEST(ImportCommand, IsOneStepThatCanBeTakenBack) {
    const ImportScene scene;
    ASSERT_EQ(run({"create", scene.log}).status, 0);
    ASSERT_EQ(run({"import", scene.log, scene.tables}).status, 0);
    const support::Ran undo = run({"history", scene.log, "--undo"});
    EXPECT_EQ(undo.status, 0);
    EXPECT_THAT(undo.out, HasSubstr("import of \"tables\""));
    EXPECT_EQ(run({"verify", scene.log, "--json"}).json()["batches"], 0);
    EXPECT_EQ(run({"history", scene.log, "--redo"}).status, 0);
    EXPECT_EQ(run({"verify", scene.log, "--json"}).json()["batches"], 1);
}

TEST(ImportCommand, SaysWhereThereIsNoFolder) {
    const ImportScene scene;
    const support::Ran ran = run({"import", scene.log, scene.folder / "nowhere"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_FALSE(std::filesystem::exists(scene.log));
}

TEST(ImportCommand, SaysWhyAFileOfSuchANameCantBe) {
    const ImportScene scene;
    const std::string loop = scene.folder / "loop";
    std::filesystem::create_symlink("loop", loop);
    const std::string tooLong = scene.folder / std::string(300, 'x');
    for (const std::string& log : {std::string(), loop, tooLong, scene.tables}) {
        SCOPED_TRACE(log);
        const support::Ran ran = run({"import", log, scene.tables});
        EXPECT_EQ(ran.status, 1);
        EXPECT_EQ(std::ranges::count(ran.err, '\n'), 1) << ran.err;
    }
}

TEST(ImportCommand, NamesTheRangeThatACountMayHave) {
    const ImportScene scene("A1,2026-03-02,Hebe albicans,media tray,-1\r\n");
    EXPECT_THAT(run({"import", scene.log, scene.tables}).err,
                HasSubstr("\"-1\" is not a whole number from 0 to 100000."));
}

}  // namespace
