// SPDX-License-Identifier: MIT
#include "core/mixing/medium_mix.h"

#include <algorithm>
#include <array>
#include <numbers>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double allOfIt = 100;  // %
constexpr double largestPot = 100'000;
constexpr int mostTrays = 100'000;
constexpr double mostParts = 1000;
constexpr int mostComponents = 20;

constexpr std::array heldBands = std::to_array<MediumBand>({
    {"air", 20, 35, "rooting cells after drainage; taller cells drain better", commonPractice},
    {"air", 10, 30, "nursery containers", "Southern Nursery Association, Best Management Practices, from memory"},
    {"air", 20, 20, "poinsettia cuttings", "grower guide on poinsettia propagation"},
    {"water", 45, 65, "nursery containers", "Southern Nursery Association, Best Management Practices, from memory"},
    {"water", 50, 50, "poinsettia cuttings", "grower guide on poinsettia propagation"},
    {"loss in mixing", 10, 20, "fine fills coarse: measure your own once", commonPractice},
});

Refusals faultsInPot(double millilitres) {
    Refusals faults;
    collect(faults, faultAboveNothing("Volume of the pot", millilitres, largestPot, "mL"));
    return faults;
}

Working componentWorking(const MediumQuestion& question, const ComponentAmount& component, double allParts) {
    return {.formula = component.component.name + " = volume x part / all parts / (1 - loss)",
            .withNumbers = briefText(question.litres) + " L x " + briefText(component.component.parts) + " / " +
                           briefText(allParts) + " / (1 - " + briefText(question.lossPercent / allOfIt) +
                           ") = " + briefText(component.amount.exact) + " L",
            .source = std::string("by definition; a loss of 10 to 20 % is ") + commonPractice};
}

}  // namespace

Refusals faultsIn(const MediumQuestion& question, const DisplayUnits& units) {
    constexpr double mostLoss = 60;
    Refusals faults = faultsIn(question.tools, units);
    const int count = static_cast<int>(std::min<std::size_t>(question.components.size(), mostComponents + 1));
    collect(faults, faultInWhole("Number of components", count, 1, mostComponents));
    for (const MediumComponent& component : question.components) {
        collect(faults, faultInName("Component", component.name));
        collect(faults, faultAboveNothing("Parts of " + quotable(component.name), component.parts, mostParts, ""));
    }
    collect(faults, faultInVolume("Volume", question.litres, units));
    collect(faults, faultBetween("Loss in mixing", question.lossPercent, 0, mostLoss, "%"));
    return faults;
}

Result<MixedMedium> mixMedium(const MediumQuestion& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    double allParts = 0, measured = 0;
    for (const MediumComponent& component : question.components) allParts += component.parts;
    const double kept = 1 - question.lossPercent / allOfIt;
    MixedMedium mixed{.question = question};
    for (const MediumComponent& component : question.components) {
        const double litres = question.litres * component.parts / allParts / kept;
        mixed.components.push_back(
            {.component = component,
             .amount = measuredWith(question.tools, AmountUnit::Litres, litres, AmountRounding::Up)});
        measured += mixed.components.back().amount.measured;
        mixed.notes.workings.push_back(componentWorking(question, mixed.components.back(), allParts));
    }
    mixed.litresAsMeasured = measured * kept;
    mixed.notes.remarks.push_back("The loss is the mix's own: measure once what 10 L of parts become, and use that.");
    mixed.notes.cautions = {CautionTopic::MouldAndDust, CautionTopic::Advice};
    return mixed;
}

Result<double> cellMillilitres(const Cell& cell) {
    constexpr double mostMillimetres = 1000, cubicMillimetres = 1000;
    Refusals faults;
    collect(faults, faultAboveNothing("Width of the cell", cell.topAcross, mostMillimetres, "mm"));
    collect(faults, faultAboveNothing("Length of the cell", cell.topAlong, mostMillimetres, "mm"));
    collect(faults, faultBetween("Width at the bottom", cell.bottomAcross, 0, mostMillimetres, "mm"));
    collect(faults, faultBetween("Length at the bottom", cell.bottomAlong, 0, mostMillimetres, "mm"));
    collect(faults, faultAboveNothing("Depth of the cell", cell.depth, mostMillimetres, "mm"));
    if (!faults.empty()) return refused(std::move(faults));
    const double shape = cell.isRound ? std::numbers::pi / 4 : 1;
    const double top = cell.topAcross * cell.topAlong, bottom = cell.bottomAcross * cell.bottomAlong;
    const double between = (cell.topAcross * cell.bottomAlong + cell.bottomAcross * cell.topAlong) / 2;
    return shape * cell.depth / 3 * (top + bottom + between) / cubicMillimetres;
}

Result<double> trayLitres(int trays, int cells, double millilitresEach) {
    constexpr double millilitres = 1000;
    Refusals faults;
    collect(faults, faultInWhole("Trays", trays, 1, mostTrays));
    collect(faults, faultInWhole("Cells of a tray", cells, 1, mostTrays));
    collect(faults, faultAboveNothing("Volume of a cell", millilitresEach, largestPot, "mL"));
    if (!faults.empty()) return refused(std::move(faults));
    return static_cast<double>(trays) * cells * millilitresEach / millilitres;
}

Result<double> airFilledPorosity(double potMillilitres, double drainedMillilitres) {
    Refusals faults = faultsInPot(potMillilitres);
    if (faults.empty()) collect(faults, faultBetween("Drained", drainedMillilitres, 0, potMillilitres, "mL"));
    if (!faults.empty()) return refused(std::move(faults));
    return allOfIt * drainedMillilitres / potMillilitres;
}

Result<double> waterHeld(double potMillilitres, double wetGrams, double dryGrams) {
    constexpr double heaviest = 1'000'000;
    Refusals faults = faultsInPot(potMillilitres);
    collect(faults, faultBetween("Dry weight", dryGrams, 0, heaviest, "g"));
    if (faults.empty()) collect(faults, faultBetween("Wet weight", wetGrams, dryGrams, dryGrams + potMillilitres, "g"));
    if (!faults.empty()) return refused(std::move(faults));
    return allOfIt * (wetGrams - dryGrams) / potMillilitres;
}

std::span<const MediumBand> mediumBands() {
    return heldBands;
}

}  // namespace core
