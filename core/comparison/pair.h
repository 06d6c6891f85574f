// SPDX-License-Identifier: MIT
// Every figure about two arms of a comparison, and what may be concluded from them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/comparison/arm.h"

namespace core {

struct PairDifference {
    double value{};
    Limits newcombe;
    Limits miettinenNurminen;
    std::optional<double> ofBatches;   // of the means of batch rates, each batch counting once whatever its size
    std::optional<Limits> withSpread;  // trayGuardedTTest()'s, which holds `value`; two batches or more per arm

    /// What goes with the interval with spread: `value`, where that is inside it.
    [[nodiscard]] double valueWithSpread() const {
        const bool isInside = !withSpread || (withSpread->low <= value && value <= withSpread->high);
        return isInside ? value : ofBatches.value_or(value);
    }
};

struct BySpecies {
    std::string species;
    int firstRooted{}, firstAssessed{}, secondRooted{}, secondAssessed{};
    std::optional<double> difference;
    Limits limits;  // Miettinen-Nurminen
};

/// One plant in one block of its trial: what is compared within.
struct StratumCounts {
    std::string name;
    int firstRooted{}, firstAssessed{}, secondRooted{}, secondAssessed{};
};

struct Pooled {
    int strata{};                       // plant by trial block
    std::vector<StratumCounts> counts;  // those with both arms
    std::optional<double> oddsRatio;
    Limits oddsRatioLimits;  // high may be infinite
    std::optional<double> riskDifference;
    Limits riskDifferenceLimits;
    double cmhP{1.0};
    std::optional<double> agreementP;  // Breslow-Day with Tarone's correction; absent with one informative stratum
    // The same, widened by the design effect: as counted they hold the truth far less often than they say where batches differ.
    Limits oddsRatioWithSpread, riskDifferenceWithSpread;
};

/// How fast those root that do, apart from how many.
struct SpeedDifference {
    std::string shape;
    std::optional<double> ratio;  // median day of the first over that of the second; absent: see whyNot
    Limits asCounted;
    double asCountedP{1};
    std::optional<Limits> byBatch;  // allowing for the spread between batches
    std::optional<double> byBatchP;
    std::string whyNot;
};

/// How far apart two curves of rooted by day are, and out of how many dealings of the batches that was judged.
struct CurvesApart {
    double area{};  // between the curves, in days
    int until{};    // from sticking to that day
    double dealings{};
    bool isExact{};  // all dealings that there are
};

/// Is an arm at most `margin` worse than the other?
struct AsGoodAs {
    double margin{};
    Limits asCounted;  // of its rate less the other's
    double asCountedP{1};
    std::optional<Limits> withSpread;  // from three batches an arm
    std::optional<double> withSpreadP;
    bool isShown{};  // by the interval with spread alone: counts as such can't show it
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
    SpeedDifference speed;
    std::optional<double> curvesP;            // permutation test of the two curves within plant
    std::optional<CurvesApart> curvesApart;   // where there is that test
    std::optional<double> batchRatesP;        // trayGuardedTTest() on batch rates, from three batches per arm
    std::optional<double> batchPermutationP;  // from four
    std::optional<double> batchRatesHolm;     // adjusted for the number of pairs looked at
    std::optional<double> boschlooHolm;
    std::optional<AsGoodAs> firstAsGood, secondAsGood;  // where a margin was set
    std::vector<BySpecies> bySpecies;
    Pooled pooled;
    Verdict verdict{Verdict::NoClearDifference};
    std::string inWords;
};

}  // namespace core
