// SPDX-License-Identifier: MIT
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_paint_view.h"
#include "app/desktop/stations/layout_edit.h"
#include "app/desktop/stations/station_dialog.h"
#include "app/desktop/widgets/fault_label.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::FaultLabel;
using desktop::PositionPaintView;
using desktop::StationDialog;
using pages::named;
using pages::press;
using pages::type;

class StationLayout : public pages::Desk {
  protected:
    void open(core::StationId station) {
        dialog_.reset(StationDialog::keeping(workspace_, station));
        pages::show(*dialog_);
    }
    PositionPaintView& map() { return named<PositionPaintView>(*dialog_, "positionMap"); }
    QLineEdit& field(const char* name) { return named<QLineEdit>(*dialog_, name); }
    void enter(const char* name, const QString& text) {
        field(name).setFocus();
        field(name).selectAll();
        type(text);
    }
    void agree() { named<QPushButton>(*dialog_, "describeStation").click(); }
    core::Station station(core::StationId id) { return *core::find(workspace_.shelves().stations, id); }
    QString layoutFault() { return named<FaultLabel>(*dialog_, "layoutFault").fault(); }

    std::unique_ptr<StationDialog> dialog_;
};

TEST_F(StationLayout, DrawsANewStationWhileItIsTypedAndKeepsIt) {
    open({});
    EXPECT_FALSE(map().isVisible());
    enter("stationName", QStringLiteral("Lid of the blue tub"));
    enter("stationRows", QStringLiteral("4"));
    enter("stationColumns", QStringLiteral("6"));
    EXPECT_TRUE(map().isVisible());
    EXPECT_EQ(map().model()->rowCount(), 4);
    EXPECT_EQ(map().model()->columnCount(), 6);
    named<QCheckBox>(*dialog_, "stationStaggered").click();
    agree();
    EXPECT_FALSE(dialog_->isVisible());
    const core::Station made =
        workspace_.shelves().stations.back().name == "Lid of the blue tub"
            ? workspace_.shelves().stations.back()
            : *std::ranges::find(workspace_.shelves().stations, "Lid of the blue tub", &core::Station::name);
    EXPECT_EQ(made.rows, 4);
    EXPECT_EQ(made.columns, 6);
    EXPECT_TRUE(made.isStaggered);
    EXPECT_EQ(made.walkingOrder, 5);  // after the four there are
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(workspace_.shelves().stations.size(), 4u);
}

TEST_F(StationLayout, BlocksPositionsByClickByStrokeAndBySpace) {
    open(support::tubNorth);
    const auto middle = [&](int row, int column) {
        return map().visualRect(map().model()->index(row, column)).center();
    };
    QTest::mouseClick(map().viewport(), Qt::LeftButton, {}, middle(0, 0));
    EXPECT_EQ(field("stationBlocked").text(), QStringLiteral("A1"));
    QTest::mouseClick(map().viewport(), Qt::LeftButton, {}, middle(0, 0));
    EXPECT_EQ(field("stationBlocked").text(), QString());
    map().goTo({1, 1});
    map().setFocus();
    press(Qt::Key_Right, Qt::ShiftModifier);
    press(Qt::Key_Space);
    EXPECT_EQ(field("stationBlocked").text(), QStringLiteral("B2-B3"));
    EXPECT_TRUE(named<QLabel>(*dialog_, "stationSum").text().contains(QStringLiteral("58 cuttings")));
    agree();
    EXPECT_EQ(station(support::tubNorth).blocked, "B2-B3");
}

TEST_F(StationLayout, SaysInPlaceWhatALayoutCantBeAndKeepsWhatWasTyped) {
    open(support::tubNorth);
    enter("stationRows", QStringLiteral("27"));
    EXPECT_FALSE(layoutFault().isEmpty());
    EXPECT_EQ(map().model()->rowCount(), 2);  // what could be drawn last stays
    agree();
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(field("stationRows").text(), QStringLiteral("27"));
    enter("stationRows", QStringLiteral("6"));
    enter("stationBlocked", QStringLiteral("Z99"));
    EXPECT_TRUE(layoutFault().contains(QStringLiteral("Z99"))) << layoutFault().toStdString();
    EXPECT_EQ(station(support::tubNorth).blocked, "");
}

TEST_F(StationLayout, RefusesToBlockWhereACuttingStands) {
    core::BatchRecord record = support::aBatch().stuck(4);
    record.batch.positions = "A1-A4";
    fill(support::recordsOf({record}));
    open(support::tubNorth);
    enter("stationBlocked", QStringLiteral("A2"));
    EXPECT_TRUE(layoutFault().contains(QString::fromStdString(record.batch.code))) << layoutFault().toStdString();
    agree();
    EXPECT_TRUE(dialog_->isVisible());
}

TEST_F(StationLayout, MarksATakenNameUnderItsField) {
    open(support::tubNorth);
    enter("stationName", QStringLiteral("Tub south"));
    agree();
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_TRUE(field("stationName").hasFocus());
    EXPECT_EQ(station(support::tubNorth).name, "Tub north");
}

TEST_F(StationLayout, AsksOnceBeforeItThrowsAwayWhatWasTyped) {
    open(support::tubNorth);
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());  // nothing was typed
    open(support::tubNorth);
    enter("stationNote", QStringLiteral("Air stone at the back."));
    press(Qt::Key_Escape);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(named<FaultLabel>(*dialog_, "stationFault").fault(),
              "What you typed here is not kept yet. Esc or Cancel again throws it away.");
    EXPECT_EQ(field("stationNote").text(), "Air stone at the back.");
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    EXPECT_EQ(station(support::tubNorth).note, "");
}

}  // namespace
