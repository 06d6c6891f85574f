// SPDX-License-Identifier: MIT
#include "app/desktop/find/find_index.h"

#include "app/desktop/find/search_text.h"
#include "gtest/gtest.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

using desktop::FindAnswer;
using desktop::FindIndex;
using desktop::FindKind;
using support::aBatch;

core::BatchLine lineFrom(const core::BatchRecord& record) {
    return {.batch = record.batch, .tally = core::tallyOf(record.batch, record.checks)};
}

core::Shelves shelvesWithAccents() {
    core::Shelves shelves = support::someShelves();
    core::Plant plant;
    plant.id = {103};
    plant.botanicalName = "Hebe × andersonii";
    plant.cultivar = "Crème Brûlée";
    shelves.plants.push_back(plant);
    return shelves;
}

std::vector<core::BatchLine> someLines() {
    core::BatchRecord noted = aBatch().code("B260002C").of(support::deutzia).at(support::benchWest);
    noted.batch.note = "beside B260777X, from the Größe pot";
    return {lineFrom(aBatch().code("B260001A")), lineFrom(noted),
            lineFrom(aBatch().code("A1").stuckOn({core::addDays(support::stickingDay(), 3)})),
            lineFrom(aBatch().code("A10"))};
}

class SomeIndex : public testing::Test {
  protected:
    SomeIndex() {
        desktop::FoundThing page;
        page.kind = FindKind::Page;
        page.title = "Head to head";
        page.place = desktop::placeOf(QString("head_to_head"));
        index_.setDoors({page});
        index_.build(shelvesWithAccents(), someLines());
    }

    QStringList titles(const QString& typed) const {
        QStringList all;
        for (const desktop::FoundThing& thing : index_.find(typed).shown) all << thing.title;
        return all;
    }

    FindIndex index_;
};

TEST(SearchText, LeavesOutCapitalsAccentsCrossesAndQuotationMarks) {
    EXPECT_EQ(desktop::searchText("  Hebe  × andersonii 'Crème Brûlée' "), "hebe andersonii creme brulee");
    EXPECT_EQ(desktop::searchWords("hebe x AND"), QStringList({"hebe", "and"}));
    EXPECT_EQ(desktop::searchWords("x"), QStringList({"x"}));
}

TEST_F(SomeIndex, FindsABatchByAnyPartOfItsCode) {
    EXPECT_EQ(titles("0001a"), QStringList({"B260001A"}));
    EXPECT_EQ(titles("b260001A"), QStringList({"B260001A"}));
}

TEST_F(SomeIndex, FindsPlantsWithoutTheirAccentsAndCrosses) {
    for (const char* typed : {"creme", "BRÛLÉE", "hebe anders", "brulee hebe", "hebe x andersonii", "'Crème Brûlée'"})
        EXPECT_TRUE(titles(typed).contains("Hebe × andersonii 'Crème Brûlée'")) << typed;
}

TEST_F(SomeIndex, WantsEveryWordInAnyOrder) {
    const core::Plant* deutzia = core::find(index_.shelves().plants, support::deutzia);
    const QString station = QString::fromStdString(core::find(index_.shelves().stations, support::benchWest)->name);
    EXPECT_TRUE(titles(station + " nikko").contains("B260002C"));
    EXPECT_TRUE(titles("nikko " + station).contains("B260002C"));
    EXPECT_TRUE(titles("nikko 0001").isEmpty());
    EXPECT_TRUE(titles("nikko").contains(QString::fromStdString(core::fullName(*deutzia))));
    EXPECT_TRUE(titles(station).contains(station));
}

TEST_F(SomeIndex, FindsANoteAndShowsIt) {
    const FindAnswer answer = index_.find("grosse");
    ASSERT_EQ(answer.shown.size(), 1U);
    EXPECT_EQ(answer.shown[0].title, "B260002C");
    EXPECT_TRUE(answer.shown[0].detail.contains("Größe"));
    EXPECT_FALSE(index_.find("B260002C").shown[0].detail.contains("Größe")) << "found by its code";
}

TEST_F(SomeIndex, ShowsTheCommonNameThatABatchWasFoundBy) {
    core::Shelves shelves = shelvesWithAccents();
    for (core::Plant& plant : shelves.plants)
        if (plant.id == support::deutzia) plant.commonName = "zebra bush";
    index_.build(shelves, someLines());
    for (const desktop::FoundThing& thing : index_.find("zebra").shown)
        EXPECT_TRUE(thing.kind != FindKind::Batch || thing.detail.contains("zebra bush"));
    EXPECT_FALSE(index_.find("B260002C").shown[0].detail.contains("zebra"));
}

TEST_F(SomeIndex, PutsTheExactCodeFirstThenWhatBeginsWithIt) {
    EXPECT_EQ(titles("a1").mid(0, 2), QStringList({"A1", "A10"}));
    EXPECT_TRUE(index_.find("A1").shown[0].isExact);
    EXPECT_FALSE(index_.find("A1").shown[1].isExact);
}

TEST_F(SomeIndex, PutsThePlantBeforeItsBatches) {
    const FindAnswer answer = index_.find("deutzia");
    ASSERT_GE(answer.shown.size(), 2U);
    EXPECT_EQ(answer.shown.front().kind, FindKind::Plant);
    EXPECT_EQ(answer.shown.back().kind, FindKind::Batch);
}

TEST_F(SomeIndex, FindsPages) {
    EXPECT_EQ(titles("to head"), QStringList({"Head to head"}));
    EXPECT_EQ(index_.find("head").shown[0].place.page, "head_to_head");
}

TEST_F(SomeIndex, FindsNothingForNothing) {
    EXPECT_EQ(index_.find("").total, 0);
    EXPECT_EQ(index_.find("  × ").total, 0);
    EXPECT_EQ(index_.find("orchid").total, 0);
}

TEST_F(SomeIndex, FollowsWhatWasTouched) {
    core::BatchLine renamed = someLines()[0];
    const core::BatchId gone = someLines()[3].batch.id;
    index_.build(shelvesWithAccents(), {renamed});
    renamed.batch.code = "Z9";
    index_.refresh({renamed.batch.id, gone}, {renamed});
    EXPECT_EQ(titles("z9"), QStringList({"Z9"}));
    EXPECT_TRUE(titles("0001").isEmpty());
}

TEST(FindIndex, ShowsFiftyOfManyNewestFirstAndCountsTheRest) {
    std::vector<core::BatchLine> lines;
    for (int i = 0; i < 20'000; ++i) {
        core::Batch batch;
        batch.id = {i + 1};
        batch.code = "B26" + std::to_string(10'000 + i);
        batch.stuckOn = core::addDays(support::stickingDay(), i % 300);
        batch.plant = support::hebe;
        batch.station = support::tubNorth;
        lines.push_back({.batch = batch, .tally = {}});
    }
    FindIndex index;
    index.build(support::someShelves(), lines);
    const FindAnswer answer = index.find("b26");
    EXPECT_EQ(answer.total, 20'000);
    ASSERT_EQ(answer.shown.size(), 50U);
    EXPECT_EQ(answer.shown.front().title, "B2610299") << "the last day, and of that day the first code";
    EXPECT_EQ(index.find("B2615000").shown.front().title, "B2615000");
    const FindAnswer hebe = index.find("hebe");
    EXPECT_EQ(hebe.shown.size(), 50U);
    EXPECT_EQ(hebe.shown.front().kind, FindKind::Plant) << "the many leave room for the few";
}

}  // namespace
