// SPDX-License-Identifier: MIT
// How many cuttings an arm needs for a difference to be found, by exact power, allowing for trays that differ.
#pragma once

#include <optional>
#include <stop_token>

namespace stats {

/// Two-sided the first two, Boschloo's as twice the smaller side; NonInferiority: is the first as good, within the margin?
enum class PlannedTest { Fisher, Boschloo, NonInferiority };

struct SampleSizeQuestion {
    double rate1{};
    double rate2{};
    double alpha{0.05};
    double power{0.8};
    PlannedTest test{PlannedTest::Boschloo};
    double designEffect{1};  // designEffectOfTrays(); 1 for cuttings on their own
    int mostPerArm{500};     // where the search gives up
    double margin{};         // of NonInferiority alone
};

struct SampleSize {
    std::optional<int> independentPerArm;  // cuttings that don't share a tray; absent beyond mostPerArm
    std::optional<int> perArm;             // times the design effect, rounded up
    std::optional<double> achieved;        // power at independentPerArm
    std::optional<double> normalPerArm;    // first guess, by trialsForNormalPower(); of NonInferiority: for the margin
};

/// The smallest number per arm that has the power wanted, and still has it with one to five more per arm.
///
/// Exact power doesn't rise evenly: one cutting more can lower it by some hundredths, since the critical region changes
/// in whole tables. A number that is right only for itself would be a trap when a few cuttings more are stuck; hence
/// the five. Numbers are gone through upwards from half the normal approximation (of NonInferiority a quarter), in
/// greater strides while the power is far too low (by 0.1, from 100 on 0.04). A stop request ends it without a number.
///
/// The design effect multiplies the number, as for a test on means: with few trays it is on the low side, since a test
/// that has to learn the spread from them needs more.
///
/// Domain    0 <= rate <= 1, 0 < alpha < 1, 0 < power < 1, designEffect >= 1 and finite, 1 <= mostPerArm <= 900, and for
///           NonInferiority 0 < margin < 1; else std::domain_error.
/// Returns   no number when there is nothing to find (equal rates; of NonInferiority: a first rate that is worse by the
///           margin or more) or more than mostPerArm would be needed; the normal guess is then the only figure. perArm
///           is absent too where it doesn't fit an int.
/// Assumes   both arms alike in number.
/// Accuracy  the number is exact by this definition (compared with a search through every number).
/// Source    the saw-tooth: Chernick and Liu (2002), Am. Stat. 56, 149-155.
[[nodiscard]] SampleSize sampleSize(const SampleSizeQuestion& question, const std::stop_token& stop = {});

/// 1 + (size - 1) correlation, size being the mean tray size weighted by size (the tray size itself when all are equal).
/// Domain    traySize >= 1 and finite, 0 <= correlation <= 1; else std::domain_error.
/// Source    Kish (1965), Survey Sampling, section 5.4.
[[nodiscard]] double designEffectOfTrays(double traySize, double correlation);

}  // namespace stats
