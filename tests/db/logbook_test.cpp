// SPDX-License-Identifier: MIT
#include "db/logbook.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <thread>

#include "core/batch/batch_code.h"
#include "core/demo/demo_season.h"
#include "db/actions/check_actions.h"
#include "db/actions/session_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/writer.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr core::Date logbookToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

core::Method namedMethod(const std::string& name) {
    core::Method method;
    method.name = name;
    return method;
}

std::string sentenceOf(const std::function<void()>& deed) {
    try {
        deed();
    } catch (const db::LogbookError& error) {
        return error.what();
    }
    return "nothing was thrown";
}

class InMemory : public testing::Test {
  protected:
    db::Logbook logbook = support::sampleLogbook({}, logbookToday);
};

class OnDisk : public testing::Test {
  protected:
    db::Logbook open(bool asWindow = false) const {
        db::OpenOptions options = support::testOptions();
        options.asWindow = asWindow;
        return db::Logbook::open(file, options);
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "bench.strikebook";
};

TEST(NewLogbook, StartsWithTheTradesShelvesAndAnEmptyHistory) {
    core::LogbookFacts facts;
    facts.name = "Fern Lane";
    const auto logbook = db::Logbook::inMemory(facts, support::testOptions());
    const core::Shelves shelves = logbook.shelves();
    EXPECT_EQ(shelves.facts, facts);
    EXPECT_EQ(shelves.methods.size(), core::startingShelves().methods.size());
    EXPECT_EQ(shelves.cuttingKinds.size(), core::startingShelves().cuttingKinds.size());
    ASSERT_EQ(shelves.lossCauses.size(), core::startingShelves().lossCauses.size());
    for (std::size_t i = 0; i < shelves.lossCauses.size(); ++i)  // in the order in which they were made
        EXPECT_EQ(shelves.lossCauses[i].name, core::startingShelves().lossCauses[i].name);
    EXPECT_THAT(logbook.history(), IsEmpty());
    EXPECT_FALSE(logbook.wordsToUndo());
    EXPECT_EQ(logbook.lastBatchNumber(2026), 0);
}

TEST_F(OnDisk, CreateLeavesOneFileAndRefusesToWriteOverOne) {
    { const auto made = db::Logbook::create(file, {}, support::testOptions()); }
    EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook"));
    const std::string before = support::contentOf(file);
    EXPECT_THAT(sentenceOf([&] { db::Logbook::create(file, {}, support::testOptions()); }),
                HasSubstr("there is a file of that name already"));
    EXPECT_EQ(support::contentOf(file), before);
    EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook"));
}

TEST_F(OnDisk, CreateInAFolderThatIsNotThereSaysSo) {
    EXPECT_THAT(sentenceOf([&] { db::Logbook::create(folder / "none/x.strikebook", {}, support::testOptions()); }),
                HasSubstr("there is no such folder"));
}

TEST_F(InMemory, LinesHaveTheTalliesThatCoreCounts) {
    const auto lines = logbook.batchLines();
    const auto records = logbook.batchRecords();
    ASSERT_EQ(lines.size(), 12U);
    ASSERT_EQ(records.size(), lines.size());
    std::vector<core::BatchId> backwards;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        EXPECT_EQ(lines[i].batch, records[i].batch);
        EXPECT_EQ(lines[i].tally, core::tallyOf(records[i].batch, records[i].checks));
        EXPECT_EQ(logbook.batch(lines[i].batch.id), records[i]);
        EXPECT_EQ(logbook.batchWithCode(lines[i].batch.code), lines[i].batch.id);
        backwards.insert(backwards.begin(), lines[i].batch.id);
    }
    EXPECT_EQ(logbook.batchLinesOf(backwards), lines);
    EXPECT_FALSE(logbook.batch({12345}).has_value());
    EXPECT_FALSE(logbook.batchWithCode("none").isSet());
}

TEST_F(InMemory, GivesBackWhatWasBroughtIn) {
    const core::Records there = logbook.records();
    const core::Records came = core::demoSeason({.batches = 12, .seed = 7, .today = logbookToday});
    ASSERT_EQ(there.batches.size(), came.batches.size());
    for (const core::BatchRecord& record : came.batches) {
        const auto found = logbook.batch(logbook.batchWithCode(record.batch.code));
        ASSERT_TRUE(found.has_value());
        EXPECT_EQ(found->checks.size(), record.checks.size());
        EXPECT_EQ(found->batch.stuckOn, record.batch.stuckOn);
        EXPECT_EQ(found->batch.note, record.batch.note);
    }
    EXPECT_EQ(there.sessions.size(), came.sessions.size());
}

