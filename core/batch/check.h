// SPDX-License-Identifier: MIT
// One look at one batch on one day. It stores what is new since the check before.
#pragma once

#include <string>
#include <vector>

#include "core/batch/finding.h"
#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Loss {
    LossCauseId cause{};  // may be unset: cause not known
    int count{};          // >= 1

    bool operator==(const Loss&) const = default;
};

struct Check {
    CheckId id{};
    BatchId batch{};
    Date checkedOn{};
    int rooted{};                     // newly rooted
    int withdrawn{};                  // newly taken away alive and unrooted
    std::vector<Loss> losses;         // newly lost, one entry a cause
    std::vector<Finding> findings{};  // those of the counts above whose position is known, row by row
    std::string note;

    [[nodiscard]] int lost() const;
    bool operator==(const Check&) const = default;
};

}  // namespace core
