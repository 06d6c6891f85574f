// SPDX-License-Identifier: MIT
#include "core/money/amount_entry.h"

#include <cmath>
#include <string>

#include "core/units/entered_text.h"
#include "core/units/number_entry.h"

namespace core {

namespace {

constexpr double mostMoney = 1'000'000'000;

Refusal refusedAmount(std::string_view typed) {
    const std::string allowed = "0 to 1000000000 with at most two decimals";
    if (isBlank(typed)) return {"Amount", "blank", allowed, "Amount is blank; " + allowed + " is allowed."};
    const std::string value = quotable(typed);
    return {"Amount", value, allowed, "Amount is \u201c" + value + "\u201d; " + allowed + " is allowed."};
}

}  // namespace

Result<std::int64_t> hundredthsFrom(std::string_view typed) {
    const std::optional<double> amount = numberFrom(typed);
    if (!amount || *amount < 0 || *amount > mostMoney) return refused(Refusals{refusedAmount(typed)});
    // A third decimal is a slip, or a thousand written with a point: neither is for us to guess.
    const std::size_t sign = typed.find_first_of(".,"), last = typed.find_last_of("0123456789");
    constexpr std::size_t mostDecimals = 2;
    if (sign != std::string_view::npos && last > sign + mostDecimals) return refused(Refusals{refusedAmount(typed)});
    return static_cast<std::int64_t>(std::llround(*amount * 100));
}

}  // namespace core
