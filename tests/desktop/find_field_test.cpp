// SPDX-License-Identifier: MIT
// The whole window with the field that finds, as a person or a scanner types into it.
#include "app/desktop/find/find_field.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <QTreeView>

#include "app/desktop/batches/batches_page.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "core/batch/batch_code.h"
#include "db/actions/session_actions.h"
#include "db/actions/shelf_actions.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

const std::string firstCode = core::batchCode(2026, 1);
const std::string second = core::batchCode(2026, 2);

class FindInTheWindow : public support::Desk {
  protected:
    [[nodiscard]] std::vector<desktop::PageEntry> pages() const override {
        std::vector<desktop::PageEntry> entries = Desk::pages();
        desktop::PageEntry batches;
        batches.name = "batches";
        batches.title = "Batches";
        batches.icon = "batches";
        batches.shortcut = "Ctrl+2";
        batches.make = [](const desktop::PageContext& context, QWidget* parent) -> desktop::Page* {
            return new desktop::BatchesPage(context, parent);
        };
        batches.shows = {desktop::Place::Kind::Batch, desktop::Place::Kind::Plant, desktop::Place::Kind::StockPlant,
                         desktop::Place::Kind::Station};
        entries.insert(entries.begin() + 1, batches);
        return entries;
    }

    void openTwo() {
        open({support::aBatch().code(firstCode).stuckOn(core::addDays(today(), -7)),
              support::aBatch()
                  .code(second)
                  .of(support::deutzia)
                  .at(support::benchWest)
                  .stuckOn(core::addDays(today(), -14))});
        show();
    }

    /// Each key goes to whoever has the focus then.
    static void type(const QString& text) {
        for (const QChar letter : text) QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
        support::settle();
    }
    static void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(QApplication::focusWidget(), key, with);
        support::settle();
    }
    /// A scanner's keys, its last one included.
    static void scan(const std::string& code) {
        type(QString::fromStdString(code));
        press(Qt::Key_Return);
    }

    desktop::FindField* field() { return find<desktop::FindField>("findField"); }
    QListView* list() { return find<QListView>("findList"); }
    QString found(int row) { return list()->model()->index(row, 0).data().toString(); }
    bool isListShown() { return find("findPopup")->isVisible(); }
    /// The code of the batch that is in front; empty when none is.
    QString batchInFront() {
        const auto* page = window().findChild<desktop::BatchesPage*>("batchesPage");
        const auto* title = window().findChild<QLabel*>("batchTitle");
        return page && title && title->isVisible() ? title->text() : QString();
    }
    QAbstractItemModel* batches() { return find<QTableView>("batchTable")->model(); }
};

TEST_F(FindInTheWindow, FindsAsOneTypesAndEnterOpens) {
    openTwo();
    action("editFind")->trigger();
    ASSERT_TRUE(field()->hasFocus());
    type("nikko west");
    ASSERT_TRUE(isListShown());
    ASSERT_EQ(list()->model()->rowCount(), 1);
    EXPECT_EQ(found(0), QString::fromStdString(second));
    press(Qt::Key_Return);
    EXPECT_EQ(batchInFront(), QString::fromStdString(second));
    EXPECT_FALSE(isListShown());
    EXPECT_EQ(field()->text(), "");
    EXPECT_FALSE(field()->hasFocus()) << "the focus is where work goes on";
}

TEST_F(FindInTheWindow, ChoosesWithTheArrowsAndTellsAScreenReader) {
    openTwo();
    field()->enter();
    type("b26");
    ASSERT_GE(list()->model()->rowCount(), 2);
    const QString other = found(1);
    press(Qt::Key_Down);
    EXPECT_EQ(list()->currentIndex().row(), 1);
    EXPECT_TRUE(field()->accessibleDescription().contains(other));
    EXPECT_TRUE(field()->hasFocus());
    press(Qt::Key_Return);
    EXPECT_EQ(batchInFront(), other);
}

TEST_F(FindInTheWindow, OpensWhatIsClicked) {
    openTwo();
    field()->enter();
    type(QString::fromStdString(second).toLower());
    QTest::mouseClick(list()->viewport(), Qt::LeftButton, {},
                      list()->visualRect(list()->model()->index(0, 0)).center());
    EXPECT_EQ(batchInFront(), QString::fromStdString(second));
}

