// SPDX-License-Identifier: MIT
// How many cuttings per arm a trial needs, before it is stuck: the chance of finding the difference that would matter, by exact power, with
// the luck that cuttings of one batch share taken off.
//
//   const ExpectedRate expected = expectedRateOf(trial, plants, shelves, batches, spread);
//   const Result<TrialPower> power = trialPower({.expected = expected.rate, .margin = 0.2, .correlation = spread.correlation,
//                                                .batchesPerArm = 6});
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/records.h"
#include "core/result.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

struct TrialPowerQuestion {
    TrialMeasure measure{TrialMeasure::MoreRooted};
    double expected{0.5};     // share rooted of the first arm
    double margin{};          // difference that would matter, or by which less is still as good
    double level{0.95};       // of the answer's interval
    int arms{2};              // each pair is judged more strictly where there are several
    double correlation{};     // between cuttings of one batch
    double batchesPerArm{1};  // over which an arm's cuttings are spread
    int mostPerArm{500};
};

struct PowerOfNumber {
    int perArm{};
    double power{};
};

struct TrialPower {
    TrialPowerQuestion question;
    double expectedOther{};                 // share rooted of the other arm if the difference is there
    std::optional<int> independentFor80{};  // cuttings per arm if each had luck of its own; absent beyond mostPerArm
    std::optional<int> perArmFor80{};  // for 8 times in 10; absent: not in so many batches, or not up to mostPerArm
    std::optional<int> perArmFor90{};
    std::optional<int>
        batchesFor80{};  // per arm, at the least; present where more cuttings in the same batches won't do
    std::vector<PowerOfNumber> curve{};  // rising; perArmFor80 and perArmFor90 are among its points
    std::string answerInWords{};
    std::string warning{};  // empty where there is nothing to warn of
};

/// Expected rate 0 to 1, margin between 0 and 1, arms 2 to 26, batches per arm 1 or more.
[[nodiscard]] Refusals faultsIn(const TrialPowerQuestion& question);

/// Two-sided Boschloo's test of one pair of arms, or for "as good as" the score test against the margin, both enumerated; with more than two
/// arms each pair at its share of what the level leaves. Cuttings count for as many as would be worth the same if each had luck of its own:
/// so many batches of equal size, Kish's design effect. A verdict from few batches has to learn their luck too and finds less than this.
/// Takes some tenths of a second, about one where small differences need up to 300 per arm, several with up to 500. A stop request ends it
/// early; the caller throws that away.
[[nodiscard]] Result<TrialPower> trialPower(const TrialPowerQuestion& question, const std::stop_token& stop = {});
/// The same for one number per arm.
[[nodiscard]] double powerOf(const TrialPowerQuestion& question, int perArm);

/// The first arm's past, to reckon with.
struct ExpectedRate {
    double rate{0.5};
    int batches{};  // behind it; 0: nothing on record
    std::optional<Limits>
        limits;  // of the share as counted, with the spread between batches where there are two or more; absent without any
    std::string inWords;
};

/// From batches of the arm's own kind and of `plants` (none: any), counted at the trial's horizon day. Where there are none, a half: it
/// takes the most cuttings.
[[nodiscard]] ExpectedRate expectedRateOf(const Trial& design, std::span<const PlantId> plants, const Shelves& shelves,
                                          std::span<const BatchRecord> batches, const stats::PooledSpread& spread);

}  // namespace core
