// SPDX-License-Identifier: MIT
// What the logbook needs of the SQLite that it is linked with. Fails on a library that lacks it, rather than in a grower's hands.
#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "db/connection.h"

namespace {

db::Connection blankDatabase() {
    return {":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0};
}

std::string first(db::Connection& connection, const std::string& sql) {
    SQLite::Statement row(connection.database(), sql);
    return row.executeStep() ? row.getColumn(0).getString() : std::string();
}

TEST(Features, StrictTablesRefuseTextInANumber) {
    auto connection = blankDatabase();
    connection.runScript("CREATE TABLE t (n INTEGER) STRICT");
    EXPECT_THROW(connection.runScript("INSERT INTO t VALUES ('many')"), SQLite::Exception);
}

TEST(Features, SessionsAreBuiltIn) {
    EXPECT_EQ(sqlite3_compileoption_used("ENABLE_SESSION"), 1);
    EXPECT_EQ(sqlite3_compileoption_used("ENABLE_PREUPDATE_HOOK"), 1);
}

TEST(Features, DefensiveModeForbidsWritingTheSchema) {
    auto connection = blankDatabase();
    connection.runScript("CREATE TABLE t (n INTEGER); PRAGMA writable_schema = ON");
    EXPECT_THROW(connection.runScript("UPDATE sqlite_schema SET sql = 'x'"), SQLite::Exception);
}

TEST(Features, ForeignKeysAreOnAndTheSchemaIsNotTrusted) {
    auto connection = blankDatabase();
    EXPECT_EQ(first(connection, "PRAGMA foreign_keys"), "1");
    EXPECT_EQ(first(connection, "PRAGMA trusted_schema"), "0");
    EXPECT_EQ(first(connection, "PRAGMA cell_size_check"), "1");
    EXPECT_THROW(connection.runScript("SELECT \"no such column\""), SQLite::Exception);
}

TEST(Features, CommitsAreSyncedWithTheirFolderAndLeaveNoJournal) {
    auto connection = blankDatabase();
    constexpr const char* extra = "3";
    EXPECT_EQ(first(connection, "PRAGMA synchronous"), extra);
    const SQLite::Database plain("", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    SQLite::Statement mode(plain, "PRAGMA journal_mode");
    ASSERT_TRUE(mode.executeStep());
    EXPECT_EQ(mode.getColumn(0).getString(), "delete");
}

TEST(Features, DatesAreCheckedByTheDatabase) {
    auto connection = blankDatabase();
    EXPECT_EQ(first(connection, "SELECT date('2026-02-29', '+0 days') IS '2026-02-29'"), "0");
    EXPECT_EQ(first(connection, "SELECT date('2024-02-29', '+0 days') IS '2024-02-29'"), "1");
}

}  // namespace
