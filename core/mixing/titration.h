// SPDX-License-Identifier: MIT
// Acid or base by the grower's own small titration: what shifts a jug of the tub's water shifts the tub, in proportion. Needs neither the
// water's alkalinity nor the strength of what is in the bottle, and counts every buffer there is.
#pragma once

#include <vector>

#include "core/mixing/mix_notes.h"
#include "core/result.h"
#include "core/units/display_units.h"

namespace core {

struct TitrationStep {
    double millilitres{};  // that have gone in altogether
    double ph{};           // read then

    bool operator==(const TitrationStep&) const = default;
};

struct TitrationQuestion {
    double sampleLitres{};
    std::vector<TitrationStep> steps{};  // from the first reading, often 0 mL, on
    double toPh{};
    double litres{};      // of the tub
    double dilutedTo{1};  // 1 mL of the bottle was made up to this many mL for the jug
    MeasuringTools tools{};
};

struct TitratedDose {
    TitrationQuestion question{};
    double sampleMillilitres{};  // of what went into the jug, at the pH wanted
    MeasuredAmount amount{};     // mL of the bottle for the tub
    double low{};                // as far as the syringe's step lets it be told
    double high{};
    MeasuredAmount start{};  // half of it
    MixNotes notes{};
};

/// Jug above 0 to 100 L and no larger than the tub, tub to 100 000 L; 2 to 50 steps, mL from 0 rising to 1000, pH from 3 to 11 always falling
/// or always rising; the pH wanted between the first and the last of them; dilution 1 to 1000.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const TitrationQuestion& question, const DisplayUnits& units = {});

/// Domain    faultsIn() finds nothing.
/// Returns   the amount between the two readings about the pH wanted, on a straight line, x tub / jug / dilution. The limits move it by
///           half a step of the syringe in the jug.
/// Assumes   the jug is treated as the tub: same water, same bubbling, same wait.
/// Accuracy  1e-14 relative; pH bends between readings, so many small steps near the aim do better than two.
/// Source    from the definition; start with half: common practice, no source.
[[nodiscard]] Result<TitratedDose> titratedDose(const TitrationQuestion& question);

}  // namespace core
