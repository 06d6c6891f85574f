// SPDX-License-Identifier: MIT
// What to do with the solution that is in the tub now: make it weaker with water, fill it up again, mix two.
#pragma once

#include <string>
#include <vector>

#include "core/mixing/nutrient_dose.h"

namespace core {

struct TubDilution {
    double litres{};  // in the tub
    double ec{};      // of it, mS/cm at 25 C
    double targetEc{};
    double waterEc{};  // of what is added
    MeasuringTools tools{};
};

struct DilutedTub {
    TubDilution question{};
    MeasuredAmount add{};      // L of water, where the tub has room for it
    MeasuredAmount replace{};  // L of solution to take out and to fill up with water, where it hasn't
    double ecAfterAdding{};    // with the measured amounts
    double ecAfterReplacing{};
    MixNotes notes{};
};

/// Litres above 0 to 100 000, EC 0 to 20 mS/cm, a target below what is in the tub and above the water.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const TubDilution& question, const DisplayUnits& units = {});

/// Domain    faultsIn() finds nothing.
/// Returns   add = litres (now - target) / (target - water); replace = litres (now - target) / (now - water).
/// Assumes   salts are neither taken up nor settle out while mixing: EC mixes like volume.
/// Accuracy  1e-15 relative.
/// Source    conservation of the salts: from the definition.
[[nodiscard]] Result<DilutedTub> diluteTub(const TubDilution& question);

struct TubTopUp {
    double litres{};          // in the tub now
    double ec{};              // of it
    double fullLitres{};      // to be filled up to
    NutrientQuestion feed{};  // its target and water EC, full dose, parts and tools; its litres are not looked at
};

struct ToppedUpTub {
    TubTopUp question{};
    MeasuredAmount water{};  // L
    std::vector<PartDose> parts{};
    double ecWithWaterAlone{};
    double ecLow{};  // with the amounts as measured
    double ecHigh{};
    MixNotes notes{};
};

/// As for the feed, with litres from 0 up to what is full.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const TubTopUp& question, const DisplayUnits& units = {});

/// Domain    faultsIn() finds nothing.
/// Returns   share of full strength in what is full = (target - EC with water alone) / full; nothing where that is below 0, with a remark.
/// Accuracy, Source  as diluteTub() and nutrientDose().
[[nodiscard]] Result<ToppedUpTub> topUpTub(const TubTopUp& question);

/// EC of two volumes together: (v1 ec1 + v2 ec2) / (v1 + v2). Litres 0 to 100 000, not both 0; EC 0 to 20.
[[nodiscard]] Result<double> blendedEc(double litres1, double ec1, double litres2, double ec2);

}  // namespace core
