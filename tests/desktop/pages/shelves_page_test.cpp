// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelves_page.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTableView>

#include "app/desktop/batches/batch_list_page.h"
#include "app/desktop/shelves/shelf_list.h"
#include "app/desktop/shelves/shelf_model.h"
#include "app/desktop/shelves/shelf_view.h"
#include "app/desktop/widgets/fault_label.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::ShelfKind;
using pages::named;
using pages::press;
using pages::type;

class ShelvesPages : public pages::Desk {
  protected:
    ShelvesPages() {
        fill(support::recordsOf({support::aBatch().looked(14, {.lost = 2}), support::aBatch(),
                                 support::aBatch().of(support::deutzia).at(support::benchWest).block("A")}));
        page_ = std::make_unique<desktop::ShelvesPage>(context());
        pages::show(*page_);
        page_->activated();
    }

    void open(ShelfKind kind) {
        named<QListWidget>(*page_, "shelfList").setCurrentRow(static_cast<int>(kind));
        page_->activated();
    }
    desktop::ShelfView& view() {
        for (auto* each : page_->findChildren<desktop::ShelfView*>())
            if (each->isVisible()) return *each;
        throw std::logic_error("no shelf is in front");
    }
    QTableView& table() { return named<QTableView>(view(), "shelfTable"); }
    QStringList names() {
        QStringList all;
        for (int row = 0; row < table().model()->rowCount(); ++row)
            all << table().model()->index(row, 0).data().toString();
        return all;
    }
    QString current() { return table().model()->index(table().currentIndex().row(), 0).data().toString(); }
    void choose(const QString& name) {
        const qsizetype row = names().indexOf(name);
        ASSERT_GE(row, 0) << name.toStdString() << " is not on the shelf";
        table().selectRow(static_cast<int>(row));
        table().setFocus();
    }
    QDialog& form() {
        for (QDialog* each : view().findChildren<QDialog*>())
            if (each->isVisible()) return *each;
        throw std::logic_error("no form is open");
    }
    bool hasForm() {
        const auto dialogs = view().findChildren<QDialog*>();
        return std::any_of(dialogs.begin(), dialogs.end(), [](const QDialog* each) { return each->isVisible(); });
    }
    static QStringList faultsOn(const QWidget& within) {
        QStringList sentences;
        for (const auto* label : within.findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) sentences << label->fault();
        return sentences;
    }
    static void retype(QLineEdit& edit, const QString& text) {
        edit.setFocus();
        edit.selectAll();
        QTest::keyClick(&edit, Qt::Key_Delete);
        QTest::keyClicks(&edit, text);
    }
    /// Offscreen nobody hands the keyboard back to the window behind when a dialog closes.
    void comeBack() {
        QApplication::setActiveWindow(page_.get());
        EXPECT_TRUE(QTest::qWaitForWindowActive(page_.get()));
    }
    void click(const char* name) { named<QPushButton>(view(), name).click(); }
    QString fault() { return named<desktop::FaultLabel>(view(), "shelfFault").fault(); }

    std::unique_ptr<desktop::ShelvesPage> page_;
};

struct Kind {
    ShelfKind kind;
    const char* nameField;
    const char* save;
    const char* fresh;  // a name that nothing has
    const char* used;   // a thing that batches name
};

const Kind everyKind[] = {{ShelfKind::Plants, "plantBotanical", "formSave", "Griselinia littoralis", "Hebe albicans"},
                          {ShelfKind::StockPlants, "stockPlantLabel", "formSave", "tree in the yard", ""},
                          {ShelfKind::Methods, "methodName", "formSave", "sand bed", "aerated water"},
                          {ShelfKind::Stations, "stationName", "describeStation", "Tub of zinc", ""},
                          {ShelfKind::Media, "mediumName", "formSave", "plain sand", ""},
                          {ShelfKind::Treatments, "treatmentName", "formSave", "willow tea", ""},
                          {ShelfKind::CuttingKinds, "cuttingKindName", "formSave", "eye", ""},
                          {ShelfKind::LossCauses, "lossCauseName", "formSave", "eaten by slugs", ""},
                          {ShelfKind::Trials, "trialName", "formSave", "Sand or water", ""},
                          {ShelfKind::CheckSchedules, "scheduleName", "formSave", "slow ones", ""}};

