// SPDX-License-Identifier: MIT
#include "db/history/history.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/writer.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::HasSubstr;
using Kind = db::HistoryEntry::Kind;

class History : public testing::Test {
  protected:
    History() { const auto made = db::Logbook::create(file, {}, support::testOptions()); }

    db::Logbook open() const { return db::Logbook::open(file, support::testOptions("EF")); }
    static void addMethod(db::Logbook& logbook, const std::string& name) {
        logbook.act(name, [&](db::Writer& writer) {
            core::Method method;
            method.name = name;
            writer.add(method);
        });
    }
    static std::string methodsOf(const db::Logbook& logbook) {
        std::string names;
        for (const core::Method& method : logbook.shelves().methods)
            if (method.name.size() == 1) names += method.name;
        return names;
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "history.strikebook";
};

TEST_F(History, UndoesAndRedoesInOrderAlsoAfterARestart) {
    for (const char* name : {"a", "b", "c"}) {
        auto logbook = open();
        addMethod(logbook, name);
    }
    EXPECT_EQ(open().undo()->words, "c");
    EXPECT_EQ(open().undo()->words, "b");
    EXPECT_EQ(methodsOf(open()), "a");
    EXPECT_EQ(open().wordsToUndo(), "a");
    EXPECT_EQ(open().wordsToRedo(), "b");
    EXPECT_EQ(open().redo()->words, "b");
    EXPECT_EQ(open().undo()->words, "b");
    EXPECT_EQ(open().redo()->words, "b");
    EXPECT_EQ(open().redo()->words, "c");
    EXPECT_FALSE(open().redo());
    EXPECT_EQ(methodsOf(open()), "abc");
    for (int step = 0; step < 3; ++step) EXPECT_TRUE(open().undo());
    EXPECT_FALSE(open().undo());
    EXPECT_FALSE(open().wordsToUndo());
}

TEST_F(History, ANewActionEndsRedoingButTheTrailStays) {
    auto logbook = open();
    addMethod(logbook, "a");
    addMethod(logbook, "b");
    logbook.undo();
    addMethod(logbook, "c");
    EXPECT_FALSE(logbook.wordsToRedo());
    EXPECT_FALSE(logbook.redo());
    const auto entries = logbook.history();
    ASSERT_EQ(entries.size(), 4U);
    EXPECT_EQ(entries[0].words, "c");
    EXPECT_TRUE(entries[0].canBeUndone);
    EXPECT_EQ(entries[1].kind, Kind::Undo);
    EXPECT_EQ(entries[1].words, "b");
    EXPECT_TRUE(entries[2].isUndone);
    EXPECT_FALSE(entries[2].canBeRedone);
    EXPECT_FALSE(entries[3].isUndone);
    EXPECT_FALSE(entries[3].canBeUndone);
    EXPECT_EQ(entries[3].at, "2026-03-14T10:00:01Z");
    EXPECT_EQ(entries[3].author, "EF");
    EXPECT_EQ(logbook.undo()->words, "c");
    EXPECT_EQ(logbook.undo()->words, "a");
    EXPECT_EQ(logbook.redo()->words, "a");
    EXPECT_EQ(logbook.redo()->words, "c");
}

TEST_F(History, MarksWhatCanBeRedone) {
    auto logbook = open();
    addMethod(logbook, "a");
    addMethod(logbook, "b");
    logbook.undo();
    logbook.undo();
    const auto entries = logbook.history();
    ASSERT_EQ(entries.size(), 4U);
    EXPECT_TRUE(entries[3].canBeRedone);
    EXPECT_FALSE(entries[2].canBeRedone);
    EXPECT_TRUE(entries[2].isUndone);
    EXPECT_EQ(logbook.history(2).size(), 2U);
}

TEST_F(History, RefusesToUndoWhatWasChangedBehindItsBack) {
    auto logbook = open();
    addMethod(logbook, "a");
    support::runSql(file, "UPDATE methods SET name = 'z' WHERE name = 'a'");
    const std::string before = support::tableDump(file);
    try {
        logbook.undo();
        FAIL() << "undone";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("has been changed since"));
    }
    EXPECT_EQ(support::tableDump(file), before);
    EXPECT_EQ(logbook.history().size(), 1U);
}

TEST_F(History, RefusesToUndoWhatOthersNowDependOn) {
    auto logbook = open();
    addMethod(logbook, "a");
    support::runSql(file,
                    "INSERT INTO stations SELECT 5, 'tub', id, 0, 0, 0, '', 0, 0, '' FROM methods WHERE name = 'a'");
    EXPECT_THROW(logbook.undo(), db::LogbookError);
    EXPECT_EQ(methodsOf(logbook), "a");
}

TEST_F(History, ADamagedStepIsRefusedInWords) {
    {
        auto logbook = open();
        addMethod(logbook, "a");
    }
    support::runSql(file, "UPDATE history SET changeset = substr(changeset, 1, length(changeset) - 3)");
    auto logbook = open();
    try {
        logbook.undo();
        FAIL() << "undone";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("it ends too early"));
    }
    EXPECT_EQ(methodsOf(logbook), "a");
}

TEST_F(History, AMigrationSealsWhatIsOlder) {
    {
        auto logbook = open();
        addMethod(logbook, "a");
    }
    support::runSql(file, "UPDATE history SET schema_version = 1");  // as if made under another schema
    auto logbook = open();
    EXPECT_FALSE(logbook.wordsToUndo());
    EXPECT_FALSE(logbook.undo());
    EXPECT_FALSE(logbook.history().front().canBeUndone);
    addMethod(logbook, "b");
    EXPECT_EQ(logbook.undo()->words, "b");
    EXPECT_FALSE(logbook.undo());
}

}  // namespace
