// SPDX-License-Identifier: MIT
// What a strength of auxin means: which compound, counted as salt or as acid, in mg/L or per cent; and the ranges that the trade uses.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/result.h"
#include "core/treatment/treatment.h"

namespace core {

enum class AuxinKind { Iba, Naa, Iaa };

struct AuxinFacts {
    AuxinKind kind{};
    std::string_view word{};         // "IBA", as treatments call it
    std::string_view acidFormula{};  // C12H13NO2
    std::string_view saltFormula{};  // of the potassium salt
    double soluble{};                // mg/L of the acid in plain water; 0 where that isn't known
};

inline constexpr double mostAuxin = 100'000;  // mg/L or mg/kg

[[nodiscard]] std::span<const AuxinFacts> allAuxins();
[[nodiscard]] const AuxinFacts& factsOf(AuxinKind kind);
/// By word, in any mixture of capitals.
[[nodiscard]] std::optional<AuxinKind> auxinFrom(std::string_view word);

/// "IBA", or "K-IBA" for the potassium salt.
[[nodiscard]] std::string nameOf(AuxinKind kind, AuxinForm form);
/// g/mol. Source: IUPAC abridged standard atomic weights, from memory; IBA and IAA also in USDA NOP technical report on IBA (2011).
[[nodiscard]] double molarMassOf(AuxinKind kind, AuxinForm form);
/// Mass of acid in a mass of potassium salt: 0.8422 for K-IBA. By molar masses, within 0.0001.
[[nodiscard]] double acidEquivalent(AuxinKind kind);

/// A strength and what it counts: the acid, or the salt itself.
struct AuxinStrength {
    double milligramsPerLitre{};  // mg/kg in powders
    AuxinForm form{AuxinForm::Acid};

    bool operator==(const AuxinStrength&) const = default;
};

/// The same auxin counted the other way. mg/L from 0 to 100 000.
[[nodiscard]] Result<AuxinStrength> countedAs(AuxinForm form, AuxinKind kind, const AuxinStrength& strength);
/// 1 % is 10 000 mg/L (w/v) or mg/kg (w/w), by definition. Percent from 0 to 10.
[[nodiscard]] Result<double> milligramsFromPercent(double percent);
/// mg/L from 0 to 100 000.
[[nodiscard]] Result<double> percentFromMilligrams(double milligramsPerLitre);

/// Between which strengths the trade stays, for wood and way of applying. Ways can't be swapped at the same figure.
struct AuxinRange {
    std::string_view wood{};  // "semi-ripe"
    std::string_view way{};   // "quick dip"
    double low{};             // mg/L; mg/kg in talc
    double high{};
    std::string_view source{};
};
[[nodiscard]] std::span<const AuxinRange> auxinRanges();

}  // namespace core
