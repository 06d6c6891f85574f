// SPDX-License-Identifier: MIT
// Making auxin ready for the day: a stock thinned to working strength, powder weighed into a solution, talc thinned with talc, and how much
// of it so many cuttings take. What a strength means: core/mixing/auxin_strength.h.
#pragma once

#include "core/mixing/auxin_strength.h"
#include "core/mixing/mix_notes.h"
#include "core/result.h"

namespace core {

inline constexpr double mostAuxinMillilitres = 100'000;

struct StockDilution {
    AuxinKind kind{AuxinKind::Iba};
    AuxinStrength stock{};
    AuxinStrength wanted{};
    double millilitres{};  // of working solution
    bool inAlcohol{};      // the stock is, and stays so: the acid doesn't fall out
    MeasuringTools tools{};
};

struct WorkingSolution {
    StockDilution question{};
    MeasuredAmount stock{};      // mL
    MeasuredAmount diluent{};    // mL
    AuxinStrength asMeasured{};  // counted as it was wanted
    MixNotes notes{};
};

/// Strengths above 0 to 100 000 mg/L, the wanted no stronger than the stock when both count the same; mL above 0 to 100 000.
[[nodiscard]] Refusals faultsIn(const StockDilution& question);
/// Domain    faultsIn() finds nothing.
/// Returns   stock = mL x wanted / stock strength (both as acid), the rest is what it is thinned with.
/// Accuracy  1e-15 relative; volumes are taken to add up, which alcohol and water miss by up to 3.5 %.
/// Source    dilution law C1 V1 = C2 V2.
[[nodiscard]] Result<WorkingSolution> thinStock(const StockDilution& question);

struct PowderToWeigh {
    AuxinKind kind{AuxinKind::Iba};
    AuxinForm powder{AuxinForm::Acid};
    double purityPercent{100};
    AuxinStrength wanted{};
    double millilitres{};
    bool inAlcohol{};
    MeasuringTools tools{};
};

struct WeighedPowder {
    PowderToWeigh question{};
    MeasuredAmount powder{};     // g
    AuxinStrength asMeasured{};  // counted as it was wanted
    double leastMillilitres{};   // from which on a step of the scale shifts the strength by no more than a twentieth
    MixNotes notes{};
};

/// Strength above 0 to 100 000 mg/L, mL above 0 to 100 000, purity above 0 to 100 %.
[[nodiscard]] Refusals faultsIn(const PowderToWeigh& question);
/// Domain    faultsIn() finds nothing.
/// Returns   g = strength (as the powder counts) x mL / 1 000 000 / purity.
/// Accuracy  1e-15 relative. Source  molar masses of IUPAC atomic weights, from memory.
[[nodiscard]] Result<WeighedPowder> weighPowder(const PowderToWeigh& question);

struct TalcDilution {
    double powderPercent{};  // of the talc that is there
    double wantedPercent{};
    double grams{};  // of thinned talc
    MeasuringTools tools{};
};

struct ThinnedTalc {
    TalcDilution question{};
    MeasuredAmount powder{};  // g
    MeasuredAmount talc{};    // g, plain
    double percentAsMeasured{};
    MixNotes notes{};
};

/// Percents above 0 to 10, the wanted no stronger than the powder; grams above 0 to 100 000.
[[nodiscard]] Refusals faultsIn(const TalcDilution& question);
/// Dilution law by weight; a talc is mixed well by sieving it several times (common practice, no source).
[[nodiscard]] Result<ThinnedTalc> thinTalc(const TalcDilution& question);

struct DipAmount {
    int cuttings{};
    double millilitresEach{0.5};  // used or lost; 0.3 to 0.7 is usual (common practice, no source)
    double leastMillilitres{10};  // below which nothing can be dipped
    MeasuringTools tools{};
};

struct DipNeeded {
    DipAmount question{};
    MeasuredAmount amount{};  // mL, rounded up
    MixNotes notes{};
};

/// Cuttings 1 to 100 000; each above 0 to 100 mL; least 0 to 1000 mL.
[[nodiscard]] Refusals faultsIn(const DipAmount& question);
/// The larger of cuttings x each and the least that can be dipped into. Source: common practice, no source.
[[nodiscard]] Result<DipNeeded> dipNeeded(const DipAmount& question);

/// The same auxin as acid and as potassium salt, and in per cent.
struct AuxinConversion {
    AuxinKind kind{AuxinKind::Iba};
    AuxinStrength given{};
};

struct CountedAuxin {
    AuxinConversion question{};
    AuxinStrength same{};  // counted the other way
    double percent{};      // of what was given
    MixNotes notes{};
};

/// Strength 0 to 100 000 mg/L.
[[nodiscard]] Refusals faultsIn(const AuxinConversion& question);
/// countedAs() and percentFromMilligrams(), with the sum.
[[nodiscard]] Result<CountedAuxin> countOtherWay(const AuxinConversion& question);

/// That a solution ages, for every answer of these. Source: FAO document AD224E, section 10.
[[nodiscard]] std::string auxinShelfLife();

}  // namespace core
