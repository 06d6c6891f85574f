// SPDX-License-Identifier: MIT
// An empty logbook in the real window: each of the three ways to begin leads somewhere.
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/desktop/stations/station_dialog.h"
#include "tests/desktop/whole/whole_window.h"

namespace {

class EmptyBenchInTheWindow : public whole::Window {
  protected:
    EmptyBenchInTheWindow() {
        core::LogbookFacts facts;
        facts.name = "Willow Lane";
        workspace_.use(db::Logbook::inMemory(facts, {.clock = workspace_.clock(), .author = {}}));
        front(0);
    }

    /// What the button opens.
    template <class Dialog>
    Dialog* opened(const char* button) {
        window_->findChild<QPushButton*>(QLatin1String(button))->click();
        whole::settle();
        return window_->findChild<Dialog*>();
    }
};

TEST_F(EmptyBenchInTheWindow, DescribesATubWithItsSecondButton) {
    auto* dialog = opened<desktop::StationDialog>("benchFirstStation");
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->findChild<QLineEdit*>("stationName")->hasFocus()) << "typing names it at once";
    QTest::keyClicks(dialog->findChild<QLineEdit*>("stationName"), "Tub by the door");
    QTest::keyClick(dialog->findChild<QLineEdit*>("stationName"), Qt::Key_Return);
    ASSERT_EQ(workspace_.shelves().stations.size(), 1U);
    EXPECT_EQ(workspace_.shelves().stations.front().name, "Tub by the door");
    workspace_.undo();
    EXPECT_TRUE(workspace_.shelves().stations.empty());
}

TEST_F(EmptyBenchInTheWindow, WritesDownASessionWithItsFirst) {
    EXPECT_NE(opened<QDialog>("benchFirstSession"), nullptr);
}

}  // namespace
