// SPDX-License-Identifier: MIT
// How many cuttings to stick for so many plants, with a given assurance.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/past_records.h"
#include "core/result.h"
#include "stats/planning/predictive_range.h"

namespace core {

struct HowManyQuestion {
    int wanted{};
    double assurance{0.9};  // chance of having enough
    double pottedLive{1};   // of rooted cuttings that are potted, the share that live on
    double rootedInTime{
        1};  // of those that root by the horizon, the share that have by potting day: RootingDays::rootedInTime
    int traySize{20};    // cuttings that share one tray's luck
    double level{0.95};  // of the range around what is to be expected
};

struct StuckChance {
    int stuck{};
    double chance{};  // of the plants wanted, or more
};

struct HowMany {
    HowManyQuestion question;
    std::optional<int> stick;                        // absent: 20 000 would not do
    std::optional<double> achieved;                  // the chance with `stick`
    int trays{};                                     // that `stick` fills, the last perhaps in part
    double expectedPlants{};                         // of `stick`, on average
    std::optional<stats::CountRange> expectedRange;  // of `stick`, at the question's level; for plants still to come
    int withATrayMore{};                             // stick + a tray
    double chanceWithATrayMore{};
    std::vector<StuckChance> curve;  // rising; `stick` and `withATrayMore` are among its points
    std::string answerInWords;
    std::string trayMoreInWords;
    std::string recordsInWords;  // what it rests on
    std::string warning;         // empty where there is nothing to warn of
};

inline constexpr int mostWanted = 10'000;

/// wanted 1 to 10 000, assurance between 0 and 1, pottedLive and rootedInTime above 0 and up to 1, traySize 1 to 10 000.
[[nodiscard]] Refusals faultsIn(const HowManyQuestion& question);
/// Exact: stats::countForPastBatches(). 24 wanted take some 30 ms with the curve, 100 some 150, 500 a few seconds: away from the window's thread.
[[nodiscard]] Result<HowMany> howManyToStick(const HowManyQuestion& question, const PastRecords& records);

/// What a plain division says, wanted / share rounded up: enough about half the time only. wanted 1 to 10 000, share above 0 and up to 1.
[[nodiscard]] Result<int> plainNumber(int wanted, double share);

/// answerInWords of an answer that was come by otherwise.
[[nodiscard]] std::string howManyInWords(const HowMany& answer);

}  // namespace core
