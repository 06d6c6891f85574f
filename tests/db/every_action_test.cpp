// SPDX-License-Identifier: MIT
// One law for every edit: whatever was done, undone in turn, is as if it had never been; and done again, it is as it was.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "db/safekeeping/verify.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using support::Action;

constexpr core::Date today{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};
constexpr int wanted = 500;

/// What chance picks: checks in a third of all tries, since a grower does them most; a kind that was never done yet in another third, since
/// removing wants something that nothing uses, and ids, which are random, decide what that is.
Action nextAction(support::Chance& chance, const std::vector<int>& done) {
    const int turn = support::pick(chance, 3);
    std::vector<Action> missing;
    for (std::size_t i = 0; i < done.size(); ++i)
        if (done[i] == 0) missing.push_back(static_cast<Action>(i));
    if (turn == 0) return Action::RecordChecks;
    if (turn == 1 && !missing.empty())
        return missing[static_cast<std::size_t>(support::pick(chance, static_cast<int>(missing.size())))];
    return static_cast<Action>(support::pick(chance, support::actions));
}

/// Acts until that many really changed something; `done` counts how often each kind did.
void actAtRandom(db::Logbook& logbook, support::Chance& chance, int count, std::vector<int>& done) {
    while (count > 0) {
        const Action action = nextAction(chance, done);
        const auto result = support::perform(logbook, action, chance, today);
        if (!result || result->historyNumber == 0) continue;
        ++done[static_cast<std::size_t>(action)];
        --count;
    }
}

class EveryAction : public testing::Test {
  protected:
    EveryAction() { const db::Logbook made = support::sampleLogbook(file, today); }

    db::Logbook open() const { return db::Logbook::open(file, support::testOptions()); }
    std::string dump() const { return support::tableDump(file); }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "law.strikebook";
};

TEST_F(EveryAction, UndoneFiveHundredTimesGivesBackTheStartAndRedoneTheEnd) {
    const std::string start = dump();
    support::Chance chance(20260314);
    std::vector<std::string> after;  // each hundred
    std::vector<int> done(support::actions);
    for (int hundred = 0; hundred < wanted / 100; ++hundred) {
        db::Logbook logbook = open();  // undo and redo must not care for a restart
        actAtRandom(logbook, chance, 100, done);
        after.push_back(dump());
    }
    for (std::size_t i = 0; i < done.size(); ++i) EXPECT_GT(done[i], 0) << "action " << i << " was never done";
    EXPECT_THAT(db::verify(open(), today).faults, testing::IsEmpty());

    for (int hundred = wanted / 100 - 1; hundred >= 0; --hundred) {
        EXPECT_EQ(dump(), after[static_cast<std::size_t>(hundred)]);
        db::Logbook logbook = open();
        for (int step = 0; step < 100; ++step) ASSERT_TRUE(logbook.undo());
    }
    EXPECT_EQ(dump(), start);
    for (const std::string& state : after) {
        db::Logbook logbook = open();
        for (int step = 0; step < 100; ++step) ASSERT_TRUE(logbook.redo());
        EXPECT_EQ(dump(), state);
    }
    EXPECT_FALSE(open().wordsToRedo());
    EXPECT_THAT(db::verify(open(), today).faults, testing::IsEmpty());
}

TEST_F(EveryAction, WanderingBackAndForthKeepsEveryRule) {
    support::Chance chance(5);
    db::Logbook logbook = open();
    std::vector<int> done(support::actions);
    for (int round = 0; round < 20; ++round) {
        actAtRandom(logbook, chance, 5, done);
        const int back = 1 + support::pick(chance, 5);
        for (int step = 0; step < back; ++step) ASSERT_TRUE(logbook.undo());
        for (int step = support::pick(chance, back + 1); step > 0; --step) ASSERT_TRUE(logbook.redo());
    }
    EXPECT_THAT(db::verify(logbook, today).faults, testing::IsEmpty());
}

TEST_F(EveryAction, RefusedWritesNothing) {
    support::Chance chance(77);  // five times through every action
    db::Logbook logbook = open();
    int refused = 0;
    for (int tries = 0; tries < 5 * support::actions; ++tries) {
        const std::string before = dump();
        const auto numberBefore = logbook.history(1).front().number;
        const auto result = support::perform(logbook, static_cast<Action>(tries % support::actions), chance, today);
        if (result) continue;
        ++refused;
        for (const core::Refusal& refusal : result.error()) {
            EXPECT_FALSE(refusal.field.empty());
            EXPECT_TRUE(refusal.sentence.ends_with('.')) << refusal.sentence;
        }
        EXPECT_EQ(dump(), before);
        EXPECT_EQ(logbook.history(1).front().number, numberBefore);
    }
    EXPECT_GT(refused, 30);
}

}  // namespace
