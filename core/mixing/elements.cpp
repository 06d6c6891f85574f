// SPDX-License-Identifier: MIT
#include "core/mixing/elements.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double wholeOfLabel = 100;
constexpr double dustOfShares = 1e-9;
constexpr std::array<std::string_view, 6> firstElements{"N", "P", "K", "Ca", "Mg", "S"};

bool isFromWaterOrAir(const std::string& symbol) {
    return symbol == "H" || symbol == "O" || symbol == "C";
}

std::size_t placeOfElement(const std::string& symbol) {
    return static_cast<std::size_t>(std::ranges::find(firstElements, symbol) - firstElements.begin());
}

Refusals faultsInIngredient(const FeedIngredient& ingredient) {
    Refusals faults;
    collect(faults, faultInLine("Name of an ingredient", ingredient.name));
    collect(faults, faultAboveNothing(quotable(ingredient.name), ingredient.gramsPerLitre, mostGramsPerLitre, "g/L"));
    double all = 0;
    for (const ElementShare& share : ingredient.shares) {
        collect(faults,
                faultBetween(quotable(share.symbol) + " of " + quotable(ingredient.name), share.share, 0, 1, ""));
        all += share.share;
    }
    if (faults.empty() && all > 1 + dustOfShares)
        faults.push_back(outOfRange("All of " + quotable(ingredient.name), briefPercent(all), "100 % at most"));
    return faults;
}

Working elementWorking(const FeedIngredient& ingredient, const ElementShare& share) {
    constexpr double milligrams = 1000;
    return {.formula = share.symbol + " from " + ingredient.name + " = 1000 x g/L x share of its mass",
            .withNumbers = "1000 x " + briefText(ingredient.gramsPerLitre) + " x " + briefText(share.share) + " = " +
                           briefText(milligrams * ingredient.gramsPerLitre * share.share) + " mg/L",
            .source = atomicMassesSource};
}

constexpr std::array<std::string_view, 13> weighedSalts{"Ca(NO3)2.4H2O", "Ca(NO3)2", "5Ca(NO3)2.NH4NO3.10H2O",
                                                        "KNO3",          "NH4NO3",   "Mg(NO3)2.6H2O",
                                                        "MgSO4.7H2O",    "K2SO4",    "KH2PO4",
                                                        "NH4H2PO4",      "KOH",      "KHCO3",
                                                        "K2CO3"};

}  // namespace

Result<LabelFactor> labelFactor(std::string_view word) {
    const Result<std::vector<ElementShare>> shares = elementSharesOf(word);
    if (!shares) return refused(shares.error());
    LabelFactor factor;
    for (const ElementShare& share : *shares) {
        if (share.symbol == "H" || share.symbol == "O") continue;
        if (!factor.symbol.empty())
            return refused({outOfRange("Figure of a label", quotable(word),
                                       "an element such as Ca, or an oxide or ion of one, such as P2O5 or NO3,")});
        factor = {.symbol = share.symbol, .factor = share.share};
    }
    if (factor.symbol.empty())
        return refused({outOfRange("Figure of a label", quotable(word), "an element that feeds plants, such as K,")});
    return factor;
}

Result<FeedIngredient> saltIngredient(const std::string& formula, double gramsPerLitre, double purityPercent) {
    Refusals faults;
    Result<std::vector<ElementShare>> shares = elementSharesOf(formula);
    if (!shares) faults = shares.error();
    collect(faults, faultAboveNothing(quotable(formula), gramsPerLitre, mostGramsPerLitre, "g/L"));
    collect(faults, faultAboveNothing("Purity of " + quotable(formula), purityPercent, wholeOfLabel, "%"));
    if (!faults.empty()) return refused(std::move(faults));
    for (ElementShare& share : *shares) share.share *= purityPercent / wholeOfLabel;
    return FeedIngredient{.name = formula, .gramsPerLitre = gramsPerLitre, .shares = *shares};
}

