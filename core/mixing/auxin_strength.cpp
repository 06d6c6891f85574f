// SPDX-License-Identifier: MIT
#include "core/mixing/auxin_strength.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/mixing/formula.h"
#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double milligramsPerPercent = 10'000;
constexpr double mostPercent = 10;

constexpr std::array auxinTable = std::to_array<AuxinFacts>({
    {AuxinKind::Iba, "IBA", "C12H13NO2", "C12H12KNO2", 250},
    {AuxinKind::Naa, "NAA", "C12H10O2", "C12H9KO2", 0},
    {AuxinKind::Iaa, "IAA", "C10H9NO2", "C10H8KNO2", 0},
});

constexpr std::string_view propagationTextbook =
    "Hartmann, Kester, Davies, Geneve, Plant Propagation: Principles and Practices, from memory";

constexpr std::array tradeAuxinRanges = std::to_array<AuxinRange>({
    {"herbaceous / softwood", "quick dip (1-5 s)", 500, 1250, propagationTextbook},
    {"semi-ripe", "quick dip", 1000, 3000, propagationTextbook},
    {"hardwood", "quick dip", 2500, 5000, propagationTextbook},
    {"hard-to-root, conifers", "quick dip", 5000, 10000, propagationTextbook},
    {"any", "dilute soak 2-24 h", 20, 200, propagationTextbook},
    {"herbaceous", "talc", 1000, 1000, commonPractice},
    {"semi-ripe", "talc", 3000, 3000, commonPractice},
    {"hardwood", "talc", 8000, 8000, commonPractice},
});

}  // namespace

std::span<const AuxinFacts> allAuxins() {
    return auxinTable;
}

const AuxinFacts& factsOf(AuxinKind kind) {
    return auxinTable[static_cast<std::size_t>(kind)];
}

std::optional<AuxinKind> auxinFrom(std::string_view word) {
    std::string capitals(word);
    for (char& letter : capitals) letter = static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
    const auto* const found = std::ranges::find(auxinTable, std::string_view(capitals), &AuxinFacts::word);
    if (found == auxinTable.end()) return {};
    return found->kind;
}

std::string nameOf(AuxinKind kind, AuxinForm form) {
    return (form == AuxinForm::Salt ? "K-" : "") + std::string(factsOf(kind).word);
}

double molarMassOf(AuxinKind kind, AuxinForm form) {
    return *molarMass(form == AuxinForm::Salt ? factsOf(kind).saltFormula : factsOf(kind).acidFormula);
}

double acidEquivalent(AuxinKind kind) {
    return molarMassOf(kind, AuxinForm::Acid) / molarMassOf(kind, AuxinForm::Salt);
}

Result<AuxinStrength> countedAs(AuxinForm form, AuxinKind kind, const AuxinStrength& strength) {
    if (const auto fault = faultBetween("Strength", strength.milligramsPerLitre, 0, mostAuxin, "mg/L"))
        return refused({*fault});
    if (form == strength.form) return strength;
    const double equivalent = acidEquivalent(kind);
    return AuxinStrength{.milligramsPerLitre = form == AuxinForm::Acid ? strength.milligramsPerLitre * equivalent
                                                                       : strength.milligramsPerLitre / equivalent,
                         .form = form};
}

Result<double> milligramsFromPercent(double percent) {
    if (const auto fault = faultBetween("Strength", percent, 0, mostPercent, "%")) return refused({*fault});
    return percent * milligramsPerPercent;
}

Result<double> percentFromMilligrams(double milligramsPerLitre) {
    if (const auto fault = faultBetween("Strength", milligramsPerLitre, 0, mostAuxin, "mg/L")) return refused({*fault});
    return milligramsPerLitre / milligramsPerPercent;
}

std::span<const AuxinRange> auxinRanges() {
    return tradeAuxinRanges;
}

}  // namespace core
