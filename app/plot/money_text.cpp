// SPDX-License-Identifier: MIT
#include "app/plot/money_text.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace plot {

QString moneyText(std::int64_t hundredths, const std::string& currency) {
    return QCoreApplication::translate("MoneyText", "%1 %2", "an amount and its currency")
        .arg(decimalText(static_cast<double>(hundredths) / 100, 2), QString::fromStdString(currency));
}

}  // namespace plot
