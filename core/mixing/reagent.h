// SPDX-License-Identifier: MIT
// Acids and bases that shift pH: how many protons each gives or takes at the pH wanted, and how much of it a millilitre or gram holds.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/mixing/mix_notes.h"
#include "core/result.h"

namespace core {

enum class ReagentKind {
    Phosphoric,
    Nitric,
    Sulfuric,
    Citric,
    PotassiumHydroxide,
    PotassiumBicarbonate,
    PotassiumCarbonate
};

struct ReagentFacts {
    ReagentKind kind{};
    std::string_view word{};  // in files: "phosphoric"
    std::string_view name{};  // for people: "phosphoric acid"
    std::string_view formula{};
    bool isAcid{};
};

/// What is in the bottle or bag.
struct Reagent {
    ReagentKind kind{ReagentKind::Phosphoric};
    double percent{100};                        // by weight
    std::optional<double> kilogramsPerLitre{};  // absent: a solid, dosed by weight

    bool operator==(const Reagent&) const = default;
};

/// A strength that is sold, with its density.
struct StockReagent {
    Reagent reagent{};
    std::string_view note{};    // empty where there is none
    std::string_view source{};  // of the density
};

[[nodiscard]] std::span<const ReagentFacts> allReagents();
[[nodiscard]] const ReagentFacts& factsOf(ReagentKind kind);
[[nodiscard]] std::optional<ReagentKind> reagentFrom(std::string_view word);
[[nodiscard]] std::span<const StockReagent> stockReagents();
/// "phosphoric acid 75 %"
[[nodiscard]] std::string nameOf(const Reagent& reagent);

/// Percent above 0 to 100, density 0.8 to 2.2 kg/L.
[[nodiscard]] Refusals faultsIn(const Reagent& reagent);

/// mmol in a mL (in a g of a solid). Domain: faultsIn() finds nothing. Accuracy: that of the density, mostly from memory of tables at 20 C.
[[nodiscard]] Result<double> millimolesPerUnit(const Reagent& reagent);

/// Protons that a molecule gives at this pH; the first of sulfuric and the one of nitric acid are given outright.
///
/// Domain    an acid, pH 2 to 12.
/// Accuracy  0.01 from the constants' own spread; 25 C, thin solutions.
/// Source    pKa of handbooks, from memory: phosphoric 2.148, 7.198, 12.35; citric 3.128, 4.761, 6.396; sulfuric 1.99.
[[nodiscard]] Result<double> effectiveProtons(ReagentKind kind, double ph);

/// Alkalinity (meq) and carbonate (mmol) that a mmol of a base brings along.
struct BaseYield {
    double alkalinity{};
    double carbonate{};
};
[[nodiscard]] BaseYield yieldOf(ReagentKind base);

/// What to mind with it.
[[nodiscard]] std::vector<CautionTopic> cautionsWith(ReagentKind kind);

}  // namespace core
