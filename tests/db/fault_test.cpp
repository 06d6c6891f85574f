// SPDX-License-Identifier: MIT
// The disk fails at the first write, then at the second, and so on until the deed gets through: the file must each time be as it was before
// or as it would be after, never between.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/safekeeping/backup.h"
#include "tests/support/every_action.h"
#include "tests/support/faulty_disk.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using support::DiskFault;
using testing::ElementsAre;
using testing::HasSubstr;

constexpr core::Date today{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};
constexpr DiskFault everyFault[] = {DiskFault::Full, DiskFault::SyncFails, DiskFault::OpenFails,
                                    DiskFault::DeleteFails};
constexpr int enough = 300;  // nothing here writes so often

struct Failing {
    DiskFault fault{};
    bool staysBroken{};
};

class Faults : public testing::Test {
  protected:
    Faults() {
        const auto made = support::sampleLogbook(good, today, 4);
        before = support::tableDump(good);
    }

    void freshCopy() const {
        std::filesystem::remove(file.string() + "-journal");
        std::filesystem::copy_file(good, file, std::filesystem::copy_options::overwrite_existing);
    }

    db::Logbook open() const { return db::Logbook::open(file, support::testOptions()); }

    using Deed = std::function<void(db::Logbook&)>;

    /// Does `deed` to fresh copies under one kind of fault until it gets through, and looks at each afterwards. `takeBack` is what leads
    /// from after to before: ids are random, so two afters are not alike. Returns how often it failed.
    int failUntilDone(Failing how, const Deed& deed, const Deed& takeBack) {
        for (int n = 1; n < enough; ++n) {
            freshCopy();
            const bool isDone = doneUnderFault(how, n, deed);
            const bool hasFailed = disk.hasFailed();
            disk.heal();
            expectBeforeOrAfter(isDone, takeBack, n);
            if (!hasFailed) return n - 1;
        }
        ADD_FAILURE() << "never got through";
        return enough;
    }

    bool doneUnderFault(Failing how, int n, const Deed& deed) {
        auto logbook = open();
        disk.failAt(how.fault, n, how.staysBroken);
        try {
            deed(logbook);
            return true;
        } catch (const db::LogbookError& error) {
            EXPECT_TRUE(std::string(error.what()).ends_with('.')) << error.what();
            EXPECT_TRUE(disk.hasFailed()) << error.what();
            return false;
        }
    }

    void expectBeforeOrAfter(bool isDone, const Deed& takeBack, int n) const {
        auto reopened = open();  // rolls back what is half done and passes the quick check
        const auto step = reopened.history(1).front().number;
        EXPECT_THAT(step, testing::AnyOf(newest, newest + 1));
        if (isDone) {
            EXPECT_EQ(step, newest + 1) << "said to be done, at fault " << n;
        }
        if (step != newest) takeBack(reopened);
        EXPECT_EQ(support::tableDump(file), before) << "between before and after, at fault " << n;
    }

    support::ScratchFolder folder;
    std::filesystem::path good = folder / "good.strikebook";
    std::filesystem::path file = folder / "faults.strikebook";
    support::FaultyDisk disk;
    std::string before;
    std::int64_t newest = 1;
};

void undoIt(db::Logbook& logbook) {
    logbook.undo();
}

