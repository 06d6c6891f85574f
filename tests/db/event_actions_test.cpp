// SPDX-License-Identifier: MIT
#include "db/actions/event_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/session_actions.h"
#include "db/actions/shelf_actions.h"
#include "tests/support/every_action.h"

namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using namespace std::chrono_literals;

constexpr core::Date eventToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class EventActions : public testing::Test {
  protected:
    EventActions() {
        core::Station station;
        station.name = "Fog tent";
        station.method = logbook.shelves().methods.front().id;
        EXPECT_TRUE(db::keep(logbook, station));
        for (const core::Station& kept : logbook.shelves().stations)
            if (kept.name == "Fog tent") tent = kept.id;
        batch = logbook.batchLines().front().batch;
    }

    core::Reading reading(double ph, std::chrono::minutes before = 0min) const {
        return {.station = tent, .quantity = core::Quantity::SolutionPh, .readAt = now - before, .value = ph};
    }
    std::vector<core::Reading> readings() const { return logbook.readings(tent, core::Moment{}, now); }
    std::vector<core::Care> care() const { return logbook.care(tent, core::Moment{}, now); }

    const core::Moment now = std::chrono::sys_days(eventToday) + 10h;
    const core::ImageBytes jpeg{0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3};
    db::Logbook logbook = support::sampleLogbook({}, eventToday);
    core::StationId tent;
    core::Batch batch;
};

TEST_F(EventActions, SeveralReadingsAreOneStepAndComeInOrderOfTime) {
    const auto steps = logbook.history().size();
    const auto done = db::recordReadings(logbook, {reading(6.1), reading(5.8, 60min)}, now);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->words, "2 readings");
    EXPECT_THAT(done->tables, ElementsAre("readings"));
    EXPECT_THAT(done->batches, IsEmpty());
    EXPECT_EQ(logbook.history().size(), steps + 1);
    ASSERT_EQ(readings().size(), 2U);
    EXPECT_EQ(readings().front().value, 5.8);
    logbook.undo();
    EXPECT_THAT(readings(), IsEmpty());
}

TEST_F(EventActions, OneWrongReadingKeepsBackAllAndIsTold) {
    const auto done = db::recordReadings(logbook, {reading(6.1), reading(61)}, now);
    ASSERT_FALSE(done);
    ASSERT_EQ(done.error().size(), 1U);
    EXPECT_THAT(done.error().front().sentence, HasSubstr("Reading 2: Solution pH is 61"));
    EXPECT_THAT(readings(), IsEmpty());
}

TEST_F(EventActions, AReadingIsChangedAndDeletedByItsWords) {
    EXPECT_EQ(db::recordReadings(logbook, {reading(6.1)}, now)->words, "reading of solution pH at Fog tent");
    core::Reading changed = readings().front();
    changed.value = 5.9;
    changed.note = "new meter";
    EXPECT_EQ(db::changeReading(logbook, changed, now)->words, "change of a reading of solution pH at Fog tent");
    EXPECT_THAT(readings(), ElementsAre(changed));
    changed.value = 15;
    EXPECT_FALSE(db::changeReading(logbook, changed, now));
    ASSERT_TRUE(db::deleteReading(logbook, changed));
    EXPECT_FALSE(db::deleteReading(logbook, changed)) << "gone already";
    EXPECT_FALSE(db::changeReading(logbook, reading(6), now)) << "never there";
    logbook.undo();
    logbook.undo();
    EXPECT_EQ(readings().front().value, 6.1);
}

TEST_F(EventActions, TheNewestReadingOfEachQuantityIsFound) {
    core::Reading humidity = reading(0);
    humidity.quantity = core::Quantity::RelativeHumidity;
    humidity.value = 90;
    ASSERT_TRUE(db::recordReadings(logbook, {reading(6.1), reading(5.8, 60min), humidity}, now));
    std::vector<double> values;
    for (const core::Reading& newest : logbook.newestReadings())
        if (newest.station == tent) values.push_back(newest.value);
    EXPECT_THAT(values, testing::UnorderedElementsAre(6.1, 90));
}

TEST_F(EventActions, CareIsRecordedChangedAndDeleted) {
    core::Care misted{.station = tent, .doneAt = now, .kind = core::CareKind::Misted};
    EXPECT_EQ(db::recordCare(logbook, {misted}, now)->words, "misted at Fog tent");
    misted.kind = core::CareKind::Other;
    EXPECT_FALSE(db::recordCare(logbook, {misted}, now)) << "without a word";
    core::Care changed = care().front();
    changed.kind = core::CareKind::Other;
    changed.note = "shaded";
    EXPECT_EQ(db::changeCare(logbook, changed, now)->words, "change of care: care at Fog tent");
    EXPECT_THAT(care(), ElementsAre(changed));
    ASSERT_TRUE(db::deleteCare(logbook, changed));
    EXPECT_FALSE(db::deleteCare(logbook, changed));
    EXPECT_THAT(care(), IsEmpty());
}

