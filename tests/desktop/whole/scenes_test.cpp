// SPDX-License-Identifier: MIT
// Every page and every dialog in the middle of its work, in both directions of reading, as a screen reader and a keyboard have it (WCAG 2.2:
// 4.1.2 name and role, 2.1.1 keyboard, 2.1.2 no trap, 2.4.3 focus order).
#include "tests/desktop/whole/scenes.h"

#include <QApplication>
#include <QDialog>
#include <QPointer>
#include <QTest>

#include "app/desktop/positions/position_map_view.h"
#include "app/plot/figure_view.h"
#include "tests/desktop/whole/reading_order.h"
#include "tests/desktop/whole/shown_texts.h"

namespace {

/// How the language is read; set before the window is made.
struct Direction {
    explicit Direction(Qt::LayoutDirection direction) { QApplication::setLayoutDirection(direction); }
    ~Direction() { QApplication::setLayoutDirection(Qt::LeftToRight); }
    whole::AgreeingPrompts agreeing;
};

class Scenes : private Direction, public whole::Window, public testing::WithParamInterface<Qt::LayoutDirection> {
  protected:
    Scenes() : Direction(GetParam()), Window(&agreeing) {}
};

void expectReachable(const QString& name, QWidget& top) {
    SCOPED_TRACE(name.toStdString());
    EXPECT_EQ(whole::namelessControls(top).join("\n").toStdString(), "") << "without a name";
    const std::vector<whole::Stop> walk = whole::tabWalk(top);
    EXPECT_FALSE(walk.empty()) << "Tab comes to nothing";
    EXPECT_EQ(whole::unreached(top, walk).join("\n").toStdString(), "")
        << "not reached by Tab: " << whole::inOrder(walk).toStdString();
    EXPECT_EQ(whole::stepsAgainstTheEye(walk).join("\n").toStdString(), "") << "walked against the eye";
    // Lids and trays are things, and time runs from left to right in figures of every language.
    for (const QWidget* thing : top.findChildren<QWidget*>()) {
        const bool isPhysical = qobject_cast<const desktop::PositionMapView*>(thing) != nullptr ||
                                qobject_cast<const plot::FigureView*>(thing) != nullptr;
        EXPECT_TRUE(!isPhysical || thing->layoutDirection() == Qt::LeftToRight) << whole::called(*thing).toStdString();
    }
}

TEST_P(Scenes, EveryPageIsNamedAndWalkedByTabAsTheEyeGoes) {
    whole::visitPages(*window_, expectReachable);
    whole::visitBeginnings(*window_, expectReachable);
}

TEST_P(Scenes, EveryDialogIsNamedAndWalkedByTabAsTheEyeGoes) {
    whole::visitDialogs(*window_, expectReachable);
}

INSTANTIATE_TEST_SUITE_P(InBothDirections, Scenes, testing::Values(Qt::LeftToRight, Qt::RightToLeft),
                         [](const auto& direction) {
                             return std::string(direction.param == Qt::LeftToRight ? "LeftToRight" : "RightToLeft");
                         });

/// Once for what is typed or opened within, once more where a form asks in place whether it is to be dropped.
void expectClosedByEscape(const QString& name, QWidget& top) {
    SCOPED_TRACE(name.toStdString());
    const QPointer<QWidget> dialog(&top);
    const QPointer<QWidget> below(top.parentWidget() ? top.parentWidget()->window() : nullptr);
    constexpr int mostPresses = 3;
    for (int press = 0; press < mostPresses && dialog && dialog->isVisible(); ++press) {
        QWidget* focus = QApplication::focusWidget();
        ASSERT_NE(focus, nullptr);
        QTest::keyClick(focus, Qt::Key_Escape);
        whole::settle();
    }
    EXPECT_FALSE(dialog && dialog->isVisible()) << "Esc doesn't close it";
    EXPECT_TRUE(below && below->isVisible()) << "Esc closes more than the innermost";
}

class Escape : private Direction, public whole::Window {
  protected:
    Escape() : Direction(Qt::LeftToRight), Window(&agreeing) {}
};

TEST_F(Escape, ClosesEveryDialogAndNothingBelowIt) {
    whole::visitDialogs(*window_, expectClosedByEscape);
}

}  // namespace
