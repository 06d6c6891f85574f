// SPDX-License-Identifier: MIT
// The forms of prices and lots, by keyboard; a new price leaves the old days alone.
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>

#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/merge_actions.h"
#include "db/actions/price_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;
using pages::press;
using pages::type;

QString faultsOnPrice(const QWidget& form) {
    QStringList sentences;
    for (const auto* label : form.findChildren<desktop::FaultLabel*>())
        if (!label->fault().isEmpty()) sentences << label->fault();
    return sentences.join('\n');
}

class PriceForms : public pages::Desk {
  protected:
    PriceForms() { fill(support::recordsOf({support::aBatch()})); }

    void open(QDialog* form) {
        form_.reset(form);
        pages::show(*form_);
    }
    void choose(core::PriceKind kind) {
        auto& box = named<QComboBox>(*form_, "priceKind");
        box.setCurrentIndex(box.findData(static_cast<int>(kind)));
    }
    void write(const char* field, const QString& text) {
        auto& line = named<QLineEdit>(*form_, field);
        ASSERT_TRUE(line.isVisible()) << field;
        line.setFocus();
        line.selectAll();
        type(text);
    }
    void pick(const char* box, const QString& text) {
        auto& combo = named<QComboBox>(*form_, box);
        combo.setCurrentIndex(combo.findText(text));
        EXPECT_EQ(combo.currentText(), text);
    }
    bool isShown(const char* field) { return named<QWidget>(*form_, field).isVisible(); }
    core::Price kept() {
        press(Qt::Key_Return);
        EXPECT_FALSE(form_->isVisible()) << faultsOnPrice(*form_).toStdString();
        const auto& prices = workspace_.shelves().prices;
        return prices.empty() ? core::Price{} : prices.back();
    }
    core::Price pump(const core::Date from) {
        core::Price price;
        price.what = "air pump";
        price.method = support::aeratedWater;
        price.from = from;
        price.tenThousandths = 249'000;
        price.lastsYears = 4;
        return price;
    }
    void add(const core::Price& price) {
        ASSERT_TRUE(workspace_.run([&](db::Logbook& book) { return db::keep(book, price, support::today()); }).isDone);
    }

    std::unique_ptr<QDialog> form_;
};

TEST_F(PriceForms, KeepAThingThatLastsForYearsAndWhoseItIs) {
    open(desktop::priceForm(context(), 0, nullptr));
    write("priceWhat", "air pump");
    pick("priceOwner", "aerated water (method)");
    write("priceAmount", "24,90");
    write("priceLasts", "4");
    const core::Price price = kept();
    EXPECT_EQ(price.kind, core::PriceKind::Lasting);
    EXPECT_EQ(price.what, "air pump");
    EXPECT_EQ(price.method, support::aeratedWater);
    EXPECT_EQ(price.tenThousandths, 249'000);
    EXPECT_EQ(price.lastsYears, 4);
    EXPECT_EQ(price.lastsFor, std::nullopt);
    EXPECT_EQ(price.from, support::today());
}

TEST_F(PriceForms, KeepAThingThatLastsForBatches) {
    open(desktop::priceForm(context(), 0, nullptr));
    write("priceWhat", "collars");
    write("priceAmount", "8");
    write("priceLasts", "20");
    pick("priceLastsUnit", "batches");
    const core::Price price = kept();
    EXPECT_EQ(price.lastsFor, 20);
    EXPECT_EQ(price.lastsYears, std::nullopt);
}

TEST_F(PriceForms, KeepWhatIsUsedUp) {
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::UsedUp);
    write("priceWhat", "gel");
    write("priceAmount", "12.50");
    write("pricePack", "200");
    const core::Price price = kept();
    EXPECT_EQ(price.lastsFor, 200);
    EXPECT_EQ(price.basis, core::PriceBasis::Cutting);
}

