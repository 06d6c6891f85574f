// SPDX-License-Identifier: MIT
// Where batches stand, through every verb that can move, free or take a position.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/check_actions.h"
#include "db/actions/session_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using core::Outcome;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr core::Date positionToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class PositionActions : public testing::Test {
  protected:
    PositionActions() {
        core::Station made;
        made.name = "Lid of twelve";
        made.method = logbook.shelves().methods.front().id;
        made.rows = 2;
        made.columns = 6;
        made.blocked = "b6";
        EXPECT_TRUE(db::keep(logbook, made));
        lid = station();
    }

    core::Station station() const {
        for (const core::Station& kept : logbook.shelves().stations)
            if (kept.name == "Lid of twelve") return kept;
        return {};
    }

    core::Batch batchAt(const std::string& positions, int stuck) const {
        core::Batch batch;
        batch.plant = logbook.shelves().plants.front().id;
        batch.method = lid.method;
        batch.station = lid.id;
        batch.stuck = stuck;
        batch.positions = positions;
        return batch;
    }

    core::Result<db::SessionWritten> stick(std::vector<core::Batch> batches) {
        db::SessionDraft draft;
        draft.session.date = core::addDays(positionToday, -30);
        draft.batches = std::move(batches);
        return db::stickSession(logbook, std::move(draft), positionToday);
    }

    core::Batch stuck(const std::string& positions, int count) {
        auto done = stick({batchAt(positions, count)});
        EXPECT_TRUE(done) << done.error().front().sentence;
        return done->batches.front();
    }

    /// Records one look with findings of one outcome.
    core::Result<db::Changes> found(const core::Batch& batch, const std::string& positions, Outcome outcome,
                                    int daysAgo) {
        db::CheckDraft draft;
        draft.check.batch = batch.id;
        draft.check.checkedOn = core::addDays(positionToday, -daysAgo);
        const std::vector<core::Position> all = core::positionsFrom(positions).value();
        for (const core::Position position : all)
            draft.check.findings.push_back({.position = position, .outcome = outcome, .cause = {}});
        const int count = static_cast<int>(all.size());
        if (outcome == Outcome::Rooted) draft.check.rooted = count;
        if (outcome == Outcome::Lost) draft.check.losses.push_back({.cause = {}, .count = count});
        return db::recordChecks(logbook, {draft}, positionToday);
    }

    core::Check firstCheck(const core::Batch& batch) const { return logbook.batch(batch.id)->checks.front(); }

    template <class Done>
    void expectRefused(const Done& done, const std::string& why) const {
        ASSERT_FALSE(done);
        std::string all;
        for (const core::Refusal& refusal : done.error()) all += refusal.sentence + '\n';
        EXPECT_THAT(all, HasSubstr(why));
    }

    db::Logbook logbook = support::sampleLogbook({}, positionToday);
    core::Station lid;
};

TEST_F(PositionActions, AreKeptAsTheyAreWrittenForPeople) {
    EXPECT_EQ(lid.blocked, "B6");
    const core::Batch batch = stuck("a3 a2;a1", 3);
    EXPECT_EQ(logbook.batch(batch.id)->batch.positions, "A1-A3");
}

TEST_F(PositionActions, NoTwoBatchesStandInOnePlace) {
    const core::Batch first = stuck("A1-A3", 3);
    expectRefused(stick({batchAt("A3-A4", 2)}), "Positions are A3, where cuttings of " + first.code + " stand");
    expectRefused(stick({batchAt("A4-A5", 2), batchAt("A5-A6", 2)}), "Batch 2: Positions are A5");
    expectRefused(stick({batchAt("B5-B6", 2)}), "Positions are B6, where Lid of twelve holds no cutting");
    EXPECT_TRUE(stick({batchAt("A4-A5", 2), batchAt("A6", 1), batchAt("", 5)}));
}

TEST_F(PositionActions, AChangedBatchIsHeldAgainstTheOthers) {
    const core::Batch first = stuck("A1-A3", 3);
    core::Batch second = stuck("A4-A6", 3);
    second.positions = "A3-A5";
    expectRefused(db::changeBatch(logbook, second, positionToday), "Positions are A3");
    second.positions = "B1-B3";
    EXPECT_TRUE(db::changeBatch(logbook, second, positionToday));
    second.stuck = 4;
    expectRefused(db::changeBatch(logbook, second, positionToday), "as many as were stuck, 4,");
}

TEST_F(PositionActions, AFreedPlaceIsTakenAndItsOldFindingStays) {
    core::Batch first = stuck("A1-A3", 3);
    ASSERT_TRUE(found(first, "A2", Outcome::Lost, 20));
    stuck("A2", 1);
    first.note = "by the window";
    EXPECT_TRUE(db::changeBatch(logbook, first, positionToday)) << "its own lost place is no fault of its";
    expectRefused(db::deleteCheck(logbook, firstCheck(first).id), "Positions are A2");
    core::Check corrected = firstCheck(first);
    corrected.losses.clear();
    corrected.findings.clear();
    expectRefused(db::changeCheck(logbook, corrected, positionToday), "Positions are A2");
    corrected = firstCheck(first);
    corrected.rooted = 1;
    EXPECT_TRUE(db::changeCheck(logbook, corrected, positionToday));
    EXPECT_THAT(db::verify(logbook, positionToday).faults, IsEmpty());
}

