// SPDX-License-Identifier: MIT
// Which dose roots best? One auxin in one carrier at several doses, untreated cuttings beside them: does the strike rate rise or fall with
// the dose, and where is its top?
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/records.h"

namespace core {

struct DosePoint {
    double milligramsPerLitre{};  // 0: untreated; for powders mg/kg
    int batches{}, rooted{}, assessed{};
    double rate{};
    Limits asCounted;
};

struct DosedBatch {
    double milligramsPerLitre{};
    int rooted{}, assessed{};
};

struct DoseCurvePoint {
    double milligramsPerLitre{};
    double rate{};
    Limits asCounted;
    std::optional<Limits> withSpread;
};

enum class BestDose {
    TooFewDoses,   // fewer than three above none: no curve
    NoCurve,       // the fit does not exist; `whyNoCurve` says why
    Inside,        // between the lowest and the highest dose tried
    NoTop,         // the curve does not bend down
    BelowLowest,   // the lowest dose tried did best, a lower one may do better
    AboveHighest,  // likewise the highest
};

struct DoseSeries {
    std::string auxin;                   // "IBA, gel"
    bool isPowder{};                     // doses are mg/kg
    std::vector<DosePoint> points;       // from none upwards
    std::vector<DosedBatch> batches;     // likewise
    double trendP{1};                    // as counted, over the order of doses
    std::optional<double> batchTrendP;   // over batch rates, from two batches more than there are doses
    std::optional<double> trendPerStep;  // of batch rates, one dose to the next
    BestDose best{BestDose::TooFewDoses};
    std::string whyNoCurve;
    bool isFirth{};  // Firth's estimator, since a dose rooted all or none
    std::optional<double> bestMilligrams, bestRate;
    std::optional<Limits> asCounted,
        withSpread;  // of the best dose; absent where no dose can be excluded or spread can't be seen
    bool isUnboundedWithSpread{};
    std::vector<DoseCurvePoint> curve;  // for drawing, from the lowest to the highest dose tried
    std::string inWords;
};

/// One series for each auxin, form and carrier that was used alone at two doses or more; untreated batches belong to every series. Batches
/// with several auxins are left out: their doses can't be put in one order.
[[nodiscard]] std::vector<DoseSeries> doseSeriesOf(const Shelves& shelves, std::span<const BatchRecord* const> batches,
                                                   int horizonDay, double level);

}  // namespace core
