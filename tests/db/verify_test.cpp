// SPDX-License-Identifier: MIT
#include "db/safekeeping/verify.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr core::Date verifyToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class Verify : public testing::Test {
  protected:
    Verify() { const auto made = support::sampleLogbook(file, verifyToday); }

    db::Verification verified() const {
        return db::verify(db::Logbook::open(file, support::testOptions()), verifyToday);
    }
    std::vector<std::string> faultsAfter(const std::string& tampering) const {
        support::runSql(file, tampering);
        return verified().faults;
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "verify.strikebook";
};

TEST_F(Verify, IsContentWithWhatActionsWrote) {
    const db::Verification verification = verified();
    EXPECT_THAT(verification.faults, IsEmpty());
    EXPECT_EQ(verification.batches, 12);
    EXPECT_GT(verification.checks, 12);
    EXPECT_EQ(verification.historyEntries, 1);
}

TEST_F(Verify, FindsMoreRootedThanStuck) {
    EXPECT_THAT(faultsAfter("UPDATE checks SET rooted = 99999 WHERE id = (SELECT MIN(id) FROM checks)"),
                Contains(HasSubstr("99999")));
}

TEST_F(Verify, FindsACheckBeforeItsBatch) {
    EXPECT_THAT(faultsAfter("UPDATE checks SET checked_on = '1999-01-01' WHERE id = (SELECT MIN(id) FROM checks)"),
                Contains(HasSubstr("1999-01-01")));
}

TEST_F(Verify, FindsASessionInTheFuture) {
    EXPECT_THAT(faultsAfter("UPDATE sessions SET held_on = '2031-01-01' WHERE id = (SELECT MIN(id) FROM sessions)"),
                Contains(HasSubstr("2031-01-01")));
}

TEST_F(Verify, FindsARowWhosePartnerIsGone) {
    EXPECT_THAT(faultsAfter("DELETE FROM plants WHERE id = (SELECT MIN(plant_id) FROM batches)"),
                Contains(HasSubstr("that is not there")));
}

TEST_F(Verify, FindsTwoThingsOfOneName) {
    EXPECT_THAT(faultsAfter("UPDATE methods SET name = 'media tray'"), Contains(HasSubstr("which is taken")));
}

TEST_F(Verify, FindsWhatPricesLotsAndCountsAfterPottingMayNotBe) {
    EXPECT_THAT(
        faultsAfter(
            "INSERT INTO prices VALUES (91, 'tariff', 'power', (SELECT MIN(id) FROM methods), NULL, NULL, NULL, "
            "'2026-01-01', NULL, 2800, NULL, NULL, 'batch', 0, 0, 1, 0, '');"
            "INSERT INTO lots VALUES (92, 'old gel', (SELECT MIN(id) FROM treatments), NULL, '2031-01-01', NULL, '');"
            "INSERT INTO pottings SELECT 93, MIN(id), '2026-03-14', 0, 7, '' FROM batches;"
            "INSERT INTO expenses SELECT 94, NULL, MIN(id), '2031-01-01', 'blades', 100, NULL FROM sessions"),
        AllOf(Contains(HasSubstr("The price of power from 2026-01-01: Belongs to has 1 things")),
              Contains(HasSubstr("The lot old gel: Used from is 2031-01-01")),
              Contains(HasSubstr("Lost after potting is 7")),
              Contains(HasSubstr("An expense of a session, of 2031-01-01: Spent on is 2031-01-01"))));
}

TEST_F(Verify, FindsADamagedStepOfTheHistory) {
    EXPECT_THAT(faultsAfter("UPDATE history SET changeset = substr(changeset, 2)"),
                Contains(HasSubstr("Step 1 of the history (sample records) is damaged")));
}

TEST_F(Verify, FindsFiguresThatTheHistoryDoesNotLeadTo) {
    EXPECT_THAT(faultsAfter("UPDATE batches SET stuck = stuck + 1 WHERE id = (SELECT MIN(id) FROM batches)"),
                Contains(HasSubstr("changed by something that is not in the history")));
    EXPECT_THAT(faultsAfter("UPDATE batches SET stuck = stuck - 1 WHERE id = (SELECT MIN(id) FROM batches)"),
                IsEmpty());
}

TEST_F(Verify, LooksAtUndoneStepsToo) {
    {
        auto logbook = db::Logbook::open(file, support::testOptions());
        support::Chance chance(8);
        for (int step = 0; step < 30; ++step)
            static_cast<void>(support::perform(
                logbook, static_cast<support::Action>(support::pick(chance, support::actions)), chance, verifyToday));
        for (int step = 0; step < 4; ++step) ASSERT_TRUE(logbook.undo());
        ASSERT_TRUE(logbook.redo());
    }
    EXPECT_THAT(verified().faults, IsEmpty());
}

TEST_F(Verify, FindsThingsThatCameFromNowhere) {
    EXPECT_THAT(
        faultsAfter("INSERT INTO plants (id, botanical_name, cultivar, common_name, is_protected, note, is_retired) "
                    "VALUES (12345, 'Nowhere plant', '', '', 0, '', 0)"),
        Contains(HasSubstr("Some plants were written by something that is not in the history")));
}

}  // namespace