TEST_F(InMemory, AllBatchesAtOnceAreAsEachIsByItself) {
    int checks = 0, losses = 0, findings = 0;
    for (const core::BatchRecord& record : logbook.batchRecords()) {
        EXPECT_EQ(record, logbook.batch(record.batch.id)) << record.batch.code;
        checks += static_cast<int>(record.checks.size());
        for (const core::Check& check : record.checks) {
            losses += static_cast<int>(check.losses.size());
            findings += static_cast<int>(check.findings.size());
        }
    }
    EXPECT_GT(checks, 20);
    EXPECT_GT(losses, 5);
    EXPECT_GT(findings, 0) << "or this shows less than it says";
}

TEST_F(InMemory, BatchesOfAPlantAreThatPlantsOnly) {
    std::size_t all = 0;
    for (const core::Plant& plant : logbook.shelves().plants)
        for (const core::BatchRecord& record : logbook.batchRecords(plant.id)) {
            EXPECT_EQ(record.batch.plant, plant.id);
            ++all;
        }
    EXPECT_EQ(all, logbook.batchRecords().size());
}

TEST_F(InMemory, LastBatchNumberPassesOverImportedCodes) {
    core::Batch batch = logbook.batchLines().front().batch;
    const int before = logbook.lastBatchNumber(1999);
    EXPECT_EQ(before, 0);
    batch.id = {};
    logbook.act("codes", [&](db::Writer& writer) {
        for (const std::string& code : {core::batchCode(1999, 7), std::string("B99ZZZ"), std::string("B990008?")}) {
            batch.code = code;
            writer.add(batch);
        }
    });
    EXPECT_EQ(logbook.lastBatchNumber(1999), 7);
}

TEST_F(InMemory, AnExceptionWithinAnActionWritesNothing) {
    const auto before = logbook.history();
    EXPECT_THROW(logbook.act("boom",
                             [](db::Writer& writer) {
                                 writer.add(namedMethod("gone again"));
                                 throw std::runtime_error("boom");
                             }),
                 std::runtime_error);
    EXPECT_EQ(logbook.history().size(), before.size());
    for (const core::Method& method : logbook.shelves().methods) EXPECT_NE(method.name, "gone again");
    EXPECT_NE(logbook.act("again", [](db::Writer& writer) { writer.add(namedMethod("stays")); }).historyNumber, 0);
}

TEST_F(InMemory, AnActionThatChangesNothingLeavesNoHistory) {
    const auto before = logbook.history().size();
    const core::Method same = logbook.shelves().methods.front();
    const db::Changes changes = logbook.act("nothing", [&](db::Writer& writer) { writer.change(same); });
    EXPECT_EQ(changes.historyNumber, 0);
    EXPECT_THAT(changes.tables, IsEmpty());
    EXPECT_EQ(logbook.history().size(), before);
}

TEST_F(InMemory, AnActionWithinAnActionIsAMistake) {
    EXPECT_THROW(logbook.act("outer", [&](db::Writer&) { logbook.act("inner", [](db::Writer&) {}); }),
                 std::logic_error);
}

TEST_F(InMemory, ChangingWhatIsGoneSaysSo) {
    core::Method gone = namedMethod("x");
    gone.id = {424242};
    EXPECT_THAT(sentenceOf([&] { logbook.act("x", [&](db::Writer& writer) { writer.change(gone); }); }),
                HasSubstr("no longer in the logbook"));
}

TEST_F(InMemory, ChangesNameTheTablesAndBatchesThatAWindowMustRefresh) {
    const core::BatchRecord record = logbook.batchRecords().front();
    ASSERT_FALSE(record.checks.empty());
    core::Check check = record.checks.front();
    check.note = "looked again";
    const auto note = db::changeCheck(logbook, check, logbookToday);
    ASSERT_TRUE(note);
    EXPECT_THAT(note->tables, ElementsAre("checks"));
    EXPECT_THAT(note->batches, ElementsAre(record.batch.id));
    const auto deleted = db::deleteBatch(logbook, record.batch.id);
    ASSERT_TRUE(deleted);
    EXPECT_THAT(deleted->tables, testing::IsSupersetOf({"batches", "checks"}));
    EXPECT_THAT(deleted->batches, ElementsAre(record.batch.id));
    const auto undone = logbook.undo();
    ASSERT_TRUE(undone);
    EXPECT_EQ(undone->batches, deleted->batches);
    EXPECT_EQ(undone->words, deleted->words);
}

TEST_F(InMemory, ASessionThatMovesTakesItsBatchesAlong) {
    core::Session session = logbook.sessions().front();
    session.date = core::addDays(session.date, -1);
    const auto changed = db::changeSession(logbook, session, logbookToday);
    ASSERT_TRUE(changed);
    ASSERT_FALSE(changed->batches.empty());
    for (const core::BatchId id : changed->batches) {
        EXPECT_EQ(logbook.batch(id)->batch.stuckOn, session.date);
        EXPECT_EQ(logbook.batch(id)->batch.session, session.id);
    }
}

