// SPDX-License-Identifier: MIT
#include "db/history/changeset_check.h"

#include <gtest/gtest.h>

#include "db/history/changeset.h"
#include "db/inside.h"
#include "db/tables/history_table.h"
#include "db/transaction.h"
#include "tests/support/every_action.h"

namespace {

using db::Changeset;
using db::walkChangeset;

constexpr core::Date changesetToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class ChangesetCheck : public testing::Test {
  protected:
    ChangesetCheck() {
        support::Chance chance(3);
        while (changesets.size() < 40) {
            const auto done = support::perform(
                logbook, static_cast<support::Action>(support::pick(chance, support::actions)), chance, changesetToday);
            if (done && done->historyNumber != 0)
                changesets.push_back(db::changesetOf(connection, done->historyNumber));
        }
    }

    db::Logbook logbook = support::sampleLogbook({}, changesetToday);
    db::Connection& connection = *logbook.inside().connection;
    std::vector<db::TableShape> tables = db::tablesOf(connection);
    std::vector<Changeset> changesets;
};

TEST_F(ChangesetCheck, KnowsTheKeysOfEveryTableButHistory) {
    EXPECT_EQ(tables.size(), 33U);
    for (const db::TableShape& table : tables) {
        EXPECT_NE(table.name, "history");
        EXPECT_EQ(table.key.front(), 1) << table.name;
    }
}

TEST_F(ChangesetCheck, LetsThroughWhatActionsLeave) {
    for (const Changeset& changeset : changesets) EXPECT_FALSE(walkChangeset(changeset, tables).has_value());
}

TEST_F(ChangesetCheck, FindsEveryShorteningThatIsNotAtAChangesEnd) {
    int let = 0, tried = 0;
    for (const Changeset& changeset : changesets)
        for (std::size_t length = 0; length < std::min<std::size_t>(changeset.size(), 400); ++length, ++tried)
            if (!walkChangeset(std::span(changeset).first(length), tables)) ++let;
    EXPECT_GT(tried, 1000);
    // Cut exactly between two changes it is a changeset still; only that may pass.
    EXPECT_LT(let, tried / 20);
}

TEST_F(ChangesetCheck, ReportsIdsOfWhatCameAndWent) {
    std::vector<db::ChangedRow> rows;
    const auto sample = db::changesetOf(connection, 1);
    ASSERT_FALSE(walkChangeset(sample, tables, [&](const db::ChangedRow& row) { rows.push_back(row); }));
    int batches = 0;
    for (const db::ChangedRow& row : rows) {
        EXPECT_EQ(row.change, db::RowChange::Insert);
        EXPECT_TRUE(row.before.empty());
        ASSERT_TRUE(row.after.at(0).has_value());
        if (row.table->name == "batches") ++batches;
    }
    EXPECT_EQ(batches, 12);
}

struct BadBytes {
    const char* what;
    Changeset bytes;
};

TEST(ChangesetWalk, NamesWhatIsWrong) {
    const std::vector<db::TableShape> shapes = {{.name = "t", .key = {1, 0}}};
    const Changeset head = {'T', 2, 1, 0, 't', 0};
    const auto with = [&](Changeset rest) {
        Changeset whole = head;
        whole.insert(whole.end(), rest.begin(), rest.end());
        return whole;
    };
    const std::vector<BadBytes> bad = {
        {"empty", {}},
        {"a patchset", {'P', 2, 1, 0, 't', 0, 18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5}},
        {"no change", head},
        {"name without end", {'T', 2, 1, 0, 't', 't'}},
        {"other table", {'T', 2, 1, 0, 'h', 0, 18, 0, 5, 5}},
        {"other key", {'T', 2, 0, 1, 't', 0, 18, 0, 5, 5}},
        {"too many columns", {'T', 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 1}},
        {"unknown opcode", with({19, 0, 5, 5})},
        {"unknown flag", with({18, 2, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5})},
        {"unknown value", with({18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 6})},
        {"null key", with({18, 0, 5, 5})},
        {"undefined in an insert", with({18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 0})},
        {"length past the end", with({18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 3, 0x7f, 'a'})},
        {"huge length",
         with({18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 4, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff})},
        {"update without new", with({23, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5, 0, 0})},
        {"update of the key", with({23, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5, 1, 0, 0, 0, 0, 0, 0, 0, 2, 5})},
    };
    for (const BadBytes& one : bad) EXPECT_TRUE(walkChangeset(one.bytes, shapes).has_value()) << one.what;
    EXPECT_FALSE(walkChangeset(with({18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5}), shapes).has_value());
    EXPECT_FALSE(walkChangeset(with({23, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5, 0, 3, 1, 'a'}), shapes).has_value());
}

// Damaged changesets have made SQLite's own reader hang or crash; what passes the walk must not.
TEST_F(ChangesetCheck, WhatPassesAfterDamageIsAppliedOrRefusedInTime) {
    support::Chance chance(99);
    int passed = 0;
    for (int round = 0; round < 1500; ++round) {
        Changeset damaged =
            changesets[static_cast<std::size_t>(support::pick(chance, static_cast<int>(changesets.size())))];
        for (int hits = 1 + support::pick(chance, 3); hits > 0; --hits)
            damaged[static_cast<std::size_t>(support::pick(chance, static_cast<int>(damaged.size())))] =
                static_cast<std::uint8_t>(support::pick(chance, 256));
        if (walkChangeset(damaged, tables)) continue;
        ++passed;
        const db::WriteTransaction rolledBack(connection);
        try {
            db::applyChangeset(connection, damaged, round % 2 == 0 ? db::Direction::Back : db::Direction::Forward);
        } catch (const db::LogbookError&) {
        } catch (const SQLite::Exception&) {  // a value that the table's own checks refuse
        }
    }
    EXPECT_GT(passed, 100);
}

}  // namespace