class EveryShelf : public ShelvesPages, public testing::WithParamInterface<Kind> {
  protected:
    EveryShelf() { open(GetParam().kind); }

    QString fresh() const { return QString::fromUtf8(GetParam().fresh); }
    void save() {
        named<QPushButton>(form(), GetParam().save).click();
        if (!hasForm()) comeBack();
    }
    QLineEdit& nameField() { return named<QLineEdit>(form(), GetParam().nameField); }
    void makeFresh() {
        table().setFocus();
        if (table().isVisible())
            press(Qt::Key_Insert);
        else
            click("shelfNew");
        if (GetParam().kind == ShelfKind::StockPlants) named<QComboBox>(form(), "stockPlantOf").setCurrentIndex(0);
        retype(nameField(), fresh());
        save();
    }
    /// Something that batches name, by the column of their number.
    QString usedOne() {
        const auto& model = *qobject_cast<desktop::ShelfModel*>(table().model());
        for (int row = 0; row < model.rowCount(); ++row)
            if (model.useOf(model.itemAt(row)->id).batches > 0) return model.index(row, 0).data().toString();
        return {};
    }
};

TEST_P(EveryShelf, TakesANewThingAndPutsItInFront) {
    makeFresh();
    EXPECT_FALSE(hasForm());
    EXPECT_TRUE(names().contains(fresh()));
    EXPECT_EQ(current(), fresh());
    EXPECT_TRUE(table().hasFocus());
    ASSERT_TRUE(workspace_.undo());
    EXPECT_FALSE(names().contains(fresh()));
    ASSERT_TRUE(workspace_.redo());
    EXPECT_TRUE(names().contains(fresh()));
}

TEST_P(EveryShelf, MarksABlankNameWhereItStandsAndKeepsTheForm) {
    const qsizetype before = names().size();
    click("shelfNew");
    save();
    ASSERT_TRUE(hasForm());
    EXPECT_FALSE(faultsOn(form()).isEmpty());
    if (GetParam().kind == ShelfKind::StockPlants) named<QComboBox>(form(), "stockPlantOf").setCurrentIndex(0);
    retype(nameField(), fresh());
    save();
    EXPECT_FALSE(hasForm());
    EXPECT_EQ(names().size(), before + 1);
}

TEST_P(EveryShelf, RefusesANameThatIsTaken) {
    makeFresh();
    table().setFocus();
    press(Qt::Key_Insert);
    if (GetParam().kind == ShelfKind::StockPlants) named<QComboBox>(form(), "stockPlantOf").setCurrentIndex(0);
    retype(nameField(), fresh());
    save();
    ASSERT_TRUE(hasForm());
    EXPECT_TRUE(faultsOn(form()).join(' ').contains("taken")) << faultsOn(form()).join(' ').toStdString();
    EXPECT_EQ(nameField().text(), fresh()) << "nothing typed is lost";
}

TEST_P(EveryShelf, SavesByEnterInAField) {
    makeFresh();
    choose(fresh());
    press(Qt::Key_F2);
    retype(nameField(), fresh() + " three");
    QTest::keyClick(&nameField(), Qt::Key_Return);
    EXPECT_FALSE(hasForm());
    EXPECT_TRUE(names().contains(fresh() + " three"));
}

TEST_P(EveryShelf, ChangesAThingByItsForm) {
    makeFresh();
    choose(fresh());
    press(Qt::Key_F2);
    retype(nameField(), fresh() + " two");
    save();
    EXPECT_EQ(current(), fresh() + " two");
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(names().contains(fresh()));
    choose(fresh());
    press(Qt::Key_Return);
    EXPECT_TRUE(hasForm()) << "Enter opens the form too";
}

