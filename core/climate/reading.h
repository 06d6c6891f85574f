// SPDX-License-Identifier: MIT
// One measured quantity at one station at one moment, and what it must obey.
#pragma once

#include <string>

#include "core/climate/quantity.h"
#include "core/id.h"
#include "core/units/moment.h"

namespace core {

struct Reading {
    ReadingId id{};
    StationId station{};
    Quantity quantity{Quantity::SolutionEc};
    Moment readAt{};
    double value{};  // in the unit of factsOf(quantity)
    std::string note{};

    bool operator==(const Reading&) const = default;
};

}  // namespace core
