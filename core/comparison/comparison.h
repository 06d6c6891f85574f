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
#include "core/comparison/doses.h"
#include "core/comparison/factor.h"
#include "core/comparison/goes_with.h"
#include "core/comparison/pair.h"
#include "core/comparison/rate_interval.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

struct ComparisonQuestion {
    Factor factor{Factor::Method};
    PlantId plant{};                         // unset: all plants
    std::optional<int> horizonDay{};         // unset: see horizonFor()
    std::optional<double> level{};           // unset: the logbook's
    std::optional<TrialId> trial{};          // only this trial's batches
    std::optional<RateInterval> interval{};  // of each arm's rate as counted; unset: the logbook's
    std::optional<double> margin{};          // "as good as, within": a share between 0 and 1; unset: not asked
    int bootstrapReplicates{1000};           // at most; for the bands and the interval of the median day
    int permutations{2000};                  // at most; for the test of two curves
    std::uint32_t seed{20260101};            // of both, so that the same records give the same figures
};

/// Of all arms at once.
struct SeveralArms {
    int arms{};
    double chiSquare{};
    int degreesOfFreedom{};
    double chiSquareP{1};       // as counted
    double smallestExpected{};  // below 5 the chi-square is rough
    std::optional<double> f;    // analysis of variance of batch rates, from three batches in each arm
    std::optional<double> batchRatesP;
};

/// How alike the fates of one batch's cuttings are: pooled over all groups of like batches in the logbook, not only those compared, and
/// drawn towards what is usual where they are few.
struct Spread {
    double intraclassCorrelation{};
    Limits limits;
    double designEffect{1};                            // of the batches compared
    bool isFromRecords{};                              // false: no two like batches yet, the figure is what is usual
    double weightOfRecords{};                          // 0 to 1
    std::vector<std::vector<BatchCount>> likeBatches;  // the groups
    int groups{};   // of like batches, two or more each: same plant, method, treatment, medium, kind of cutting
    int batches{};  // in those groups
};

struct Comparison {
    Factor factor{};
    int horizonDay{};
    std::string horizonReason;  // "set for this comparison", "the trial's", ...
    double level{};
    RateInterval interval{};
    std::vector<Arm> arms;  // most stuck first, then by name
    std::vector<Pair> pairs;
    std::optional<SeveralArms> severalArms;  // from three arms
    std::vector<DoseSeries> doses;           // where treatments are compared
    GoesWith goesWith;
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
/// it early with what is computed so far; the caller throws that away. `conditions` are set beside the rest in goesWith.
[[nodiscard]] Result<Comparison> compare(const ComparisonQuestion& question, const Shelves& shelves,
                                         std::span<const BatchRecord> batches, std::stop_token stop = {},
                                         const ConditionsOnRecord& conditions = {});

}  // namespace core
