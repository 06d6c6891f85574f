// SPDX-License-Identifier: MIT
#include "app/desktop/help/keyboard_dialog.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QTest>
#include <QTreeWidget>

#include "tests/desktop/whole/whole_window.h"

namespace {

class KeyboardDialogOpen : public whole::Window {
  protected:
    KeyboardDialogOpen() {
        window_->findChild<QAction*>("helpKeys")->trigger();
        whole::settle();
        dialog_ = window_->findChild<desktop::KeyboardDialog*>();
        list_ = dialog_->findChild<QTreeWidget*>("keyboardTable");
        search_ = dialog_->findChild<QLineEdit*>("keyboardSearch");
    }

    /// "keys: what they do" of every line that is shown.
    [[nodiscard]] QStringList shown() const {
        QStringList lines;
        for (int place = 0; place < list_->topLevelItemCount(); ++place) {
            const QTreeWidgetItem* group = list_->topLevelItem(place);
            for (int row = 0; row < group->childCount(); ++row)
                if (!group->isHidden() && !group->child(row)->isHidden())
                    lines << group->child(row)->text(0) + ": " + group->child(row)->text(1);
        }
        return lines;
    }

    QPointer<desktop::KeyboardDialog> dialog_;
    QTreeWidget* list_{};
    QLineEdit* search_{};
};

TEST_F(KeyboardDialogOpen, ShowsEveryLineByPlace) {
    EXPECT_GT(shown().size(), 60);
    EXPECT_TRUE(shown().contains("Ctrl+R: Start round"));
    EXPECT_EQ(list_->topLevelItem(0)->text(0), "File");
}

TEST_F(KeyboardDialogOpen, IsSearchedByKeyPlaceAndMeaningInAnyOrder) {
    EXPECT_TRUE(search_->hasFocus()) << "typing searches at once";
    QTest::keyClicks(search_, "round start");
    EXPECT_EQ(shown(), QStringList{"Ctrl+R: Start round"});
    search_->setText("photos f2");
    EXPECT_EQ(shown(), QStringList{"F2: Change caption and day"});
    search_->setText("teleport");
    EXPECT_TRUE(shown().isEmpty());
    EXPECT_TRUE(dialog_->findChild<QLabel*>("keyboardCount")->text().startsWith("No key does that"));
}

TEST_F(KeyboardDialogOpen, LeadsFromTheSearchToTheFirstLineFound) {
    search_->setText("photos f2");
    QTest::keyClick(search_, Qt::Key_Return);
    EXPECT_TRUE(list_->hasFocus());
    ASSERT_NE(list_->currentItem(), nullptr);
    EXPECT_EQ(list_->currentItem()->text(0), "F2");
}

TEST_F(KeyboardDialogOpen, ClearsTheSearchBeforeEscapeClosesIt) {
    search_->setText("photos");
    QTest::keyClick(search_, Qt::Key_Escape);
    ASSERT_TRUE(dialog_ && dialog_->isVisible());
    EXPECT_TRUE(search_->text().isEmpty());
    QTest::keyClick(search_, Qt::Key_Escape);
    EXPECT_FALSE(dialog_ && dialog_->isVisible());
}

}  // namespace
