// SPDX-License-Identifier: MIT
#include "core/batch/day_rules.h"

namespace core {

std::optional<Refusal> faultInDay(std::string_view field, Date day, Date today) {
    using namespace std::chrono_literals;
    constexpr Date earliest{1800y / 1 / 1};
    const std::string name(field);
    const std::string allowed = isoText(earliest) + " to " + isoText(today);
    if (!day.ok())
        return Refusal{name, isoText(day), allowed,
                       name + " is " + isoText(day) + ", which is no day of the calendar; " + allowed + " is allowed."};
    if (day > today)
        return Refusal{name, isoText(day), allowed,
                       name + " is " + isoText(day) + ", which is in the future; " + allowed + " is allowed."};
    if (day < earliest)
        return Refusal{name, isoText(day), allowed,
                       name + " is " + isoText(day) + ", which is too long ago; " + allowed + " is allowed."};
    return {};
}

}  // namespace core