TEST_P(EveryShelf, RemovesWhatNothingUsesAndTakesThatBack) {
    makeFresh();
    choose(fresh());
    press(Qt::Key_Delete);
    EXPECT_FALSE(names().contains(fresh()));
    EXPECT_EQ(fault(), QString());
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(names().contains(fresh()));
}

TEST_P(EveryShelf, RefusesToRemoveWhatIsUsedAndSaysWhatToDo) {
    const QString used = usedOne();
    if (used.isEmpty()) return;  // no batch of these records names one
    choose(used);
    press(Qt::Key_Delete);
    EXPECT_TRUE(names().contains(used));
    EXPECT_TRUE(fault().contains("retire") || fault().contains("first")) << fault().toStdString();
}

TEST_P(EveryShelf, RetiresAThingAndTakesItBackIntoUse) {
    makeFresh();
    choose(fresh());
    auto& button = named<QPushButton>(view(), "shelfRetire");
    if (GetParam().kind == ShelfKind::Trials) {
        EXPECT_FALSE(button.isVisible());
        return;
    }
    const int state = table().model()->columnCount() - 1;
    const auto stateNow = [&] { return table().model()->index(table().currentIndex().row(), state).data().toString(); };
    button.click();
    EXPECT_EQ(stateNow(), "retired");
    EXPECT_EQ(button.text(), "&Take back into use");
    button.click();
    EXPECT_EQ(stateNow(), "no batches");
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(stateNow(), "retired");
}

TEST_P(EveryShelf, FiltersWhileOneTypesAndOffersToClear) {
    makeFresh();
    page_->focusFilter();
    type(fresh());
    EXPECT_EQ(names(), QStringList(fresh()));
    type(" zzz");
    EXPECT_TRUE(named<QLabel>(view(), "shelfEmptyTitle").isVisible());
    named<QPushButton>(view(), "shelfEmptyButton").click();
    EXPECT_GE(names().size(), 1);
}

INSTANTIATE_TEST_SUITE_P(Of, EveryShelf, testing::ValuesIn(everyKind),
                         [](const auto& kind) { return std::string(kind.param.nameField); });

TEST_F(ShelvesPages, TeachWhatAnEmptyShelfIsFor) {
    open(ShelfKind::CheckSchedules);
    EXPECT_TRUE(named<QLabel>(view(), "shelfEmptyText").text().contains("How often"));
    named<QPushButton>(view(), "shelfEmptyButton").click();
    EXPECT_EQ(form().objectName(), "checkScheduleForm");
}

TEST_F(ShelvesPages, MergeTwoSpellingsOfOnePlant) {
    core::Records records =
        support::recordsOf({support::aBatch().code("B260001A"), support::aBatch().code("B260002C")});
    core::Plant misspelt;
    misspelt.id = {77};
    misspelt.botanicalName = "Hebe albicanis";
    records.shelves.plants.push_back(misspelt);
    records.batches.back().batch.plant = {77};
    records.batches.back().batch.stockPlant = {};
    fill(records);
    open(ShelfKind::Plants);
    choose("Hebe albicanis");
    click("shelfMerge");
    QDialog& dialog = form();
    EXPECT_TRUE(named<QComboBox>(dialog, "mergeOther").currentText().startsWith("Hebe albicans"))
        << "the likeliest other spelling comes first";
    named<QRadioButton>(dialog, "mergeOtherStays").click();
    const QString words = named<QLabel>(dialog, "mergeWords").text();
    EXPECT_TRUE(words.contains("1 batch")) << words.toStdString();
    EXPECT_TRUE(words.contains("goes from the shelf"));
    named<QPushButton>(dialog, "mergeAgree").click();
    EXPECT_FALSE(names().contains("Hebe albicanis"));
    EXPECT_EQ(current(), "Hebe albicans");
    EXPECT_EQ(batch("B260002C").batch.plant, batch("B260001A").batch.plant);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(names().contains("Hebe albicanis"));
    EXPECT_NE(batch("B260002C").batch.plant, batch("B260001A").batch.plant);
}

