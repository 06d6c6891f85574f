// SPDX-License-Identifier: MIT
#include "core/mixing/reagent.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/mixing/formula.h"
#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr std::array reagentKinds = std::to_array<ReagentFacts>({
    {ReagentKind::Phosphoric, "phosphoric", "phosphoric acid", "H3PO4", true},
    {ReagentKind::Nitric, "nitric", "nitric acid", "HNO3", true},
    {ReagentKind::Sulfuric, "sulfuric", "sulfuric acid", "H2SO4", true},
    {ReagentKind::Citric, "citric", "citric acid (monohydrate)", "C6H8O7.H2O", true},
    {ReagentKind::PotassiumHydroxide, "hydroxide", "potassium hydroxide", "KOH", false},
    {ReagentKind::PotassiumBicarbonate, "bicarbonate", "potassium bicarbonate", "KHCO3", false},
    {ReagentKind::PotassiumCarbonate, "carbonate", "potassium carbonate", "K2CO3", false},
});

constexpr std::string_view densityFromMemory = "density at 20 C from tables, from memory";

constexpr std::array soldReagents = std::to_array<StockReagent>({
    {{ReagentKind::Phosphoric, 75, 1.573}, "", densityFromMemory},
    {{ReagentKind::Phosphoric, 85, 1.685}, "", densityFromMemory},
    {{ReagentKind::Phosphoric, 30, 1.18}, "about what hobby liquids for lowering pH hold", densityFromMemory},
    {{ReagentKind::Nitric, 61.4, 1.38}, "", densityFromMemory},
    {{ReagentKind::Nitric, 68, 1.41}, "fuming and a strong oxidiser: not for a household", densityFromMemory},
    {{ReagentKind::Sulfuric, 93, 1.835},
     "",
     "University of Massachusetts Extension, fact sheet on acids for alkalinity"},
    {{ReagentKind::Sulfuric, 35, 1.26}, "battery strength", densityFromMemory},
    {{ReagentKind::Citric, 100, {}}, "microbes eat it, so the pH drifts back", densityFromMemory},
});

/// Dissociation constants, weakest last; a proton that is always given has none.
std::span<const double> dissociationOf(ReagentKind kind) {
    static constexpr std::array phosphoric{2.148, 7.198, 12.35}, citric{3.128, 4.761, 6.396};
    static constexpr std::array sulfuric{1.99};
    switch (kind) {
        case ReagentKind::Phosphoric:
            return phosphoric;
        case ReagentKind::Citric:
            return citric;
        case ReagentKind::Sulfuric:
            return sulfuric;
        default:
            return {};
    }
}

int givenOutright(ReagentKind kind) {
    return kind == ReagentKind::Nitric || kind == ReagentKind::Sulfuric ? 1 : 0;
}

}  // namespace

std::span<const ReagentFacts> allReagents() {
    return reagentKinds;
}

const ReagentFacts& factsOf(ReagentKind kind) {
    return reagentKinds[static_cast<std::size_t>(kind)];
}

std::optional<ReagentKind> reagentFrom(std::string_view word) {
    const auto* const found = std::ranges::find(reagentKinds, word, &ReagentFacts::word);
    if (found == reagentKinds.end()) return {};
    return found->kind;
}

std::span<const StockReagent> stockReagents() {
    return soldReagents;
}

std::string nameOf(const Reagent& reagent) {
    return std::string(factsOf(reagent.kind).name) + ' ' + briefText(reagent.percent) + " %";
}

Refusals faultsIn(const Reagent& reagent) {
    constexpr double hundred = 100, lightest = 0.8, heaviest = 2.2;
    Refusals faults;
    collect(faults, faultAboveNothing("Strength of the acid or base", reagent.percent, hundred, "%"));
    if (reagent.kilogramsPerLitre)
        collect(faults, faultBetween("Density", *reagent.kilogramsPerLitre, lightest, heaviest, "kg/L"));
    return faults;
}

Result<double> millimolesPerUnit(const Reagent& reagent) {
    constexpr double milli = 1000, hundred = 100;
    if (Refusals faults = faultsIn(reagent); !faults.empty()) return refused(std::move(faults));
    const double gramsPerUnit = reagent.kilogramsPerLitre.value_or(1);  // a g of a solid, a mL of a liquid in g
    return milli * gramsPerUnit * reagent.percent / hundred / *molarMass(factsOf(reagent.kind).formula);
}

Result<double> effectiveProtons(ReagentKind kind, double ph) {
    constexpr double low = 2, high = 12;
    Refusals faults;
    collect(faults, faultBetween("pH", ph, low, high, ""));
    if (!factsOf(kind).isAcid) faults.push_back(outOfRange("Acid", std::string(factsOf(kind).name), "an acid"));
    if (!faults.empty()) return refused(std::move(faults));
    double whole = 1, term = 1, protons = 0;
    int given = 0;
    for (const double constant : dissociationOf(kind)) {
        term *= std::pow(10, ph - constant);
        whole += term;
        protons += ++given * term;
    }
    return givenOutright(kind) + protons / whole;
}

BaseYield yieldOf(ReagentKind base) {
    if (base == ReagentKind::PotassiumBicarbonate) return {.alkalinity = 1, .carbonate = 1};
    if (base == ReagentKind::PotassiumCarbonate) return {.alkalinity = 2, .carbonate = 1};
    return {.alkalinity = 1, .carbonate = 0};
}

std::vector<CautionTopic> cautionsWith(ReagentKind kind) {
    if (!factsOf(kind).isAcid) return {CautionTopic::Alkalis, CautionTopic::Advice};
    std::vector<CautionTopic> cautions{CautionTopic::Acids, CautionTopic::ChlorineGas};
    if (kind == ReagentKind::Nitric) cautions.push_back(CautionTopic::Oxidisers);
    cautions.push_back(CautionTopic::Advice);
    return cautions;
}

}  // namespace core
