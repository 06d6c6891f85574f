// SPDX-License-Identifier: MIT
#include "core/mixing/carbonate.h"

#include <cmath>

#include "core/mixing/carbonate_charge.h"
#include "core/mixing/formula.h"
#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double pK1 = 6.352, pK2 = 10.329, pKw = 13.995, logSolubility = -1.468;
constexpr double milliPerMole = 1000;
constexpr double leastCarbonDioxide = 0.0001, mostCarbonDioxide = 0.1;

double molar(double p) {
    return std::pow(10, -p);
}

double openAlkalinity(double ph, double carbonDioxide) {
    const double dissolved = milliPerMole * std::pow(10, logSolubility) * carbonDioxide;  // mmol/L
    const double bicarbonate = dissolved * std::pow(10, ph - pK1);
    return bicarbonate * (1 + 2 * std::pow(10, ph - pK2)) + hydroxideLessHydrogen(ph);
}

Refusals faultsInWater(double alkalinity, double ph, const std::string& phName) {
    Refusals faults;
    collect(faults, faultBetween("Alkalinity", alkalinity, 0, mostAlkalinity, "meq/L"));
    collect(faults, faultBetween(phName, ph, lowestPh, highestPh, ""));
    if (faults.empty() && alkalinity < hydroxideLessHydrogen(ph))
        faults.push_back(outOfRange(
            "Alkalinity", briefText(alkalinity) + " meq/L",
            "at pH " + briefText(ph) + " no less than " + briefText(hydroxideLessHydrogen(ph), 3) + " meq/L"));
    return faults;
}

std::optional<Refusal> faultInCarbonDioxide(double carbonDioxide) {
    return faultBetween("Carbon dioxide of the air", carbonDioxide, leastCarbonDioxide, mostCarbonDioxide, "atm");
}

}  // namespace

double carbonateCharge(double ph) {
    const double one = std::pow(10, ph - pK1), two = one * std::pow(10, ph - pK2);
    return (one + 2 * two) / (1 + one + two);
}

double hydroxideLessHydrogen(double ph) {
    return milliPerMole * (molar(pKw - ph) - molar(ph));
}

Result<double> alkalinityFromCalciumCarbonate(double milligramsPerLitre) {
    constexpr double most = 1000;
    if (const auto fault = faultBetween("Alkalinity", milligramsPerLitre, 0, most, "mg/L as CaCO3"))
        return refused({*fault});
    return milligramsPerLitre / (*molarMass("CaCO3") / 2);
}

Result<double> totalCarbonate(double alkalinity, double ph) {
    if (Refusals faults = faultsInWater(alkalinity, ph, "pH"); !faults.empty()) return refused(std::move(faults));
    return (alkalinity - hydroxideLessHydrogen(ph)) / carbonateCharge(ph);
}

double alkalinityAt(double carbonate, double ph) {
    return carbonate * carbonateCharge(ph) + hydroxideLessHydrogen(ph);
}

Result<double> alkalinityInAir(double ph, double carbonDioxide) {
    constexpr double highest = 9.5;
    Refusals faults;
    collect(faults, faultBetween("pH", ph, lowestPh, highest, ""));
    collect(faults, faultInCarbonDioxide(carbonDioxide));
    if (!faults.empty()) return refused(std::move(faults));
    return openAlkalinity(ph, carbonDioxide);
}

Result<double> phInAir(double alkalinity, double carbonDioxide) {
    constexpr int halvings = 60;
    Refusals faults;
    collect(faults, faultBetween("Alkalinity", alkalinity, -1, mostAlkalinity, "meq/L"));
    collect(faults, faultInCarbonDioxide(carbonDioxide));
    if (!faults.empty()) return refused(std::move(faults));
    double low = 0, high = 14;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (openAlkalinity(middle, carbonDioxide) < alkalinity ? low : high) = middle;
    }
    return (low + high) / 2;
}

Result<double> acidForShift(double alkalinity, double fromPh, double toPh) {
    Refusals faults = faultsInWater(alkalinity, fromPh, "pH now");
    collect(faults, faultBetween("pH wanted", toPh, lowestPh, highestPh, ""));
    if (!faults.empty()) return refused(std::move(faults));
    const double carbonate = (alkalinity - hydroxideLessHydrogen(fromPh)) / carbonateCharge(fromPh);
    return alkalinity - alkalinityAt(carbonate, toPh);
}

}  // namespace core
