// SPDX-License-Identifier: MIT
#include "core/money/amount_entry.h"

#include <cmath>
#include <string>

#include "core/units/entered_text.h"
#include "core/units/number_entry.h"

namespace core {

namespace {

constexpr double mostMoney = 1'000'000'000;

constexpr int decimalsOfMoney = 2;
constexpr int mostDecimalsOfPrices = 4;

Refusal refusedAmount(std::string_view typed, int mostDecimals) {
    const std::string allowed =
        std::string("0 to 1000000000 with at most ") + (mostDecimals == decimalsOfMoney ? "two" : "four") + " decimals";
    if (isBlank(typed)) return {"Amount", "blank", allowed, "Amount is blank; " + allowed + " is allowed."};
    const std::string value = quotable(typed);
    return {"Amount", value, allowed, "Amount is " + value + "; " + allowed + " is allowed."};
}

Result<double> amountFrom(std::string_view typed, int mostDecimals) {
    const std::optional<double> amount = numberFrom(typed);
    if (!amount || *amount < 0 || *amount > mostMoney) return refused(Refusals{refusedAmount(typed, mostDecimals)});
    // One decimal too many is a slip, or a thousand written with a point: neither is for us to guess.
    const std::size_t sign = typed.find_first_of(".,"), last = typed.find_last_of("0123456789");
    if (sign != std::string_view::npos && last > sign + static_cast<std::size_t>(mostDecimals))
        return refused(Refusals{refusedAmount(typed, mostDecimals)});
    return *amount;
}

}  // namespace

Result<std::int64_t> hundredthsFrom(std::string_view typed) {
    const Result<double> amount = amountFrom(typed, decimalsOfMoney);
    if (!amount) return refused(amount.error());
    return static_cast<std::int64_t>(std::llround(*amount * 100));
}

Result<std::int64_t> tenThousandthsFrom(std::string_view typed, int mostDecimals) {
    const Result<double> amount =
        amountFrom(typed, mostDecimals == decimalsOfMoney ? mostDecimals : mostDecimalsOfPrices);
    if (!amount) return refused(amount.error());
    return static_cast<std::int64_t>(std::llround(*amount * 10'000));
}

}  // namespace core