TEST_F(Faults, EveryActionIsWrittenWholeOrNotAtAll) {
    int failures = 0, acted = 0;
    for (int number = 0; number < support::actions; ++number) {
        const auto action = static_cast<support::Action>(number);
        const auto isDoneWith = [&](std::uint32_t seed) {
            freshCopy();
            auto logbook = open();
            support::Chance chance(seed);
            const auto done = support::perform(logbook, action, chance, today);
            return done && done->historyNumber != 0;
        };
        std::uint32_t seed = 1;
        while (seed < 40 && !isDoneWith(seed)) ++seed;
        if (seed == 40) continue;  // the sample has nothing unused of that kind to remove
        ++acted;
        const auto act = [&](db::Logbook& logbook) {
            support::Chance chance(seed);
            EXPECT_TRUE(support::perform(logbook, action, chance, today).has_value());
        };
        // A full disk for all; of the other faults each action meets one, since they strike in the same few places.
        for (const DiskFault fault : {DiskFault::Full, everyFault[1 + number % 3]}) {
            SCOPED_TRACE(testing::Message() << "action " << number << " fault " << static_cast<int>(fault));
            failures += failUntilDone({fault, number % 2 == 0}, act, undoIt);
        }
    }
    EXPECT_GE(acted, 20);
    EXPECT_GE(failures, acted * 6);
}

TEST_F(Faults, UndoIsWholeOrNotAtAll) {
    for (const DiskFault fault : everyFault)
        for (const bool staysBroken : {false, true})
            EXPECT_GT(failUntilDone({fault, staysBroken}, undoIt, [](db::Logbook& logbook) { logbook.redo(); }), 0);
}

TEST_F(Faults, RedoIsWholeOrNotAtAll) {
    {
        auto logbook = db::Logbook::open(good, support::testOptions());
        logbook.undo();
    }
    before = support::tableDump(good);
    newest = 2;
    for (const DiskFault fault : everyFault)
        EXPECT_GT(failUntilDone(
                      {fault, false}, [](db::Logbook& logbook) { logbook.redo(); }, undoIt),
                  0);
}

TEST_F(Faults, AFullDiskSaysSoAndTheSameWindowGoesOnWhenThereIsRoomAgain) {
    freshCopy();
    auto logbook = open();
    disk.failAt(DiskFault::Full, 1, true);
    try {
        logbook.undo();
        FAIL() << "undone";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("The disk is full"));
    }
    EXPECT_EQ(logbook.batchLines().size(), 4U);
    disk.heal();
    EXPECT_TRUE(logbook.undo());
    EXPECT_EQ(logbook.batchLines().size(), 0U);
}

TEST_F(Faults, ABackupIsThereWholeOrNotAtAll) {
    for (const DiskFault fault : {DiskFault::Full, DiskFault::OpenFails}) {
        int n = 1;
        for (bool hasFailed = true; hasFailed; ++n) {
            ASSERT_LT(n, enough);
            const auto logbook = db::Logbook::open(good, support::testOptions());
            disk.failAt(fault, n, true);
            try {
                db::backUp(logbook, folder / "copy.strikebook");
            } catch (const db::LogbookError& error) {
                EXPECT_THAT(error.what(), testing::AnyOf(HasSubstr("disk is full"), HasSubstr("can't be opened")));
                EXPECT_THAT(folder.names(), ElementsAre("good.strikebook"));
            }
            hasFailed = disk.hasFailed();
            disk.heal();
        }
        EXPECT_EQ(support::tableDump(folder / "copy.strikebook"), before);
        std::filesystem::remove(folder / "copy.strikebook");
    }
}

TEST_F(Faults, ANewLogbookIsThereWholeOrNotAtAll) {
    for (const DiskFault fault : everyFault) {
        int n = 1;
        for (bool hasFailed = true; hasFailed; ++n) {
            ASSERT_LT(n, enough);
            std::filesystem::remove(file);
            disk.failAt(fault, n, true);
            try {
                const auto made = db::Logbook::create(file, {}, support::testOptions());
            } catch (const db::LogbookError&) {
                // Made and then not opened, or never made.
                EXPECT_THAT(folder.names(), testing::AnyOf(ElementsAre("good.strikebook"),
                                                           ElementsAre("faults.strikebook", "good.strikebook")));
            }
            hasFailed = disk.hasFailed();
            disk.heal();
            if (std::filesystem::exists(file)) {
                EXPECT_FALSE(open().isReadOnly());
            }
        }
        EXPECT_TRUE(std::filesystem::exists(file));
    }
}

}  // namespace