TEST_F(EventActions, AStationWithReadingsOrCareIsNotRemoved) {
    ASSERT_TRUE(db::recordReadings(logbook, {reading(6.1)}, now));
    EXPECT_FALSE(db::remove(logbook, tent));
    logbook.undo();
    ASSERT_TRUE(db::recordCare(logbook, {{.station = tent, .doneAt = now}}, now));
    EXPECT_FALSE(db::remove(logbook, tent));
    logbook.undo();
    EXPECT_TRUE(db::remove(logbook, tent));
}

TEST_F(EventActions, APhotoTouchesItsBatchAndComesBackByteForByte) {
    const auto done = db::addPhotos(
        logbook, {{.photo = {.batch = batch.id, .takenOn = eventToday, .caption = "before"}, .image = jpeg}},
        eventToday);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->words, "photo of " + batch.code);
    EXPECT_THAT(done->batches, ElementsAre(batch.id));
    core::Photo photo = logbook.photos(batch.id).front();
    EXPECT_EQ(logbook.photoImage(photo.id), jpeg);
    photo.caption = "after";
    const auto changed = db::changePhoto(logbook, photo, eventToday);
    ASSERT_TRUE(changed);
    EXPECT_THAT(changed->batches, ElementsAre(batch.id)) << "though only the caption is in the changeset";
    EXPECT_EQ(logbook.photoImage(photo.id), jpeg);
    const auto deleted = db::deletePhoto(logbook, photo);
    ASSERT_TRUE(deleted);
    EXPECT_THAT(deleted->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.photoImage(photo.id), IsEmpty());
    EXPECT_THAT(logbook.undo()->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.photos(batch.id), ElementsAre(photo));
    EXPECT_EQ(logbook.photoImage(photo.id), jpeg);
}

TEST_F(EventActions, APhotoThatIsNoneIsRefused) {
    const core::Photo photo{.batch = batch.id, .takenOn = eventToday};
    EXPECT_FALSE(db::addPhotos(logbook, {{.photo = photo, .image = {'G', 'I', 'F'}}}, eventToday));
    EXPECT_FALSE(db::addPhotos(logbook, {{.photo = {.takenOn = eventToday}, .image = jpeg}}, eventToday));
    EXPECT_THAT(logbook.photos(batch.id), IsEmpty());
}

TEST_F(EventActions, AnExpenseIsKeptChangedAndDeleted) {
    const auto before = logbook.expenses(batch.id).size();
    core::Expense expense{.batch = batch.id, .spentOn = eventToday, .what = "gel", .hundredths = 850};
    const auto done = db::keepExpense(logbook, expense, eventToday);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->words, "expense for " + batch.code);
    EXPECT_THAT(done->batches, ElementsAre(batch.id));
    expense = logbook.expenses(batch.id).back();
    expense.hundredths = 900;
    EXPECT_THAT(db::keepExpense(logbook, expense, eventToday)->batches, ElementsAre(batch.id));
    EXPECT_THAT(logbook.expenses(batch.id), Contains(expense));
    expense.hundredths = -1;
    EXPECT_FALSE(db::keepExpense(logbook, expense, eventToday));
    ASSERT_TRUE(db::deleteExpense(logbook, expense));
    EXPECT_FALSE(db::deleteExpense(logbook, expense));
    EXPECT_EQ(logbook.expenses(batch.id).size(), before);
}

TEST_F(EventActions, WhatBelongsToABatchGoesAndComesBackWithIt) {
    ASSERT_TRUE(
        db::addPhotos(logbook, {{.photo = {.batch = batch.id, .takenOn = eventToday}, .image = jpeg}}, eventToday));
    ASSERT_TRUE(db::keepExpense(logbook, {.batch = batch.id, .spentOn = eventToday, .what = "gel", .hundredths = 850},
                                eventToday));
    const auto photos = logbook.photos(batch.id);
    const auto expenses = logbook.expenses(batch.id);
    ASSERT_TRUE(db::deleteBatch(logbook, batch.id));
    EXPECT_THAT(logbook.photos(batch.id), IsEmpty());
    EXPECT_THAT(logbook.expenses(batch.id), IsEmpty());
    logbook.undo();
    EXPECT_EQ(logbook.photos(batch.id), photos);
    EXPECT_EQ(logbook.expenses(batch.id), expenses);
}

}  // namespace