TEST_F(FindInTheWindow, EscapeClearsAndGoesBackToWhereTheFocusWas) {
    openTwo();
    auto* due = find<QTreeView>("benchDue");
    due->setFocus();
    press(Qt::Key_K, Qt::ControlModifier);
    field()->enter();
    type("hebe");
    ASSERT_TRUE(isListShown());
    press(Qt::Key_Escape);
    EXPECT_FALSE(isListShown());
    EXPECT_EQ(field()->text(), "");
    EXPECT_TRUE(due->hasFocus());
}

TEST_F(FindInTheWindow, AScannedLabelOpensItsBatchFromWhereverItIsRead) {
    openTwo();
    for (const char* where : {"benchDue", "benchStations", "benchRound", "pageList"}) {
        window().showPage(0);
        find(where)->setFocus();
        scan(second);
        EXPECT_EQ(batchInFront(), QString::fromStdString(second)) << where;
    }
    scan(firstCode);
    EXPECT_EQ(batchInFront(), QString::fromStdString(firstCode)) << "from the page of another batch";
}

TEST_F(FindInTheWindow, AScannerWithoutShiftReadsTheSameBatch) {
    openTwo();
    find("benchDue")->setFocus();
    scan(QString::fromStdString(second).toLower().toStdString());
    EXPECT_EQ(batchInFront(), QString::fromStdString(second));
}

TEST_F(FindInTheWindow, LeavesLettersToTheFieldThatHasTheFocus) {
    openTwo();
    window().showPage(1);
    window().currentPage()->focusFilter();
    type("nikko");
    EXPECT_EQ(find<QLineEdit>("batchFilter")->text(), "nikko");
    EXPECT_EQ(field()->text(), "");
}

TEST_F(FindInTheWindow, SaysThatAScannedCodeIsNotInTheLogbookAndReadsTheNext) {
    openTwo();
    find("benchDue")->setFocus();
    const std::string unknown = core::batchCode(2026, 777);
    scan(unknown);
    EXPECT_EQ(batchInFront(), "");
    EXPECT_TRUE(barText().contains(QString::fromStdString(unknown))) << barText().toStdString();
    EXPECT_TRUE(barText().contains("no batch"));
    scan(second);
    EXPECT_EQ(batchInFront(), QString::fromStdString(second));
    EXPECT_FALSE(barText().contains(QString::fromStdString(unknown))) << "done with";
}

TEST_F(FindInTheWindow, SaysThatACodeWasMisreadWhenItsLetterDoesNotFit) {
    openTwo();
    find("benchDue")->setFocus();
    std::string misread = firstCode;
    misread[6] = misread[6] == '9' ? '8' : static_cast<char>(misread[6] + 1);
    scan(misread);
    EXPECT_EQ(batchInFront(), "");
    EXPECT_TRUE(barText().contains("misread")) << barText().toStdString();
}

TEST_F(FindInTheWindow, DoesNotOpenABatchWhoseNoteMentionsAnUnknownCode) {
    const std::string unknown = core::batchCode(2026, 777);
    core::BatchRecord noted = support::aBatch().code(firstCode).stuckOn(core::addDays(today(), -7));
    noted.batch.note = "again after " + unknown;
    open({noted});
    show();
    find("benchDue")->setFocus();
    scan(unknown);
    EXPECT_EQ(batchInFront(), "");
    EXPECT_TRUE(barText().contains("no batch"));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(batchInFront(), QString::fromStdString(firstCode)) << "chosen by hand it opens";
}

TEST_F(FindInTheWindow, ShowsTheBatchesOfAPlantOrStation) {
    openTwo();
    field()->enter();
    type("deutzia nikko");
    ASSERT_GE(list()->model()->rowCount(), 1);
    press(Qt::Key_Return);
    ASSERT_EQ(batches()->rowCount(), 1);
    EXPECT_EQ(batches()->index(0, 0).data().toString(), QString::fromStdString(second));
    EXPECT_TRUE(find<QLabel>("onlyWords")->text().contains("Deutzia"));
    find<QPushButton>("showAllBatches")->click();
    EXPECT_EQ(batches()->rowCount(), 2);
    const std::string station = core::find(workspace_->shelves().stations, support::tubNorth)->name;
    field()->enter();
    type(QString::fromStdString(station));
    press(Qt::Key_Return);
    ASSERT_EQ(batches()->rowCount(), 1);
    EXPECT_EQ(batches()->index(0, 0).data().toString(), QString::fromStdString(firstCode));
    press(Qt::Key_Escape);
    EXPECT_EQ(batches()->rowCount(), 2);
}

