// SPDX-License-Identifier: MIT
// So many plants wanted, perhaps by a day. Kept are the wishes only: how many to stick and when is worked out from the records each time.
#pragma once

#include <optional>
#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Plan {
    PlanId id{};
    PlantId plant{};
    MethodId method{};              // unset: not decided
    int wanted{};                   // plants that are to be there in the end, >= 1
    double assurance{0.9};          // chance of having enough, in (0, 1)
    std::optional<Date> needBy{};   // no day: how many, but not when
    double pottedLivePercent{100};  // of 100 potted on, how many live: in (0, 100]
    int hardeningDays{};            // between rooting and potting on
    int pottingDays{};              // of growing on after that
    std::string note{};

    bool operator==(const Plan&) const = default;
};

}  // namespace core
