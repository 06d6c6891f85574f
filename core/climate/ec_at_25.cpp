// SPDX-License-Identifier: MIT
#include "core/climate/ec_at_25.h"

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double referenceCelsius = 25;

Refusals faultsInEc(double ec, double celsius, double slope) {
    constexpr double most = 1'000'000, warmest = 50, steepest = 0.04;
    Refusals faults;
    collect(faults, faultBetween("EC", ec, 0, most, ""));
    collect(faults, faultBetween("Water temperature", celsius, 0, warmest, "C"));
    collect(faults, faultBetween("Change per degree", slope, 0, steepest, ""));
    if (faults.empty() && 1 + slope * (celsius - referenceCelsius) < 0.1)  // 0.04 at 0 C: nothing would be left
        faults.push_back(outOfRange("Change per degree", briefText(slope), "less at this temperature"));
    return faults;
}

}  // namespace

Result<double> ecAt25(double ec, double celsius, double slope) {
    if (Refusals faults = faultsInEc(ec, celsius, slope); !faults.empty()) return refused(std::move(faults));
    return ec / (1 + slope * (celsius - referenceCelsius));
}

Result<double> ecAtTemperature(double ec25, double celsius, double slope) {
    if (Refusals faults = faultsInEc(ec25, celsius, slope); !faults.empty()) return refused(std::move(faults));
    return ec25 * (1 + slope * (celsius - referenceCelsius));
}

}  // namespace core
