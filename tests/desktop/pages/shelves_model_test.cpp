// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelf_model.h"

#include "app/desktop/shelves/likeness.h"
#include "app/desktop/shelves/shelf_list.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::Shelf;
using desktop::ShelfKind;
using desktop::ShelfUses;

TEST(LettersApart, CountsWhatHasToBeChanged) {
    EXPECT_EQ(desktop::lettersApart("Hebe albicans", "Hebe albicans"), 0);
    EXPECT_EQ(desktop::lettersApart("Hebe albicans", "Hebe albicanis"), 1);
    EXPECT_EQ(desktop::lettersApart("kitten", "sitting"), 3);  // Levenshtein's distance of the usual example
    EXPECT_EQ(desktop::lettersApart("", "abc"), 3);
}

TEST(LettersApart, PassesOverCapitalsAccentsAndCrosses) {
    EXPECT_EQ(desktop::lettersApart("Hebe × andersonii", "hebe andersonii"), 0);
    EXPECT_EQ(desktop::lettersApart("Deutzia gracilis 'Été'", "deutzia gracilis ete"), 0);
}

core::Plant plant(std::int64_t id, const std::string& name, int daysToRoot) {
    core::Plant made;
    made.id = {id};
    made.botanicalName = name;
    made.usualRootingDaysHigh = daysToRoot;
    return made;
}

class ShelfTables : public pages::Desk {
  protected:
    static Shelf shelf(ShelfKind kind) { return desktop::allShelves()[static_cast<std::size_t>(kind)]; }
    std::unique_ptr<desktop::ShelfModel> modelOf(ShelfKind kind) {
        const Shelf described = shelf(kind);
        auto model = std::make_unique<desktop::ShelfModel>(described.columns, nullptr, bool(described.uses));
        model->show(described.items(workspace_.shelves(), support::today()),
                    described.uses ? described.uses(workspace_) : ShelfUses());
        return model;
    }
    static QStringList column(const desktop::ShelfModel& model, int number) {
        QStringList texts;
        for (int row = 0; row < model.rowCount(); ++row) texts << model.index(row, number).data().toString();
        return texts;
    }
    static int columnNamed(const desktop::ShelfModel& model, const QString& title) {
        for (int number = 0; number < model.columnCount(); ++number)
            if (model.headerData(number, Qt::Horizontal).toString() == title) return number;
        return -1;
    }
};

TEST_F(ShelfTables, AreListedInTheOrderOfTheirKinds) {
    const std::vector<Shelf> shelves = desktop::allShelves();
    ASSERT_EQ(shelves.size(), 12U);
    for (std::size_t number = 0; number < shelves.size(); ++number)
        EXPECT_EQ(static_cast<std::size_t>(shelves[number].kind), number);
}

TEST_F(ShelfTables, ObeyTheRulesOfModels) {
    for (const Shelf& each : desktop::allShelves()) {
        const auto model = modelOf(each.kind);
        const pages::Obeys rules(model.get());
        model->setFilter("no such thing");
        EXPECT_EQ(model->rowCount(), 0);
        model->setFilter({});
        for (int number = 0; number < model->columnCount(); ++number) {
            model->sort(number, Qt::DescendingOrder);
            EXPECT_FALSE(model->headerData(number, Qt::Horizontal).toString().isEmpty());
        }
    }
}

TEST_F(ShelfTables, CountTheBatchesThatUseEachThingAndTheirLastDay) {
    fill(support::recordsOf({support::aBatch().looked(14, {.lost = 2}), support::aBatch(),
                             support::aBatch().of(support::deutzia).at(support::benchWest)}));
    const ShelfUses plants = shelf(ShelfKind::Plants).uses(workspace_);
    EXPECT_EQ(plants.at(support::hebe.value).batches, 2);
    EXPECT_EQ(plants.at(support::hebe.value).lastDay, core::addDays(support::stickingDay(), 14));
    EXPECT_EQ(plants.at(support::deutzia.value).lastDay, support::stickingDay());
    const ShelfUses causes = shelf(ShelfKind::LossCauses).uses(workspace_);
    EXPECT_EQ(causes.at(support::rotted.value).batches, 1);
    EXPECT_EQ(causes.at(support::rotted.value).lastDay, core::addDays(support::stickingDay(), 14));
    EXPECT_FALSE(causes.contains(support::driedOut.value));
}

TEST_F(ShelfTables, CountTheBatchesThatAScheduleHoldsFor) {
    core::Records records = support::recordsOf({support::aBatch(), support::aBatch().of(support::deutzia)});
    records.shelves.checkSchedules = {{.id = {51}, .name = "slow", .firstAfterDays = 21, .everyDays = 14}};
    for (core::Plant& plant : records.shelves.plants)
        if (plant.id == support::deutzia) plant.checkSchedule = {51};
    fill(records);
    const ShelfUses uses = shelf(ShelfKind::CheckSchedules).uses(workspace_);
    ASSERT_EQ(uses.size(), 1U);
    EXPECT_EQ(uses.begin()->second.batches, 1);
}

TEST_F(ShelfTables, SortFiguresAsFiguresAndNamesWithoutTheirCross) {
    core::Records records = support::recordsOf({});
    records.shelves.plants = {plant(1, "Salvia rosmarinus", 9), plant(2, "× Fatshedera lizei", 28),
                              plant(3, "Hebe albicans", 100)};
    records.shelves.stockPlants.clear();
    fill(records);
    const auto model = modelOf(ShelfKind::Plants);
    model->sort(0);
    EXPECT_EQ(column(*model, 0), QStringList({"× Fatshedera lizei", "Hebe albicans", "Salvia rosmarinus"}));
    const int days = columnNamed(*model, "Days to root");
    model->sort(days, Qt::DescendingOrder);
    EXPECT_EQ(column(*model, days), QStringList({"100", "28", "9"}));
}

TEST_F(ShelfTables, SayWhatIsRetiredAndFindItByThatWord) {
    core::Records records = support::recordsOf({support::aBatch()});
    records.shelves.plants.front().isRetired = true;
    fill(records);
    const auto model = modelOf(ShelfKind::Plants);
    model->setFilter("retired");
    ASSERT_EQ(model->rowCount(), 1);
    EXPECT_TRUE(model->itemAt(0)->isRetired);
}

}  // namespace
