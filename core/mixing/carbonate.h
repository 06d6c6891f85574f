// SPDX-License-Identifier: MIT
// The carbonate system of water at 25 C: what alkalinity does to pH, shut off from the air and open to it. For pH adjusting to some
// tenths; not for sea water, nor for water with much phosphate, ammonium or humic acid, which buffer too.
#pragma once

#include "core/result.h"

namespace core {

inline constexpr const char* carbonateSource =
    "carbonate constants at 25 C of Plummer and Busenberg (1982): pK1 6.352, pK2 10.329; pKw 13.995, from memory";
inline constexpr double outdoorCarbonDioxide = 0.00042;  // atm
inline constexpr double mostAlkalinity = 20;             // meq/L
inline constexpr double lowestPh = 3;
inline constexpr double highestPh = 11;

/// From mg/L as CaCO3, 0 to 1000, to meq/L: one is 50.04 (half of CaCO3's molar mass).
[[nodiscard]] Result<double> alkalinityFromCalciumCarbonate(double milligramsPerLitre);

/// mmol/L of carbonate in all its forms.
///
/// Domain    alkalinity 0 to 20 meq/L, pH 3 to 11, the two being possible together: a carbonate content below 0 is refused.
/// Returns   (alkalinity - OH + H) / (share as HCO3 + 2 share as CO3).
/// Accuracy  1e-12 relative; as a model of tap water some per cent, by temperature and dissolved salts.
/// Source    carbonateSource.
[[nodiscard]] Result<double> totalCarbonate(double alkalinity, double ph);

/// Alkalinity in meq/L of so much carbonate at this pH; below 0 where acid is left over. Domain: carbonate 0 to 1000 mmol/L, pH 0 to 14.
[[nodiscard]] double alkalinityAt(double carbonate, double ph);

/// Alkalinity in meq/L that water in equilibrium with air has at this pH.
/// Domain    pH 3 to 9.5, carbon dioxide 0.0001 to 0.1 atm. Source as above, CO2 solubility 10^-1.468 mol/L/atm, from memory.
[[nodiscard]] Result<double> alkalinityInAir(double ph, double carbonDioxide = outdoorCarbonDioxide);

/// pH that bubbled water comes to once its carbon dioxide is that of the air.
/// Domain    alkalinity -1 to 20 meq/L (below 0: acid left over), carbon dioxide 0.0001 to 0.1 atm. Accuracy 1e-9 of pH.
[[nodiscard]] Result<double> phInAir(double alkalinity, double carbonDioxide = outdoorCarbonDioxide);

/// Acid in meq/L that shifts the pH of water shut off from the air, its carbonate staying; below 0: base.
/// Domain    as totalCarbonate(), both pH.
[[nodiscard]] Result<double> acidForShift(double alkalinity, double fromPh, double toPh);

}  // namespace core