TEST_F(ShelvesPages, RefuseToMergeStationsOfTwoMethodsInTheDialog) {
    open(ShelfKind::Stations);
    choose("Tub north");
    click("shelfMerge");
    QDialog& dialog = form();
    auto& other = named<QComboBox>(dialog, "mergeOther");
    for (int number = 0; number < other.count(); ++number)
        if (other.itemText(number).startsWith("Bench west")) other.setCurrentIndex(number);
    named<QPushButton>(dialog, "mergeAgree").click();
    ASSERT_TRUE(hasForm());
    EXPECT_FALSE(faultsOn(dialog).isEmpty());
    EXPECT_TRUE(names().contains("Tub north"));
}

TEST_F(ShelvesPages, OfferToMergeOnlyWhatCanBeMerged) {
    for (const desktop::Shelf& shelf : desktop::allShelves()) {
        open(shelf.kind);
        EXPECT_EQ(named<QPushButton>(view(), "shelfMerge").isVisible(), bool(shelf.merge)) << shelf.word.toStdString();
    }
}

TEST_F(ShelvesPages, GoToAPlantAStockPlantOrAStation) {
    EXPECT_TRUE(page_->showPlace(desktop::placeOf(support::benchEast)));
    EXPECT_EQ(page_->place().id, static_cast<std::int64_t>(ShelfKind::Stations));
    EXPECT_EQ(current(), "Bench east");
    EXPECT_TRUE(page_->showPlace(desktop::placeOf(support::hebe)));
    EXPECT_EQ(current(), "Hebe albicans");
    EXPECT_FALSE(page_->showPlace(desktop::placeOf(core::PlantId{123456})));
    EXPECT_TRUE(page_->showPlace({.page = {}, .kind = desktop::Place::Kind::Shelf, .id = 4}));
    EXPECT_EQ(named<QListWidget>(*page_, "shelfList").currentRow(), 4);
}

TEST_F(ShelvesPages, AreReachedFromTheBatchesOfAThing) {
    desktop::BatchListPage batches(context());
    ASSERT_TRUE(batches.showOnly(desktop::placeOf(support::deutzia)));
    const QSignalSpy wanted(&batches, &desktop::BatchListPage::placeWanted);
    named<QPushButton>(batches, "onItsShelf").click();
    ASSERT_EQ(wanted.count(), 1);
    const auto place = wanted.front().front().value<desktop::Place>();
    EXPECT_EQ(place.page, "shelves");
    ASSERT_TRUE(page_->showPlace(place));
    EXPECT_EQ(current(), "Deutzia gracilis 'Nikko'");
}

TEST_F(ShelvesPages, AskForTheBatchesOfAThing) {
    open(ShelfKind::Plants);
    choose("Hebe albicans");
    const QSignalSpy wanted(page_.get(), &desktop::Page::placeWanted);
    click("shelfBatches");
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.front().front().value<desktop::Place>(), desktop::placeOf(support::hebe));
}

TEST_F(ShelvesPages, KeepWhatWasTypedUnlessTheyAreToldToThrowItAway) {
    open(ShelfKind::Methods);
    click("shelfNew");
    retype(named<QLineEdit>(form(), "methodName"), "sand");
    prompts_.willConfirm(false);
    QTest::keyClick(&form(), Qt::Key_Escape);
    ASSERT_TRUE(hasForm());
    EXPECT_EQ(named<QLineEdit>(form(), "methodName").text(), "sand");
    prompts_.willConfirm(true);
    QTest::keyClick(&form(), Qt::Key_Escape);
    EXPECT_FALSE(hasForm());
    EXPECT_FALSE(names().contains("sand"));
}

}  // namespace
