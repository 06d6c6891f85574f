// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/wrapping_row.h"

#include <QWidget>
#include <array>

#include "gtest/gtest.h"

namespace {

using desktop::WrappingRow;

/// Three boxes of 100 by 20 in a row with gaps of 10.
class ARow : public testing::Test {
  protected:
    ARow() {
        row_ = new WrappingRow(&line_);
        row_->setSpacing(10);
        for (QWidget*& box : boxes_) {
            box = new QWidget;
            box->setFixedSize(100, 20);
        }
    }
    void addAll() {
        for (QWidget* box : boxes_) row_->addWidget(box);
    }
    void showAt(int width) {
        line_.resize(width, row_->heightForWidth(width));
        line_.show();
    }

    QWidget line_;
    WrappingRow* row_{};
    std::array<QWidget*, 3> boxes_{};
};

TEST_F(ARow, StandsInOneLineWhereThereIsRoom) {
    addAll();
    EXPECT_EQ(row_->sizeHint(), QSize(320, 20));
    EXPECT_EQ(row_->heightForWidth(320), 20);
    showAt(400);
    EXPECT_EQ(boxes_[2]->pos(), QPoint(220, 0));
}

TEST_F(ARow, GoesOnBelowWhereThereIsNone) {
    addAll();
    EXPECT_EQ(row_->minimumSize(), QSize(100, 20));
    EXPECT_EQ(row_->heightForWidth(319), 50);
    EXPECT_EQ(row_->heightForWidth(100), 80);
    showAt(230);
    EXPECT_EQ(boxes_[1]->pos(), QPoint(110, 0));
    EXPECT_EQ(boxes_[2]->pos(), QPoint(0, 30));
}

TEST_F(ARow, GivesWhatIsHiddenNoRoom) {
    addAll();
    boxes_[1]->hide();
    EXPECT_EQ(row_->sizeHint().width(), 210);
    showAt(210);
    EXPECT_EQ(boxes_[2]->pos(), QPoint(110, 0));
}

TEST_F(ARow, PushesItsEndToTheEndOfOneLineOnly) {
    row_->addWidget(boxes_[0]);
    row_->pushToEnd();
    row_->addWidget(boxes_[1]);
    row_->insertWidget(1, boxes_[2]);  // before what is pushed
    showAt(400);
    EXPECT_EQ(boxes_[2]->x(), 110);
    EXPECT_EQ(boxes_[1]->x(), 300);
    showAt(230);
    EXPECT_EQ(boxes_[1]->pos(), QPoint(0, 30));
}

TEST_F(ARow, GivesWhatIsLeftToWhatWantsToBeWide) {
    boxes_[2]->setFixedSize(QWIDGETSIZE_MAX, 20);
    boxes_[2]->setMinimumWidth(50);
    boxes_[2]->setMaximumWidth(QWIDGETSIZE_MAX);
    boxes_[2]->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    addAll();
    showAt(400);
    EXPECT_EQ(boxes_[2]->geometry(), QRect(220, 0, 180, 20));
}

TEST_F(ARow, BeginsAtTheRightWhereOneReadsFromThere) {
    addAll();
    line_.setLayoutDirection(Qt::RightToLeft);
    showAt(400);
    EXPECT_EQ(boxes_[0]->x(), 300);
    EXPECT_EQ(boxes_[2]->x(), 80);
}

}  // namespace
