// SPDX-License-Identifier: MIT
#include "app/plot/money_text.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace plot {

namespace {

QString withCurrency(const QString& amount, const std::string& currency) {
    return QCoreApplication::translate("MoneyText", "%1 %2", "an amount and its currency")
        .arg(amount, QString::fromStdString(currency));
}

}  // namespace

QString moneyText(std::int64_t hundredths, const std::string& currency) {
    return withCurrency(decimalText(static_cast<double>(hundredths) / 100, 2), currency);
}

QString priceFigure(std::int64_t tenThousandths) {
    const int decimals = tenThousandths % 100 == 0 ? 2 : tenThousandths % 10 == 0 ? 3 : 4;
    return decimalText(static_cast<double>(tenThousandths) / 10'000, decimals);
}

QString priceText(std::int64_t tenThousandths, const std::string& currency) {
    return withCurrency(priceFigure(tenThousandths), currency);
}

}  // namespace plot