TEST_F(OnDisk, ASecondWindowIsToldAndMayOnlyLook) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    auto first = open(true);
    EXPECT_FALSE(first.isOpenInAnotherWindow());
    EXPECT_FALSE(first.isReadOnly());
    {
        auto second = open(true);
        EXPECT_TRUE(second.isOpenInAnotherWindow());
        EXPECT_TRUE(second.isReadOnly());
        EXPECT_EQ(second.batchLines().size(), 12U);
        EXPECT_THAT(sentenceOf([&] { second.undo(); }), HasSubstr("is open in another window"));
    }
    EXPECT_NE(first.act("x", [](db::Writer& writer) { writer.add(namedMethod("first")); }).historyNumber, 0);
    first = db::Logbook::inMemory({}, support::testOptions());
    EXPECT_FALSE(open(true).isOpenInAnotherWindow());
}

TEST_F(OnDisk, AnotherThreadReadsBesideWhatIsWrittenAndWritesNothing) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    auto logbook = open(true);
    const auto beside = logbook.beside();
    ASSERT_TRUE(beside.has_value());
    EXPECT_TRUE(beside->isReadOnly());
    logbook.act("one more", [](db::Writer& writer) { writer.add(namedMethod("perlite in a bag")); });
    std::vector<core::BatchRecord> read;
    std::jthread([&] { read = beside->batchRecords(); }).join();
    EXPECT_EQ(read, logbook.batchRecords());
    EXPECT_EQ(beside->shelves(), logbook.shelves());
    EXPECT_FALSE(logbook.hasChangedOutside()) << "that was ourselves";
    EXPECT_THAT(sentenceOf([&] {
                    db::Logbook other = *open().beside();
                    other.act("a mistake", [](db::Writer& writer) { writer.add(namedMethod("x")); });
                }),
                HasSubstr("only read"));
}

TEST_F(InMemory, HasNothingBesideIt) {
    EXPECT_FALSE(logbook.beside().has_value());
}

TEST_F(OnDisk, WhatAnotherProcessWritesIsNoticedOnce) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    auto here = open();
    auto there = open();
    EXPECT_FALSE(here.hasChangedOutside());
    there.act("x", [](db::Writer& writer) { writer.add(namedMethod("there")); });
    EXPECT_TRUE(here.hasChangedOutside());
    EXPECT_FALSE(here.hasChangedOutside());
    here.act("y", [](db::Writer& writer) { writer.add(namedMethod("here")); });
    EXPECT_FALSE(here.hasChangedOutside());
    EXPECT_EQ(there.wordsToUndo(), "y");
}

TEST_F(OnDisk, WhileAnotherProcessWritesAnActionSaysSoAndNothingIsLost) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    auto here = open();
    auto there = open();
    there.act("long", [&](db::Writer& writer) {
        writer.add(namedMethod("there"));
        EXPECT_THAT(sentenceOf([&] { here.act("x", [](db::Writer& other) { other.add(namedMethod("here")); }); }),
                    HasSubstr("is being written by another program"));
        EXPECT_EQ(here.batchLines().size(), 12U);
    });
    here.act("x", [](db::Writer& writer) { writer.add(namedMethod("here")); });
    EXPECT_EQ(there.history().size(), 3U);
}

TEST_F(OnDisk, AFileMarkedReadOnlyOpensForLooking) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    const std::string before = support::contentOf(file);
    std::filesystem::permissions(file, std::filesystem::perms::owner_read);
    auto logbook = open();
    EXPECT_TRUE(logbook.isReadOnly());
    EXPECT_FALSE(logbook.isOpenInAnotherWindow());
    EXPECT_EQ(logbook.batchLines().size(), 12U);
    EXPECT_THAT(sentenceOf([&] { logbook.act("x", [](db::Writer& writer) { writer.add(namedMethod("x")); }); }),
                HasSubstr("Make the file writable"));
    EXPECT_THAT(sentenceOf([&] { logbook.redo(); }), HasSubstr("Make the file writable"));
    EXPECT_EQ(support::contentOf(file), before);
    EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook"));
}

TEST_F(OnDisk, AFolderMarkedReadOnlyIsTheSame) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    std::filesystem::permissions(folder.path(),
                                 std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec);
    const auto logbook = open();
    EXPECT_TRUE(logbook.isReadOnly());
}

TEST_F(OnDisk, ABrokenForeignKeyIsRefusedAtTheEndOfTheAction) {
    { const auto made = support::sampleLogbook(file, logbookToday); }
    auto logbook = open();
    const std::string before = support::tableDump(file);
    const core::PlantId used = logbook.batchLines().front().batch.plant;
    EXPECT_THAT(sentenceOf([&] { logbook.act("x", [&](db::Writer& writer) { writer.remove(used); }); }),
                HasSubstr("does not fit what is in it already"));
    EXPECT_EQ(support::tableDump(file), before);
}

}  // namespace
