// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/table_columns.h"

#include <QApplication>
#include <QHeaderView>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

#include "app/desktop/batches/batches_page.h"
#include "app/desktop/memory.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

constexpr int day = 1;
constexpr int plantColumn = 2;
constexpr int method = 3;

class RememberedColumns : public pages::Desk {
  protected:
    RememberedColumns() {
        fill(support::recordsOf({support::aBatch(), support::aBatch().of(support::deutzia)}));
        start();
    }

    /// As after a restart: what was remembered is read anew.
    void start() {
        page_.reset();
        memory_ = std::make_unique<desktop::Memory>(
            desktop::MemoryFiles{folder_.filePath("settings.ini"), folder_.filePath("window.ini")});
        page_ = std::make_unique<desktop::BatchesPage>(desktop::PageContext{workspace_, prompts_, memory_.get()});
        pages::show(*page_);
        page_->activated();
    }

    QTableView& table() { return named<QTableView>(*page_, "batchTable"); }
    QHeaderView& header() { return *table().horizontalHeader(); }

    /// Opens the menu over the column of the current cell and triggers the entry that has these words.
    void choose(int column, const QString& words) {
        table().setFocus();
        table().setCurrentIndex(table().model()->index(0, column));
        pages::press(Qt::Key_F10, Qt::ShiftModifier);
        auto* menu = table().findChild<QMenu*>("columnMenu");
        ASSERT_NE(menu, nullptr);
        bool isThere = false;
        for (QAction* action : menu->actions())
            if (action->text().remove('&').contains(words)) {
                isThere = true;
                action->trigger();
                break;
            }
        EXPECT_TRUE(isThere) << words.toStdString();
        menu->close();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    QTemporaryDir folder_;
    std::unique_ptr<desktop::Memory> memory_;
    std::unique_ptr<desktop::BatchesPage> page_;
};

TEST_F(RememberedColumns, ComeBackAfterARestartAsTheyWereLeft) {
    choose(method, "Method");
    EXPECT_TRUE(table().isColumnHidden(method));
    choose(day, "one place back");
    EXPECT_EQ(header().visualIndex(day), 2);
    header().resizeSection(4, 222);
    table().sortByColumn(0, Qt::AscendingOrder);
    start();
    EXPECT_TRUE(table().isColumnHidden(method));
    EXPECT_EQ(header().visualIndex(day), 2);
    EXPECT_NEAR(table().columnWidth(4), 222, 1);
    EXPECT_EQ(header().sortIndicatorSection(), 0);
    EXPECT_EQ(header().sortIndicatorOrder(), Qt::AscendingOrder);
}

TEST_F(RememberedColumns, GrowAndShrinkByTheMenuAndGoBackToHowTheyWere) {
    const int before = table().columnWidth(method);
    choose(method, "wider");
    EXPECT_GT(table().columnWidth(method), before);
    choose(method, "narrower");
    choose(method, "narrower");
    EXPECT_LT(table().columnWidth(method), before);
    choose(day, "one place forward");
    EXPECT_EQ(header().visualIndex(day), 0);
    choose(method, "as at first");
    EXPECT_EQ(table().columnWidth(method), before);
    EXPECT_EQ(header().visualIndex(day), day);
}

TEST_F(RememberedColumns, StepOverHiddenOnesWhenTheyMove) {
    choose(plantColumn, "Plant");
    choose(day, "one place back");
    EXPECT_GT(header().visualIndex(day), header().visualIndex(method)) << "past the next one that is seen";
}

TEST_F(RememberedColumns, KeepTheirProportionToTheText) {
    header().resizeSection(method, 300);
    const int before = table().fontMetrics().height();
    QFont large = table().font();
    large.setPointSizeF(large.pointSizeF() * 2);
    table().setFont(large);
    EXPECT_NEAR(table().columnWidth(method), 300.0 * table().fontMetrics().height() / before, 2);
    EXPECT_GE(table().rowHeight(0), table().fontMetrics().height()) << "rows grow too";
}

TEST_F(RememberedColumns, StartAfreshFromASpoiltMemory) {
    const int before = table().columnWidth(method);
    for (const char* spoilt :
         {"", "nonsense", "1:0 0:1:0", "1:0 0:1:0 0:1:0 1:1:1 2:x:y 3 4 5 6 7 8 9 10 11",
          "99:7 99:1:0 1:1:0 2:1:0 3:1:0 4:1:0 5:1:0 6:1:0 7:1:0 8:1:0 9:1:0 10:1:0 11:1:0 12:1:0"}) {
        memory_->setShape("batch_columns", spoilt);
        start();
        EXPECT_EQ(table().columnWidth(method), before) << spoilt;
        EXPECT_FALSE(table().isColumnHidden(0)) << spoilt;
    }
}

TEST_F(RememberedColumns, AreOpenToTheMouseByAButton) {
    named<QPushButton>(*page_, "batchColumns").click();
    auto* menu = table().findChild<QMenu*>("columnMenu");
    ASSERT_NE(menu, nullptr);
    EXPECT_TRUE(menu->isVisible());
    menu->close();
}

}  // namespace
