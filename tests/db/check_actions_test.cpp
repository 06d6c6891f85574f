// SPDX-License-Identifier: MIT
#include "db/actions/check_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/session_actions.h"
#include "tests/support/every_action.h"

namespace {

using testing::Contains;
using testing::Field;
using testing::HasSubstr;

constexpr core::Date checkToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class CheckActions : public testing::Test {
  protected:
    CheckActions() {
        db::SessionDraft draft;
        draft.session.date = core::addDays(checkToday, -20);
        for (int number = 0; number < 2; ++number) {
            core::Batch batch;
            batch.plant = logbook.shelves().plants.front().id;
            batch.method = logbook.shelves().methods.front().id;
            batch.stuck = 10;
            draft.batches.push_back(batch);
        }
        batches = db::stickSession(logbook, std::move(draft), checkToday).value().batches;
    }

    db::CheckDraft look(int batch, int daysAgo, int rooted, int lost = 0) const {
        db::CheckDraft draft;
        draft.check.batch = batches[static_cast<std::size_t>(batch)].id;
        draft.check.checkedOn = core::addDays(checkToday, -daysAgo);
        draft.check.rooted = rooted;
        if (lost > 0) draft.check.losses.push_back({.cause = logbook.shelves().lossCauses.front().id, .count = lost});
        return draft;
    }

    db::Logbook logbook = support::sampleLogbook({}, checkToday);
    std::vector<core::Batch> batches;
};

TEST_F(CheckActions, ARoundIsOneStepOfHistory) {
    const auto steps = logbook.history().size();
    const auto done = db::recordChecks(logbook, {look(0, 9, 3, 1), look(1, 9, 4)}, checkToday);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->batches.size(), 2U);
    EXPECT_EQ(done->words, "2 checks");
    EXPECT_EQ(logbook.history().size(), steps + 1);
    EXPECT_EQ(logbook.batch(batches[0].id)->checks.front().lost(), 1);
    logbook.undo();
    EXPECT_TRUE(logbook.batch(batches[0].id)->checks.empty());
}

TEST_F(CheckActions, ARoundWithOneFaultWritesNothingAndNamesTheBatch) {
    const auto done = db::recordChecks(logbook, {look(0, 9, 3), look(1, 9, 11)}, checkToday);
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error(), Contains(Field(&core::Refusal::field, testing::StartsWith(batches[1].code + ": "))));
    EXPECT_TRUE(logbook.batch(batches[0].id)->checks.empty());
}

TEST_F(CheckActions, ChecksOfOneRoundAreJudgedTogether) {
    EXPECT_FALSE(db::recordChecks(logbook, {look(0, 9, 6), look(0, 5, 5)}, checkToday));
    EXPECT_FALSE(db::recordChecks(logbook, {look(0, 9, 6), look(0, 9, 1)}, checkToday));
    EXPECT_TRUE(db::recordChecks(logbook, {look(0, 9, 6), look(0, 5, 4)}, checkToday));
}

TEST_F(CheckActions, ACheckMayCloseItsBatch) {
    db::CheckDraft last = look(0, 3, 2);
    last.closesBatch = true;
    ASSERT_TRUE(db::recordChecks(logbook, {last}, checkToday));
    const core::Batch closed = logbook.batch(batches[0].id)->batch;
    EXPECT_EQ(closed.closedOn, last.check.checkedOn);
    EXPECT_EQ(closed.closeReason, "nothing left to wait for");
    EXPECT_FALSE(db::recordChecks(logbook, {look(0, 1, 1)}, checkToday));
    logbook.undo();
    EXPECT_FALSE(logbook.batch(batches[0].id)->batch.closedOn.has_value());
}

TEST_F(CheckActions, ALaterCorrectionIsJudgedWithAllThatFollows) {
    ASSERT_TRUE(db::recordChecks(logbook, {look(0, 9, 4), look(0, 5, 5)}, checkToday));
    core::Check first = logbook.batch(batches[0].id)->checks.front();
    first.rooted = 6;
    const auto tooMany = db::changeCheck(logbook, first, checkToday);
    ASSERT_FALSE(tooMany);
    EXPECT_THAT(tooMany.error().front().sentence, HasSubstr("6"));
    first.rooted = 5;
    EXPECT_TRUE(db::changeCheck(logbook, first, checkToday));
    EXPECT_EQ(logbook.batchLinesOf({batches[0].id}).front().tally.rooted, 10);
}

TEST_F(CheckActions, DeletingACheckTakesItsLossesAlong) {
    ASSERT_TRUE(db::recordChecks(logbook, {look(0, 9, 1, 2)}, checkToday));
    const core::Check check = logbook.batch(batches[0].id)->checks.front();
    ASSERT_TRUE(db::deleteCheck(logbook, check.id));
    EXPECT_EQ(logbook.batchLinesOf({batches[0].id}).front().tally.lost, 0);
    EXPECT_FALSE(db::deleteCheck(logbook, check.id));
    EXPECT_FALSE(db::changeCheck(logbook, check, checkToday));
    logbook.undo();
    EXPECT_EQ(logbook.batch(batches[0].id)->checks.front(), check);
}

TEST_F(CheckActions, ACheckOfABatchThatIsGoneIsRefused) {
    db::CheckDraft draft = look(0, 9, 1);
    draft.check.batch = {99};
    const auto done = db::recordChecks(logbook, {draft}, checkToday);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().front().field, "Batch");
}

TEST_F(CheckActions, LossesKeepTheirOrderAlsoWithoutACause) {
    db::CheckDraft draft = look(0, 9, 0);
    const auto causes = logbook.shelves().lossCauses;
    draft.check.losses = {
        {.cause = causes[2].id, .count = 1}, {.cause = {}, .count = 2}, {.cause = causes[0].id, .count = 3}};
    ASSERT_TRUE(db::recordChecks(logbook, {draft}, checkToday));
    EXPECT_EQ(logbook.batch(batches[0].id)->checks.front().losses, draft.check.losses);
}

}  // namespace
