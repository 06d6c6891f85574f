// SPDX-License-Identifier: MIT
// What usually has a price, for the table in which a grower begins. No amounts: those are the grower's. Inside shelves only.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/money/price.h"

namespace desktop {

struct UsualThing {
    QString group;           // as a heading above the first of them
    core::Price price;       // its name, kind and basis; the figures are blank
    QString unitOfAmount{};  // empty: it has no amount
    QString unitOfFigure{};  // empty: it has only an amount
    QString secondUnit{};    // of power: hours a day
    QString between{};       // of the two figures: "lasts"
    std::string method{};    // of a new logbook's, by name: whose it usually is; empty: the whole bench
};

[[nodiscard]] std::vector<UsualThing> usualThings(const std::string& currency);

}  // namespace desktop
