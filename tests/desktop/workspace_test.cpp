// SPDX-License-Identifier: MIT
#include "app/desktop/workspace.h"

#include "db/actions/check_actions.h"
#include "db/actions/session_actions.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

class KeptByTheWorkspace : public support::Desk {
  protected:
    const std::vector<core::BatchLine>& lines() { return workspace_->batchLines(); }
    void expectAsTheLogbookHasThem() { EXPECT_EQ(lines(), workspace_->logbook().batchLines()); }
    core::Check aCheckOf(core::BatchId batch, int rooted) const {
        core::Check check = support::aCheck(today(), {.rooted = rooted});
        check.id = {};
        check.batch = batch;
        return check;
    }
};

TEST_F(KeptByTheWorkspace, FollowsEditsUndoAndRedo) {
    open(dueBatches(5));
    expectAsTheLogbookHasThem();
    const core::BatchId first = lines().front().batch.id;
    ASSERT_TRUE(workspace_
                    ->run([&](db::Logbook& logbook) {
                        return db::recordChecks(logbook, {{.check = aCheckOf(first, 4), .closeReason = {}}}, today());
                    })
                    .isDone);
    EXPECT_EQ(lines().front().tally.rooted, 4);
    expectAsTheLogbookHasThem();
    ASSERT_TRUE(workspace_->run([&](db::Logbook& logbook) { return db::deleteBatch(logbook, first); }).isDone);
    EXPECT_EQ(lines().size(), 4U);
    ASSERT_TRUE(workspace_->undo());
    expectAsTheLogbookHasThem();
    EXPECT_EQ(lines().size(), 5U);
    ASSERT_TRUE(workspace_->undo());
    EXPECT_EQ(lines().front().tally.rooted, 0);
    ASSERT_TRUE(workspace_->redo());
    expectAsTheLogbookHasThem();
}

TEST_F(KeptByTheWorkspace, KeepsTheOrderOfTheLogbookWhenASessionMovesToAnotherDay) {
    std::vector<core::BatchRecord> batches = dueBatches(3);
    batches.push_back(support::aBatch().stuckOn(core::addDays(today(), -20)).stuck(10));
    open(batches);
    ASSERT_EQ(lines().size(), 4U);
    core::Session session = workspace_->logbook().sessions().front();
    session.date = core::addDays(today(), -1);
    ASSERT_TRUE(
        workspace_->run([&](db::Logbook& logbook) { return db::changeSession(logbook, session, today()); }).isDone);
    EXPECT_EQ(lines().back().batch.stuckOn, session.date);
    expectAsTheLogbookHasThem();
}

TEST_F(KeptByTheWorkspace, SeesWhatAnotherProcessChanged) {
    open(dueBatches(2));
    const core::BatchId first = lines().front().batch.id;
    {
        db::Logbook other = db::Logbook::open(file_.toStdString(), {.clock = workspace_->clock(), .author = {}});
        ASSERT_TRUE(db::recordChecks(other, {{.check = aCheckOf(first, 7), .closeReason = {}}}, today()));
    }
    workspace_->lookOutside();
    EXPECT_EQ(lines().front().tally.rooted, 7);
    expectAsTheLogbookHasThem();
}

TEST_F(KeptByTheWorkspace, GivesTheLinesOfSomeBatchesInTheirOrder) {
    open(dueBatches(4));
    const std::vector<core::BatchId> wanted{lines()[3].batch.id, {987654321}, lines()[1].batch.id};
    EXPECT_EQ(workspace_->batchLinesOf(wanted), (std::vector{lines()[1], lines()[3]}));
}

}  // namespace