TEST_F(PriceForms, KeepWhatDrawsPowerWithTheShareOfItsHours) {
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::Electricity);
    EXPECT_FALSE(isShown("priceAmount")) << "the tariff makes money of it";
    write("priceWhat", "heat mat");
    write("priceWatts", "40");
    write("priceHours", "24");
    write("priceShare", "50");
    const core::Price price = kept();
    EXPECT_EQ(price.watts, 40);
    EXPECT_EQ(price.hoursADay, 24);
    EXPECT_EQ(price.duty, 0.5);
    EXPECT_EQ(price.tenThousandths, 0);
}

TEST_F(PriceForms, KeepATariffToFourDecimalsWithoutAName) {
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::Tariff);
    EXPECT_FALSE(isShown("priceWhat"));
    EXPECT_FALSE(isShown("priceOwner"));
    write("priceAmount", "0,3142");
    const core::Price price = kept();
    EXPECT_EQ(price.tenThousandths, 3142);
    EXPECT_EQ(price.what, "electricity tariff");
}

TEST_F(PriceForms, KeepMinutesOfWorkAndTheWorthOfAnHourAndOfADay) {
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::WorkTime);
    write("priceWhat", "a check");
    write("priceMinutes", "2.5");
    pick("priceMinutesUnit", "for each check");
    const core::Price check = kept();
    EXPECT_EQ(check.minutes, 2.5);
    EXPECT_EQ(check.basis, core::PriceBasis::Check);
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::HourOfWork);
    write("priceAmount", "0");
    EXPECT_EQ(kept().kind, core::PriceKind::HourOfWork);
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::DaySooner);
    write("priceAmount", "0.05");
    EXPECT_EQ(kept().tenThousandths, 500);
    EXPECT_EQ(workspace_.shelves().prices.size(), 3U);
}

TEST_F(PriceForms, SayUnderEachFieldWhatCantBeAndLoseNothing) {
    open(desktop::priceForm(context(), 0, nullptr));
    EXPECT_EQ(faultsOnPrice(*form_), QString()) << "a fresh form blames nobody";
    write("priceAmount", "1.234");
    EXPECT_EQ(faultsOnPrice(*form_), "Amount is \"1.234\"; 0 to 1000000000 with at most two decimals is allowed.");
    write("priceLasts", "long");
    EXPECT_TRUE(faultsOnPrice(*form_).contains("Lasts is \u201clong\u201d; a number is allowed, such as 1.5."));
    write("priceUntil", "1999-01-01");
    press(Qt::Key_Return);
    ASSERT_TRUE(form_->isVisible());
    EXPECT_TRUE(faultsOnPrice(*form_).contains("Name")) << faultsOnPrice(*form_).toStdString();
    EXPECT_TRUE(faultsOnPrice(*form_).contains("Until is 1999-01-01; 2026-06-30 or later is allowed."));
    EXPECT_EQ(named<QLineEdit>(*form_, "priceLasts").text(), "long");
    EXPECT_EQ(QApplication::focusWidget(), &named<QLineEdit>(*form_, "priceWhat"));
    EXPECT_TRUE(workspace_.shelves().prices.empty());
}

TEST_F(PriceForms, SayWhatIsWrongWithPowerAndItsShare) {
    open(desktop::priceForm(context(), 0, nullptr));
    choose(core::PriceKind::Electricity);
    write("priceWhat", "lamp");
    write("priceHours", "25");
    write("priceShare", "120");
    press(Qt::Key_Return);
    EXPECT_TRUE(faultsOnPrice(*form_).contains("Power is blank; a number is allowed"))
        << faultsOnPrice(*form_).toStdString();
    EXPECT_TRUE(faultsOnPrice(*form_).contains("Hours a day is 25; 0 to 24 is allowed."));
    EXPECT_TRUE(faultsOnPrice(*form_).contains("Runs is 120"));
}

