// SPDX-License-Identifier: MIT
#include "app/desktop/background/waiting_dialog.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <condition_variable>
#include <mutex>

#include "db/logbook_error.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class Waiting : public pages::Desk {
  protected:
    desktop::WaitingDialog dialog_{workspace_, QStringLiteral("Copy"), QStringLiteral("Writing the copy.")};
    QSignalSpy finished_{&dialog_, &QDialog::finished};

    [[nodiscard]] bool ends() {
        return pages::comesTrue([&] { return finished_.count() == 1; });
    }
};

/// Tells that 40 of 100 are done and then works until it is called off.
bool neverEnding(const db::Waiting& waiting) {
    waiting.tellShare(0.4);
    std::mutex mutex;
    std::condition_variable_any told;
    std::unique_lock lock(mutex);
    told.wait(lock, waiting.stop, [] { return false; });
    return false;
}

TEST_F(Waiting, ShowsHowFarLongWorkIsAndCanBeCalledOff) {
    dialog_.start(neverEnding);
    ASSERT_TRUE(pages::comesTrue([&] { return dialog_.isVisible(); }));
    ASSERT_TRUE(pages::comesTrue([&] { return named<QProgressBar>(dialog_, "waitingBar").value() == 40; }));
    EXPECT_EQ(named<QLabel>(dialog_, "waitingSentence").text(), QStringLiteral("Writing the copy."));
    named<QPushButton>(dialog_, "waitingCancel").click();
    EXPECT_FALSE(named<QPushButton>(dialog_, "waitingCancel").isEnabled());
    ASSERT_TRUE(ends());
    EXPECT_EQ(dialog_.result(), QDialog::Rejected);
    EXPECT_FALSE(dialog_.isVisible());
}

TEST_F(Waiting, EscapeCallsItOffAndItClosesOnlyWhenTheWorkHasEnded) {
    dialog_.start(neverEnding);
    ASSERT_TRUE(pages::comesTrue([&] { return dialog_.isVisible(); }));
    QTest::keyClick(&dialog_, Qt::Key_Escape);
    EXPECT_TRUE(dialog_.isVisible());
    ASSERT_TRUE(ends());
    EXPECT_EQ(dialog_.result(), QDialog::Rejected);
}

TEST_F(Waiting, IsNotShownForWhatIsDoneInABlink) {
    dialog_.start([](const db::Waiting&) { return true; });
    ASSERT_TRUE(ends());
    EXPECT_EQ(dialog_.result(), QDialog::Accepted);
    EXPECT_FALSE(dialog_.isVisible());
}

TEST_F(Waiting, WhatGoesWrongIsSaidLikeEverythingElse) {
    const QSignalSpy failed(&workspace_, &desktop::Workspace::failed);
    dialog_.start([](const db::Waiting&) -> bool { throw db::LogbookError("The disk is full. Make room on it."); });
    ASSERT_TRUE(ends());
    EXPECT_EQ(dialog_.result(), QDialog::Rejected);
    ASSERT_EQ(failed.count(), 1);
    EXPECT_EQ(failed.front().front().toString(), QStringLiteral("The disk is full. Make room on it."));
}

TEST_F(Waiting, EndsTheWorkWhenItGoes) {
    desktop::WaitingDialog other(workspace_, QStringLiteral("Copy"), QStringLiteral("Writing the copy."));
    other.start(neverEnding);
    SUCCEED() << "and does not wait for ever";
}

}  // namespace