TEST_F(PositionActions, ARootedCuttingHoldsItsPlaceUntilTheBatchCloses) {
    const core::Batch first = stuck("A1-A3", 3);
    ASSERT_TRUE(found(first, "A1", Outcome::Rooted, 20));
    expectRefused(stick({batchAt("A1", 1)}), "Positions are A1");
    ASSERT_TRUE(db::closeBatch(logbook, first.id, core::addDays(positionToday, -2), "potted on", positionToday));
    EXPECT_TRUE(stick({batchAt("A1", 1)}));
}

TEST_F(PositionActions, AReopenedBatchFindsItsPlacesTakenAndSaysSo) {
    const core::Batch first = stuck("A1-A3", 3);
    ASSERT_TRUE(db::closeBatch(logbook, first.id, core::addDays(positionToday, -2), "no room", positionToday));
    const core::Batch second = stuck("A3", 1);
    expectRefused(db::reopenBatch(logbook, first.id), "Positions are A3, where cuttings of " + second.code + " stand");
    ASSERT_TRUE(db::deleteBatch(logbook, second.id));
    EXPECT_TRUE(db::reopenBatch(logbook, first.id));
}

TEST_F(PositionActions, ALayoutDoesNotShrinkUnderABatch) {
    const core::Batch first = stuck("B1-B3", 3);
    core::Station smaller = lid;
    smaller.blocked = "";
    smaller.rows = 1;
    expectRefused(db::keep(logbook, smaller), "Rows is 1, but " + first.code + " is recorded at B1-B3");
    smaller.rows = 2;
    smaller.blocked = "B2";
    expectRefused(db::keep(logbook, smaller), "but cuttings of " + first.code + " stand at B2");
    smaller.blocked = "A1";
    EXPECT_TRUE(db::keep(logbook, smaller));
}

TEST_F(PositionActions, FindingsComeBackByPositionAndAreUndoneWithTheirCheck) {
    const core::Batch first = stuck("A1-A4", 4);
    const auto done = found(first, "A4, A1", Outcome::Rooted, 20);
    ASSERT_TRUE(done);
    EXPECT_THAT(done->batches, testing::ElementsAre(first.id));
    EXPECT_EQ(firstCheck(first).findings.size(), 2U);
    EXPECT_EQ(core::nameOf(firstCheck(first).findings.front().position), "A1");
    expectRefused(found(first, "A1", Outcome::Lost, 10), "Position A1 lost is decided already");
    expectRefused(found(first, "B1", Outcome::Lost, 10), "Position B1 lost is not one of " + first.code);
    logbook.undo();
    EXPECT_THAT(logbook.batch(first.id)->checks, IsEmpty());
    logbook.redo();
    EXPECT_EQ(firstCheck(first).findings.size(), 2U);
}

TEST_F(PositionActions, AMovedFindingTouchesItsBatch) {
    const core::Batch first = stuck("A1-A4", 4);
    ASSERT_TRUE(found(first, "A1", Outcome::Rooted, 20));
    core::Check moved = firstCheck(first);
    moved.findings.front().position = {0, 1};
    const auto done = db::changeCheck(logbook, moved, positionToday);
    ASSERT_TRUE(done);
    EXPECT_THAT(done->tables, testing::ElementsAre("check_findings"));
    EXPECT_THAT(done->batches, testing::ElementsAre(first.id));
}

TEST(VerifyPositions, NamesTwoInOnePlaceAndRowsWithoutAnOwner) {
    const support::ScratchFolder folder;
    const auto file = folder / "bent.strikebook";
    { const auto made = support::sampleLogbook(file, positionToday); }
    support::runSql(
        file,
        "UPDATE batches SET positions = 'A1' WHERE code = (SELECT MIN(code) FROM batches);"
        "INSERT INTO photos VALUES (5, 77, '2026-03-01', '', x'FFD8FF00');"
        "INSERT INTO readings SELECT 6, id, 'solution_ph', '2026-03-01T10:00:00Z', 99, '' FROM stations LIMIT 1");
    std::string all;
    for (const std::string& fault : db::verify(db::Logbook::open(file, support::testOptions()), positionToday).faults)
        all += fault + '\n';
    EXPECT_THAT(all, HasSubstr("Positions are A1, which are 1; as many as were stuck"));
    EXPECT_THAT(all, HasSubstr("A row of photos belongs to one of batches that is not there."));
    EXPECT_THAT(all, HasSubstr("A reading of 2026-03-01T10:00:00Z: Solution pH is 99; 0 to 14 is allowed."));
}

}  // namespace
