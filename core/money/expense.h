// SPDX-License-Identifier: MIT
// Money and time that went into one batch or one session: a lot of hormone, a bag of medium, an afternoon. What many share is a price:
// price.h.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Expense {
    ExpenseId id{};
    BatchId batch{};  // one of the two
    Date spentOn{};
    std::string what{};
    std::int64_t hundredths{};        // of the logbook's currency, >= 0
    SessionId session{};              // its batches share it by cuttings
    std::optional<double> minutes{};  // of work; a session that has any takes no usual minutes per session beside them

    bool operator==(const Expense&) const = default;
};

inline constexpr double mostMinutes = 100'000;

}  // namespace core
