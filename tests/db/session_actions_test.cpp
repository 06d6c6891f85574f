// SPDX-License-Identifier: MIT
#include "db/actions/session_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/batch/batch_code.h"
#include "db/actions/check_actions.h"
#include "tests/support/every_action.h"

namespace {

using testing::Contains;
using testing::Field;
using testing::HasSubstr;

constexpr core::Date sessionToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class SessionActions : public testing::Test {
  protected:
    core::Batch batchOf(int stuck) const {
        core::Batch batch;
        batch.plant = logbook.shelves().plants.front().id;
        batch.method = logbook.shelves().methods.front().id;
        batch.stuck = stuck;
        return batch;
    }
    db::SessionDraft draftOf(std::vector<core::Batch> batches) const {
        db::SessionDraft draft;
        draft.session.date = core::addDays(sessionToday, -2);
        draft.batches = std::move(batches);
        return draft;
    }
    static core::Refusals refusalsOf(const auto& result) { return result ? core::Refusals{} : result.error(); }

    db::Logbook logbook = support::sampleLogbook({}, sessionToday);
};

TEST_F(SessionActions, StickingGivesIdsCodesAndTheDay) {
    const int last = logbook.lastBatchNumber(2026);
    const auto done = db::stickSession(logbook, draftOf({batchOf(24), batchOf(30)}), sessionToday);
    ASSERT_TRUE(done);
    ASSERT_EQ(done->batches.size(), 2U);
    EXPECT_EQ(done->batches[0].code, core::batchCode(2026, last + 1));
    EXPECT_EQ(done->batches[1].code, core::batchCode(2026, last + 2));
    EXPECT_EQ(done->changes.batches.size(), 2U);
    for (const core::Batch& batch : done->batches) {
        EXPECT_EQ(batch.session, done->session);
        EXPECT_EQ(logbook.batch(batch.id)->batch, batch);
    }
    EXPECT_EQ(logbook.wordsToUndo(), "session of 2026-03-12, 2 batches");
}

TEST_F(SessionActions, TheLicenceOfAProtectedPlantIsKeptWithItsBatch) {
    core::Batch batch = batchOf(24);
    batch.licence = "Licence 12/7";
    auto done = db::stickSession(logbook, draftOf({batch}), sessionToday);
    ASSERT_TRUE(done);
    EXPECT_EQ(logbook.batch(done->batches.front().id)->batch.licence, "Licence 12/7");
    for (const core::BatchLine& line : logbook.batchLinesOf({done->batches.front().id}))
        EXPECT_EQ(line.batch.licence, "Licence 12/7");
    batch = done->batches.front();
    batch.licence = std::string(201, 'x');
    EXPECT_THAT(refusalsOf(db::changeBatch(logbook, batch, sessionToday)),
                Contains(Field(&core::Refusal::field, "Licence")));
}

TEST_F(SessionActions, StickingMakesNewShelvesOnTheSpot) {
    auto draft = draftOf({batchOf(12)});
    core::Plant plant;
    plant.id.value = db::newId();
    plant.botanicalName = "Ficus pumila";
    draft.made.plants.push_back(plant);
    draft.batches.front().plant = plant.id;
    ASSERT_TRUE(db::stickSession(logbook, draft, sessionToday));
    EXPECT_NE(core::find(logbook.shelves().plants, plant.id), nullptr);
    logbook.undo();
    EXPECT_EQ(core::find(logbook.shelves().plants, plant.id), nullptr);
}

TEST_F(SessionActions, StickingIntoASessionThatIsThereJoinsIt) {
    const core::Session there = logbook.sessions().front();
    auto draft = draftOf({batchOf(12)});
    draft.session.id = there.id;
    const auto done = db::stickSession(logbook, draft, sessionToday);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->batches.front().stuckOn, there.date);
}

TEST_F(SessionActions, StickingSaysEverythingThatIsWrongAndWritesNothing) {
    auto draft = draftOf({batchOf(0), batchOf(24)});
    draft.batches[1].code = logbook.batchLines().front().batch.code;
    const auto refusals = refusalsOf(db::stickSession(logbook, draft, sessionToday));
    EXPECT_THAT(refusals, Contains(Field(&core::Refusal::field, "Batch 1: Stuck")));
    EXPECT_THAT(refusals, Contains(Field(&core::Refusal::field, "Batch 2: Code")));
    EXPECT_EQ(logbook.history().size(), 1U);
    EXPECT_THAT(refusalsOf(db::stickSession(logbook, draftOf({}), sessionToday)),
                Contains(Field(&core::Refusal::field, "Batches")));
    auto tomorrow = draftOf({batchOf(3)});
    tomorrow.session.date = core::addDays(sessionToday, 1);
    EXPECT_THAT(refusalsOf(db::stickSession(logbook, tomorrow, sessionToday)),
                Contains(Field(&core::Refusal::field, "Date")));
}

