// SPDX-License-Identifier: MIT
// What a solution holds of each element, in mg/L: from salts by their formula and from bags by the figures of their label.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/mixing/formula.h"
#include "core/mixing/mix_notes.h"
#include "core/result.h"

namespace core {

inline constexpr double mostGramsPerLitre = 1000;

/// One thing in the water.
struct FeedIngredient {
    std::string name{};
    double gramsPerLitre{};
    std::vector<ElementShare> shares{};  // of its mass; may leave something out, as labels do

    bool operator==(const FeedIngredient&) const = default;
};

/// A figure as the label prints it: "P2O5" 11, "N" 5, "Ca" 19.
struct LabelFigure {
    std::string word{};
    double percent{};

    bool operator==(const LabelFigure&) const = default;
};

struct ElementAmount {
    std::string symbol{};
    double milligramsPerLitre{};

    bool operator==(const ElementAmount&) const = default;
};

/// A solution of the literature, for comparison: for plants with roots, far too strong for cuttings without.
struct KnownSolution {
    std::string_view name{};
    std::vector<ElementAmount> elements{};
    std::string_view source{};
};

struct SolutionElements {
    std::vector<ElementAmount> elements{};  // N, P, K, Ca, Mg, S, then by symbol; without H, C and O
    MixNotes notes{};
};

/// What turns the label's word into the element: "P2O5" is 0.4364 of phosphorus, "N" 1 of nitrogen. Of NO3 and NH4 the nitrogen, of SO3 and
/// SO4 the sulfur. Refused: what is neither an element of atomicMass() nor an oxide or ion with one such element beside H and O.
struct LabelFactor {
    std::string symbol{};
    double factor{};
};
[[nodiscard]] Result<LabelFactor> labelFactor(std::string_view word);

/// By formula; grams in a litre above 0 to 1000, purity above 0 to 100 %.
[[nodiscard]] Result<FeedIngredient> saltIngredient(const std::string& formula, double gramsPerLitre,
                                                    double purityPercent = 100);
/// By label; each figure 0 to 100 %, together no more than 100 %, no word twice.
[[nodiscard]] Result<FeedIngredient> labelIngredient(const std::string& name, double gramsPerLitre,
                                                     std::span<const LabelFigure> label);

/// Domain    one ingredient or more, grams in a litre of each above 0 to 1000, shares that add up to 1 at most.
/// Returns   mg/L = 1000 g/L x share, summed over the ingredients.
/// Accuracy  that of the label, or of atomic masses (five digits).
/// Source    IUPAC abridged standard atomic weights, from memory; 1 g/L of 1 % is 10 mg/L by definition.
[[nodiscard]] Result<SolutionElements> solutionElements(std::span<const FeedIngredient> ingredients);

/// g/L of a bag with so much of an element that gives so many mg/L: mg/L / (10 x percent). mg/L from 0 to 10 000, percent above 0 to 100.
[[nodiscard]] Result<double> gramsPerLitreFor(double milligramsPerLitre, double percent);

/// Salts by their formula that growers weigh in; the trade's calcium nitrate is not the pure salt, so its bag's figures rule.
[[nodiscard]] std::span<const std::string_view> usualSalts();
[[nodiscard]] const std::vector<KnownSolution>& knownSolutions();

}  // namespace core
