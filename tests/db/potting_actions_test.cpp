// SPDX-License-Identifier: MIT
// Counts after potting, and what they forbid of the checks before them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/check_actions.h"
#include "db/actions/event_actions.h"
#include "db/actions/look_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/session_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"

namespace {

using support::aBatch;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

/// Three rooted on day 7 and two more on day 14.
class PottingActions : public testing::Test {
  protected:
    PottingActions() {
        core::Records records = support::recordsOf({aBatch()
                                                        .code("P1")
                                                        .standing("A1-A6")
                                                        .looked(7, {.rooted = 3})
                                                        .foundAt("A1-A3", core::Outcome::Rooted)
                                                        .looked(14, {.rooted = 2})});
        EXPECT_TRUE(db::addRecords(logbook, std::move(records), "records", true));
        batch = logbook.batchLines().front().batch;
    }

    core::Potting potting(int afterDays, int potted, int lost = 0) const {
        return {
            .batch = batch.id, .countedOn = core::addDays(batch.stuckOn, afterDays), .potted = potted, .lost = lost};
    }
    void kept(const core::Potting& one) {
        const auto done = db::keepPotting(logbook, one, support::today());
        ASSERT_TRUE(done) << done.error().front().sentence;
    }
    static std::string sentenceOf(const core::Result<db::Changes>& refused) {
        return refused ? std::string("not refused") : refused.error().front().sentence;
    }
    std::vector<core::Check> checks() const { return logbook.batch(batch.id)->checks; }