TEST_F(PriceForms, LeaveOldDaysTheirPriceWhenANewOneIsMadeFromIt) {
    add(pump(support::stickingDay()));
    const core::Price old = workspace_.shelves().prices.front();
    open(desktop::laterPriceForm(context(), old.id.value, nullptr));
    EXPECT_EQ(QApplication::focusWidget(), &named<QLineEdit>(*form_, "priceAmount"));
    EXPECT_EQ(named<QLineEdit>(*form_, "priceAmount").selectedText(), "24.90");
    type("29.9");  // nothing but the amount is typed
    const core::Price later = kept();
    const auto& prices = workspace_.shelves().prices;
    ASSERT_EQ(prices.size(), 2U);
    EXPECT_EQ(later.tenThousandths, 299'000);
    EXPECT_EQ(later.method, old.method);
    EXPECT_EQ(later.lastsYears, old.lastsYears);
    EXPECT_TRUE(core::holdsOn(core::addDays(support::today(), -1), old, prices));
    EXPECT_FALSE(core::holdsOn(support::today(), old, prices));
    EXPECT_TRUE(core::holdsOn(support::today(), later, prices));
    ASSERT_TRUE(workspace_.undo());
    ASSERT_EQ(workspace_.shelves().prices.size(), 1U);
    EXPECT_TRUE(core::holdsOn(support::today(), old, workspace_.shelves().prices));
}

TEST_F(PriceForms, ChangeOneAndTakeItBack) {
    add(pump(support::stickingDay()));
    const core::Price old = workspace_.shelves().prices.front();
    open(desktop::priceForm(context(), old.id.value, nullptr));
    EXPECT_EQ(named<QComboBox>(*form_, "priceOwner").currentText(), "aerated water (method)");
    write("priceLasts", "5");
    EXPECT_EQ(kept().lastsYears, 5);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(workspace_.shelves().prices.front(), old);
}

TEST_F(PriceForms, MoveTheirPricesAlongWhenTwoStationsBecomeOne) {
    core::Price tub = pump(support::stickingDay());
    tub.method = {};
    tub.station = support::tubSouth;
    add(tub);
    ASSERT_TRUE(
        workspace_.run([](db::Logbook& book) { return db::mergeStations(book, support::tubSouth, support::tubNorth); })
            .isDone);
    ASSERT_EQ(workspace_.shelves().prices.size(), 1U);
    EXPECT_EQ(workspace_.shelves().prices.front().station, support::tubNorth);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(workspace_.shelves().prices.front().station, support::tubSouth);
}

TEST_F(PriceForms, KeepALotOfATreatment) {
    open(desktop::lotForm(context(), 0, nullptr));
    write("lotName", "bottle 3");
    auto& owner = named<QComboBox>(*form_, "lotOwner");
    const std::string weak = core::find(workspace_.shelves().treatments, support::weakGel)->name;
    pick("lotOwner", QString::fromStdString(weak) + " (treatment)");
    EXPECT_TRUE(owner.itemText(owner.count() - 1).endsWith("(medium)")) << "treatments first, then media";
    write("lotFrom", "2026-03-01");
    write("lotMade", "2026-01-15");
    press(Qt::Key_Return);
    ASSERT_FALSE(form_->isVisible()) << faultsOnPrice(*form_).toStdString();
    ASSERT_EQ(workspace_.shelves().lots.size(), 1U);
    const core::Lot& lot = workspace_.shelves().lots.front();
    EXPECT_EQ(lot.treatment, support::weakGel);
    EXPECT_FALSE(lot.medium.isSet());
    EXPECT_EQ(core::isoText(lot.usedFrom), "2026-03-01");
    EXPECT_EQ(core::isoText(lot.madeOn.value()), "2026-01-15");
    open(desktop::lotForm(context(), lot.id.value, nullptr));
    write("lotMade", "soon");
    press(Qt::Key_Return);
    EXPECT_TRUE(faultsOnPrice(*form_).contains("soon")) << faultsOnPrice(*form_).toStdString();
}

}  // namespace
