// SPDX-License-Identifier: MIT
#include "app/plot/money_text.h"

#include <QLocale>

#include "gtest/gtest.h"

namespace {

TEST(MoneyText, HasTwoDecimalsAndTheCurrency) {
    EXPECT_EQ(plot::moneyText(1250, "EUR"), QStringLiteral("12.50 EUR"));
    EXPECT_EQ(plot::moneyText(0, "GBP"), QStringLiteral("0.00 GBP"));
}

TEST(MoneyText, TellsAPriceWithAsManyDecimalsAsItHas) {
    EXPECT_EQ(plot::priceText(249'000, "EUR"), QStringLiteral("24.90 EUR"));
    EXPECT_EQ(plot::priceText(3142, "EUR"), QStringLiteral("0.3142 EUR"));
    EXPECT_EQ(plot::priceFigure(3140), QStringLiteral("0.314"));
    EXPECT_EQ(plot::priceFigure(0), QStringLiteral("0.00"));
}

TEST(MoneyText, WritesTheDecimalSignThatPeopleHereWrite) {
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(plot::priceText(3142, "EUR"), QStringLiteral("0,3142 EUR"));
    EXPECT_EQ(plot::moneyText(123456, "EUR"), QStringLiteral("1234,56 EUR"));
    QLocale::setDefault(before);
}

}  // namespace
