// SPDX-License-Identifier: MIT
// How much of each component makes medium for so many trays: by parts, with the loss when fine fills coarse; what a cell and a tray hold; what
// a pot tells about air and water in a mix.
#pragma once

#include <span>
#include <vector>

#include "core/medium/medium.h"
#include "core/mixing/mix_notes.h"
#include "core/result.h"
#include "core/units/display_units.h"

namespace core {

struct MediumQuestion {
    std::vector<MediumComponent> components{};
    double litres{};         // of mixed medium wanted
    double lossPercent{15};  // 10 to 20 is usual; measure your own once
    MeasuringTools tools{};
};

struct ComponentAmount {
    MediumComponent component{};
    MeasuredAmount amount{};  // L, rounded up
};

struct MixedMedium {
    MediumQuestion question{};
    std::vector<ComponentAmount> components{};
    double litresAsMeasured{};  // what that mixes to
    MixNotes notes{};
};

/// 1 to 20 components, each with a name and parts above 0 to 1000; litres above 0 to 100 000; loss 0 to 60 %.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const MediumQuestion& question, const DisplayUnits& units = {});
/// Domain    faultsIn() finds nothing.
/// Returns   component = litres x parts / all parts / (1 - loss), rounded up so that it is enough.
/// Accuracy  1e-15 relative, of the sum; the loss of a mix is known to some per cent.
/// Source    from the definition; usual loss of 10 to 20 %: common practice, no source.
[[nodiscard]] Result<MixedMedium> mixMedium(const MediumQuestion& question);

/// A cell that tapers with straight walls, in mm: top and bottom of the same kind, both across and along.
struct Cell {
    double topAcross{}, topAlong{};
    double bottomAcross{}, bottomAlong{};
    double depth{};
    bool isRound{};  // then across and along are diameters of circles or ellipses
};
/// mL. Each measure above 0 to 1000 mm, bottom sides 0 and more. depth / 3 (top + bottom + mean of the mixed products of the sides), which is
/// depth / 3 (A1 + A2 + sqrt(A1 A2)) where top and bottom have the same proportions: exact for straight walls, by geometry.
[[nodiscard]] Result<double> cellMillilitres(const Cell& cell);
/// L that so many trays of so many cells take. Trays and cells 1 to 100 000, a cell above 0 to 100 000 mL.
[[nodiscard]] Result<double> trayLitres(int trays, int cells, double millilitresEach);

/// % of a pot's volume that is air once it has been soaked and has drained. mL above 0 to 100 000, drained no more than the pot.
[[nodiscard]] Result<double> airFilledPorosity(double potMillilitres, double drainedMillilitres);
/// % of a pot's volume that is water then: (wet - dry) g over mL, at 1 g/mL. Dry 0 and more, wet no less than dry.
[[nodiscard]] Result<double> waterHeld(double potMillilitres, double wetGrams, double dryGrams);

/// What media hold once drained.
struct MediumBand {
    std::string_view quantity{};  // "air", "water", "loss in mixing", in %
    double low{};
    double high{};
    std::string_view where{};
    std::string_view source{};
};
[[nodiscard]] std::span<const MediumBand> mediumBands();

}  // namespace core
