// SPDX-License-Identifier: MIT
// Amounts of money for people: two decimals by the locale, then the currency's three letters.
#pragma once

#include <QString>
#include <cstdint>
#include <string>

namespace plot {

[[nodiscard]] QString moneyText(std::int64_t hundredths, const std::string& currency);  // "12.50 EUR"
/// Of a price: two decimals, or as many more as it has, up to four.
[[nodiscard]] QString priceFigure(std::int64_t tenThousandths);                             // "0.3142"
[[nodiscard]] QString priceText(std::int64_t tenThousandths, const std::string& currency);  // "0.3142 EUR"

}  // namespace plot
