// SPDX-License-Identifier: MIT
// Every page and every dialog as a screen reader and a keyboard have it (WCAG 2.2: 4.1.2 name and role, 2.1.1 keyboard, 2.1.2 no trap,
// 2.4.3 focus order).
#include <QDialog>

#include "tests/desktop/whole/reading_order.h"
#include "tests/desktop/whole/whole_window.h"

/// So that a failure shows the texts; found by argument-dependent lookup.
inline void PrintTo(const QStringList& texts, std::ostream* out) {
    *out << texts.join(", ").toStdString();
}

namespace {

using AccessibleWindow = whole::Window;

/// All that must hold of what is in front.
void expectReachableByAnyone(QWidget& top, const QString& what) {
    EXPECT_EQ(whole::namelessControls(top), QStringList()) << what.toStdString() << " has controls without a name";
    const std::vector<whole::Stop> walk = whole::tabWalk(top);
    EXPECT_FALSE(walk.empty()) << what.toStdString() << " has nothing that Tab comes to";
    EXPECT_EQ(whole::unreached(top, walk), QStringList())
        << what.toStdString() << " can't be reached by Tab as a whole";
    EXPECT_EQ(whole::stepsAgainstTheEye(walk), QStringList()) << what.toStdString() << " is walked against the eye";
}

TEST_F(AccessibleWindow, EveryPageIsNamedAndReachableInReadingOrder) {
    for (int page = 0; page < pageCount(); ++page) {
        front(page);
        expectReachableByAnyone(*window_, window_->parts().pages[static_cast<std::size_t>(page)].name);
    }
}

TEST_F(AccessibleWindow, EveryTaskIsNamedAndReachableInReadingOrder) {
    for (const desktop::TaskEntry& task : window_->parts().tasks) {
        QDialog* dialog = window_->startTask(task.name);
        ASSERT_NE(dialog, nullptr) << task.name.toStdString();
        whole::settle();
        expectReachableByAnyone(*dialog, task.name);
        dialog->close();
        whole::settle();
    }
}

TEST_F(AccessibleWindow, OneBatchIsNamedAndReachableInReadingOrder) {
    window_->showBatch(workspace_.batchLines().front().batch.id);
    whole::settle();
    expectReachableByAnyone(*window_, "batch");
}

TEST_F(AccessibleWindow, FirstRunIsNamedAndReachableInReadingOrder) {
    workspace_.close();
    whole::settle();
    expectReachableByAnyone(*window_, "first run");
}

}  // namespace
