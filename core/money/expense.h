// SPDX-License-Identifier: MIT
// Money that went into one batch: a lot of hormone, a bag of medium. What is shared between batches is not in here.
#pragma once

#include <cstdint>
#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Expense {
    ExpenseId id{};
    BatchId batch{};
    Date spentOn{};
    std::string what{};
    std::int64_t hundredths{};  // of the logbook's currency, >= 0

    bool operator==(const Expense&) const = default;
};

}  // namespace core
