// SPDX-License-Identifier: MIT
// The shelves of prices and lots, and the first prices all at once.
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

#include "app/desktop/shelves/shelf_view.h"
#include "app/desktop/shelves/shelves_page.h"
#include "app/desktop/shelves/usual_prices_dialog.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/price_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::ShelfKind;
using pages::named;
using pages::press;
using pages::type;

QString faultsOnTable(const QWidget& form) {
    QStringList sentences;
    for (const auto* label : form.findChildren<desktop::FaultLabel*>())
        if (!label->fault().isEmpty()) sentences << label->fault();
    return sentences.join('\n');
}

class FirstPrices : public pages::Desk {
  protected:
    FirstPrices() { fill(support::recordsOf({support::aBatch()})); }

    void openTable() {
        form_.reset(desktop::usualPricesDialog(context(), 0, nullptr));
        pages::show(*form_);
    }
    QLineEdit& figureCalled(const QString& name) {
        for (QLineEdit* each : form_->findChildren<QLineEdit*>())
            if (each->accessibleName() == name) return *each;
        throw std::logic_error("no figure called " + name.toStdString());
    }
    core::Price called(const std::string& what, core::PriceKind kind) {
        for (const core::Price& price : workspace_.shelves().prices)
            if (price.what == what && price.kind == kind) return price;
        return {};
    }

    std::unique_ptr<QDialog> form_;
};

TEST_F(FirstPrices, HoldFromTheDayOfTheFirstBatchAndAreBlank) {
    openTable();
    EXPECT_EQ(named<QLineEdit>(*form_, "usualFrom").text().toStdString(), core::isoText(support::stickingDay()));
    for (const QLineEdit* each : form_->findChildren<QLineEdit*>())
        EXPECT_TRUE(each->objectName() == "usualFrom" || each->text().isEmpty()) << each->objectName().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(form_->isVisible());
    EXPECT_TRUE(faultsOnTable(*form_).contains("Nothing is filled in yet"));
}

TEST_F(FirstPrices, KeepTheRowsThatAreFilledInOneStep) {
    openTable();
    type("35");  // the tub
    press(Qt::Key_Return);
    type("10");
    press(Qt::Key_Return);
    type("24.90");  // the pump
    press(Qt::Key_Return);
    type("4");
    named<QComboBox>(*form_, "usual1Owner").setCurrentIndex(1);
    figureCalled("air pump: W").setFocus();
    type("5");
    press(Qt::Key_Return);
    type("24");
    press(Qt::Key_Tab);
    figureCalled("electricity tariff: amount").setFocus();
    type("0.3142");
    EXPECT_EQ(named<QLabel>(*form_, "usualFilled").text(), "4 of 18 filled in");
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_FALSE(form_->isVisible()) << faultsOnTable(*form_).toStdString();
    EXPECT_EQ(workspace_.shelves().prices.size(), 4U);
    EXPECT_EQ(called("tub", core::PriceKind::Lasting).lastsYears, 10);
    EXPECT_TRUE(called("air pump", core::PriceKind::Lasting).method.isSet());
    EXPECT_EQ(called("air pump", core::PriceKind::Electricity).watts, 5);
    EXPECT_EQ(called("electricity tariff", core::PriceKind::Tariff).tenThousandths, 3142);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(workspace_.shelves().prices.empty()) << "all of them in one step";
}

TEST_F(FirstPrices, KeepTheWholeTableByTheNumberPadAlone) {
    openTable();
    for (int press = 0; press < 40 && form_->isVisible(); ++press) {
        type("1");
        pages::press(Qt::Key_Enter);
    }
    ASSERT_FALSE(form_->isVisible()) << faultsOnTable(*form_).toStdString();
    EXPECT_EQ(workspace_.shelves().prices.size(), 18U);
}

TEST_F(FirstPrices, SayUnderTheRowWhatCantBe) {
    openTable();
    type("much");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(form_->isVisible());
    EXPECT_TRUE(faultsOnTable(*form_).contains("Amount is \"much\"")) << faultsOnTable(*form_).toStdString();
    EXPECT_TRUE(faultsOnTable(*form_).contains("What stands before \u201cyears\u201d is blank"));
    EXPECT_EQ(QApplication::focusWidget(), &figureCalled("tub: amount"));
    prompts_.willConfirm(false);
    press(Qt::Key_Escape);
    EXPECT_TRUE(form_->isVisible()) << "what was typed is not thrown away unasked";
    prompts_.willConfirm(true);
    press(Qt::Key_Escape);
    EXPECT_FALSE(form_->isVisible());
}