TEST_F(SessionActions, TwoBatchesOfOneDraftCannotShareACode) {
    auto draft = draftOf({batchOf(3), batchOf(3)});
    draft.batches[0].code = draft.batches[1].code = core::batchCode(2026, 9000);
    EXPECT_THAT(refusalsOf(db::stickSession(logbook, draft, sessionToday)),
                Contains(Field(&core::Refusal::sentence, HasSubstr("which another batch has"))));
}

TEST_F(SessionActions, WhenAYearsCodesAreUsedUpACodeOfOnesOwnIsAskedFor) {
    auto full = draftOf({batchOf(3)});
    full.batches.front().code = core::batchCode(2026, 9999);
    ASSERT_TRUE(db::stickSession(logbook, full, sessionToday));
    EXPECT_THAT(refusalsOf(db::stickSession(logbook, draftOf({batchOf(3)}), sessionToday)),
                Contains(Field(&core::Refusal::sentence, HasSubstr("all 9999 codes of 2026 are used"))));
}

TEST_F(SessionActions, ABatchKeepsItsSessionAndDayWhenChanged) {
    core::Batch batch = logbook.batchLines().front().batch;
    const core::Batch before = batch;
    batch.stuckOn = sessionToday;
    batch.session = logbook.sessions().back().id;
    batch.note = "moved to the north bench";
    ASSERT_TRUE(db::changeBatch(logbook, batch, sessionToday));
    const core::Batch after = logbook.batch(batch.id)->batch;
    EXPECT_EQ(after.stuckOn, before.stuckOn);
    EXPECT_EQ(after.session, before.session);
    EXPECT_EQ(after.note, "moved to the north bench");
    batch.code = logbook.batchLines().back().batch.code;
    EXPECT_THAT(refusalsOf(db::changeBatch(logbook, batch, sessionToday)),
                Contains(Field(&core::Refusal::field, "Code")));
}

TEST_F(SessionActions, DeletingTheLastBatchOfASessionDeletesTheSession) {
    const auto made = db::stickSession(logbook, draftOf({batchOf(3), batchOf(4)}), sessionToday);
    ASSERT_TRUE(made);
    ASSERT_TRUE(db::deleteBatch(logbook, made->batches[0].id));
    EXPECT_NE(core::find(logbook.sessions(), made->session), nullptr);
    ASSERT_TRUE(db::deleteBatch(logbook, made->batches[1].id));
    EXPECT_EQ(core::find(logbook.sessions(), made->session), nullptr);
    EXPECT_THAT(refusalsOf(db::deleteBatch(logbook, made->batches[1].id)),
                Contains(Field(&core::Refusal::field, "Batch")));
    logbook.undo();
    EXPECT_TRUE(logbook.batch(made->batches[1].id).has_value());
}

TEST_F(SessionActions, ClosingNeedsAReasonAndReopeningAClosedBatch) {
    const auto made = db::stickSession(logbook, draftOf({batchOf(3)}), sessionToday);
    ASSERT_TRUE(made);
    const core::BatchId id = made->batches.front().id;
    EXPECT_THAT(refusalsOf(db::reopenBatch(logbook, id)),
                Contains(Field(&core::Refusal::sentence, HasSubstr("was not closed by hand"))));
    EXPECT_FALSE(db::closeBatch(logbook, id, sessionToday, "", sessionToday));
    ASSERT_TRUE(db::closeBatch(logbook, id, sessionToday, "given away", sessionToday));
    EXPECT_EQ(logbook.batch(id)->batch.closedOn, sessionToday);
    EXPECT_FALSE(db::closeBatch(logbook, id, sessionToday, "again", sessionToday));
    ASSERT_TRUE(db::reopenBatch(logbook, id));
    EXPECT_FALSE(logbook.batch(id)->batch.closedOn.has_value());
}

TEST_F(SessionActions, ASessionCannotMoveBehindTheChecksOfItsBatches) {
    for (core::Session session : logbook.sessions()) {
        session.date = sessionToday;
        const auto moved = db::changeSession(logbook, session, sessionToday);
        if (moved) continue;
        EXPECT_THAT(moved.error().front().sentence, HasSubstr("was first checked on"));
        return;
    }
    FAIL() << "every session could be moved";
}

}  // namespace
