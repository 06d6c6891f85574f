// SPDX-License-Identifier: MIT
#include "core/climate/bands.h"

namespace core {

namespace {

constexpr std::string_view practice = "common practice, no source";
constexpr std::string_view temperatureAdvice =
    "extension advice on temperatures of cuttings, at second hand: root zone 22 to 25, air 20 to 23, or 25 to 27 "
    "without bottom heat";
constexpr std::string_view lightAdvice =
    "extension limits for the first days, at second hand: up to 100 to 150 or 120 to 200; 60 for 16 hours was enough "
    "for sage and gaura";
constexpr std::string_view humidityAdvice =
    "common practice: 80 to 95 once roots start, before that 90 or more (above 95 for a camellia: Tran Van Do et al. "
    "2020, "
    "Journal of Applied Horticulture 22:159-163, abstract)";

}  // namespace

std::optional<Band> rootingBand(Quantity quantity) {
    switch (quantity) {
        case Quantity::SolutionEc:  // up to 0.5 before there are roots, up to 1.0 once there are
            return Band{0, 1.0, practice};
        case Quantity::SolutionPh:
            return Band{5.6, 6.2, practice};
        case Quantity::SolutionTemperature:  // warmer water roots faster but holds less oxygen and rots faster
            return Band{18, 24, practice};
        case Quantity::MediumTemperature:
            return Band{22, 25, temperatureAdvice};
        case Quantity::AirTemperature:
            return Band{20, 27, temperatureAdvice};
        case Quantity::RelativeHumidity:
            return Band{80, 100, humidityAdvice};
        case Quantity::Light:
            return Band{60, 150, lightAdvice};
        case Quantity::DissolvedOxygen:  // 5 mg/L is the usual low warning; more does no harm
            return Band{5, factsOf(quantity).high, practice};
    }
    return {};
}

bool isOutside(const Band& band, double stored) {
    return stored < band.low || stored > band.high;
}

}  // namespace core
