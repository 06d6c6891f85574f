// SPDX-License-Identifier: MIT
// How much nutrient makes so much water so strong, and backwards: what a reading tells about a nutrient whose strength isn't known. Not for
// what is in a tub already: core/mixing/tub.h.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/mixing/feeding_bands.h"
#include "core/mixing/mix_notes.h"
#include "core/result.h"
#include "core/units/display_units.h"

namespace core {

inline constexpr std::size_t mostFeedParts = 6;
inline constexpr double mostFullDose = 1000;  // g or mL in a litre

/// One bottle or bag of a feed: its dose at full strength.
struct FeedPart {
    std::string name{};
    double fullPerLitre{};  // g/L or mL/L, by unit
    AmountUnit unit{AmountUnit::Grams};

    bool operator==(const FeedPart&) const = default;
};

struct NutrientQuestion {
    double litres{};
    double targetEc{};  // mS/cm at 25 C
    double waterEc{};   // of the water alone
    double fullEc{};    // that all parts at full strength add to pure water
    std::vector<FeedPart> parts{};
    MeasuringTools tools{};

    bool operator==(const NutrientQuestion&) const = default;
};

struct PartDose {
    FeedPart part{};
    MeasuredAmount amount{};
};

struct NutrientDose {
    NutrientQuestion question{};
    double strength{};  // of full strength; 0 where the water alone is as strong
    std::vector<PartDose> parts{};
    double ecLow{};  // what the amounts as measured come to; apart from ecHigh where parts are rounded unlike
    double ecHigh{};
    std::vector<FeedingBand> bands{};  // that hold the target
    MixNotes notes{};
};

/// Litres above 0 to 100 000, EC 0 to 20 mS/cm (full strength above 0), one to six parts in g or mL, each above 0 to 1000 in a litre.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const NutrientQuestion& question, const DisplayUnits& units = {});

/// The same share of every part's full dose.
///
/// Domain    faultsIn() finds nothing.
/// Returns   strength = (target - water) / full, never below 0; each part strength x full dose x litres. Above full strength a remark
///           says so: the label ends there, and EC bends below a straight line.
/// Assumes   EC rises in proportion to the dose and adds to the water's. Good to some 5 % up to 3 mS/cm (common practice, no source).
/// Accuracy  1e-15 relative, of the sum itself.
/// Source    common practice, no source; the example of two parts of 1.2 g/L with EC 2.4 in the reference data on propagation.
[[nodiscard]] Result<NutrientDose> nutrientDose(const NutrientQuestion& question);

struct NutrientReading {
    double litres{};
    double readEc{};  // of the mixture, mS/cm at 25 C
    double waterEc{};
    std::optional<double> fullEc{};  // absent: only what a g/L adds is learnt
    std::vector<FeedPart> parts{};   // fullPerLitre is what went in altogether, g or mL
    double meterStep{0.1};           // mS/cm that the meter shows

    bool operator==(const NutrientReading&) const = default;
};

struct LearntPart {
    std::string name{};
    AmountUnit unit{AmountUnit::Grams};
    double perLitre{};                     // as it went in
    std::optional<double> fullPerLitre{};  // full dose, with fullEc
    double fullLow{};                      // as far as the meter's step lets it be told
    double fullHigh{};
};

struct LearntNutrient {
    NutrientReading question{};
    double
        ecPerUnit{};  // mS/cm that the mixture gains with 1 g/L (mL/L) of the first part and as much more of the others
    std::vector<LearntPart> parts{};
    MixNotes notes{};
};

/// As for NutrientQuestion, with amounts above 0 to a million, a read EC above the water's, a meter's step of 0.001 to 1 mS/cm.
/// Worded in the grower's units.
[[nodiscard]] Refusals faultsIn(const NutrientReading& question, const DisplayUnits& units = {});

/// Domain    faultsIn() finds nothing; the water's own EC is needed: without it a tub can't be turned into a recipe.
/// Returns   full dose = amount / litres x full / (read - water). The limits let either reading be half a step of the meter off;
///           fullHigh is infinite where the readings are less than a step apart.
/// Accuracy, Source  as nutrientDose(), whose inverse it is.
[[nodiscard]] Result<LearntNutrient> learnNutrient(const NutrientReading& question);

}  // namespace core