Result<FeedIngredient> labelIngredient(const std::string& name, double gramsPerLitre,
                                       std::span<const LabelFigure> label) {
    FeedIngredient ingredient{.name = name, .gramsPerLitre = gramsPerLitre};
    Refusals faults;
    double all = 0;
    for (std::size_t i = 0; i < label.size(); ++i) {
        const LabelFigure& figure = label[i];
        const auto isSame = [&](const LabelFigure& other) { return other.word == figure.word; };
        if (std::any_of(label.begin(), label.begin() + static_cast<std::ptrdiff_t>(i), isSame))
            faults.push_back(outOfRange("Figure of a label", quotable(figure.word) + " twice", "each word once"));
        collect(faults, faultBetween(quotable(figure.word), figure.percent, 0, wholeOfLabel, "%"));
        all += figure.percent;
        const Result<LabelFactor> factor = labelFactor(figure.word);
        if (!factor)
            faults.insert(faults.end(), factor.error().begin(), factor.error().end());
        else
            ingredient.shares.push_back(
                {.symbol = factor->symbol, .share = factor->factor * figure.percent / wholeOfLabel});
    }
    if (faults.empty() && all > wholeOfLabel)
        faults.push_back(outOfRange("Label of " + quotable(name), briefText(all) + " %", "100 % at most"));
    collect(faults, faultAboveNothing(quotable(name), gramsPerLitre, mostGramsPerLitre, "g/L"));
    if (!faults.empty()) return refused(std::move(faults));
    return ingredient;
}

Result<SolutionElements> solutionElements(std::span<const FeedIngredient> ingredients) {
    constexpr double milligrams = 1000;
    Refusals faults;
    if (ingredients.empty()) faults.push_back(outOfRange("Number of ingredients", "0", "1 or more"));
    for (const FeedIngredient& ingredient : ingredients)
        for (Refusal& fault : faultsInIngredient(ingredient)) faults.push_back(std::move(fault));
    if (!faults.empty()) return refused(std::move(faults));
    std::map<std::string, double> sums;
    SolutionElements solution;
    for (const FeedIngredient& ingredient : ingredients)
        for (const ElementShare& share : ingredient.shares) {
            if (isFromWaterOrAir(share.symbol)) continue;
            sums[share.symbol] += milligrams * ingredient.gramsPerLitre * share.share;
            solution.notes.workings.push_back(elementWorking(ingredient, share));
        }
    for (const auto& [symbol, sum] : sums) solution.elements.push_back({.symbol = symbol, .milligramsPerLitre = sum});
    std::ranges::stable_sort(solution.elements, {},
                             [](const ElementAmount& element) { return placeOfElement(element.symbol); });
    solution.notes.cautions = {CautionTopic::Oxidisers, CautionTopic::Concentrates, CautionTopic::Advice};
    return solution;
}

Result<double> gramsPerLitreFor(double milligramsPerLitre, double percent) {
    constexpr double most = 10'000, perPercent = 10;
    Refusals faults;
    collect(faults, faultBetween("Element wanted", milligramsPerLitre, 0, most, "mg/L"));
    collect(faults, faultAboveNothing("Share of the element", percent, wholeOfLabel, "%"));
    if (!faults.empty()) return refused(std::move(faults));
    return milligramsPerLitre / (perPercent * percent);
}

std::span<const std::string_view> usualSalts() {
    return weighedSalts;
}

const std::vector<KnownSolution>& knownSolutions() {
    static const std::vector<KnownSolution> solutions{
        {.name = "Hoagland no. 1",
         .elements = {{"N", 210}, {"P", 31}, {"K", 235}, {"Ca", 200}, {"Mg", 48.6}, {"S", 64}},
         .source = "Hoagland and Arnon (1950) California Agric. Exp. Sta. Circular 347, as encyclopaedias print it"},
        {.name = "Hoagland no. 2",
         .elements = {{"N", 210.1}, {"P", 31.0}, {"K", 234.6}, {"Ca", 160.3}, {"Mg", 48.6}, {"S", 64.1}},
         .source = "worked out from the recipe in Hoagland and Arnon (1950), from memory"},
        {.name = "Steiner",
         .elements = {{"N", 168.1}, {"P", 31.0}, {"K", 273.7}, {"Ca", 180.4}, {"Mg", 48.6}, {"S", 112.2}},
         .source = "worked out from the recipe in Steiner (1984), ISOSC proceedings, from memory"}};
    return solutions;
}

}  // namespace core