TEST_F(FirstPrices, ForgetAFaultAsSoonAsItIsMendedOrEmptied) {
    openTable();
    type("much");
    press(Qt::Key_Return);
    type("0");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(faultsOnTable(*form_).contains("Amount is \"much\"")) << faultsOnTable(*form_).toStdString();
    EXPECT_TRUE(faultsOnTable(*form_).contains("Lasts for years is 0")) << "the second fault of the row, at once";
    figureCalled("tub: amount").selectAll();
    type("35");
    EXPECT_FALSE(faultsOnTable(*form_).contains("Amount"));
    EXPECT_TRUE(faultsOnTable(*form_).contains("Lasts for years is 0"));
    figureCalled("tub: years").setFocus();
    figureCalled("tub: years").selectAll();
    type("x");
    EXPECT_TRUE(faultsOnTable(*form_).contains("\u201cx\u201d stands before \u201cyears\u201d"));
    press(Qt::Key_Backspace);
    figureCalled("tub: amount").setFocus();
    figureCalled("tub: amount").selectAll();
    press(Qt::Key_Backspace);
    EXPECT_EQ(faultsOnTable(*form_), QString()) << "a blank row is not kept";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(faultsOnTable(*form_).contains("Nothing is filled in yet"));
    type("3");
    EXPECT_EQ(faultsOnTable(*form_), QString());
}

TEST_F(FirstPrices, BeginWithTheMethodThatAThingUsuallyBelongsTo) {
    openTable();
    const auto whose = [this](const char* box) { return named<QComboBox>(*form_, box).currentText(); };
    EXPECT_EQ(whose("usual0Owner"), "aerated water (method)") << "tub";
    EXPECT_EQ(whose("usual4Owner"), "media tray (method)") << "dome";
    EXPECT_EQ(whose("usual5Owner"), "the whole bench") << "lamp";
    EXPECT_EQ(whose("usual7Owner"), "media tray (method)") << "medium";
    EXPECT_EQ(whose("usual11Owner"), "aerated water (method)") << "power of the pump";
}

class FirstPricesOfOtherMethods : public pages::Desk {};

TEST_F(FirstPricesOfOtherMethods, BeginWithTheWholeBench) {
    core::Records records = support::recordsOf({});
    for (core::Method& method : records.shelves.methods) {
        if (method.name == "media tray") method.name = "sand bed";
        method.isRetired = method.name == "aerated water";
    }
    fill(records);
    const std::unique_ptr<QDialog> form(desktop::usualPricesDialog(context(), 0, nullptr));
    EXPECT_EQ(named<QComboBox>(*form, "usual0Owner").currentText(), "the whole bench") << "the method is retired";
    EXPECT_EQ(named<QComboBox>(*form, "usual4Owner").currentText(), "the whole bench") << "there is no such method";
}

class PricesShelf : public pages::Desk {
  protected:
    PricesShelf() {
        fill(support::recordsOf({support::aBatch().treated(support::weakGel), support::aBatch()}));
        page_ = std::make_unique<desktop::ShelvesPage>(context());
        pages::show(*page_);
        openShelf(ShelfKind::Prices);
    }

    void openShelf(ShelfKind kind) {
        named<QListWidget>(*page_, "shelfList").setCurrentRow(static_cast<int>(kind));
        page_->activated();
    }
    desktop::ShelfView& view() {
        for (auto* each : page_->findChildren<desktop::ShelfView*>())
            if (each->isVisible()) return *each;
        throw std::logic_error("no shelf is in front");
    }
    QTableView& table() { return named<QTableView>(view(), "shelfTable"); }
    QStringList row(int number) {
        QStringList texts;
        for (int column = 0; column < table().model()->columnCount(); ++column)
            texts << table().model()->index(number, column).data().toString();
        return texts;
    }
    void add(const std::vector<core::Price>& prices) {
        ASSERT_TRUE(
            workspace_.run([&](db::Logbook& book) { return db::addPrices(book, prices, support::today()); }).isDone);
    }
    static core::Price price(core::PriceKind kind, const std::string& what, std::int64_t tenThousandths) {
        core::Price made;
        made.kind = kind;
        made.what = what;
        made.from = support::stickingDay();
        made.tenThousandths = tenThousandths;
        made.lastsYears = 4;
        return made;
    }

