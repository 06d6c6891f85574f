// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>

#include <QComboBox>
#include <QPushButton>
#include <QTableView>

#include "app/desktop/climate/own_bands_dialog.h"
#include "app/desktop/climate/own_bands_model.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/shelf_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::OwnBandsModel;
using pages::named;
using testing::HasSubstr;

class OwnBands : public pages::Desk {
  protected:
    OwnBands() {
        fill(support::recordsOf({support::aBatch()}));
        dialog_ = std::make_unique<desktop::OwnBandsDialog>(context());
        pages::show(*dialog_);
    }

    QTableView& table() { return named<QTableView>(*dialog_, "ownBandsTable"); }
    static int rowOf(core::Stage stage, core::BandQuantity quantity) {
        return static_cast<int>(stage) * static_cast<int>(core::bandQuantities) + static_cast<int>(quantity);
    }
    QModelIndex cell(int row, int column) { return table().model()->index(row, column); }
    bool put(int row, int column, const char* text) {
        return table().model()->setData(cell(row, column), QString::fromUtf8(text));
    }
    std::string text(int row, int column) { return cell(row, column).data().toString().toStdString(); }
    std::string fault() { return dialog_->findChild<desktop::FaultLabel*>()->fault().toStdString(); }

    const int air_ = rowOf(core::Stage::BeforeRoots, core::BandQuantity::AirTemperature);
    std::unique_ptr<desktop::OwnBandsDialog> dialog_;
};

TEST_F(OwnBands, StandBesideTheTradesWithTheirSource) {
    const pages::Obeys rules(table().model());
    EXPECT_EQ(table().model()->rowCount(), 4 * 11);
    EXPECT_EQ(text(air_, OwnBandsModel::Good), "20.0 to 27.0 °C");
    EXPECT_EQ(text(air_, OwnBandsModel::Owner), "the trade's");
    EXPECT_THAT(text(air_, OwnBandsModel::Source), HasSubstr("extension advice"));
    EXPECT_EQ(text(rowOf(core::Stage::FillingRoots, core::BandQuantity::RelativeHumidity), OwnBandsModel::Good),
              "nothing is said");
}

TEST_F(OwnBands, AreKeptAtOnceAndTakenBackOneByOne) {
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, "16"));
    EXPECT_EQ(text(air_, OwnBandsModel::Good), "16.0 °C or more");
    EXPECT_TRUE(put(air_, OwnBandsModel::High, "22,5"));
    EXPECT_EQ(text(air_, OwnBandsModel::Good), "16.0 to 22.5 °C");
    EXPECT_EQ(text(air_, OwnBandsModel::Owner), "your own");
    ASSERT_EQ(workspace_.shelves().ownBands.size(), 1U);
    workspace_.undo();
    EXPECT_EQ(text(air_, OwnBandsModel::Good), "16.0 °C or more");
    workspace_.undo();
    EXPECT_TRUE(workspace_.shelves().ownBands.empty());
}

TEST_F(OwnBands, OfOnePlantLeaveTheOthersAlone) {
    auto& plant = named<QComboBox>(*dialog_, "ownBandsPlant");
    plant.setCurrentIndex(1);
    emit plant.activated(1);
    EXPECT_TRUE(put(air_, OwnBandsModel::High, "24"));
    EXPECT_EQ(text(air_, OwnBandsModel::Owner), "your own for this plant");
    EXPECT_TRUE(workspace_.shelves().ownBands.front().plant.isSet());
    plant.setCurrentIndex(0);
    emit plant.activated(0);
    EXPECT_EQ(text(air_, OwnBandsModel::Owner), "the trade's");
}

TEST_F(OwnBands, SayWhyAFigureCannotBeKeptAndLoseNothingTyped) {
    EXPECT_FALSE(put(air_, OwnBandsModel::Low, "warm"));
    EXPECT_THAT(fault(), HasSubstr("Own low is “warm”; a number from −30.0 to 60.0 °C is allowed."));
    EXPECT_EQ(text(air_, OwnBandsModel::Low), "warm");
    EXPECT_FALSE(put(air_, OwnBandsModel::Low, "300"));
    EXPECT_THAT(fault(), HasSubstr("Own low is 300; −30.0 to 60.0 °C is allowed."));
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, "20"));
    EXPECT_EQ(fault(), "");
    EXPECT_FALSE(put(air_, OwnBandsModel::High, "18"));
    EXPECT_THAT(fault(), HasSubstr("the low can be no higher than the high"));
    EXPECT_EQ(text(air_, OwnBandsModel::High), "18");
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, "15"));  // with it the high is well too
    EXPECT_EQ(text(air_, OwnBandsModel::Good), "15.0 to 18.0 °C");
    EXPECT_FALSE(put(air_ + 1, OwnBandsModel::Note, "dry heads rot less"));
    EXPECT_THAT(fault(), HasSubstr("stands alone"));
}

TEST_F(OwnBands, GiveWayToTheTradesAgain) {
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, "16"));
    table().setCurrentIndex(cell(air_, OwnBandsModel::Low));
    named<QPushButton>(*dialog_, "ownBandsRemove").click();
    EXPECT_EQ(text(air_, OwnBandsModel::Owner), "the trade's");
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, "16"));
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, ""));
    EXPECT_TRUE(workspace_.shelves().ownBands.empty());
}

TEST_F(OwnBands, AreTypedInTheGrowersUnit) {
    core::LogbookFacts facts = workspace_.shelves().facts;
    facts.units.temperature = core::TemperatureUnit::Fahrenheit;
    ASSERT_TRUE(workspace_.run([&](db::Logbook& logbook) { return db::keep(logbook, facts); }).isDone);
    EXPECT_TRUE(put(air_, OwnBandsModel::Low, "68"));
    EXPECT_NEAR(workspace_.shelves().ownBands.front().low.value(), 20, 1e-9);
    EXPECT_EQ(text(air_, OwnBandsModel::Good), "68.0 °F or more");
}

TEST_F(OwnBands, AskOnceBeforeSomethingTypedIsDropped) {
    put(air_, OwnBandsModel::Low, "warm");
    dialog_->reject();
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_THAT(fault(), HasSubstr("Esc again drops it"));
    dialog_->reject();
    EXPECT_FALSE(dialog_->isVisible());
}

}  // namespace