    db::Logbook logbook = db::Logbook::inMemory({}, support::testOptions());
    core::Batch batch;
};

TEST_F(PottingActions, ACountIsKeptChangedAndDeletedByItsWords) {
    const auto done = db::keepPotting(logbook, potting(14, 4), support::today());
    ASSERT_TRUE(done);
    EXPECT_EQ(done->words, "potting on of P1");
    EXPECT_THAT(done->tables, ElementsAre("pottings"));
    EXPECT_THAT(done->batches, ElementsAre(batch.id));
    core::Potting changed = logbook.pottings(batch.id).front();
    changed.potted = 5;
    const auto change = db::keepPotting(logbook, changed, support::today());
    EXPECT_EQ(change->words, "change of a potting on of P1");
    EXPECT_THAT(change->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.allPottings(), ElementsAre(changed));
    EXPECT_EQ(db::deletePotting(logbook, changed)->words, "deletion of a potting on of P1");
    EXPECT_THAT(sentenceOf(db::deletePotting(logbook, changed)), HasSubstr("not in the logbook any more"));
    EXPECT_THAT(sentenceOf(db::keepPotting(logbook, changed, support::today())),
                HasSubstr("not in the logbook any more"));
    EXPECT_THAT(logbook.undo()->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.pottings(batch.id), ElementsAre(changed));
}

TEST_F(PottingActions, NoMoreArePottedThanHadRootedByThatDay) {
    EXPECT_THAT(sentenceOf(db::keepPotting(logbook, potting(10, 4), support::today())),
                HasSubstr("Potted is 4 in all by 2026-03-12; 0 to 3 is allowed"));
    kept(potting(10, 3));
    EXPECT_THAT(sentenceOf(db::keepPotting(logbook, potting(14, 3), support::today())),
                HasSubstr("Potted is 6 in all"));
    kept(potting(14, 2));
    EXPECT_THAT(logbook.pottings(batch.id), SizeIs(2));
    core::Potting elsewhere = potting(14, 1);
    elsewhere.batch = {4711};
    EXPECT_THAT(sentenceOf(db::keepPotting(logbook, elsewhere, support::today())), HasSubstr("not in the logbook"));
}

TEST_F(PottingActions, ACountWhoseLossesStandIsNotDeleted) {
    kept(potting(10, 3));
    kept(potting(20, 0, 2));
    EXPECT_THAT(sentenceOf(db::deletePotting(logbook, logbook.pottings(batch.id).front())),
                HasSubstr("Lost after potting is 2 in all"));
    EXPECT_TRUE(db::deletePotting(logbook, logbook.pottings(batch.id).back()));
    EXPECT_TRUE(db::deletePotting(logbook, logbook.pottings(batch.id).front()));
}

TEST_F(PottingActions, ACountGoesToAnotherBatchOnlyWhereWhatIsLeftStillAddsUp) {
    core::Records others = support::recordsOf({aBatch().code("P2").looked(7, {.rooted = 3})});
    ASSERT_TRUE(db::addRecords(logbook, std::move(others), "records", true));
    kept(potting(10, 3));
    kept(potting(20, 0, 2));
    core::Potting moved = logbook.pottings(batch.id).front();
    moved.batch = logbook.batchWithCode("P2");
    EXPECT_THAT(sentenceOf(db::keepPotting(logbook, moved, support::today())),
                HasSubstr("Lost after potting is 2 in all"));
    EXPECT_TRUE(db::deletePotting(logbook, logbook.pottings(batch.id).back()));
    kept(moved);
    EXPECT_THAT(logbook.pottings(batch.id), IsEmpty());
    EXPECT_THAT(logbook.pottings(moved.batch), ElementsAre(moved));
}

TEST_F(PottingActions, AChangedCheckMustLeaveAsManyRootedAsWerePotted) {
    kept(potting(14, 5));
    core::Check fewer = checks().back();
    fewer.rooted = 1;
    EXPECT_THAT(sentenceOf(db::changeCheck(logbook, fewer, support::today())),
                HasSubstr("Potted is 5 in all by 2026-03-16; 0 to 4 is allowed"));
    core::Check later = checks().back();
    later.checkedOn = core::addDays(later.checkedOn, 1);
    EXPECT_THAT(sentenceOf(db::changeCheck(logbook, later, support::today())), HasSubstr("Potted is 5 in all"));
    EXPECT_THAT(sentenceOf(db::deleteCheck(logbook, checks().back().id)), HasSubstr("Potted is 5 in all"));
    core::Check look = checks().front();
    look.rooted = 2;
    look.findings.pop_back();
    EXPECT_THAT(sentenceOf(db::recordLook(logbook, {look}, support::today())), HasSubstr("Potted is 5 in all"));
    core::Check more = checks().back();
    more.rooted = 3;
    EXPECT_TRUE(db::changeCheck(logbook, more, support::today()));
    EXPECT_THAT(db::verify(logbook, support::today()).faults, IsEmpty());
}

TEST_F(PottingActions, TheyGoAndComeBackWithTheirBatch) {
    kept(potting(14, 5, 1));
    const auto before = logbook.pottings(batch.id);
    ASSERT_TRUE(db::deleteBatch(logbook, batch.id));
    EXPECT_THAT(logbook.allPottings(), IsEmpty());
    logbook.undo();
    EXPECT_EQ(logbook.pottings(batch.id), before);
}

TEST_F(PottingActions, AnExpenseOfASessionTouchesItsBatchesAndGoesWithIt) {
    core::Expense expense{
        .spentOn = batch.stuckOn, .what = "blades", .hundredths = 320, .session = batch.session, .minutes = 45};
    const auto done = db::keepExpense(logbook, expense, support::today());
    ASSERT_TRUE(done);
    EXPECT_EQ(done->words, "expense for the session of 2026-03-02");
    EXPECT_THAT(done->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.expenses(batch.id), IsEmpty()) << "it is the session's";
    expense = logbook.expenses(batch.session).front();
    EXPECT_EQ(expense.minutes, 45);
    expense.minutes.reset();
    const auto change = db::keepExpense(logbook, expense, support::today());
    EXPECT_EQ(change->words, "change of an expense for the session of 2026-03-02");
    EXPECT_THAT(change->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.allExpenses(), ElementsAre(expense));
    ASSERT_TRUE(db::deleteBatch(logbook, batch.id));
    EXPECT_THAT(logbook.allExpenses(), IsEmpty()) << "the session went with its last batch";
    logbook.undo();
    EXPECT_THAT(logbook.expenses(batch.session), ElementsAre(expense));
    EXPECT_TRUE(db::deleteExpense(logbook, expense));
}

TEST_F(PottingActions, AnExpenseBelongsToOneThingThatIsThere) {
    core::Expense expense{.spentOn = batch.stuckOn, .what = "blades", .hundredths = 320};
    EXPECT_FALSE(db::keepExpense(logbook, expense, support::today()));
    expense.session = {4711};
    EXPECT_THAT(sentenceOf(db::keepExpense(logbook, expense, support::today())),
                HasSubstr("Session is not in the logbook any more"));
    expense.session = batch.session;
    expense.batch = batch.id;
    EXPECT_THAT(sentenceOf(db::keepExpense(logbook, expense, support::today())),
                HasSubstr("one batch or to one session"));
}

}  // namespace
