// SPDX-License-Identifier: MIT
// Head to head: two or more arms of one factor, compared at a horizon day. The value that the window, the command line and the prints
// all show; computed once, here.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/comparison/arm.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

enum class Factor { Method, Treatment, Medium, CuttingKind };
[[nodiscard]] std::string_view wordFor(Factor factor);  // "method", "treatment", "medium", "cutting"

struct ComparisonQuestion {
    Factor factor{Factor::Method};
    PlantId plant{};                  // unset: all plants
    std::optional<int> horizonDay{};  // unset: see horizonFor()
    std::optional<double> level{};    // unset: the logbook's
    std::optional<TrialId> trial{};   // only this trial's batches
    int bootstrapReplicates{1000};    // at most; for the bands and the interval of the median day
    int permutations{2000};           // at most; for the test of two curves
    std::uint32_t seed{20260101};     // of both, so that the same records give the same figures
};

struct PairDifference {
    double value{};
    Limits newcombe;
    Limits miettinenNurminen;
    std::optional<double> ofBatches;   // of the means of batch rates, each batch counting once whatever its size
    std::optional<Limits> withSpread;  // t interval about that; two batches or more per arm

    /// What goes with the interval with spread: unequal batches can pull `value` out of it.
    [[nodiscard]] double valueWithSpread() const { return ofBatches.value_or(value); }
};

struct BySpecies {
    std::string species;
    int firstRooted{}, firstAssessed{}, secondRooted{}, secondAssessed{};
    std::optional<double> difference;
    Limits limits;  // Miettinen-Nurminen
};

struct Pooled {
    int strata{};  // plant by trial block
    std::optional<double> oddsRatio;
    Limits oddsRatioLimits;  // high may be infinite
    std::optional<double> riskDifference;
    Limits riskDifferenceLimits;
    double cmhP{1.0};
    std::optional<double> agreementP;  // Breslow-Day with Tarone's correction; absent with one informative stratum
};

enum class Verdict { CannotTellMethodFromStation, TooFewBatches, NoClearDifference, FirstBetter, SecondBetter };

struct Pair {
    int first{};  // index into arms
    int second{};
    std::optional<PairDifference> difference;  // absent when an arm has nothing assessed
    std::optional<double> riskRatio;           // may be infinite
    Limits koopman;
    std::optional<double> oddsRatio;  // conditional; may be infinite
    Limits oddsRatioExact;
    double fisher{1}, fisherMid{1}, boschloo{1}, barnard{1};
    bool exactTestsLeftOut{};  // Boschloo and Barnard, where an arm is too large to enumerate in good time
    double probabilityFirstBetter{0.5};
    std::optional<double> curvesP;            // permutation test of the two curves within plant
    std::optional<double> batchRatesP;        // t test on batch rates, from three batches per arm
    std::optional<double> batchPermutationP;  // from four
    std::vector<BySpecies> bySpecies;
    Pooled pooled;
    Verdict verdict{Verdict::NoClearDifference};
    std::string inWords;
};

struct Spread {
    std::optional<double> intraclassCorrelation;
    std::optional<double> designEffect;
    int batches{};
};

struct Comparison {
    Factor factor{};
    int horizonDay{};
    std::string horizonReason;  // "set for this comparison", "the trial's", ...
    double level{};
    std::vector<Arm> arms;  // most stuck first, then by name
    std::vector<Pair> pairs;
    Spread spread;
    std::vector<std::string> cautions;
    std::string inWords;
};

/// The horizon that is set before looking: the question's own, the trial's, the largest of the plants' usual upper limits, or the
/// logbook's.
struct Horizon {
    int day{};
    std::string reason;
};
[[nodiscard]] Horizon horizonFor(const ComparisonQuestion& question, const Shelves& shelves,
                                 std::span<const BatchRecord> batches);

/// Refuses a horizon below 1 day or a level outside (0, 1). Fewer than two arms is an answer, not a refusal. Replicates and
/// permutations are upper limits: over many batches fewer are drawn, so that the answer comes in a few seconds. A stop request ends
/// it early with what is computed so far; the caller throws that away.
[[nodiscard]] Result<Comparison> compare(const ComparisonQuestion& question, const Shelves& shelves,
                                         std::span<const BatchRecord> batches, std::stop_token stop = {});

}  // namespace core