    std::unique_ptr<desktop::ShelvesPage> page_;
};

TEST_F(PricesShelf, OffersTheUsualThingsWhileItIsEmpty) {
    auto& start = named<QPushButton>(view(), "shelfStart");
    ASSERT_TRUE(start.isVisible());
    start.click();
    EXPECT_NE(pages::opened<desktop::UsualPricesDialog>(view()), nullptr);
    openShelf(ShelfKind::Lots);
    EXPECT_FALSE(named<QPushButton>(view(), "shelfStart").isVisible());
}

TEST_F(PricesShelf, TellsKindWhoseAmountLifeAndDays) {
    core::Price pump = price(core::PriceKind::Lasting, "air pump", 249'000);
    pump.method = support::aeratedWater;
    core::Price tariff = price(core::PriceKind::Tariff, "electricity tariff", 3142);
    add({pump, tariff});
    EXPECT_EQ(row(0), QStringList({"air pump", "lasting thing", "aerated water", "24.90 EUR", "4 years", "02/03/2026",
                                   "", ""}));
    EXPECT_EQ(row(1), QStringList({"electricity tariff", "tariff", "the whole bench", "0.3142 EUR a kWh", "",
                                   "02/03/2026", "", ""}));
}

TEST_F(PricesShelf, HasItsColumnsFitWhatComesFirst) {
    const auto widths = [](QTableView& of) {
        std::vector<int> all;
        for (int column = 0; column < of.model()->columnCount(); ++column) all.push_back(of.columnWidth(column));
        return all;
    };
    core::Price pump = price(core::PriceKind::Lasting, "air pump of the long bench", 249'000);
    pump.method = support::aeratedWater;
    add({pump, price(core::PriceKind::Tariff, "electricity tariff", 3142)});
    QCoreApplication::processEvents();
    const std::vector<int> grown = widths(table());
    page_ = std::make_unique<desktop::ShelvesPage>(context());
    pages::show(*page_);
    openShelf(ShelfKind::Prices);
    QCoreApplication::processEvents();
    EXPECT_EQ(grown, widths(table()));
}

TEST_F(PricesShelf, SaysInWordsWhatIsPast) {
    core::Price dearer = price(core::PriceKind::Lasting, "tub", 400'000);
    dearer.from = support::today();
    add({price(core::PriceKind::Lasting, "tub", 350'000), dearer});
    EXPECT_EQ(row(0).mid(3), QStringList({"40.00 EUR", "4 years", "30/06/2026", "", ""}));
    EXPECT_EQ(row(1).mid(3), QStringList({"35.00 EUR", "4 years", "02/03/2026", "29/06/2026", "past"}));
    named<QLineEdit>(view(), "shelfFilter").setText("past");
    EXPECT_EQ(table().model()->rowCount(), 1);
}

TEST_F(PricesShelf, MakesANewPriceFromTheRowWithTwoKeysBesideItsAmount) {
    add({price(core::PriceKind::Lasting, "tub", 350'000)});
    page_->activated();
    press(Qt::Key_Insert, Qt::ShiftModifier);
    type("40");
    press(Qt::Key_Return);
    ASSERT_EQ(workspace_.shelves().prices.size(), 2U);
    EXPECT_EQ(row(0)[3], "40.00 EUR");
    EXPECT_EQ(row(1)[7], "past");
}

TEST_F(PricesShelf, IsBesideALotsShelfThatCountsTheBatchesWhichHadEach) {
    const auto lot = [](const std::string& name, int fromDay) {
        return core::Lot{.id = {},
                         .name = name,
                         .treatment = support::weakGel,
                         .usedFrom = core::addDays(support::stickingDay(), fromDay)};
    };
    for (const core::Lot& each : {lot("bottle 1", -30), lot("bottle 2", 10)})
        ASSERT_TRUE(workspace_.run([&](db::Logbook& book) { return db::keep(book, each, support::today()); }).isDone);
    openShelf(ShelfKind::Lots);
    EXPECT_EQ(row(0)[0], "bottle 1");
    EXPECT_EQ(row(0)[5], "1") << "the batch that was stuck while it was in use";
    EXPECT_EQ(row(0)[7], "used up");
    EXPECT_EQ(row(1)[5], "0");
    EXPECT_EQ(row(1)[7], "in use");
    EXPECT_FALSE(named<QPushButton>(view(), "shelfAnother").isVisible());
}

}  // namespace
