// SPDX-License-Identifier: MIT
// Acid or base that shifts the pH of water, from its alkalinity: in a closed vessel, in a bubbled tub, and as a first dose and a ceiling. pH
// tells where the water is, alkalinity how hard it is to move. Where nothing is known of alkalinity or acid: core/mixing/titration.h.
#pragma once

#include "core/mixing/carbonate.h"
#include "core/mixing/mix_notes.h"
#include "core/mixing/reagent.h"
#include "core/result.h"
#include "core/units/display_units.h"

namespace core {

struct PhQuestion {
    double litres{};
    double alkalinity{};  // meq/L
    double fromPh{};
    double toPh{};
    Reagent reagent{};
    double carbonDioxide{outdoorCarbonDioxide};  // atm, of the air that bubbles through
    MeasuringTools tools{};

    bool operator==(const PhQuestion&) const = default;
};

struct PhDose {
    double milliequivalents{};  // meq/L, of acid or of base
    MeasuredAmount amount{};    // of the reagent for the whole tub
};

struct PhShift {
    PhQuestion question{};
    bool lowers{};
    PhDose closed{};            // shut off from the air, used at once
    PhDose bubbled{};           // once carbon dioxide has come and gone; 0 where bubbling alone goes as far
    PhDose first{};             // the smaller of the two
    PhDose ceiling{};           // of an acid all of the alkalinity; of a base the larger of the two; rounded down
    MeasuredAmount start{};     // half of the first dose: put in, stir, wait, read
    double phOfFirst{};         // closed, with the first dose as measured
    double phOfFirstBubbled{};  // what that drifts to in a bubbled tub
    double phUntreated{};       // what bubbling alone comes to
    MixNotes notes{};
};

/// Litres above 0 to 100 000; alkalinity 0 to 20 meq/L and possible at the pH now; pH now 4 to 10; pH wanted 5 to 8.5, apart by 0.05 and
/// more; an acid to lower, a base to raise; a bicarbonate only as far as bicarbonate goes.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const PhQuestion& question, const DisplayUnits& units = {});

/// Domain    faultsIn() finds nothing.
/// Returns   closed: alkalinity at the pH wanted with the carbonate unchanged (plus what a carbonate base brings), the difference being
///           the dose; bubbled: alkalinity at the pH wanted in equilibrium with air. Amounts by protons effective at the pH wanted.
/// Assumes   carbonate is the water's only buffer, 25 C. Phosphate, ammonium and roots pull the other way, so tubs settle in between.
/// Accuracy  phOfFirst... to 1e-9 of the model.
/// Source    carbonateSource; effectiveProtons(); first dose and ceiling: common practice, no source.
[[nodiscard]] Result<PhShift> shiftPh(const PhQuestion& question);

}  // namespace core