TEST_F(FindInTheWindow, GoesToPagesAndStartsTasks) {
    openTwo();
    field()->enter();
    type("hist");
    press(Qt::Key_Return);
    EXPECT_TRUE(find("historyTable")->isVisible());
    field()->enter();
    type("start r");
    press(Qt::Key_Return);
    EXPECT_NE(window().findChild<QDialog*>("roundDialog"), nullptr);
}

TEST_F(FindInTheWindow, FollowsEditsAndUndo) {
    openTwo();
    field()->enter();
    type(QString::fromStdString(second));
    ASSERT_EQ(list()->model()->rowCount(), 1);
    const core::BatchId batch = workspace_->logbook().batchWithCode(second);
    ASSERT_TRUE(workspace_->run([&](db::Logbook& logbook) { return db::deleteBatch(logbook, batch); }).isDone);
    press(Qt::Key_Escape);
    field()->enter();
    type(QString::fromStdString(second));
    EXPECT_EQ(list()->model()->rowCount(), 0);
    EXPECT_TRUE(find<QLabel>("findCount")->text().contains(QString::fromStdString(second)));
    ASSERT_TRUE(workspace_->undo());
    press(Qt::Key_Escape);
    field()->enter();
    type(QString::fromStdString(second));
    EXPECT_EQ(list()->model()->rowCount(), 1);
}

TEST_F(FindInTheWindow, FindsAPlantByItsNewName) {
    openTwo();
    field()->enter();
    type("zebra");
    ASSERT_EQ(list()->model()->rowCount(), 0);
    core::Plant plant = *core::find(workspace_->shelves().plants, support::hebe);
    plant.commonName = "zebra bush";
    ASSERT_TRUE(workspace_->run([&](db::Logbook& logbook) { return db::keep(logbook, plant); }).isDone);
    press(Qt::Key_Escape);
    field()->enter();
    type("zebra");
    EXPECT_GE(list()->model()->rowCount(), 2) << "the plant and its batch";
}

TEST_F(FindInTheWindow, LeadsBackAndForwardOverPagesAndBatches) {
    openTwo();
    EXPECT_FALSE(action("viewBack")->isEnabled());
    window().showPage(1);
    window().showBatch(workspace_->logbook().batchWithCode(firstCode));
    window().showBatch(workspace_->logbook().batchWithCode(second));
    window().showPage(2);
    action("viewBack")->trigger();
    EXPECT_EQ(batchInFront(), QString::fromStdString(second));
    press(Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(batchInFront(), QString::fromStdString(firstCode));
    find<QToolButton>("wayBack")->click();
    EXPECT_EQ(batchInFront(), "");
    EXPECT_TRUE(find("batchTable")->isVisible());
    find<QToolButton>("wayForward")->click();
    EXPECT_EQ(batchInFront(), QString::fromStdString(firstCode));
    action("viewBack")->trigger();
    action("viewBack")->trigger();
    EXPECT_TRUE(find("benchDue")->isVisible());
    EXPECT_FALSE(action("viewBack")->isEnabled());
    EXPECT_TRUE(action("viewForward")->isEnabled());
}

TEST_F(FindInTheWindow, PassesOverADeletedBatchOnTheWayBack) {
    openTwo();
    const core::BatchId batch = workspace_->logbook().batchWithCode(firstCode);
    window().showBatch(batch);
    window().showPage(2);
    ASSERT_TRUE(workspace_->run([&](db::Logbook& logbook) { return db::deleteBatch(logbook, batch); }).isDone);
    action("viewBack")->trigger();
    EXPECT_TRUE(find("benchDue")->isVisible());
}

TEST_F(FindInTheWindow, IsNotThereWithoutALogbook) {
    show();
    EXPECT_FALSE(action("editFind")->isEnabled());
    EXPECT_FALSE(field()->isVisible());
    find("chooseNew")->setFocus();
    type("b");
    EXPECT_EQ(field()->text(), "");
}

TEST_F(FindInTheWindow, HasRoomOnASmallScreenAtTwiceTheTextSize) {
    openTwo();
    appearance_->setTextPercent(200);
    support::settle();
    for (int number = 0; number < 3; ++number) {
        window().showPage(number);
        support::settle();
        EXPECT_LE(window().minimumSizeHint().width(), 1280) << number;
        EXPECT_LE(window().minimumSizeHint().height(), 800) << number;
    }
    window().resize(1280, 800);
    support::settle();
    EXPECT_EQ(window().size(), QSize(1280, 800));
    appearance_->setTextPercent(100);
}

}  // namespace
