// SPDX-License-Identifier: MIT
// Do two arms root at different days? Whole batches change their arm, within plant (or whatever else the strata are),
// and the two curves are estimated anew.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/observation.h"

namespace stats {

/// One batch: what is known of its cuttings, which arm it is in and which stratum.
struct LabelledBatch {
    std::vector<Observation> observations;
    bool isInFirstArm{};
    int stratum{};
};

struct CurvePermutationTest {
    double statistic{};  // see below, in days
    double p{1.0};
    double permutations{1};  // made, the observed one not counted among random ones
    bool isExact{true};      // all there are; else random ones, p = (as large + 1) / (permutations + 1)
    bool wasStopped{};       // p is then meaningless
};

/// Permutation test of equal curves of cause 1.
///
/// The statistic is the area between the two arms' curves, from day 0 to `until` (unset: the last day of any
/// observation): the integral of |share 1 - share 2| over days, mass spread evenly inside its interval. The area
/// rather than the largest distance, because the latter hangs on one interval; and one curve an arm over all strata,
/// because those are the curves shown. Labels are permuted only within a stratum, keeping the number of batches an
/// arm has there, so plants that are over-represented in an arm do not make a difference.
///
/// Domain    as competingRisksNpmle(); permutations >= 1, until > 0; else std::domain_error. Batches without weight
///           are left out.
/// Returns   absent where an arm has no batch. One batch an arm: p = 1. All arrangements are enumerated when there
///           are no more than `permutations` of them.
/// Assumes   under the null hypothesis any batch of a stratum could as well have been in the other arm.
/// Accuracy  the statistic to 1e-6 of itself; values that near the observed one count as equal to it.
/// Source    Edgington and Onghena (2007), Randomization Tests, 4th ed.; Pesarin and Salmaso (2010), Permutation
///           Tests for Complex Data.
[[nodiscard]] std::optional<CurvePermutationTest> curvePermutationTest(std::span<const LabelledBatch> batches,
                                                                       int permutations, SeededRandom& random,
                                                                       std::optional<double> until = {},
                                                                       std::stop_token stop = {});

/// Why there is no test of speed.
enum class NoSpeedTest { NoBatches, NobodyRooted };

struct SpeedPermutationTest {
    std::optional<CurvePermutationTest> test;
    std::optional<NoSpeedTest> whyNot;  // present exactly where the test is not
    int armWithout{};                   // the arm (1 or 2) that this is about
};

/// The same for how fast those root that do, whatever the strike rate: each curve divided by its value on `until`.
///
/// Domain    as curvePermutationTest().
/// Returns   no test, with the reason and the arm, where an arm has no batch or nothing rooted in it by `until`. An
///           arrangement in which an arm would have nothing rooted cannot be compared and counts as at least as far
///           apart: p errs upwards.
/// Assumes   both arms are watched until then: an arm that is watched for less seems quicker. Exact where batches could
///           be exchanged altogether; where strike rates differ and speeds do not, the spread of the two curves differs
///           and the level is only near what it says.
/// Source    as curvePermutationTest(); on tests of one trait while another differs: Chung and Romano (2013), Ann.
///           Stat. 41, 484-507.
[[nodiscard]] SpeedPermutationTest speedPermutationTest(std::span<const LabelledBatch> batches, int permutations,
                                                        SeededRandom& random, std::optional<double> until = {},
                                                        std::stop_token stop = {});

}  // namespace stats
