// SPDX-License-Identifier: MIT
// An amount as it was worked out and as the grower's scale, syringe or jug can measure it. What the rounding does to the aim is each
// calculator's to say.
#pragma once

#include <optional>
#include <string>

#include "core/result.h"
#include "core/units/display_units.h"

namespace core {

/// The smallest step of each tool: 0.001 to 1000 of its unit.
struct MeasuringTools {
    double scale{0.1};    // g; a kitchen scale shows 1 g or 0.1 g
    double syringe{0.1};  // mL
    double jug{0.1};      // L

    bool operator==(const MeasuringTools&) const = default;
};

enum class AmountUnit { Grams, Millilitres, Litres };
enum class AmountRounding { ToNearest, Up, Down };

struct MeasuredAmount {
    double exact{};
    double measured{};  // a whole number of steps
    double step{};
    AmountUnit unit{AmountUnit::Grams};

    bool operator==(const MeasuredAmount&) const = default;
    /// By which share the measured amount is more (or less, below 0) than the exact one; 0 where there is nothing to measure.
    [[nodiscard]] double offBy() const { return exact == 0 ? 0 : measured / exact - 1; }
};

[[nodiscard]] Refusals faultsIn(const MeasuringTools& tools, const DisplayUnits& units = {});
/// "g", "mL", "L"
[[nodiscard]] const char* unitOf(AmountUnit unit);
[[nodiscard]] double stepOf(const MeasuringTools& tools, AmountUnit unit);

/// Domain    exact >= 0 and finite; tools without faults.
/// Returns   the multiple of the step that is nearest (halves away from nothing), or the next one up or down; a millionth of a step is dust
///           of the computation and moves none of them.
[[nodiscard]] MeasuredAmount measuredWith(const MeasuringTools& tools, AmountUnit unit, double exact,
                                          AmountRounding rounding = AmountRounding::ToNearest);
/// As many as the step has: 1 of 0.1 and of 0.5, 2 of 0.25.
[[nodiscard]] int decimalsOf(const MeasuredAmount& amount);
/// "7.2 g": as many decimals as the step has.
[[nodiscard]] std::string measuredText(const MeasuredAmount& amount);
/// Where the tool is too coarse for the amount (more than a twentieth off): by how much, and the way out.
[[nodiscard]] std::optional<std::string> coarsenessOf(const MeasuredAmount& amount, const std::string& ofWhat);

}  // namespace core
