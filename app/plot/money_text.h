// SPDX-License-Identifier: MIT
// Amounts of money for people: two decimals by the locale, then the currency's three letters.
#pragma once

#include <QString>
#include <cstdint>
#include <string>

namespace plot {

[[nodiscard]] QString moneyText(std::int64_t hundredths, const std::string& currency);  // "12.50 EUR"

}  // namespace plot
